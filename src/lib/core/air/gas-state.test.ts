import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryAirDensity } from '../units/constants.ts';
import { fromSi, gaugeFromBar, kelvinFromCelsius, toSi } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import { pressureAtAltitude, siteAir } from './atmosphere.ts';
import {
	absolutePressure,
	gaugePressure,
	moistAirDensity,
	saturationPressure
} from './gas-state.ts';
import { lineAir } from './line-air.ts';
import { freeAirFlow, massFlowOfFreeAir, referenceDensity, REFERENCES } from './reference-air.ts';

const site = { pressure: as<'Pa absolute'>(95_461), temperature: kelvinFromCelsius(25) };

describe('site pressure', () => {
	it.each([
		[0, 101_325],
		[500, 95_461],
		[1000, 89_875],
		[1500, 84_556],
		[2000, 79_495],
		[3000, 70_109],
		[4000, 61_640]
	])(
		'[A2] at %s m the standard atmosphere is %s Pa (ISO 2533, from memory; 0.02 %%)',
		(m, pascal) => {
			const result = pressureAtAltitude(as<'m'>(m));
			expect(result.ok ? result.value / pascal : 0).toBeGreaterThan(0.9998);
			expect(result.ok ? result.value / pascal : 0).toBeLessThan(1.0002);
		}
	);

	it('[A2] below sea level the pressure is higher; outside −400 to 4000 m is refused', () => {
		const below = pressureAtAltitude(as<'m'>(-400));
		expect(below.ok ? below.value : 0).toBeCloseTo(106_220, -2);
		for (const altitude of [-401, 4001, Number.NaN, Number.POSITIVE_INFINITY]) {
			expect(pressureAtAltitude(as<'m'>(altitude))).toMatchObject({
				error: { code: 'altitude-out-of-range' }
			});
		}
	});

	it('[A2] gauge and absolute differ by the site pressure, not by 101.325 kPa (derived)', () => {
		expect(absolutePressure(gaugeFromBar(7), site)).toBe(795_461);
		expect(gaugePressure(as<'Pa absolute'>(795_461), site)).toBe(700_000);
	});

	it('[A2] a barometer goes before the altitude, and neither is refused', () => {
		const temperature = kelvinFromCelsius(20);
		const barometer = toSi('absolutePressure', 'hPa', 980);
		const measured = siteAir({ temperature, barometer, altitude: as<'m'>(1000) });
		expect(measured).toMatchObject({ value: { pressure: 98_000 } });
		expect(siteAir({ temperature, altitude: as<'m'>(0) })).toMatchObject({
			value: { pressure: 101_325 }
		});
		expect(siteAir({ temperature })).toMatchObject({ error: { code: 'site-pressure-unknown' } });
	});

	it('[A15] a site outside the ranges is refused with what was offered', () => {
		const temperature = kelvinFromCelsius(20);
		expect(siteAir({ temperature: kelvinFromCelsius(61), altitude: as<'m'>(0) })).toMatchObject({
			error: { code: 'temperature-out-of-range', detail: { of: 'site', highestC: 60 } }
		});
		expect(siteAir({ temperature, barometer: as<'Pa absolute'>(700_000) })).toMatchObject({
			error: { code: 'barometer-out-of-range', detail: { barometerKPa: 700 } }
		});
		expect(siteAir({ temperature, altitude: as<'m'>(5000) })).toMatchObject({
			error: { code: 'altitude-out-of-range' }
		});
	});
});

describe('density', () => {
	it('[A4] saturated vapour is 2339 Pa at 20 °C and 7384 Pa at 40 °C (steam tables, from memory; 0.3 %)', () => {
		expect(saturationPressure(kelvinFromCelsius(20)) / 2339).toBeCloseTo(1, 2);
		expect(saturationPressure(kelvinFromCelsius(40)) / 7384).toBeCloseTo(1, 2);
	});

	it('[A4] moist air is lighter: 1.1820 at 20 °C, 100 kPa, 65 % RH (CIPM-2007, computed elsewhere)', () => {
		const density = moistAirDensity(as<'Pa absolute'>(100_000), kelvinFromCelsius(20), 0.65);
		expect(density / 1.182).toBeGreaterThan(0.9995);
		expect(density / 1.182).toBeLessThan(1.0005);
	});

	it('[A4] ASME normal air, 14.696 psia, 68 °F, 36 % RH, is 0.075 lb/ft³ (verified text)', () => {
		const density = moistAirDensity(
			toSi('absolutePressure', 'psi', 14.696),
			toSi('temperature', 'F', 68),
			0.36
		);
		const perCubicFoot = (density * toSi('volume', 'ft3', 1)) / toSi('massFlow', 'lb/s', 1);
		expect(perCubicFoot).toBeCloseTo(0.075, 3);
		expect(density / 1.2008).toBeCloseTo(1, 3);
	});
});

describe('free air', () => {
	it('[A5] ISO 1217 air is 1.1884 kg/m³ (derived)', () => {
		expect(referenceDensity('iso-1217', site)).toBeCloseTo(1.1884, 4);
	});

	it('[A5] ANR air computes to 1.182; tables print 1.185 (ISO 8778, from memory), 0.3 % apart', () => {
		expect(referenceDensity('anr', site)).toBeCloseTo(1.182, 3);
		expect(1.185 / referenceDensity('anr', site)).toBeCloseTo(1.003, 3);
	});

	it('[A5] DIN 1343 air is 1.2931 kg/m³ with compressibility (CIPM), 0.06 % above the ideal gas', () => {
		expect(1.2931 / referenceDensity('normal', site)).toBeCloseTo(1.0006, 4);
		expect(REFERENCES.normal.state).toMatchObject({ pressure: 101_325, temperature: 273.15 });
	});

	it('[A5] the same mass reads 9.4 % larger in ANR than in normal cubic metres (derived)', () => {
		const massFlow = as<'kg/s'>(1);
		const ratio = freeAirFlow(massFlow, 'anr', site) / freeAirFlow(massFlow, 'normal', site);
		expect(ratio).toBeCloseTo(1.094, 3);
	});

	it('[A5] site inlet air follows the site (derived)', () => {
		expect(referenceDensity('site', site)).toBe(dryAirDensity(95_461, site.temperature));
	});

	it('[A5] 30 cfm at 125 psig and 90 °F is 274.7 scfm at 70 °F (Esposito ex. 13-6: inputs verified, value recomputed)', () => {
		const line = dryAirDensity(toSi('absolutePressure', 'psi', 139.7), as<'K'>((550 * 5) / 9));
		const free = dryAirDensity(toSi('absolutePressure', 'psi', 14.7), as<'K'>((530 * 5) / 9));
		expect((30 * line) / free).toBeCloseTo(274.7, 1);
	});

	it('[A5] law: free air goes to mass and back at every reference', () => {
		fc.assert(
			fc.property(
				fc.constantFrom('iso-1217' as const, 'anr' as const, 'normal' as const, 'site' as const),
				fc.double({ min: 1e-9, max: 1e3, noNaN: true }),
				(reference, flow) => {
					const mass = massFlowOfFreeAir(as<'m³/s'>(flow), reference, site);
					expect(freeAirFlow(mass, reference, site) / flow).toBeCloseTo(1, 12);
				}
			)
		);
	});
});

describe('the line', () => {
	const line = { linePressure: gaugeFromBar(7), lineTemperature: kelvinFromCelsius(20), site };

	it('[A15] every bound is inside its own range', () => {
		for (const bar of [0.1, 16])
			expect(lineAir({ ...line, linePressure: gaugeFromBar(bar) }).ok).toBe(true);
		for (const c of [-20, 60]) {
			expect(lineAir({ ...line, lineTemperature: kelvinFromCelsius(c) }).ok).toBe(true);
		}
	});

	it.each([0.0999, 16.001, -1, Number.NaN, Number.POSITIVE_INFINITY])(
		'[A15] a line at %s bar is refused',
		(bar) => {
			expect(lineAir({ ...line, linePressure: gaugeFromBar(bar) })).toMatchObject({
				error: {
					code: 'pressure-out-of-range',
					detail: { lowestBarGauge: 0.1, highestBarGauge: 16 }
				}
			});
		}
	);

	it('[A15] a line at 61 °C is refused, and so is a downstream pressure at or above the line', () => {
		expect(lineAir({ ...line, lineTemperature: kelvinFromCelsius(61) })).toMatchObject({
			error: { code: 'temperature-out-of-range', detail: { of: 'line' } }
		});
		for (const bar of [-0.1, 7, 8, Number.NaN]) {
			expect(lineAir({ ...line, downstreamPressure: gaugeFromBar(bar) })).toMatchObject({
				error: { code: 'downstream-out-of-range' }
			});
		}
	});

	it('[A2] the line is absolute on both sides (derived)', () => {
		const result = lineAir({ ...line, downstreamPressure: gaugeFromBar(2) });
		expect(result).toMatchObject({ value: { upstream: 795_461, downstream: 295_461 } });
		expect(fromSi('absolutePressure', 'bar', result.ok ? result.value.upstream : 0)).toBeCloseTo(
			7.95461,
			9
		);
	});
});
