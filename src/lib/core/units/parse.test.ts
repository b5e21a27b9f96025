import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, toSi, UNITS } from './convert.ts';
import type { Dimension, UnitOf } from './convert.ts';
import { parseNumber } from './parse-number.ts';
import { parseQuantity } from './parse.ts';

function si(text: string, dimension: Dimension): number {
	const result = parseQuantity(text, dimension);
	if (!result.ok) throw new Error(`${text}: ${result.error.code}`);
	return result.value;
}

function code(text: string, dimension: Dimension): string {
	const result = parseQuantity(text, dimension);
	return result.ok ? `read as ${result.value}` : result.error.code;
}

describe('written quantities', () => {
	it.each<[string, Dimension, number]>([
		['1/4 in', 'length', 0.00635],
		['1 1/2 in', 'length', 0.0381],
		['1-1/2 in', 'length', 0.0381],
		['1½"', 'length', 0.0381],
		['½ in', 'length', 0.0127],
		['⅛″', 'length', 0.003175],
		['1/64in', 'length', 0.000396875],
		['.5 inch', 'length', 0.0127],
		['1e-3 m', 'length', 0.001],
		['3 µm', 'length', 3e-6],
		['500 m', 'length', 500],
		["5'", 'length', 1.524],
		['6,5 bar', 'pressure', 650_000],
		['6.5bar', 'pressure', 650_000],
		['6.5\u00a0bar', 'pressure', 650_000],
		['6.5\u202fbar', 'pressure', 650_000],
		['7 BAR(G)', 'pressure', 700_000],
		['7 barg', 'pressure', 700_000],
		['7 bar g', 'pressure', 700_000],
		['0.7 MPa', 'pressure', 700_000],
		['700 kPa', 'pressure', 700_000],
		['7 kgf/cm²', 'pressure', 686_465.5],
		['1.013 bar(a)', 'absolutePressure', 101_300],
		['1013,25 hPa', 'absolutePressure', 101_325],
		['-5 C', 'temperature', 268.15],
		['−5 °C', 'temperature', 268.15],
		['20 ℃', 'temperature', 293.15],
		['20 deg C', 'temperature', 293.15],
		['300 K', 'temperature', 300],
		['3 m³/min', 'volumeFlow', 0.05],
		['3 m^3/min', 'volumeFlow', 0.05],
		['10 l/s', 'volumeFlow', 0.01],
		['600 L/min', 'volumeFlow', 0.01],
		['12 mm²', 'area', 12e-6],
		['1 234,5 L', 'volume', 1.2345],
		["1'234.5 L", 'volume', 1.2345],
		['1,234.5 L', 'volume', 1.2345],
		['1.234,5 L', 'volume', 1.2345],
		['1.234 L', 'volume', 0.001234],
		['1,234,567 ml', 'volume', 1.234567],
		['0,234 L', 'volume', 0.000234],
		['1,2345 L', 'volume', 0.0012345],
		['90 min', 'time', 5400],
		['1.5 MWh', 'energy', 5.4e9],
		['37 kW', 'power', 37_000],
		['5 g/s', 'massFlow', 0.005]
	])('[A1] %s is read as %s, exactly', (text, dimension, expected) => {
		expect(si(text, dimension) / expected).toBeCloseTo(1, 12);
	});

	it('[A1] 100 psi is read by the exact factor (derived)', () => {
		expect(si('100 psi', 'pressure')).toBeCloseTo(689_475.729_316_836, 6);
		expect(si('100 psig', 'pressure')).toBe(si('100 lbf/in²', 'pressure'));
	});

	it.each<[string, Dimension, string]>([
		['6.5', 'pressure', 'unit-missing'],
		['1/4', 'length', 'unit-missing'],
		['6.5 furlong', 'length', 'unit-unknown'],
		['6.5 mm', 'pressure', 'unit-of-other-dimension'],
		['7 bara', 'pressure', 'pressure-absolute-not-accepted'],
		['100 psia', 'pressure', 'pressure-absolute-not-accepted'],
		['7 bar(a)', 'pressure', 'pressure-absolute-not-accepted'],
		['1 barg', 'absolutePressure', 'pressure-gauge-not-accepted'],
		['5 mPa', 'pressure', 'unit-unknown'],
		['5 mW', 'power', 'unit-unknown'],
		['80 gal', 'volume', 'unit-ambiguous'],
		['5 Nm³/h', 'volumeFlow', 'flow-reference-in-unit'],
		['5 scfm', 'volumeFlow', 'flow-reference-in-unit'],
		['5 L/min (ANR)', 'volumeFlow', 'flow-reference-in-unit'],
		['bar', 'pressure', 'number-unreadable'],
		['', 'pressure', 'number-unreadable'],
		['six bar', 'pressure', 'number-unreadable'],
		['NaN bar', 'pressure', 'number-unreadable'],
		['Infinity bar', 'pressure', 'number-unreadable'],
		['6 5 bar', 'pressure', 'number-unreadable'],
		['10² mm', 'length', 'unit-unknown'],
		['6..5 bar', 'pressure', 'number-ambiguous'],
		['1/0 in', 'length', 'number-unreadable'],
		['1 5/4 in', 'length', 'number-unreadable'],
		['--5 C', 'temperature', 'number-unreadable'],
		['6. bar', 'pressure', 'number-unreadable'],
		['1,234 bar', 'pressure', 'number-ambiguous'],
		['1.234.5 bar', 'pressure', 'number-ambiguous'],
		['1,23,456 bar', 'pressure', 'number-ambiguous'],
		['1e999 bar', 'pressure', 'number-out-of-range'],
		['1e-999 bar', 'pressure', 'number-out-of-range'],
		['1e308 MPa', 'pressure', 'number-out-of-range']
	])('[A1] %s as %s is refused: %s', (text, dimension, expected) => {
		expect(code(text, dimension)).toBe(expected);
	});

	it('[A1] a refusal names what would have been accepted', () => {
		const result = parseQuantity('6.5', 'pressure');
		expect(result.ok ? {} : result.error.detail).toMatchObject({
			accepted: expect.stringContaining('psi') as unknown
		});
		const ambiguous = parseQuantity('1,234 bar', 'pressure');
		expect(ambiguous.ok ? {} : ambiguous.error.detail).toMatchObject({ readAs: 1.234, orAs: 1234 });
	});

	it('[A1] law: any text gives a finite number or a refusal, never a throw', () => {
		const text = fc.oneof(
			fc.string(),
			fc.string({ unit: 'grapheme' }),
			fc.string({
				unit: fc.constantFrom(...'0123456789.,/ -+e½\u00a0\'"°CbarpsimMNn²³()'.split(''))
			})
		);
		fc.assert(
			fc.property(text, fc.constantFrom(...(Object.keys(UNITS) as Dimension[])), (t, dimension) => {
				const result = parseQuantity(t, dimension);
				if (result.ok) expect(Number.isFinite(result.value)).toBe(true);
				else expect(result.error.code).toMatch(/^[a-z]+(-[a-z]+)+$/u);
			}),
			{ numRuns: 2000 }
		);
	});

	it('[A1] law: what a computer writes with a unit is read back, whatever the unit', () => {
		const every = (Object.keys(UNITS) as Dimension[]).flatMap((dimension) =>
			(Object.keys(UNITS[dimension]) as UnitOf<Dimension>[]).map(
				(unit) => [dimension, unit] as const
			)
		);
		fc.assert(
			fc.property(
				fc.constantFrom(...every),
				fc.double({ min: -1e9, max: 1e9, noNaN: true }),
				([dimension, unit], value) => {
					const read = parseQuantity(`${value} ${unit}`, dimension);
					expect(read.ok).toBe(true);
					if (!read.ok) return;
					expect(read.value).toBe(
						value === 0 ? toSi(dimension, unit, 0) : toSi(dimension, unit, value)
					);
					expect(fromSi(dimension, unit, read.value)).toBeCloseTo(value, 2);
				}
			)
		);
	});
});

describe('numbers in forms', () => {
	const cases: readonly (readonly [string, ',' | '.', number | string])[] = [
		['6,5', ',', 6.5],
		['6,5', '.', 6.5],
		['6.5', ',', 6.5],
		['6.5', '.', 6.5],
		['1.234', '.', 1.234],
		['1.234', ',', 'number-ambiguous'],
		['1,234', ',', 1.234],
		['1,234', '.', 'number-ambiguous'],
		['1,234.5', ',', 1234.5],
		['1,234.5', '.', 1234.5],
		['1.234,5', ',', 1234.5],
		['1.234,5', '.', 1234.5],
		['1 234,5', ',', 1234.5],
		['1 234,5', '.', 1234.5],
		['1\u202f234,567', '.', 1234.567],
		['1200,99', '.', 1200.99],
		['1200,99', ',', 1200.99],
		['1.234.567', '.', 1_234_567],
		['12,34,567', '.', 'number-ambiguous'],
		['1/4', ',', 0.25],
		['2 ¾', ',', 2.75],
		['-0', '.', 0],
		['', '.', 'number-unreadable'],
		['5 bar', '.', 'number-unreadable']
	];
	it.each(cases)('[A1] "%s" where the decimal mark is "%s" gives %s', (text, decimal, expected) => {
		const result = parseNumber(text, { decimal });
		expect(result.ok ? result.value : result.error.code).toBe(expected);
	});

	it('[A1] law: never silently 10, 100 or 1000 times the number, whichever mark was typed', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 99_999 }),
				fc.stringMatching(/^\d{1,4}$/u),
				fc.constantFrom<',' | '.'>(',', '.'),
				fc.constantFrom<',' | '.'>(',', '.'),
				(whole, digits, mark, decimal) => {
					const result = parseNumber(`${whole}${mark}${digits}`, { decimal });
					if (result.ok) expect(result.value).toBeCloseTo(Number(`${whole}.${digits}`), 9);
					else expect(result.error.code).toBe('number-ambiguous');
				}
			)
		);
	});
});
