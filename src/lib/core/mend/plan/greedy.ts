import { Filling } from './filling.ts';
import type { PlanProblem } from './problem.ts';

/** Up to so many windows every choice of windows is tried; beyond, all of them are used. */
const MOST_WINDOWS_CHOSEN_FROM = 5;

/**
 * The plan that a careful person makes by hand: again and again the repair worth most for each minute
 * that it adds, the minutes for opening its section counted. METHOD P7.
 */
export function greedyPlan(problem: PlanProblem): Filling {
	return bestOverWindows(problem, (windows) => {
		const filling = new Filling(problem);
		fillByDensity(filling, windows);
		return filling;
	});
}

/** Adds repairs to a plan, each time the one worth most for each minute that it adds. */
export function fillByDensity(filling: Filling, windows: readonly number[]): void {
	const { jobs } = filling.problem;
	const waiting = new Set(jobs.flatMap((_, job) => (filling.windowOf[job] === -1 ? [job] : [])));
	for (;;) {
		let best: { job: number; window: number; density: number } | undefined;
		for (const job of waiting) {
			if (!filling.withinBudget(job)) {
				waiting.delete(job);
				continue;
			}
			for (const window of windows) {
				const worth = jobs[job]?.worthMinor[window] ?? 0;
				if (worth <= 0 || !filling.fits(job, window)) continue;
				const density = worth / Math.max(1e-9, filling.minutesOf(job, window));
				if (!best || density > best.density) best = { job, window, density };
			}
		}
		if (!best) return;
		filling.put(best.job, best.window);
		waiting.delete(best.job);
	}
}

/** Makes a plan for each choice among windows that cost something to use; gives the one worth most. */
export function bestOverWindows(
	{ windows, start }: PlanProblem,
	plan: (windows: readonly number[]) => Filling
): Filling {
	const all = windows.map((_, window) => window);
	const choosable = all.filter(
		(window) => (windows[window]?.costMinor ?? 0) > 0 && !start.includes(window)
	);
	if (choosable.length > MOST_WINDOWS_CHOSEN_FROM) return plan(all);
	let best: Filling | undefined;
	for (let left = 0; left < 2 ** choosable.length; left++) {
		const without = new Set(choosable.filter((_, bit) => (left >> bit) & 1));
		const made = plan(all.filter((window) => !without.has(window)));
		if (!best || made.worthMinor() > best.worthMinor()) best = made;
	}
	return best ?? plan(all);
}
