import type { Highs } from 'highs';
import { boundedPlan } from '#lib/core/mend/plan/bound.ts';
import { Filling } from '#lib/core/mend/plan/filling.ts';
import { greedyPlan } from '#lib/core/mend/plan/greedy.ts';
import { jobName, planLp, sectionName, windowName } from '#lib/core/mend/plan/lp.ts';
import { budgetStepMinor, withHourMore, type PlanProblem } from '#lib/core/mend/plan/problem.ts';
import { gapOf, type BudgetBuys, type FoundPlan } from '#lib/core/mend/plan/proposal.ts';

/** The solver's sums are right to about this share. */
const ROUNDING = 1e-5;

export interface SolveLimits {
	/** Stop when no plan can be better by more than this share. */
	readonly gap: number;
	readonly seconds: number;
}

/** The quick plan, repaired from the prices of the bound, with its gap. METHOD P7. */
export function quickPlan(problem: PlanProblem): FoundPlan {
	const greedy = greedyPlan(problem);
	const { plan, boundMinor } = boundedPlan(problem, greedy);
	return {
		windowOf: plan.windowOf,
		foundBy: 'greedy',
		worthMinor: plan.worthMinor(),
		greedyWorthMinor: greedy.worthMinor(),
		...(boundMinor !== undefined && { boundMinor })
	};
}

/**
 * Betters a plan by integer programming, from that plan on, and lowers its bound. METHOD P7.
 * It blocks until it is done: in the app it runs in a worker.
 * @param tell the gap that is left to prove, now and then
 */
export function exactPlan(
	highs: Highs,
	problem: PlanProblem,
	from: FoundPlan,
	{ gap, seconds }: SolveLimits,
	tell: (gap: number) => void
): FoundPlan {
	const { boundMinor = Infinity, worthMinor } = from;
	const empty = !problem.jobs.some(({ allowed }) => allowed.includes(true));
	if (empty || gapOf(worthMinor, boundMinor) <= gap) return { ...from, foundBy: 'exact' };
	const { windowOf, dualBound } = highs.withModel(
		{ format: 'lp', data: planLp(problem) },
		(model) => {
			const column = columnsOf(problem, (name) => model.getColByName(name));
			model.options.set({
				mip_rel_gap: gap,
				time_limit: seconds,
				output_flag: false,
				// The plan to start from is as good as its own heuristics find: the time goes into the bound.
				mip_heuristic_effort: 0
			});
			model.setSolution(startOf(problem, from, column));
			const { mipInterrupt } = highs.constants.callbackType;
			let told = Infinity;
			model.run({
				[mipInterrupt]({ data }) {
					const { mip_dual_bound: dual = Infinity, mip_primal_bound: primal = worthMinor } = data;
					const left = gapOf(Math.max(primal, worthMinor), Math.min(dual, boundMinor));
					if (!(left < told)) return;
					told = left;
					tell(left);
				}
			});
			const values = model.getSolution().colValue;
			return {
				windowOf: problem.jobs.map(({ allowed }, job) =>
					allowed.findIndex(
						(may, window) => may && (values[column.get(jobName(job, window)) ?? -1] ?? 0) > 0.5
					)
				),
				dualBound: Number(model.info.get('mip_dual_bound'))
			};
		}
	);
	const filling = new Filling(problem, windowOf);
	const better = filling.keepsTheRules() && filling.worthMinor() > worthMinor;
	const worth = better ? filling.worthMinor() : worthMinor;
	const bound = Math.max(worth, Math.min(boundMinor, dualBound));
	return {
		...from,
		windowOf: better ? windowOf : from.windowOf,
		foundBy: 'exact',
		worthMinor: worth,
		...(Number.isFinite(bound) && { boundMinor: bound })
	};
}

/**
 * What one more hour in each window would buy, minor units; null where that could not be proved in time.
 * METHOD P7.
 */
export function oneHourMore(
	highs: Highs,
	problem: PlanProblem,
	found: FoundPlan,
	{ gap, seconds }: SolveLimits
): (number | null)[] {
	const limits = { gap, seconds: seconds / Math.max(1, problem.windows.length) };
	return problem.windows.map((_, window) =>
		gainOf(highs, withHourMore(problem, window), found, limits)
	);
}

/**
 * What half as much again for parts would buy; absent where the budget sets no limit or that could not be
 * proved in time. METHOD P7.
 */
export function moreForParts(
	highs: Highs,
	problem: PlanProblem,
	found: FoundPlan,
	limits: SolveLimits
): BudgetBuys | undefined {
	const moreMinor = budgetStepMinor(problem);
	if (moreMinor === undefined) return undefined;
	const richer = { ...problem, budgetMinor: (problem.budgetMinor ?? 0) + moreMinor };
	const worthMinor = gainOf(highs, richer, found, limits);
	return worthMinor === null ? undefined : { moreMinor, worthMinor };
}

/** By how much the best plan of a wider problem is better; null where that could not be proved in time. */
function gainOf(
	highs: Highs,
	wider: PlanProblem,
	found: FoundPlan,
	limits: SolveLimits
): number | null {
	const best = exactPlan(highs, wider, quickPlan(wider), limits, () => undefined);
	if (gapOf(best.worthMinor, best.boundMinor ?? Infinity) > limits.gap + ROUNDING) return null;
	return Math.max(0, best.worthMinor - found.worthMinor);
}

/** The solver's number of each name that stands in the model. */
function columnsOf(problem: PlanProblem, find: (name: string) => number): Map<string, number> {
	const names = new Set<string>();
	problem.jobs.forEach(({ allowed, section }, job) => {
		allowed.forEach((may, window) => {
			if (!may) return;
			names.add(jobName(job, window));
			if (section !== undefined) names.add(sectionName(section, window));
			if ((problem.windows[window]?.costMinor ?? 0) > 0) names.add(windowName(window));
		});
	});
	return new Map([...names].map((name) => [name, find(name)]));
}

/** A plan as the solver takes it to start from: 1 for what is in it, 0 for all else. */
function startOf(problem: PlanProblem, { windowOf }: FoundPlan, column: Map<string, number>) {
	const inIt = new Set<string>();
	windowOf.forEach((window, job) => {
		if (window < 0) return;
		inIt.add(jobName(job, window));
		const section = problem.jobs[job]?.section;
		if (section !== undefined) inIt.add(sectionName(section, window));
		inIt.add(windowName(window));
	});
	return {
		indices: [...column.values()],
		values: [...column.keys()].map((name) => (inIt.has(name) ? 1 : 0))
	};
}
