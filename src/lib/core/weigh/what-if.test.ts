import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newSurvey } from '../survey/new-survey.ts';
import type { Leak, Survey } from '../survey/schema.ts';
import type { SupplyStation } from '../survey/station-schema.ts';
import { assess } from './assess.ts';
import { whatIf, type Change } from './what-if.ts';

const ROUND = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };
const DAYS = [0, 1, 2, 3, 4, 5, 6];
const inProportion = {
	kind: 'curve' as const,
	points: [
		{ flowFraction: 0, powerFraction: 0 },
		{ flowFraction: 1, powerFraction: 1 }
	]
};
/** Draws its 60 kW whatever it delivers, from the moment it is needed. */
const neverLess = {
	kind: 'curve' as const,
	points: [
		{ flowFraction: 0, powerFraction: 1 },
		{ flowFraction: 1, powerFraction: 1 }
	]
};

function leak(tag: number, diameterMm: number, pressureBarGauge?: number): Leak {
	return {
		id: `leak-${tag}`,
		tag,
		part: 'hose',
		sectionId: 'section-a',
		hazards: [],
		sightings: {
			[ROUND.id]: {
				state: 'leaking',
				seenAt: '2026-01-05T09:00:00Z',
				evidence: { kind: 'hole', diameterMm, edge: 'sharp' },
				...(pressureBarGauge !== undefined && { pressureBarGauge })
			}
		},
		mendings: {}
	};
}

function quick(leaks: readonly Leak[]): Survey {
	const empty = newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, ROUND);
	return {
		...empty,
		site: { ...empty.site, barometerKPa: 100 },
		supply: {
			setPressureBarGauge: 7,
			quick: { specificPowerKwPerM3PerMin: 6.5, source: 'test' }
		},
		prices: { pricePerKwh: 0.2, carbon: { kgCo2ePerKwh: 0.4, source: 'test', year: 2026 } },
		sections: { 'section-a': { id: 'section-a', name: 'A', pressurisedHoursPerYear: 8000 } },
		leaks: Object.fromEntries(leaks.map((each) => [each.id, each]))
	};
}

/** Two machines of 10 m³/min; by day 15 m³/min are delivered, by night 5. */
function withStation(
	base: Survey,
	second: SupplyStation['compressors'][number]['control']
): Survey {
	const machine = (id: string, control: typeof second) => ({
		id,
		name: id,
		build: 'screw' as const,
		capacityM3PerMin: 10,
		loadedKw: 60,
		ratedPressureBarGauge: 7,
		control
	});
	const period = (id: string, fromMin: number, toMin: number, demandM3PerMin: number) => ({
		id,
		name: id,
		days: DAYS,
		fromMin,
		toMin,
		air: { state: 'on' as const, demandM3PerMin, setPressureBarGauge: 7 },
		priceId: null
	});
	return {
		...base,
		sections: {},
		supply: {
			setPressureBarGauge: 7,
			station: {
				compressors: [machine('machine-a', second), machine('machine-b', inProportion)],
				trimId: null,
				receiverVolumeM3: 2,
				pipingVolumeM3: 0,
				demandIs: 'delivered',
				schedule: {
					periods: [period('day', 0, 720, 15), period('night', 720, 1440, 5)],
					weeksPerYear: 365 / 7,
					closed: { state: 'off' },
					closedPriceId: null
				},
				purge: { kind: 'none' }
			}
		}
	};
}

function tried(survey: Survey, change: Change) {
	const before = structuredClone(survey);
	const found = whatIf(survey, ROUND.id, change);
	expect(survey).toEqual(before);
	if (!found.ok) throw new Error(found.error.code);
	return found.value;
}

const ratio = (a: number | undefined, b: number | undefined) => (a ?? NaN) / (b ?? NaN);

describe('what if', () => {
	it('[W15] of nothing is today, and today is what the assessment says (law)', () => {
		for (const survey of [
			quick([leak(1, 2, 7), leak(2, 1)]),
			withStation(quick([leak(1, 2, 7), leak(2, 1)]), neverLess)
		]) {
			const { today, then, pressure } = tried(survey, {});
			expect(pressure).toBeUndefined();
			const found = assess(survey, ROUND.id);
			expect(today.leaks.energyKwhPerYear).toBeCloseTo(found.totals.energyKwhPerYear ?? NaN, 6);
			expect(today.leaks.costMinorPerYear).toBe(found.totals.costMinorPerYear);
			expect(today.leaks.co2KgPerYear).toBeCloseTo(found.totals.co2KgPerYear ?? NaN, 6);
			expect(today.freeAirM3PerS).toBeCloseTo(found.totals.freeAirM3PerS, 12);
			expect(today.station?.energyKwhPerYear).toBe(found.station?.energyKwhPerYear);
			expect(then.leaks.energyKwhPerYear).toBeCloseTo(today.leaks.energyKwhPerYear ?? NaN, 6);
			expect(
				ratio(then.station?.energyKwhPerYear ?? 1, today.station?.energyKwhPerYear ?? 1)
			).toBeCloseTo(1, 9);
		}
	});

	// By hand: 1 bar from 8 to 7 bar absolute: flow ×7/8; work (7^(2/7) − 1)/(8^(2/7) − 1) = 0.9164;
	// the rule 1 % per 2 psi on 14.504 psi: 0.9275.
	it('[W15][S16] a bar less: choked flow, isentropic work and the rule beside it (derived by hand)', () => {
		const { today, then, pressure } = tried(quick([leak(1, 2)]), { pressureStepBar: -1 });
		expect(ratio(then.freeAirM3PerS, today.freeAirM3PerS)).toBeCloseTo(7 / 8, 9);
		expect(ratio(then.leaks.energyKwhPerYear, today.leaks.energyKwhPerYear)).toBeCloseTo(
			(7 / 8) * 0.9164,
			3
		);
		expect(pressure?.effect.workFactor).toBeCloseTo(0.9164, 4);
		expect(pressure?.effect.ruleFactor).toBeCloseTo(0.9275, 4);
		expect([pressure?.fromBarGauge, pressure?.toBarGauge]).toEqual([7, 6]);
	});

	it('[W15] behind a regulator a leak stays as it is until the supply is below it', () => {
		const survey = quick([leak(1, 2, 3)]);
		const flow = (step: number) => tried(survey, { pressureStepBar: step }).then.freeAirM3PerS;
		expect(flow(-2)).toBeCloseTo(flow(0), 12);
		// 2.5 bar gauge in place of 3: 3.5/4 of the flow.
		expect(ratio(flow(-4.5), flow(0))).toBeCloseTo(3.5 / 4, 9);
	});

	it('[W15] twice the price is twice the money and the same energy; half the hours half of both', () => {
		const survey = quick([leak(1, 2), leak(2, 1)]);
		const dear = tried(survey, { pricePerKwh: 0.4 });
		expect(ratio(dear.then.leaks.costMinorPerYear, dear.today.leaks.costMinorPerYear)).toBeCloseTo(
			2,
			4
		);
		expect(dear.then.leaks.energyKwhPerYear).toBe(dear.today.leaks.energyKwhPerYear);
		const short = tried(survey, { hoursShare: 0.5 });
		expect(
			ratio(short.then.leaks.energyKwhPerYear, short.today.leaks.energyKwhPerYear)
		).toBeCloseTo(0.5, 9);
	});

	it('[W15] mending all takes off the station what the leaks are said to waste (law)', () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 0.3, max: 3, noNaN: true }), { minLength: 1, maxLength: 6 }),
				(diameters) => {
					const leaks = diameters.map((diameter, at) => leak(at + 1, diameter));
					const survey = withStation(quick(leaks), inProportion);
					const { today, then } = tried(survey, { mended: leaks.map(({ id }) => id) });
					expect(today.leakCount).toBe(leaks.length);
					expect(then.leakCount).toBe(0);
					const fall =
						(today.station?.energyKwhPerYear ?? NaN) - (then.station?.energyKwhPerYear ?? NaN);
					expect(fall).toBeCloseTo(today.leaks.energyKwhPerYear ?? NaN, 4);
				}
			),
			{ numRuns: 40 }
		);
	});

	// By hand: machine A draws 60 kW whenever it runs and stands first. At 5 m³/min by night it runs
	// alone, 60 kW; with it off, B gives 5 m³/min for 30 kW: 30 kW over 4,380 h.
	it('[W15][S10] a machine that stands still at night (derived by hand)', () => {
		const survey = withStation(quick([leak(1, 1)]), neverLess);
		const { today, then } = tried(survey, {
			machineOff: { compressorId: 'machine-a', in: ['night'] }
		});
		const fall = (today.station?.energyKwhPerYear ?? NaN) - (then.station?.energyKwhPerYear ?? NaN);
		expect(fall).toBeCloseTo(30 * 4380, 3);
		expect(ratio(then.station?.costMinorPerYear, then.station?.energyKwhPerYear)).toBeCloseTo(
			20,
			4
		);
		// By day 15 m³/min need both: then the shortage is said.
		const both = tried(survey, { machineOff: { compressorId: 'machine-a', in: ['day'] } });
		expect(both.then.warnings.map(({ code }) => code)).toContain('shortage');
	});

	it('[W15] air off by night halves the hours, for the station and for a section’s share of them', () => {
		const base = withStation(quick([leak(1, 1)]), inProportion);
		const survey = {
			...base,
			sections: { 'section-a': { id: 'section-a', name: 'A', pressurisedHoursPerYear: 4380 } }
		};
		const { today, then } = tried(survey, { airOffIn: ['night'] });
		expect(ratio(then.leaks.energyKwhPerYear, today.leaks.energyKwhPerYear)).toBeCloseTo(0.5, 6);
		const nothing = tried(survey, { airOffIn: ['night', 'day'] });
		expect(nothing.then.leaks.energyKwhPerYear).toBe(0);
	});

	it('[W15] refuses what the survey does not have', () => {
		const survey = quick([leak(1, 2, 6)]);
		const code = (of: Survey, change: Change) => {
			const found = whatIf(of, ROUND.id, change);
			return found.ok ? undefined : found.error.code;
		};
		expect(code(survey, { mended: ['leak-9'] })).toBe('what-if-id-unknown');
		expect(code(survey, { airOffIn: ['night'] })).toBe('what-if-id-unknown');
		expect(code(survey, { machineOff: { compressorId: 'a', in: [] } })).toBe('what-if-id-unknown');
		expect(code(survey, { hoursShare: 1.2 })).toBe('fraction-out-of-range');
		expect(code(survey, { pressureStepBar: -6.5 })).toBe('set-pressure-does-not-choke');
		const { setPressureBarGauge: _, ...supply } = survey.supply;
		expect(code({ ...survey, supply }, { pressureStepBar: -1 })).toBe('set-pressure-missing');
	});
});
