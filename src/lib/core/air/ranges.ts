import { barFromPascal, celsiusFromKelvin } from '../units/convert.ts';
import type { Kelvin, PascalGauge } from '../units/quantity.ts';
import { ok, refuse } from '../units/result.ts';
import type { Result } from '../units/result.ts';

interface Range {
	readonly lowest: number;
	readonly highest: number;
}

/** Where the formulas are trusted; outside, a refusal with a code. METHOD A15. */
export const LINE_PRESSURE_BAR: Range = { lowest: 0.1, highest: 16 };
export const TEMPERATURE_C: Range = { lowest: -20, highest: 60 };
/** Air that a compressor has just pushed into a receiver is hotter than a line ever is. */
const TANK_TEMPERATURE_C: Range = { lowest: -20, highest: 120 };
export const ALTITUDE_M: Range = { lowest: -400, highest: 4000 };
/** The altitudes above, with the weather's part. */
export const BAROMETER_KPA: Range = { lowest: 55, highest: 112 };

/**
 * Inside the range, forgiving the last bits that a change of units costs: low − ε ≤ v ≤ high + ε,
 * ε = 10⁻⁹·(high − low).
 * @param value in the unit of the range
 * @param range its two ends, both inside
 * @returns whether it is inside; NaN is outside
 * @validity any
 * @source definition; METHOD A15
 */
export function within(value: number, range: Range): boolean {
	const slack = 1e-9 * (range.highest - range.lowest);
	return value >= range.lowest - slack && value <= range.highest + slack;
}

/** Passes a line's gauge pressure, or refuses it as `pressure-out-of-range`. */
export function checkLinePressure(pressure: PascalGauge): Result<PascalGauge> {
	const bar = barFromPascal(pressure);
	if (within(bar, LINE_PRESSURE_BAR)) return ok(pressure);
	return refuse('pressure-out-of-range', {
		pressureBarGauge: bar,
		lowestBarGauge: LINE_PRESSURE_BAR.lowest,
		highestBarGauge: LINE_PRESSURE_BAR.highest
	});
}

/** Passes a temperature, or refuses it as `temperature-out-of-range`; `of` says whose it was. */
export function checkTemperature(
	temperature: Kelvin,
	of: 'site' | 'line' | 'tank'
): Result<Kelvin> {
	const celsius = celsiusFromKelvin(temperature);
	const range = of === 'tank' ? TANK_TEMPERATURE_C : TEMPERATURE_C;
	if (within(celsius, range)) return ok(temperature);
	return refuse('temperature-out-of-range', {
		of,
		temperatureC: celsius,
		lowestC: range.lowest,
		highestC: range.highest
	});
}

/** Passes a reading above zero, or refuses it as `reading-not-positive`, naming it. */
export function checkPositive(reading: string, value: number): Result<number> {
	if (value > 0 && Number.isFinite(value)) return ok(value);
	return refuse('reading-not-positive', { reading, value: String(value) });
}
