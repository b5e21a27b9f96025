import { describe, expect, test } from 'vitest';
import { leakSeen, siteOfOne } from '../../../../tests/arbitrary/one-section.ts';
import type { Leak, Survey } from '../survey/schema.ts';
import { assess } from './assess.ts';

const hole = (diameterMm: number) =>
	({ kind: 'hole', diameterMm, edge: 'rounded', coefficient: 1 }) as const;

describe('[W2] energy and money of a leak by the quick method', () => {
	test('derived: a 2 mm hole at 7 bar, worked by hand', () => {
		const { totals, leaks, method } = assess(siteOfOne([leakSeen(1, hole(2))]), 'round-1');
		// A_e = π/4·(2 mm)² = 3.14159e-6 m²; ṁ = 0.0404149·A_e·800 000/√293.15 = 5.93241e-3 kg/s;
		// Q = ṁ/1.18839 = 4.99197 L/s = 0.299518 m³/min; ·6.5 kW·8000 h = 15 575 kWh; ·0.20 = 3115.
		const massFlow = (0.0404149 * Math.PI * 1e-6 * 800_000) / Math.sqrt(293.15);
		const density = 100_000 / (287.05 * 293.15);
		const kwh = (massFlow / density) * 60 * 6.5 * 8000;
		expect(method).toBe('quick');
		expect(totals.massFlowKgPerS).toBeCloseTo(massFlow, 8);
		expect(totals.freeAirM3PerS).toBeCloseTo(massFlow / density, 7);
		expect(totals.energyKwhPerYear).toBeCloseTo(kwh, 0);
		expect(totals.costMinorPerYear).toBe(Math.round(kwh * 20));
		expect(totals.co2KgPerYear).toBeCloseTo(kwh * 0.4, 0);
		expect(leaks[0]?.rank).toBe(1);
	});

	test('law: the shares add up to the total to the cent', () => {
		const many = Array.from({ length: 97 }, (_, index) =>
			leakSeen(index + 1, hole(0.3 + index / 77))
		);
		const { totals, leaks } = assess(siteOfOne(many), 'round-1');
		const shares = leaks.reduce((sum, each) => sum + (each.costMinorPerYear ?? 0), 0);
		expect(shares).toBe(totals.costMinorPerYear);
	});
});

describe('[W1] pressure, hours and what is missing', () => {
	test('a reading of its own goes before the section and the supply', () => {
		const own = assess(siteOfOne([leakSeen(1, hole(2), 6)]), 'round-1');
		expect(own.leaks[0]?.pressureBarGauge).toBe(6);
		const section = assess(siteOfOne([leakSeen(1, hole(2))]), 'round-1');
		expect(section.leaks[0]?.pressureBarGauge).toBe(7);
	});

	test('a leak without a size is listed with its reason and is not counted as zero', () => {
		const { leaks, unweighed, totals } = assess(siteOfOne([leakSeen(1, undefined)]), 'round-1');
		expect(leaks).toEqual([]);
		expect(totals.leakCount).toBe(0);
		expect(unweighed).toEqual([
			{ leakId: 'leak-1', tag: 1, refusal: { code: 'evidence-missing' } }
		]);
	});

	test('without prices or supply there is air and no money', () => {
		const bare = { ...siteOfOne([leakSeen(1, hole(2))]), supply: {}, prices: {} };
		const { totals, missing, method } = assess(bare, 'round-1');
		expect(method).toBe('none');
		expect(totals.freeAirM3PerS).toBeGreaterThan(0);
		expect('costMinorPerYear' in totals).toBe(false);
		expect(missing.map(({ code }) => code)).toEqual(['supply-missing', 'carbon-factor-missing']);
	});
});

describe('[W3] rank', () => {
	test('the dearest leak comes first, and mended ones do not count', () => {
		const mended: Leak = {
			...leakSeen(9, hole(5)),
			mendings: { 'round-1': { mendedAt: '2026-01-06T08:00:00Z' } }
		};
		const { leaks } = assess(
			siteOfOne([leakSeen(1, hole(1)), leakSeen(2, hole(3)), mended]),
			'round-1'
		);
		expect(leaks.map(({ tag, rank }) => [tag, rank])).toEqual([
			[2, 1],
			[1, 2]
		]);
	});
});

test('[W1] an edit of one leak computes that leak only', () => {
	const before = siteOfOne([leakSeen(1, hole(1)), leakSeen(2, hole(2))]);
	const first = assess(before, 'round-1');
	const edited = { ...before, leaks: { ...before.leaks, 'leak-1': leakSeen(1, hole(1.5)) } };
	const second = assess(edited, 'round-1');
	const fresh = assess(structuredClone(edited), 'round-1');
	expect(second).toEqual(fresh);
	expect(second.totals.massFlowKgPerS).toBeGreaterThan(first.totals.massFlowKgPerS);
});

/** One machine whose power is in proportion to its flow, round the clock at 7 bar. */
function withStation(base: Survey, demandM3PerMin = 5): Survey {
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
						control: {
							kind: 'curve',
							points: [
								{ flowFraction: 0, powerFraction: 0 },
								{ flowFraction: 1, powerFraction: 1 }
							]
						}
					}
				],
				trimId: null,
				receiverVolumeM3: 1,
				pipingVolumeM3: 0,
				demandIs: 'delivered',
				schedule: {
					periods: [
						{
							id: 'period-all',
							name: 'Always',
							days: [0, 1, 2, 3, 4, 5, 6],
							fromMin: 0,
							toMin: 1440,
							air: { state: 'on', demandM3PerMin, setPressureBarGauge: 7 },
							priceId: null
						}
					],
					weeksPerYear: 365 / 7,
					closed: { state: 'off' },
					closedPriceId: null
				},
				purge: { kind: 'none' }
			}
		}
	};
}

describe('[W4] leaks on the station’s week', () => {
	test('derived: a station that draws in proportion gives what the quick method gives', () => {
		// 65 kW at 10 m³/min is 6.5 kW per m³/min, the quick method's figure; the site's air is the
		// reference air, so inlet and ISO 1217 volumes are the same.
		const both = assess(
			withStation(siteOfOne([leakSeen(1, hole(2)), leakSeen(2, hole(1), 5)])),
			'round-1'
		);
		expect(both.method).toBe('supply');
		expect(both.totals.energyKwhPerYear).toBeCloseTo(both.quickTotals?.energyKwhPerYear ?? 0, 3);
		expect(both.totals.costMinorPerYear).toBe(both.quickTotals?.costMinorPerYear);
		expect(both.station?.energyKwhPerYear).toBeCloseTo(5 * 6.5 * 8760, 3);
	});

	test('law: the leaks’ energies add up to the saving of all of them', () => {
		const many = Array.from({ length: 31 }, (_, index) =>
			leakSeen(index + 1, hole(0.4 + index / 40))
		);
		const { totals, leaks } = assess(withStation(siteOfOne(many)), 'round-1');
		const sum = leaks.reduce((total, each) => total + (each.energyKwhPerYear ?? 0), 0);
		expect(sum).toBeCloseTo(totals.energyKwhPerYear ?? 0, 6);
	});

	test('a demand that the station cannot meet is said, not hidden', () => {
		const { warnings } = assess(withStation(siteOfOne([leakSeen(1, hole(2))]), 12), 'round-1');
		expect(warnings.map(({ code }) => code)).toContain('shortage');
	});

	test('a station that cannot be computed is named, and the quick method says so', () => {
		const base = withStation(siteOfOne([leakSeen(1, hole(2))]));
		const broken = {
			...base,
			supply: { ...base.supply, station: { ...base.supply.station!, compressors: [] } }
		};
		const { method, missing } = assess(broken, 'round-1');
		expect(method).toBe('quick');
		expect(missing).toContainEqual({ code: 'station-has-no-compressor' });
	});
});

test('[W5] derived: a period’s own price holds in its hours', () => {
	const base = withStation(siteOfOne([leakSeen(1, hole(2))]));
	const station = base.supply.station!;
	const day = { ...station.schedule.periods[0]!, id: 'period-day', toMin: 720 };
	const night = { ...day, id: 'period-night', fromMin: 720, toMin: 1440, priceId: 'price-night' };
	const split: Survey = {
		...base,
		supply: {
			...base.supply,
			station: { ...station, schedule: { ...station.schedule, periods: [day, night] } }
		},
		prices: {
			...base.prices,
			periodPrices: [{ id: 'price-night', name: 'Night', pricePerKwh: 0.1 }]
		}
	};
	const flat = assess(base, 'round-1').totals.costMinorPerYear ?? 0;
	// Half of the hours at 0.20 and half at 0.10: three quarters of the cost at 0.20.
	expect(assess(split, 'round-1').totals.costMinorPerYear).toBeCloseTo(flat * 0.75, -1);
});
