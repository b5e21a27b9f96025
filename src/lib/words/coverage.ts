import type { PlanCoverage } from '#lib/core/survey/coverage.ts';
import type { Format } from './format.ts';

/** What was and was not walked of one plan, in a sentence. */
export function coverageSentence(
	{ plan, areas, share, leakCount }: PlanCoverage,
	format: Pick<Format, 'count' | 'percent'>
): string {
	const leaks = leakCount === 1 ? '1 leak pinned' : `${format.count(leakCount)} leaks pinned`;
	if (areas.length === 0) return `${plan.name}: no part marked as walked and tight; ${leaks}.`;
	const much = share < 0.01 ? 'under 1%' : `about ${format.percent(share)}`;
	const names = areas.flatMap(({ name }) => (name ? [name] : []));
	const named = names.length > 0 ? ` (${names.join(', ')})` : '';
	return `${plan.name}: ${much} marked as walked and tight${named}; ${leaks}.`;
}

/** What the marks do not say. */
export const NOT_MARKED = 'Elsewhere nobody has said that it was walked.';
