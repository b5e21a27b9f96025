import type { PlanProblem } from '#lib/core/mend/plan/problem.ts';

/** The plan of a large works: numbers without meaning, the same for the same start. */
export function largeWorks(
	jobCount: number,
	sectionCount: number,
	start = 20_260_509
): PlanProblem {
	let seed = start;
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
