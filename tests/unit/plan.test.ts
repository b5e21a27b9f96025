import loadHighs, { type Highs } from 'highs';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { Filling } from '#lib/core/mend/plan/filling.ts';
import { budgetStepMinor, withHourMore, type PlanProblem } from '#lib/core/mend/plan/problem.ts';
import { exactPlan, moreForParts, oneHourMore, quickPlan } from '#lib/session/plan-solver.ts';
import { largeWorks } from '../arbitrary/large-works.ts';
import { bestByTrying, planProblems } from '../arbitrary/plan-problem.ts';

const LIMITS = { gap: 0, seconds: 20 };
let highs: Highs;
beforeAll(async () => {
	highs = await loadHighs();
});

// Expected: every plan tried, by code of its own (derived).
describe('the best plan', { timeout: 120_000 }, () => {
	it('[P6][P7] law: is found on 1,000 small problems, between greedy and the bound', () => {
		fc.assert(
			fc.property(planProblems({ jobs: 6, windows: 3 }), (problem) => {
				const best = bestByTrying(problem);
				const quick = quickPlan(problem);
				const found = exactPlan(highs, problem, quick, LIMITS, () => undefined);
				expect(found.worthMinor).toBeCloseTo(best, 1);
				expect(quick.greedyWorthMinor).toBeLessThanOrEqual(quick.worthMinor + 1e-6);
				expect(quick.worthMinor).toBeLessThanOrEqual(best + 1e-6);
				expect(quick.boundMinor).toBeGreaterThanOrEqual(best - 1e-6);
				expect(found.boundMinor).toBeGreaterThanOrEqual(best - 0.05);
			}),
			{ numRuns: 1000 }
		);
	});

	it('[P6] law: keeps to minutes, budget, cures and what must be mended', () => {
		fc.assert(
			fc.property(planProblems({ jobs: 14, windows: 4 }), (problem) => {
				const quick = quickPlan(problem);
				const found = exactPlan(highs, problem, quick, LIMITS, () => undefined);
				for (const { windowOf } of [quick, found])
					expect(new Filling(problem, windowOf).keepsTheRules()).toBe(true);
			}),
			{ numRuns: 100 }
		);
	});

	// Too large to try every plan: what was found lies between greedy and the bound, and the bound near it.
	it.each([1, 2, 3])(
		'[P7] on large works (%i) greedy ≤ quick ≤ best ≤ bound, within 1 %',
		(start) => {
			const problem = largeWorks(300, 40, start);
			const quick = quickPlan(problem);
			const found = exactPlan(highs, problem, quick, { gap: 0.005, seconds: 4 }, () => undefined);
			expect(quick.greedyWorthMinor).toBeLessThanOrEqual(quick.worthMinor);
			expect(quick.worthMinor).toBeLessThanOrEqual(found.worthMinor);
			expect(found.worthMinor).toBeLessThanOrEqual((found.boundMinor ?? NaN) + 1e-6);
			expect(found.boundMinor).toBeLessThanOrEqual((quick.boundMinor ?? NaN) + 1e-6);
			expect(found.boundMinor).toBeLessThanOrEqual(1.01 * found.worthMinor);
			expect(found.worthMinor).toBeGreaterThan(1.01 * quick.greedyWorthMinor);
			expect(new Filling(problem, found.windowOf).keepsTheRules()).toBe(true);
		}
	);

	it('[P7] law: more minutes where windows cost nothing are never worse, nor is more money', () => {
		fc.assert(
			fc.property(planProblems({ jobs: 8, windows: 2 }), (drawn) => {
				const windows = drawn.windows.map((window) => ({ ...window, costMinor: 0 }));
				const problem = { ...drawn, windows };
				const solve = (each: PlanProblem) =>
					exactPlan(highs, each, quickPlan(each), LIMITS, () => undefined);
				const found = solve(problem);
				const longer = solve(withHourMore(problem, 0));
				expect(longer.worthMinor).toBeGreaterThanOrEqual(found.worthMinor - 0.01);
				const { budgetMinor: _, ...anySum } = problem;
				expect(solve(anySum).worthMinor).toBeGreaterThanOrEqual(found.worthMinor - 0.01);
				const step = budgetStepMinor(problem);
				const buys = moreForParts(highs, problem, found, LIMITS);
				expect(buys?.moreMinor).toBe(step);
				if (buys && step !== undefined) {
					const richer = solve({ ...problem, budgetMinor: (problem.budgetMinor ?? 0) + step });
					expect(buys.worthMinor).toBeCloseTo(Math.max(0, richer.worthMinor - found.worthMinor), 1);
				}
				const [first] = oneHourMore(highs, problem, found, LIMITS);
				expect(first).toBeCloseTo(Math.max(0, longer.worthMinor - found.worthMinor), 1);
			}),
			{ numRuns: 60 }
		);
	});
});
