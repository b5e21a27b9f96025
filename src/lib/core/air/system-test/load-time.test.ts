import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, gaugeFromBar, kelvinFromCelsius, toSi } from '../../units/convert.ts';
import { as } from '../../units/quantity.ts';
import type { LoadCycle, LoadTimeReadings } from './load-time.ts';
import { leakShareFromSlopes, loadTimeLeak } from './load-time.ts';
import type { TestConditions } from './readings.ts';

const conditions: TestConditions = {
	site: { pressure: as<'Pa absolute'>(101_325), temperature: kelvinFromCelsius(20) },
	lineTemperature: kelvinFromCelsius(20),
	setPressure: gaugeFromBar(7),
	reference: 'iso-1217'
};

function cycle(loaded: number, unloaded: number, off?: number): LoadCycle {
	return {
		loaded: as<'s'>(loaded),
		unloaded: as<'s'>(unloaded),
		...(off === undefined ? {} : { off: as<'s'>(off) })
	};
}

function readings(
	cycles: readonly LoadCycle[],
	more?: Partial<LoadTimeReadings>
): LoadTimeReadings {
	return {
		cycles,
		capacity: toSi('volumeFlow', 'm3/min', 35),
		capacityRelativeUncertainty: 0.05,
		meanPressure: gaugeFromBar(7),
		clockResolution: as<'s'>(1),
		...more
	};
}

function leakOf(cycles: readonly LoadCycle[], more?: Partial<LoadTimeReadings>) {
	const result = loadTimeLeak(readings(cycles, more), conditions);
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

describe('load time', () => {
	it('[T1] 1.5 min on and 10.5 min off at 35 m³/min leaks 12.5 %, 4.375 m³/min, 6300 m³ a day (BEE guidebook 3, from memory)', () => {
		const { loadFraction, leak } = leakOf([cycle(90, 630)]);
		expect(loadFraction).toBeCloseTo(0.125, 12);
		expect(fromSi('volumeFlow', 'm3/min', leak.freeAir)).toBeCloseTo(4.375, 9);
		expect(leak.freeAir * 86_400).toBeCloseTo(6300, 6);
	});

	it('[T1] leakage is T × 100 / (T + t) per cent (DOE / CAC sourcebook formula, verified)', () => {
		expect(leakOf([cycle(3, 27)]).loadFraction).toBeCloseTo(0.1, 12);
	});

	it('[T1] time stopped counts with the unloaded time', () => {
		const stopped = leakOf([cycle(60, 120, 420)]);
		expect(stopped.loadFraction).toBeCloseTo(0.1, 12);
		expect(leakOf([cycle(60, 540)]).loadFraction).toBe(stopped.loadFraction);
	});

	it('[T1] the scatter of the cycles is the standard error of a ratio (derived by hand)', () => {
		// 10 s and 14 s loaded in 100 s each: fraction 0.12, u = √(2/1 · (2² + 2²)) / 200 = 0.02
		const { loadFractionUncertainty, scatterKnown, cycles } = leakOf(
			[cycle(10, 90), cycle(14, 86)],
			{
				clockResolution: as<'s'>(0)
			}
		);
		expect(loadFractionUncertainty).toBeCloseTo(0.02, 12);
		expect([scatterKnown, cycles]).toEqual([true, 2]);
	});

	it('[T1] one cycle knows the clock only (derived by hand)', () => {
		// df/dL = 90/100², df/dU = 10/100²; u of 1 s steps = 1/√12
		const { loadFractionUncertainty, scatterKnown, leak } = leakOf([cycle(10, 90)]);
		expect(loadFractionUncertainty).toBeCloseTo(Math.hypot(0.009, 0.001) / Math.sqrt(12), 9);
		expect(scatterKnown).toBe(false);
		expect(leak.relativeStandardUncertainty).toBeCloseTo(
			Math.hypot(loadFractionUncertainty / 0.1, 0.05),
			12
		);
	});

	it('[T9] a test below the set pressure is carried up in proportion to absolute pressure while choked (derived)', () => {
		const low = leakOf([cycle(10, 90)], { meanPressure: gaugeFromBar(5) });
		const same = leakOf([cycle(10, 90)]);
		expect(low.leak.massFlow / same.leak.massFlow).toBeCloseTo(8.01325 / 6.01325, 9);
	});

	it('[T1] what cannot be a test is refused by name', () => {
		const code = (cycles: readonly LoadCycle[], more?: Partial<LoadTimeReadings>): string => {
			const result = loadTimeLeak(readings(cycles, more), conditions);
			return result.ok ? 'accepted' : result.error.code;
		};
		expect(code([])).toBe('no-cycles');
		expect(code([cycle(10, 0)])).toBe('never-unloaded');
		expect(code([cycle(0, 10)])).toBe('never-loaded');
		expect(code([cycle(10, 90), cycle(Number.NaN, 90)])).toBe('cycle-unreadable');
		expect(code([cycle(10, -1)])).toBe('cycle-unreadable');
		expect(code([cycle(10, 90)], { capacity: as<'m³/s'>(0) })).toBe('reading-not-positive');
		expect(code([cycle(10, 90)], { clockResolution: as<'s'>(-1) })).toBe('reading-negative');
		expect(code([cycle(10, 90)], { meanPressure: gaugeFromBar(90) })).toBe('pressure-out-of-range');
		expect(
			loadTimeLeak(readings([cycle(10, 90)]), { ...conditions, setPressure: gaugeFromBar(17) })
		).toMatchObject({ error: { code: 'pressure-out-of-range' } });
		expect(
			loadTimeLeak(readings([cycle(10, 90)]), {
				...conditions,
				lineTemperature: kelvinFromCelsius(80)
			})
		).toMatchObject({ error: { code: 'temperature-out-of-range' } });
	});

	it('[T1] law: the fraction lies between 0 and 1 and rises with the time loaded', () => {
		const seconds = fc.double({ min: 0.1, max: 1e4, noNaN: true });
		fc.assert(
			fc.property(seconds, seconds, seconds, (loaded, unloaded, more) => {
				const less = leakOf([cycle(loaded, unloaded)]);
				const longer = leakOf([cycle(loaded + more, unloaded)]);
				expect(less.loadFraction).toBeGreaterThan(0);
				expect(longer.loadFraction).toBeLessThan(1);
				expect(longer.loadFraction).toBeGreaterThan(less.loadFraction);
				expect(Number.isFinite(longer.leak.relativeStandardUncertainty)).toBe(true);
			})
		);
	});
});

/** Davari, Veloso, Ribeiro, Gama: MetroPT-3, doi 10.24432/C5VW3R, CC BY 4.0 (verified: computed
 * from the published rows): a parked railway air unit, first 2 h 45 min, samples every 9 to 13 s. */
const METRO = [
	[109, 1942, 8.072, 10.098, 8.064],
	[99, 1903, 8.064, 10.066, 8.066],
	[99, 1923, 8.066, 10.096, 8.066],
	[99, 1912, 8.066, 10.098, 8.068]
] as const;

describe('a night of a parked railway air unit', () => {
	const byTime = leakOf(
		METRO.map(([loaded, off]) => cycle(loaded, 0, off)),
		{ clockResolution: as<'s'>(10), meanPressure: gaugeFromBar(9) }
	);

	it('[T1] four cycles give a load fraction of about 5 % (verified)', () => {
		expect(byTime.loadFraction).toBeCloseTo(0.05, 2);
		expect(byTime.loadFraction).toBeCloseTo(406 / 8086, 12);
		expect(byTime.loadFractionUncertainty).toBeLessThan(0.003);
	});

	it('[T2] the slopes of the pressure give the same share by a second route, to 1 % (verified rows)', () => {
		const bySlope = leakShareFromSlopes(
			METRO.map(([loaded, off, from, to, downTo]) => ({
				loaded: as<'s'>(loaded),
				off: as<'s'>(off),
				from: gaugeFromBar(from),
				to: gaugeFromBar(to),
				downTo: gaugeFromBar(downTo)
			}))
		);
		expect(bySlope.ok ? bySlope.value / byTime.loadFraction : 0).toBeGreaterThan(0.99);
		expect(bySlope.ok ? bySlope.value / byTime.loadFraction : 0).toBeLessThan(1.01);
	});

	it('[T2] law: for a cycle that closes, both routes are one number', () => {
		const positive = fc.double({ min: 1, max: 1e3, noNaN: true });
		fc.assert(
			fc.property(positive, positive, (loaded, off) => {
				const share = leakShareFromSlopes([
					{
						loaded: as<'s'>(loaded),
						off: as<'s'>(off),
						from: gaugeFromBar(6),
						to: gaugeFromBar(7),
						downTo: gaugeFromBar(6)
					}
				]);
				expect(share.ok ? share.value : 0).toBeCloseTo(loaded / (loaded + off), 12);
			})
		);
	});

	it('[T2] cycles that do not rise and fall are refused', () => {
		expect(leakShareFromSlopes([])).toMatchObject({ error: { code: 'no-cycles' } });
		const flat = {
			loaded: as<'s'>(10),
			off: as<'s'>(10),
			from: gaugeFromBar(7),
			to: gaugeFromBar(7),
			downTo: gaugeFromBar(6)
		};
		expect(leakShareFromSlopes([flat])).toMatchObject({
			error: { code: 'cycle-unreadable', detail: { cycle: 1 } }
		});
	});
});
