import type { PlanCoverage } from '#lib/core/survey/coverage.ts';
import { files } from './files.ts';
import type { Format } from './format.ts';

/** What was and was not walked of one plan, in a sentence. */
export function coverageSentence(
	{ plan, areas, share, leakCount }: PlanCoverage,
	format: Pick<Format, 'count' | 'percent'>
): string {
	const leaks = files.pinned(leakCount, format.count(leakCount));
	if (areas.length === 0) return files.notMarked(plan.name, leaks);
	const much = share < 0.01 ? files.underOne : files.about(format.percent(share));
	const names = areas.flatMap(({ name }) => (name ? [name] : []));
	return files.marked(plan.name, much, names.join(', '), leaks);
}
