import loadHighs from 'highs';
import type { PlanProblem } from '#lib/core/mend/plan/problem.ts';
import { gapOf } from '#lib/core/mend/plan/proposal.ts';
import { exactPlan, quickPlan } from '#lib/session/plan-solver.ts';
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

/** Numbers without meaning, the same on every run. */
function largeWorks(jobCount: number, sectionCount: number): PlanProblem {
	let seed = 20_260_509;
	const die = () => {
		seed = (seed * 48_271) % 2_147_483_647;
		return seed / 2_147_483_647;
	};
	const windows = [240, 480, 240, 360].map((minutes, index) => ({
		id: `window-${index}`,
		minutes,
		personMinutes: minutes * 2,
		costMinor: 0
	}));
	const sections = Array.from({ length: sectionCount }, (_, index) => ({
		id: `section-${index}`,
		minutes: 15 + Math.floor(30 * die())
	}));
	const jobs = Array.from({ length: jobCount }, (_, index) => {
		const worth = 2000 * Math.exp(2.4 * (die() + die() + die()));
		const cures = die() < 0.2;
		return {
			leakId: `leak-${index}`,
			section: Math.floor(sectionCount * die()),
			minutes: 10 + Math.floor(40 * die()),
			budgetMinor: 100 * Math.floor(45 * die()),
			worthMinor: windows.map((_, window) => worth * (1 - window / 10)),
			allowed: windows.map((_, window) => !cures || window % 2 === 1),
			must: false
		};
	});
	return { windows, sections, jobs, budgetMinor: 120_000, start: jobs.map(() => -1) };
}
