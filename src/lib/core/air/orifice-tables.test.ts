import { describe, expect, it } from 'vitest';
import { fromSi, metreFromMillimetre, toSi } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import { orificeFlow } from './orifice.ts';

type Row = readonly [gaugePressure: number, flows: readonly number[]];

/**
 * "Discharge of Air Through an Orifice", cubic feet of free air per minute at psi gauge, 100 %
 * coefficient, 14.7 psia ambient, 70 °F, 0.07494 lb/ft³, as reprinted in compressed-air handbooks
 * (verified: read in the retrieved text).
 */
const HANDBOOK: readonly Row[] = [
	[1, [0.028, 0.112, 0.45, 1.8, 7.18, 16.2, 28.7, 45.0, 64.7, 88.1, 115.0]],
	[4, [0.056, 0.223, 0.892, 3.56, 14.3, 32.1, 57.0, 89.2, 128.0, 175.0, 228.0]],
	[6, [0.068, 0.272, 1.09, 4.34, 17.4, 39.1, 69.5, 109.0, 156.0, 213.0, 278.0]],
	[12, [0.095, 0.379, 1.52, 6.07, 24.3, 54.6, 97.0, 152.0, 218.0, 297.0, 388.0]],
	[15, [0.105, 0.42, 1.68, 6.72, 26.9, 60.5, 108.0, 168.0, 242.0, 329.0, 430.0]],
	[25, [0.14, 0.562, 2.25, 8.98, 35.9, 80.9, 144.0, 225.0, 323.0, 440.0, 575.0]],
	[35, [0.176, 0.703, 2.81, 11.3, 45.0, 101.0, 180.0, 281.0, 405.0, 551.0, 720.0]],
	[50, [0.229, 0.916, 3.66, 14.7, 58.6, 132.0, 235.0, 366.0, 528.0, 718.0, 938.0]],
	[70, [0.3, 1.2, 4.79, 19.2, 76.7, 173.0, 307.0, 479.0, 690.0, 939.0, 1227.0]],
	[100, [0.406, 1.62, 6.49, 26.0, 104.0, 234.0, 415.0, 649.0, 934.0, 1272.0, 1661.0]],
	[120, [0.476, 1.91, 7.62, 30.5, 122.0, 274.0, 488.0, 762.0, 1097.0, 1494.0, 1951.0]]
];
const HANDBOOK_INCHES = [
	1 / 64,
	1 / 32,
	1 / 16,
	1 / 8,
	1 / 4,
	3 / 8,
	1 / 2,
	5 / 8,
	3 / 4,
	7 / 8,
	1
];

/** US DOE Compressed Air Tip Sheet #3, August 2004, rates in cfm (from memory, not verified). */
const TIP_SHEET: readonly Row[] = [
	[70, [0.29, 1.16, 4.66, 18.62, 74.4, 167.8]],
	[80, [0.32, 1.26, 5.24, 20.76, 83.1, 187.2]],
	[90, [0.36, 1.46, 5.72, 23.1, 92.0, 206.6]],
	[100, [0.4, 1.55, 6.31, 25.22, 100.9, 227.0]],
	[125, [0.48, 1.94, 7.66, 30.65, 122.2, 275.5]]
];
const TIP_SHEET_INCHES = HANDBOOK_INCHES.slice(0, 6);

/**
 * BEE (India) guidebook 3 / UK good-practice table, litre/s at bar gauge, coefficient 1
 * (from memory, not verified; the heading is remembered as m³/min, which would be 16.7 times off).
 */
const BEE: readonly Row[] = [
	[0.5, [0.06, 0.22, 0.92, 2.1, 5.7, 22.8, 35.5]],
	[1.0, [0.08, 0.33, 1.33, 3.0, 8.4, 33.6, 52.5]],
	[2.5, [0.14, 0.58, 2.33, 5.5, 14.6, 58.6, 91.4]],
	[5.0, [0.25, 0.97, 3.92, 8.8, 24.4, 97.5, 152.0]],
	[7.0, [0.33, 1.31, 5.19, 11.6, 32.5, 129.0, 202.0]]
];
const BEE_MILLIMETRES = [0.5, 1, 2, 3, 5, 10, 12.5];

/** Free air by the isentropic model under the handbook's own assumptions. */
function idealCfm(gaugePsi: number, inches: number): number {
	const { massFlow } = orificeFlow({
		effectiveArea: as<'m²'>((Math.PI / 4) * toSi('length', 'in', inches) ** 2),
		upstream: toSi('absolutePressure', 'psi', gaugePsi + 14.7),
		upstreamTemperature: toSi('temperature', 'F', 70),
		downstream: toSi('absolutePressure', 'psi', 14.7)
	});
	return fromSi('massFlow', 'lb/min', massFlow) / 0.07494;
}

/** Free air at 20 °C and 1.01325 bar, both for the line and for the litres, in L/s. */
function idealLitrePerSecond(barGauge: number, millimetres: number): number {
	const { massFlow } = orificeFlow({
		effectiveArea: as<'m²'>((Math.PI / 4) * metreFromMillimetre(millimetres) ** 2),
		upstream: toSi('absolutePressure', 'bar', barGauge + 1.01325),
		upstreamTemperature: toSi('temperature', 'C', 20),
		downstream: toSi('absolutePressure', 'bar', 1.01325)
	});
	return fromSi('volumeFlow', 'L/s', massFlow / 1.2041);
}

function halfLastDigit(printed: number): number {
	const decimals = String(printed).split('.')[1]?.length ?? 0;
	return 0.5 * 10 ** -decimals;
}

describe('published orifice tables', () => {
	it.each(HANDBOOK)(
		'[A3] the handbook row at %s psig is met to 1.3 %% or half a printed digit (verified)',
		(psig, flows) => {
			flows.forEach((printed, column) => {
				const ideal = idealCfm(psig, HANDBOOK_INCHES[column] ?? 0);
				// The digits are counted from the smallest holes only: elsewhere a printed zero is lost.
				const digit = printed < 0.1 ? halfLastDigit(printed) : 0;
				expect(Math.abs(ideal - printed)).toBeLessThanOrEqual(Math.max(0.013 * printed, digit));
			});
		}
	);

	it('[A3] over the whole handbook table the median deviation is under 0.4 % (verified)', () => {
		const deviations = HANDBOOK.flatMap(([psig, flows]) =>
			flows.map((printed, column) =>
				Math.abs(idealCfm(psig, HANDBOOK_INCHES[column] ?? 0) / printed - 1)
			)
		).sort((a, b) => a - b);
		expect(deviations).toHaveLength(121);
		expect(deviations[60]).toBeLessThan(0.004);
	});

	it.each(TIP_SHEET)(
		'[A3] the DOE tip sheet at %s psig prints about 0.967 of the ideal: never × 0.97 again (from memory)',
		(psig, flows) => {
			flows.forEach((printed, column) => {
				// The 1/32 in row is irregular; the rest holds to 1.7 %.
				const tolerance = column === 1 ? 0.035 : 0.017;
				const share = printed / idealCfm(psig, TIP_SHEET_INCHES[column] ?? 0);
				expect(Math.abs(share / 0.967 - 1)).toBeLessThan(tolerance);
			});
		}
	);

	it('[A3] the flows of the DOE worked example sum to 879 cfm, and ours are some 3 % above (from memory)', () => {
		const leaks = [
			{ count: 100, inches: 1 / 32, psig: 90, printed: 1.46 },
			{ count: 50, inches: 1 / 16, psig: 90, printed: 5.72 },
			{ count: 10, inches: 1 / 4, psig: 100, printed: 100.9 }
		];
		const printed = leaks.reduce((sum, leak) => sum + leak.count * leak.printed * 0.61, 0);
		const ours = leaks.reduce((sum, l) => sum + l.count * idealCfm(l.psig, l.inches) * 0.61, 0);
		expect(printed).toBeCloseTo(879, 0);
		expect(ours / printed).toBeGreaterThan(1.02);
		expect(ours / printed).toBeLessThan(1.04);
	});

	it.each(BEE.filter(([bar]) => bar >= 1))(
		'[A3] the BEE row at %s bar prints 4 to 9 %% above the ideal (from memory)',
		(bar, flows) => {
			// Its air is not stated: litres at 1 bar explain 1.3 % and line air at 10 °C another 1.7 %; the
			// rest is its own. 3 mm at 2.5 bar is 13 % high, a slip of the table. Holes under 2 mm are
			// printed to two digits, so half a digit is allowed.
			flows.forEach((printed, column) => {
				const millimetres = BEE_MILLIMETRES[column] ?? 0;
				const ideal = idealLitrePerSecond(bar, millimetres);
				const digit = halfLastDigit(printed);
				const most = millimetres === 3 && bar === 2.5 ? 1.14 : 1.09;
				expect(printed + digit).toBeGreaterThan(1.04 * ideal);
				expect(printed - digit).toBeLessThan(most * ideal);
			});
		}
	);
});
