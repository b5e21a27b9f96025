import type { CommandKind } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import type { Format } from '#lib/words/format.ts';
import { steps } from '#lib/words/steps.ts';

/**
 * Says what was taken back or brought again: the kind of the step, and the leaks that it touched.
 * @param before the survey before that
 * @param after the survey since
 */
export function stepSentence(
	way: 'undo' | 'redo',
	kind: CommandKind,
	before: Survey,
	after: Survey,
	format: Format
): string {
	const touched = Object.values(after.leaks).filter((leak) => leak !== before.leaks[leak.id]);
	const [leak] = touched;
	let what = steps.kinds[kind];
	if (leak)
		what =
			touched.length === 1
				? steps.ofLeak(what, String(leak.tag))
				: steps.ofLeaks(what, format.count(touched.length));
	return way === 'undo' ? steps.takenBack(what) : steps.broughtAgain(what);
}
