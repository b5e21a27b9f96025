import fc from 'fast-check';
import { settleMusts } from '#lib/core/mend/plan/musts.ts';
import type { Assignment, PlanProblem } from '#lib/core/mend/plan/problem.ts';

const minutes = fc.integer({ min: 5, max: 60 });

/** Small problems of every kind: few jobs, sections, windows; a budget or none; jobs that must be mended. */
export function planProblems(most: {
	readonly jobs: number;
	readonly windows: number;
}): fc.Arbitrary<PlanProblem> {
	return fc
		.tuple(
			fc.integer({ min: 1, max: 3 }),
			fc.integer({ min: 1, max: most.windows }),
			fc.integer({ min: 1, max: most.jobs })
		)
		.chain(([sectionCount, windowCount, jobCount]) =>
			fc.record({
				windows: fc.array(
					fc.record({
						minutes: fc.integer({ min: 30, max: 150 }),
						people: fc.constantFrom(1, 1, 2),
						costMinor: fc.constantFrom(0, 0, 0, 300)
					}),
					{ minLength: windowCount, maxLength: windowCount }
				),
				sections: fc.array(fc.integer({ min: 0, max: 40 }), {
					minLength: sectionCount,
					maxLength: sectionCount
				}),
				jobs: fc.array(
					fc.record({
						section: fc.option(fc.nat(sectionCount - 1), { freq: 6, nil: undefined }),
						minutes,
						parts: fc.constantFrom(0, 10, 40, 90),
						worth: fc.integer({ min: -20, max: 500 }),
						later: fc.array(fc.integer({ min: 60, max: 100 }), {
							minLength: windowCount,
							maxLength: windowCount
						}),
						allowed: fc.array(fc.boolean(), { minLength: windowCount, maxLength: windowCount }),
						wanted: fc.constantFrom('no', 'no', 'no', 'no', 'always', 'first')
					}),
					{ minLength: jobCount, maxLength: jobCount }
				),
				budget: fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined })
			})
		)
		.map(({ windows, sections, jobs, budget }) => {
			const asked = {
				windows: windows.map(({ minutes: length, people, costMinor }, index) => ({
					id: `window-${index}`,
					minutes: length,
					personMinutes: length * people,
					costMinor
				})),
				sections: sections.map((length, index) => ({ id: `section-${index}`, minutes: length })),
				jobs: jobs.map(({ section, parts, worth, later, wanted, ...job }, index) => ({
					leakId: `leak-${index}`,
					...(section !== undefined && { section }),
					minutes: job.minutes,
					budgetMinor: parts,
					worthMinor: later.map((share) => (worth * share) / 100),
					allowed: job.allowed,
					must: wanted !== 'no',
					first: wanted === 'first'
				}))
			};
			return settleMusts(asked, budget).problem;
		});
}

/**
 * The worth of the best plan, by trying every one: written apart from the planner, so that a mistake
 * there is not made here again.
 */
export function bestByTrying({ windows, sections, jobs, budgetMinor }: PlanProblem): number {
	const assignment: number[] = jobs.map(() => -1);
	let best = -Infinity;
	const tryFrom = (job: number): void => {
		if (job === jobs.length) {
			const worth = worthOf(assignment);
			if (worth !== undefined && worth > best) best = worth;
			return;
		}
		for (let window = -1; window < windows.length; window++) {
			const about = jobs[job];
			if (window < 0 ? about?.must : !about?.allowed[window]) continue;
			assignment[job] = window;
			tryFrom(job + 1);
		}
		assignment[job] = -1;
	};
	const worthOf = (plan: Assignment): number | undefined => {
		let worth = 0;
		let money = 0;
		for (const [w, { personMinutes, costMinor }] of windows.entries()) {
			const here = jobs.filter((_, j) => plan[j] === w);
			const opened = new Set(
				here.flatMap(({ section }) => (section === undefined ? [] : [section]))
			);
			let used = here.reduce((sum, job) => sum + job.minutes, 0);
			for (const section of opened) used += sections[section]?.minutes ?? 0;
			if (used > personMinutes) return undefined;
			money += here.reduce((sum, job) => sum + job.budgetMinor, 0);
			worth += here.reduce((sum, job) => sum + (job.worthMinor[w] ?? 0), 0);
			if (here.length > 0) worth -= costMinor;
		}
		return budgetMinor !== undefined && money > budgetMinor ? undefined : worth;
	};
	tryFrom(0);
	return best;
}
