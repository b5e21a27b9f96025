import { describe, expect, it } from 'vitest';
import { newSurvey } from '../../survey/new-survey.ts';
import type { Leak, ShutdownWindow, Survey } from '../../survey/schema.ts';
import { assess } from '../../weigh/assess.ts';
import { Filling } from './filling.ts';
import { planLp } from './lp.ts';
import { planProblem } from './plan-problem.ts';
import { proposal } from './proposal.ts';
import { meanOverMedian, savingUntilHorizon } from './worth.ts';

const ROUND = 'round-1';

function leak(tag: number, more: Partial<Leak> = {}): Leak {
	return {
		id: `leak-${tag}`,
		tag,
		sectionId: 'section-a',
		part: 'hose',
		hazards: [],
		sightings: {
			[ROUND]: {
				state: 'leaking',
				seenAt: '2026-01-05T09:00:00Z',
				evidence: { kind: 'hole', diameterMm: 2, edge: 'sharp' }
			}
		},
		mendings: {},
		...more
	};
}

function window(id: string, startsAt: string, more: Partial<ShutdownWindow> = {}): ShutdownWindow {
	return { id, name: id, startsAt, minutes: 240, people: 1, overnightOff: false, ...more };
}

function survey(leaks: Leak[], windows: ShutdownWindow[], more: Partial<Survey> = {}): Survey {
	const table = <T extends { id: string }>(items: T[]) =>
		Object.fromEntries(items.map((item) => [item.id, item]));
	const empty = newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: ROUND, name: 'First', startedAt: '2026-01-05T08:00:00Z' }
	);
	return {
		...empty,
		site: { ...empty.site, barometerKPa: 100 },
		supply: { quick: { specificPowerKwPerM3PerMin: 6.5, source: 'test' } },
		prices: { pricePerKwh: 0.2 },
		sections: table([
			{ id: 'section-a', name: 'A', pressureBarGauge: 7, pressurisedHoursPerYear: 8000 }
		]),
		leaks: table(leaks),
		windows: table(windows),
		...more
	};
}

function asked(of: Survey) {
	const result = planProblem(of, assess(of, ROUND));
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

const FIRST = window('window-1', '2026-02-01T06:00:00Z');
const NIGHT = window('window-2', '2026-02-08T06:00:00Z', { overnightOff: true });

describe('what a repair is worth', () => {
	// Expected: the example of METHOD P5, by hand; the mean of a lognormal by summing it up (derived).
	it('[P5] is what the leak wastes until the horizon', () => {
		expect(savingUntilHorizon(87_600, 1, 50)).toBeCloseTo(500, 9);
		expect(savingUntilHorizon(87_600, 1, -5)).toBe(0);
	});

	it.each([0, 0.2, 0.7, 1.2])('[P5] the mean over the median at u = %s, summed up', (u) => {
		let sum = 0;
		let weight = 0;
		for (let z = -9; z <= 9; z += 0.001) {
			const density = Math.exp((-z * z) / 2);
			sum += density * Math.exp(u * z);
			weight += density;
		}
		expect(meanOverMedian(u)).toBeCloseTo(sum / weight, 6);
	});

	it('[P5] falls from window to window, by the hours between them; parts come off', () => {
		const site = survey([leak(1)], [NIGHT, FIRST], { mendPlan: { expected: false } });
		const cost = assess(site, ROUND).leaks[0]?.costMinorPerYear ?? NaN;
		const [job] = asked(site).problem.jobs;
		const first = (cost * (8760 - 4)) / 8760;
		expect(job?.worthMinor[0]).toBeCloseTo(first - 2500, 6);
		expect(job?.worthMinor[1]).toBeCloseTo(first - (cost * 7 * 24) / 8760 - 2500, 6);
		const whole = asked({ ...site, mendPlan: { expected: false, lessParts: false } });
		expect(whole.problem.jobs[0]?.worthMinor[0]).toBeCloseTo(first, 6);
		const mean = asked({ ...site, mendPlan: {} }).problem.jobs[0]?.worthMinor[0] ?? 0;
		const u = assess(site, ROUND).leaks[0]?.relativeUncertainty ?? NaN;
		expect(mean + 2500).toBeCloseTo(first * Math.exp((u * u) / 2), 6);
	});
});

describe('which windows a repair fits', () => {
	const thread = { part: 'threaded-joint' } as const;

	it('[P6] compound cures overnight or in the window, else the leak is left and says so', () => {
		const both = asked(survey([leak(1, thread)], [FIRST, NIGHT]));
		expect(both.problem.jobs[0]?.allowed).toEqual([false, true]);
		// 25 to open, 25 of work, 12 h of cure: 770 minutes.
		const long = window('window-1', '2026-02-01T06:00:00Z', { minutes: 770 });
		const short = { ...long, minutes: 769 };
		expect(asked(survey([leak(1, thread)], [long])).problem.jobs).toHaveLength(1);
		expect(asked(survey([leak(1, thread), leak(2)], [short])).notAsked).toEqual([
			{ leakId: 'leak-1', why: 'cure' }
		]);
	});

	it('[P6] two people do not make a long job shorter', () => {
		const crew = window('window-1', '2026-02-01T06:00:00Z', { minutes: 60, people: 4 });
		const { notAsked } = asked(
			survey([leak(1, { job: { minutes: 36 } }), leak(2, { job: { minutes: 35 } })], [crew])
		);
		expect(notAsked).toEqual([{ leakId: 'leak-1', why: 'too-long' }]);
	});

	it('[P6] what is never wanted or has no price is left out; what is mended is not asked', () => {
		const { problem, notAsked } = asked(
			survey(
				[
					leak(1, { job: { wish: 'never' } }),
					leak(2, { sightings: { [ROUND]: { state: 'leaking', seenAt: '2026-01-05T09:00:00Z' } } }),
					leak(3, { mendings: { [ROUND]: { mendedAt: '2026-01-06T09:00:00Z' } } }),
					leak(4)
				],
				[FIRST]
			)
		);
		expect(problem.jobs.map(({ leakId }) => leakId)).toEqual(['leak-4']);
		expect(notAsked).toEqual([
			{ leakId: 'leak-1', why: 'left-out' },
			{ leakId: 'leak-2', why: 'not-priced' }
		]);
	});

	it('[P6] a vessel is in the first window that takes it, past the budget too', () => {
		const vessel = leak(9, { part: 'pressure-vessel', job: { partsCost: 500, wish: 'never' } });
		const { problem, noRoom } = asked(
			survey([leak(1), vessel], [FIRST, NIGHT], { mendPlan: { budget: 100 } })
		);
		expect(noRoom).toEqual([]);
		expect(problem.jobs[1]).toMatchObject({ must: true, allowed: [true, false] });
		expect(problem.budgetMinor).toBe(0);
		expect(problem.start).toEqual([-1, 0]);
	});

	it('[P6] what is always wanted and has no room together with the others is named', () => {
		const always = { job: { wish: 'always', minutes: 120 } } as const;
		const { problem, noRoom } = asked(survey([leak(1, always), leak(2, always)], [FIRST]));
		expect(problem.jobs.filter(({ must }) => must)).toHaveLength(1);
		expect(noRoom).toHaveLength(1);
	});

	it('[P6] refuses to plan without windows, or with nothing to mend', () => {
		const without = survey([leak(1)], []);
		const nothing = survey([], [FIRST]);
		expect(planProblem(without, assess(without, ROUND))).toMatchObject({
			error: { code: 'plan-without-windows' }
		});
		expect(planProblem(nothing, assess(nothing, ROUND))).toMatchObject({
			error: { code: 'plan-without-jobs' }
		});
	});
});

describe('a plan as it is shown', () => {
	it('[P6] counts the opening of a section once, and says why a leak is left', () => {
		const site = survey(
			[leak(1), leak(2), leak(3), leak(4, { job: { partsCost: 90_000 } })],
			[window('window-1', '2026-02-01T06:00:00Z', { minutes: 80, downtimeCostPerHour: 60 })],
			{ mendPlan: { budget: 200 } }
		);
		const plan = asked(site);
		const filling = new Filling(plan.problem, [0, 0, -1, -1]);
		const shown = proposal(site, plan, {
			windowOf: filling.windowOf,
			foundBy: 'exact',
			worthMinor: filling.worthMinor(),
			greedyWorthMinor: 0,
			boundMinor: filling.worthMinor() * 1.25
		});
		expect(shown.windows[0]).toMatchObject({
			usedMinutes: 75,
			personMinutes: 80,
			costMinor: 8000,
			partsMinor: 5000
		});
		expect(shown.left).toEqual([
			{ leakId: 'leak-3', why: 'minutes' },
			{ leakId: 'leak-4', why: 'no-gain' }
		]);
		expect(shown.gap).toBeCloseTo(0.2, 9);
		expect(shown.assignment).toEqual({ 'leak-1': 'window-1', 'leak-2': 'window-1' });
	});

	// Expected: the model of METHOD P6 written by hand (derived).
	it('[P6] is written out as an integer programme', () => {
		const { problem } = asked(
			survey([leak(1, { job: { partsCost: 10, wish: 'always' } })], [FIRST], {
				mendPlan: { budget: 20, lessParts: false, expected: false }
			})
		);
		const lp = planLp({
			...problem,
			jobs: problem.jobs.map((job) => ({ ...job, worthMinor: [1234.5] }))
		});
		expect(lp.replaceAll(/\s+/g, ' ').trim()).toBe(
			'Maximize worth: + 1234.500 x0_0 Subject To c0: + 25.000 x0_0 + 25.000 y0_0 <= 240.000 ' +
				'c1: + 1000.000 x0_0 <= 2000.000 c2: + x0_0 = 1 c3: x0_0 - y0_0 <= 0 Binary x0_0 y0_0 End'
		);
	});
});
