import { describe, expect, it } from 'vitest';
import { leakSeen, siteOfOne } from '../../../../../tests/arbitrary/one-section.ts';
import { resultOf, runOf, draws } from '../../../../../tests/arbitrary/uncertainty-model.ts';
import type { Evidence } from '../../survey/evidence-schema.ts';
import type { Leak, Survey } from '../../survey/schema.ts';
import { assess } from '../assess.ts';
import { firstOrder } from './first-order.ts';
import { uncertaintyModel, type UncertaintyModel } from './model.ts';
import { quantileOf } from './spread.ts';
import { STARTING_GAUGE_BAR, STARTING_METHOD_ERRORS, type SharedErrors } from './shared-errors.ts';

const hole = (diameterMm: number, relativeUncertainty?: number): Evidence => ({
	kind: 'hole',
	diameterMm,
	edge: 'rounded',
	coefficient: 1,
	...(relativeUncertainty !== undefined && { relativeUncertainty })
});

const holes = (count: number) =>
	Array.from({ length: count }, (_, i) => leakSeen(i + 1, hole(1 + i / 10)));

type Station = NonNullable<Survey['supply']['station']>;
type Control = Station['compressors'][number]['control'];
const IN_PROPORTION: Control = {
	kind: 'curve',
	points: [
		{ flowFraction: 0, powerFraction: 0 },
		{ flowFraction: 1, powerFraction: 1 }
	]
};
/** Gives little back until the flow is small: the saving bends with the leaks. */
const BENT: Control = {
	kind: 'curve',
	points: [
		{ flowFraction: 0, powerFraction: 0.1 },
		{ flowFraction: 0.3, powerFraction: 0.75 },
		{ flowFraction: 1, powerFraction: 1 }
	]
};

function withStation(base: Survey, control: Control, change: Partial<Station> = {}): Survey {
	return {
		...base,
		supply: {
			...base.supply,
			station: {
				compressors: [
					{
						id: 'machine-1',
						name: 'Machine 1',
						build: 'screw',
						capacityM3PerMin: 10,
						loadedKw: 65,
						ratedPressureBarGauge: 7,
						control
					}
				],
				trimId: null,
				receiverVolumeM3: 1,
				pipingVolumeM3: 0,
				demandIs: 'delivered',
				schedule: {
					periods: [period('period-all', 0, 1440, 7, 5)],
					weeksPerYear: 365 / 7,
					closed: { state: 'off' },
					closedPriceId: null
				},
				purge: { kind: 'none' },
				...change
			}
		}
	};
}

function period(
	id: string,
	fromMin: number,
	toMin: number,
	setPressureBarGauge: number,
	demandM3PerMin: number
): Station['schedule']['periods'][number] {
	return {
		id,
		name: id,
		days: [0, 1, 2, 3, 4, 5, 6],
		fromMin,
		toMin,
		air: { state: 'on', demandM3PerMin, setPressureBarGauge },
		priceId: null
	};
}

/** Day and night at two pressures, a demand charge, a cost by the cubic metre and used heat. */
function everything(leaks: readonly Leak[]): Survey {
	const base = withStation(siteOfOne(leaks), BENT, {
		schedule: {
			periods: [period('day', 360, 1320, 7, 8), period('night', 1320, 360, 5, 3)],
			weeksPerYear: 50,
			closed: { state: 'off' },
			closedPriceId: null
		},
		heatRecovery: {
			recoveredFraction: 0.7,
			usefulFraction: 0.3,
			fuelPricePerKwh: 0.06,
			boilerEfficiency: 0.9
		}
	});
	return {
		...base,
		prices: { ...base.prices, costPerM3: 0.002, demandCharge: { pricePerKw: 80, per: 'year' } }
	};
}

function model(of: Survey, errors: SharedErrors = {}): UncertaintyModel {
	const made = uncertaintyModel(of, 'round-1', errors);
	if (!made.ok) throw new Error(made.error.code);
	return made.value;
}

describe('[W6] errors of a leak', () => {
	it('derived: while choked, the logarithm of the flow rises by 1/p₁ per bar', () => {
		const { gauge, own, method, whole } = model(siteOfOne([leakSeen(1, hole(2))]), {
			gaugeBar: 0.2
		});
		expect(gauge[0]).toBeCloseTo(0.2 / 8, 6);
		expect(own[0]).toBeCloseTo(0.4, 9);
		expect(method[0]).toBe(0.2);
		expect(whole[0]).toBeCloseTo(Math.hypot(0.4, 0.2, 0.025), 6);
	});

	it('the gauge has no part in a flow that was measured', () => {
		const evidence: Evidence = { kind: 'meter', flowLPerS: 2, reference: 'iso-1217' };
		const { gauge, measured } = model(siteOfOne([leakSeen(1, evidence), leakSeen(2, hole(1))]));
		expect([...measured]).toEqual([1, 0]);
		expect(gauge[0]).toBe(0);
		expect(gauge[1]).toBeGreaterThan(0);
	});

	it('a method’s shared error is never larger than what the reading states for itself', () => {
		const { method } = model(siteOfOne([leakSeen(1, hole(2, 0.05)), leakSeen(2, hole(2))]));
		expect([...method]).toEqual([0.05, 0.2]);
	});

	it('every starting value says that it is ours, and is what is used', () => {
		for (const { reason, spread } of Object.values(STARTING_METHOD_ERRORS)) {
			expect(reason).toMatch(/^our starting value: \S/);
			expect(spread).toBeGreaterThan(0);
		}
		const { method, errors } = model(siteOfOne([leakSeen(1, hole(2))]));
		expect(method[0]).toBe(STARTING_METHOD_ERRORS.hole.spread);
		expect(errors).toMatchObject({ gaugeBar: STARTING_GAUGE_BAR, power: 0, hours: 0, price: 0 });
	});

	it('starting values give way to the user’s, and nonsense is refused', () => {
		const { method } = model(siteOfOne([leakSeen(1, hole(2))]), { methods: { hole: 0.1 } });
		expect(method[0]).toBe(0.1);
		for (const errors of [{ gaugeBar: -1 }, { methods: { hole: NaN } }, { price: 9 }]) {
			const refused = uncertaintyModel(siteOfOne([]), 'round-1', errors);
			expect(refused.ok ? 'accepted' : refused.error.code).toBe('shared-error-out-of-range');
		}
	});
});

describe('[W7] the year with errors at zero is the assessment’s', () => {
	const cases: readonly (readonly [string, Survey])[] = [
		['quick', siteOfOne(holes(9))],
		['station', withStation(siteOfOne(holes(9)), BENT)],
		['two pressures, demand charge, heat, cost by the m³', everything(holes(9))]
	];
	it.each(cases)('derived: %s', (_, of) => {
		const { totals } = assess(of, 'round-1');
		const made = model(of);
		const order = firstOrder(made);
		expect(order.massFlowKgPerS.value).toBeCloseTo(totals.massFlowKgPerS, 12);
		expect(order.energyKwhPerYear!.value).toBeCloseTo(totals.energyKwhPerYear!, 6);
		expect(Math.abs(order.costMinorPerYear!.value - totals.costMinorPerYear!)).toBeLessThan(0.51);
		const run = runOf(made, draws(100));
		const leaks = assess(of, 'round-1').leaks;
		for (const { tag, energyKwhPerYear, costMinorPerYear } of leaks) {
			expect(run.nominal(tag - 1).energyKwh).toBeCloseTo(energyKwhPerYear!, 6);
			// The assessment shares out whole coins.
			expect(Math.abs(run.nominal(tag - 1).costMinor - costMinorPerYear!)).toBeLessThan(1.01);
		}
	});

	it('without a supply there is air and no more; without a price no money', () => {
		const bare = resultOf(model({ ...siteOfOne(holes(2)), supply: {} }), draws(200));
		expect(bare.totals.freeAirM3PerYear.low).toBeGreaterThan(0);
		expect(bare.totals.energyKwhPerYear).toBeUndefined();
		expect(bare.leaks[0]!.energyKwhPerYear).toBeUndefined();
		expect(bare.missing.map(({ code }) => code)).toContain('supply-missing');
		const free = resultOf(model({ ...siteOfOne(holes(2)), prices: {} }), draws(200));
		expect(free.totals.energyKwhPerYear).toBeDefined();
		expect(free.totals.costMinorPerYear).toBeUndefined();
		expect(free.totals.co2KgPerYear).toBeUndefined();
		expect(free.missing.map(({ code }) => code)).toContain('price-missing');
	});
});

describe('[W7] leaks on the station’s week', () => {
	it('derived: a station in proportion gives what the quick method gives, draw by draw', () => {
		// Its flow stays below the demand in these draws, so that nothing is cut.
		const leaks = Array.from({ length: 5 }, (_, i) => leakSeen(i + 1, hole(0.5 + i / 10)));
		const always = (of: Survey): Survey => ({
			...of,
			sections: {
				'section-a': { ...of.sections['section-a']!, pressurisedHoursPerYear: 8760 }
			}
		});
		const quick = resultOf(model(always(siteOfOne(leaks))), draws(500));
		const station = resultOf(
			model(always(withStation(siteOfOne(leaks), IN_PROPORTION))),
			draws(500)
		);
		expect(station.method).toBe('supply');
		for (const end of ['low', 'median', 'high', 'mean'] as const)
			expect(
				station.totals.costMinorPerYear![end] / quick.totals.costMinorPerYear![end]
			).toBeCloseTo(1, 9);
		for (const [i, { rank }] of station.leaks.entries()) expect(rank).toEqual(quick.leaks[i]!.rank);
	});

	it('derived: the leaks’ means add up to the total’s mean, by either kind of year', () => {
		for (const of of [withStation(siteOfOne(holes(7)), BENT), everything(holes(7))]) {
			const { totals, leaks } = resultOf(model(of), draws(3000));
			const energy = leaks.reduce((sum, each) => sum + each.energyKwhPerYear!.mean, 0);
			const cost = leaks.reduce((sum, each) => sum + each.costMinorPerYear!.mean, 0);
			expect(energy / totals.energyKwhPerYear!.mean).toBeCloseTo(1, 9);
			expect(cost / totals.costMinorPerYear!.mean).toBeCloseTo(1, 9);
		}
	});

	it('derived: a lone leak’s interval is the total’s, to the width of a bin', () => {
		const { totals, leaks } = resultOf(model(everything([leakSeen(1, hole(4))])), draws(20_000));
		for (const end of ['low', 'median', 'high'] as const) {
			expect(leaks[0]!.costMinorPerYear![end] / totals.costMinorPerYear![end]).toBeCloseTo(1, 2);
			expect(leaks[0]!.energyKwhPerYear![end] / totals.energyKwhPerYear![end]).toBeCloseTo(1, 2);
		}
	});

	it('derived: no draw saves more than the station draws, however large the leaks come out', () => {
		const of = withStation(siteOfOne([leakSeen(1, hole(6, 1.5))]), BENT);
		const { station } = assess(of, 'round-1');
		const energy = runOf(model(of), draws(5000)).drawsOf('energyKwh').slice().sort();
		expect(quantileOf(energy, 1)).toBeLessThanOrEqual(station!.energyKwhPerYear);
		expect(quantileOf(energy, 0.99)).toBeGreaterThan(station!.energyKwhPerYear * 0.8);
	});
});

it('[W6] a leak that is mended does not count, and a site without pressure is refused', () => {
	const mended: Leak = {
		...leakSeen(9, hole(5)),
		mendings: { 'round-1': { mendedAt: '2026-01-06T08:00:00Z' } }
	};
	expect(model(siteOfOne([leakSeen(1, hole(1)), mended])).tags).toEqual([1]);
	const { barometerKPa: _, ...site } = siteOfOne([]).site;
	const refused = uncertaintyModel({ ...siteOfOne([]), site }, 'round-1');
	expect(refused.ok ? 'accepted' : refused.error.code).toBe('site-pressure-unknown');
});
