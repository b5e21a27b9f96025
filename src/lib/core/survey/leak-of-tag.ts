import { find } from './ids.ts';
import { leaksInOrder } from './leak-state.ts';
import type { Leak, Survey } from './schema.ts';

/**
 * The leak that a tag hangs on: by the number as it is typed, or by the leak's own name as the code on the tag
 * holds it. A leak that was taken out of the survey is not found.
 */
export function leakOfTag(survey: Survey, text: string): Leak | undefined {
	const asked = text.trim();
	const number = /^#?0*(\d{1,6})$/.exec(asked)?.[1];
	if (number !== undefined) return leaksInOrder(survey).find(({ tag }) => tag === Number(number));
	const leak = find(survey.leaks, asked);
	return leak?.removed ? undefined : leak;
}
