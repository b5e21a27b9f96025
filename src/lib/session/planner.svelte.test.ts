import { afterEach, describe, expect, it, vi } from 'vitest';
import { Filling } from '#lib/core/mend/plan/filling.ts';
import type { PlanProblem } from '#lib/core/mend/plan/problem.ts';
import { Planner } from './planner.svelte.ts';

/** Two long jobs behind one valve beat the one that is dearest for its minutes. */
const PROBLEM: PlanProblem = {
	windows: [{ id: 'window-1', minutes: 100, personMinutes: 100, costMinor: 0 }],
	sections: [
		{ id: 'section-a', minutes: 40 },
		{ id: 'section-b', minutes: 0 }
	],
	jobs: [
		{ section: 0, minutes: 30, worth: 500 },
		{ section: 0, minutes: 30, worth: 500 },
		{ section: 1, minutes: 20, worth: 300 },
		{ section: 1, minutes: 45, worth: 350 }
	].map(({ section, minutes, worth }, index) => ({
		leakId: `leak-${index}`,
		section,
		minutes,
		budgetMinor: 0,
		worthMinor: [worth],
		allowed: [true],
		must: false
	})),
	start: [-1, -1, -1, -1]
};

describe('the planner beside the page', () => {
	const planner = new Planner();
	afterEach(() => planner.close());

	it('[P7] finds the best plan, proves it, and says what an hour more buys', async () => {
		planner.start(PROBLEM);
		expect(planner.busy).toBe(true);
		await vi.waitFor(() => expect(planner.phase).toBe('done'), { timeout: 20_000 });
		expect(planner.withoutSolver).toBe(false);
		expect(planner.found).toMatchObject({ foundBy: 'exact', worthMinor: 1000 });
		expect(planner.found?.hourBuysMinor?.[0]).toBeCloseTo(350, 3);
	});

	it('[P7] says what half as much again for parts would buy', async () => {
		// The two best for their money cost 100 each; 100 more buys the next one, worth 350.
		const jobs = PROBLEM.jobs.map((job, index) => ({
			...job,
			section: 1,
			minutes: 10,
			budgetMinor: index === 2 ? 150 : 100
		}));
		planner.start({ ...PROBLEM, jobs, budgetMinor: 200 });
		await vi.waitFor(() => expect(planner.phase).toBe('done'), { timeout: 20_000 });
		expect(planner.found).toMatchObject({ worthMinor: 1000, budgetBuys: { moreMinor: 100 } });
		expect(planner.found?.budgetBuys?.worthMinor).toBeCloseTo(350, 3);
	});

	it('[P7] has a plan that keeps the rules when the solver cannot be had', async () => {
		planner.start(PROBLEM, undefined, '/not-there.wasm');
		await vi.waitFor(() => expect(planner.phase).toBe('done'), { timeout: 20_000 });
		expect(planner.withoutSolver).toBe(true);
		expect(planner.found?.foundBy).toBe('greedy');
		expect(new Filling(PROBLEM, planner.found?.windowOf).keepsTheRules()).toBe(true);
	});

	it('stops when told to', async () => {
		planner.start(PROBLEM);
		planner.cancel();
		expect(planner.busy).toBe(false);
		await new Promise((done) => setTimeout(done, 200));
		expect(planner.busy).toBe(false);
	});
});
