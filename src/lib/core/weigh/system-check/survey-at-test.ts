import { hoursBetween } from '../../survey/instants.ts';
import { mendingIn } from '../../survey/leak-state.ts';
import type { Leak, Survey } from '../../survey/schema.ts';
import type { SystemTest } from '../../survey/system-test-schema.ts';

/**
 * The survey with what was mended after a test not mended yet: the test measured those leaks too. A leak
 * that was found after it was there at the test. METHOD W11.
 */
export function surveyAtTest(
	survey: Survey,
	roundId: string,
	test: Pick<SystemTest, 'doneAt'>
): Survey {
	const mendedSince = Object.values(survey.leaks).filter((leak) => {
		const mendedAt = mendingIn(leak, roundId)?.mendedAt;
		return mendedAt !== undefined && hoursBetween(test.doneAt, mendedAt) > 0;
	});
	if (mendedSince.length === 0) return survey;
	const before = mendedSince.map((leak): [string, Leak] => {
		const mendings = Object.entries(leak.mendings).filter(([id]) => id !== roundId);
		return [leak.id, { ...leak, mendings: Object.fromEntries(mendings) }];
	});
	return { ...survey, leaks: { ...survey.leaks, ...Object.fromEntries(before) } };
}
