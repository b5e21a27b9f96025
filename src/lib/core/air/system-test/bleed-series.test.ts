import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, gaugeFromBar, toSi } from '../../units/convert.ts';
import type { PascalGauge } from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';
import { dryAirDensity } from '../../units/constants.ts';
import { bleedDownLeak } from './bleed-down.ts';
import type { BleedSeries } from './bleed-series.ts';
import { bleedSeriesLeak, flowByFittedLaw } from './bleed-series.ts';
import type { TestConditions } from './readings.ts';
import { fluxAt } from './readings.ts';

const psig = (psi: number): PascalGauge => toSi('pressure', 'psi', psi);

function leakOf(series: BleedSeries, c: TestConditions) {
	const result = bleedSeriesLeak(series, c);
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

/** NAVFAC MO-209 (January 1989), tables 5-3 and 5-4 (verified: read in the retrieved text). */
const NAVFAC = {
	psig: [90, 80, 70, 60, 50, 40, 30, 20],
	seconds: [0, 642, 1397, 2314, 3536, 5248, 8101, 16_660],
	lossScfm: [40, 34, 28, 21, 15, 9, 3]
};
const american: TestConditions = {
	site: {
		pressure: toSi('absolutePressure', 'psi', 14.7),
		temperature: toSi('temperature', 'F', 68)
	},
	lineTemperature: toSi('temperature', 'F', 68),
	setPressure: psig(96),
	reference: 'site'
};
const naval: BleedSeries = {
	volume: toSi('volume', 'ft3', 629),
	readings: NAVFAC.psig.map((psi, i) => ({
		at: as<'s'>(NAVFAC.seconds[i] ?? Number.NaN),
		pressure: psig(psi)
	})),
	gaugeResolution: toSi('pressure', 'psi', 1),
	clockResolution: as<'s'>(1),
	volumeRelativeUncertainty: 0.05
};
const siteDensity = dryAirDensity(american.site.pressure, american.site.temperature);
const scfm = (massFlow: number): number => fromSi('volumeFlow', 'cfm', massFlow / siteDensity);

describe('a naval bleed-down from 90 to 20 psig', () => {
	const found = leakOf(naval, american);

	it('[T6] each interval loses what the table prints, to its rounding (verified)', () => {
		found.intervals.forEach((interval, i) => {
			expect(fromSi('pressure', 'psi', interval.pressure)).toBeCloseTo(85 - 10 * i, 6);
			expect(Math.abs(scfm(interval.massFlow) - (NAVFAC.lossScfm[i] ?? 0))).toBeLessThan(0.05);
		});
	});

	it('[T6] the line is Q = 0.62·P − 12.75 scfm (verified)', () => {
		const perPsi = scfm(found.line?.slope ?? 0) * toSi('pressure', 'psi', 1);
		expect(perPsi).toBeCloseTo(0.62, 2);
		expect(scfm(found.line?.intercept ?? 0)).toBeCloseTo(-12.75, 1);
		expect(fromSi('pressure', 'psi', found.line?.zeroFlowPressure ?? 0)).toBeCloseTo(20.5, 1);
	});

	it('[T6] it follows the line, not a fixed opening, and loses 47 scfm at 96 psig (verified)', () => {
		expect(found.law).toBe('line');
		expect(found.chokedThroughout).toBe(true);
		expect(found.extrapolated).toBe(true);
		expect(scfm(found.leak.massFlow)).toBeCloseTo(47, 0);
	});

	it('[T6] a fixed opening fitted at 90 psig would lose 15.9 scfm at 25 psig where 3 were seen (derived)', () => {
		const ratio = fluxAt(psig(25), american) / fluxAt(psig(85), american);
		expect(40 * ratio).toBeCloseTo(15.9, 1);
		const byLaw = scfm(flowByFittedLaw(found, psig(25), american));
		expect(Math.abs(byLaw - 3)).toBeLessThan(0.5);
		expect(flowByFittedLaw(found, psig(15), american)).toBe(0);
	});

	it('[T4] from 90 to 45 psig this plant’s own factor is 1.62, not 1.25 nor 1.30 (derived)', () => {
		const mean = (629 * (45 / 14.7)) / 72.4;
		expect(mean).toBeCloseTo(26.6, 1);
		const at90 = scfm(flowByFittedLaw(found, psig(90), american));
		expect(at90 / mean).toBeCloseTo(1.62, 1);
	});
});

const conditions: TestConditions = {
	site: { pressure: as<'Pa absolute'>(101_325), temperature: as<'K'>(293.15) },
	lineTemperature: as<'K'>(293.15),
	setPressure: gaugeFromBar(7),
	reference: 'iso-1217'
};
const exact = { gaugeResolution: 0, clockResolution: as<'s'>(0), volumeRelativeUncertainty: 0 };

/** Choked isothermal fall through a fixed opening: p = p0·exp(−t/τ), absolute. */
function fixedOpening(tau: number, step: number, count: number): BleedSeries {
	return {
		...exact,
		volume: as<'m³'>(2),
		readings: Array.from({ length: count }, (_, i) => ({
			at: as<'s'>(i * step),
			pressure: as<'Pa gauge'>(801_325 * Math.exp((-i * step) / tau) - 101_325)
		}))
	};
}

describe('a fixed opening', () => {
	it('[T6] is recognised, and gives the two-point answer (derived)', () => {
		const series = fixedOpening(1000, 60, 10);
		const found = leakOf(series, conditions);
		expect(found.law).toBe('orifice');
		const twoPoint = bleedDownLeak(
			{
				...exact,
				volume: series.volume,
				from: series.readings[0]?.pressure ?? gaugeFromBar(0),
				to: series.readings[9]?.pressure ?? gaugeFromBar(0),
				duration: as<'s'>(540)
			},
			conditions
		);
		expect(found.orifice.area / (twoPoint.ok ? twoPoint.value.effectiveArea : 1)).toBeCloseTo(1, 9);
		expect(found.extrapolated).toBe(false);
		expect(flowByFittedLaw(found, gaugeFromBar(7), conditions)).toBeCloseTo(
			found.leak.massFlow,
			12
		);
	});

	it('[T6] is still recognised when the gauge is read to 0.1 bar only', () => {
		const series = fixedOpening(1000, 60, 10);
		const coarse = {
			...series,
			gaugeResolution: 10_000,
			readings: series.readings.map(({ at, pressure }) => ({
				at,
				pressure: as<'Pa gauge'>(Math.round(pressure / 10_000) * 10_000)
			}))
		};
		const found = leakOf(coarse, conditions);
		expect(found.law).toBe('orifice');
		expect(found.leak.massFlow / leakOf(series, conditions).leak.massFlow).toBeCloseTo(1, 1);
		expect(found.leak.relativeStandardUncertainty).toBeGreaterThan(0);
	});

	it('[T6] three readings cannot tell the laws apart, and it says so', () => {
		const found = leakOf(fixedOpening(1000, 100, 3), conditions);
		expect(found.law).toBe('undecided');
		expect(found.line).toBeUndefined();
	});

	it('[T5] a fall below the choked limit is still one opening', () => {
		const found = leakOf(fixedOpening(200, 40, 11), conditions);
		expect(found.chokedThroughout).toBe(false);
		expect(found.law).toBe('line'); // the readings were made by a law that never ceases to choke
		expect(Number.isFinite(found.leak.massFlow)).toBe(true);
	});

	it('[T6] what cannot be a series is refused by name', () => {
		const code = (readings: readonly (readonly [number, number])[], c = conditions): string => {
			const result = bleedSeriesLeak(
				{
					...exact,
					volume: as<'m³'>(1),
					readings: readings.map(([at, bar]) => ({ at: as<'s'>(at), pressure: gaugeFromBar(bar) }))
				},
				c
			);
			return result.ok ? 'accepted' : result.error.code;
		};
		expect(code([])).toBe('series-too-short');
		expect(
			code([
				[0, 7],
				[60, 6]
			])
		).toBe('series-too-short');
		expect(
			code([
				[0, 7],
				[60, 6.5],
				[60, 6]
			])
		).toBe('times-not-rising');
		expect(
			code([
				[0, 7],
				[60, 6],
				[120, 6.5]
			])
		).toBe('pressure-rises');
		expect(
			code([
				[0, 7],
				[60, 7],
				[120, 7]
			])
		).toBe('pressures-not-apart');
		expect(
			code([
				[0, 7],
				[60, 6],
				[120, 6],
				[180, 5]
			])
		).toBe('accepted');
		// Flow in proportion to what is above 2 bar.
		const closing = Array.from(
			{ length: 6 },
			(_, i) => [100 * i, 2 + 5 * Math.exp(-0.3 * i)] as const
		);
		expect(code(closing, { ...conditions, setPressure: gaugeFromBar(0.5) })).toBe(
			'set-pressure-below-zero-flow'
		);
	});

	it('[T6] law: any fall that a person could read gives finite numbers', () => {
		fc.assert(
			fc.property(
				fc.array(
					fc.tuple(
						fc.double({ min: 1, max: 1000, noNaN: true }),
						fc.double({ min: 0.001, max: 0.4, noNaN: true })
					),
					{ minLength: 2, maxLength: 20 }
				),
				(steps) => {
					let at = 0;
					let bar = 8.5;
					const readings = [{ at: as<'s'>(0), pressure: gaugeFromBar(8.5) }];
					for (const [seconds, fall] of steps) {
						at += seconds;
						bar -= fall;
						readings.push({ at: as<'s'>(at), pressure: gaugeFromBar(bar) });
					}
					const result = bleedSeriesLeak({ ...exact, volume: as<'m³'>(1), readings }, conditions);
					if (!result.ok) {
						expect(result.error.code).toBe('set-pressure-below-zero-flow');
						return;
					}
					expect(result.value.leak.massFlow).toBeGreaterThan(0);
					expect(Number.isFinite(result.value.leak.massFlow)).toBe(true);
					expect(Number.isFinite(result.value.leak.relativeStandardUncertainty)).toBe(true);
				}
			)
		);
	});
});
