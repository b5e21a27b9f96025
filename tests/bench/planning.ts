import loadHighs from 'highs';
import { gapOf } from '#lib/core/mend/plan/proposal.ts';
import { exactPlan, quickPlan } from '#lib/session/plan-solver.ts';
import { largeWorks } from '../arbitrary/large-works.ts';
import { median, type Row } from './measure.ts';

const GAP = 0.005;

/** How long a plan of a large works takes, quick and proved. */
export async function planning(): Promise<Row[]> {
	const highs = await loadHighs();
	const problem = largeWorks(500, 60);
	const quick = quickPlan(problem);
	const quickMs = await median(5, () => quickPlan(problem));
	let found = quick;
	const exactMs = await median(3, () => {
		found = exactPlan(
			highs,
			problem,
			quickPlan(problem),
			{ gap: GAP, seconds: 30 },
			() => undefined
		);
	});
	const gap = (plan: typeof quick) =>
		`${(100 * gapOf(plan.worthMinor, plan.boundMinor ?? Infinity)).toFixed(2)} %`;
	const overGreedy = (100 * (found.worthMinor / found.greedyWorthMinor - 1)).toFixed(0);
	const what = '500 leaks, 60 sections, 4 windows and a budget';
	return [
		{ what: `quick plan, ${what}: gap ${gap(quick)}`, ms: quickMs },
		{
			what: `best plan, ${what}: gap ${gap(found)}, ${overGreedy} % over greedy`,
			ms: exactMs,
			against: { what: 'the quick plan', ms: quickMs },
			target: '≤ 0.5 % gap in ≤ 5 s'
		}
	];
}
