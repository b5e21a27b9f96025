import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	absoluteFromBar,
	barFromPascal,
	celsiusFromKelvin,
	cubicMetreFromLitre,
	fromSi,
	gaugeFromBar,
	kelvinFromCelsius,
	metreFromMillimetre,
	millimetreFromMetre,
	toSi,
	UNITS
} from './convert.ts';
import type { Dimension, UnitOf } from './convert.ts';

/** NIST SP 811 appendix B, seven printed digits: from memory, not verified. */
const PUBLISHED: readonly (readonly [Dimension, string, number])[] = [
	['pressure', 'psi', 6.894757e3],
	['pressure', 'kgf/cm2', 9.80665e4],
	['pressure', 'mmHg', 1.333224e2],
	['pressure', 'inHg', 3.386389e3],
	['pressure', 'atm', 1.01325e5],
	['length', 'in', 2.54e-2],
	['length', 'ft', 3.048e-1],
	['length', 'thou', 2.54e-5],
	['area', 'in2', 6.4516e-4],
	['volume', 'ft3', 2.831685e-2],
	['volume', 'in3', 1.638706e-5],
	['volume', 'gal(US)', 3.785412e-3],
	['volume', 'gal(UK)', 4.54609e-3],
	['volumeFlow', 'cfm', 4.719474e-4],
	['volumeFlow', 'ft3/s', 2.831685e-2],
	['massFlow', 'lb/s', 4.535924e-1],
	['massFlow', 'lb/min', 7.559873e-3],
	['massFlow', 'lb/h', 1.259979e-4],
	['power', 'hp', 7.456999e2],
	['power', 'PS', 7.354988e2],
	['energy', 'kWh', 3.6e6],
	['time', 'd', 8.64e4]
];

describe('conversion factors', () => {
	it.each(PUBLISHED)(
		'[A1] one unit of %s %s matches the printed factor (NIST SP 811, from memory)',
		(dimension, unit, factor) => {
			expect(toSi(dimension, unit as UnitOf<Dimension>, 1) / factor).toBeCloseTo(1, 6);
		}
	);

	it('[A1] psi is exactly one pound-force on a square inch (derived)', () => {
		expect(toSi('pressure', 'psi', 1)).toBeCloseTo(4.448_221_615_260_5 / 0.0254 ** 2, 9);
	});

	it('[A1] temperatures meet the fixed points of the three scales (by definition)', () => {
		expect(toSi('temperature', 'C', 0)).toBe(273.15);
		expect(toSi('temperature', 'F', 32)).toBeCloseTo(273.15, 10);
		expect(toSi('temperature', 'F', 212)).toBeCloseTo(373.15, 10);
		expect(toSi('temperature', 'F', -40)).toBeCloseTo(toSi('temperature', 'C', -40), 10);
		expect(fromSi('temperature', 'F', 373.15)).toBeCloseTo(212, 10);
	});

	it('[A1] decimal units carry no rounding', () => {
		expect(gaugeFromBar(6.5)).toBe(650_000);
		expect(metreFromMillimetre(7)).toBe(0.007);
		expect(cubicMetreFromLitre(500)).toBe(0.5);
		expect(toSi('volumeFlow', 'm3/min', 60)).toBe(1);
	});

	it('[A1] the named edges are inverses', () => {
		expect(barFromPascal(gaugeFromBar(7))).toBe(7);
		expect(barFromPascal(absoluteFromBar(1.01325))).toBeCloseTo(1.01325, 12);
		expect(celsiusFromKelvin(kelvinFromCelsius(20))).toBeCloseTo(20, 10);
		expect(millimetreFromMetre(metreFromMillimetre(3))).toBe(3);
	});

	it('[A1] an unknown unit is a broken promise of the caller, and throws', () => {
		expect(() => toSi('length', 'furlong' as UnitOf<'length'>, 1)).toThrow(RangeError);
	});

	it('[A1] law: every unit goes to SI and back, and keeps order', () => {
		const every = (Object.keys(UNITS) as Dimension[]).flatMap((dimension) =>
			(Object.keys(UNITS[dimension]) as UnitOf<Dimension>[]).map(
				(unit) => [dimension, unit] as const
			)
		);
		fc.assert(
			fc.property(
				fc.constantFrom(...every),
				fc.double({ min: -1e6, max: 1e6, noNaN: true }),
				fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
				([dimension, unit], value, more) => {
					const back = fromSi(dimension, unit, toSi(dimension, unit, value));
					expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
					expect(toSi(dimension, unit, value + more)).toBeGreaterThan(toSi(dimension, unit, value));
				}
			)
		);
	});
});
