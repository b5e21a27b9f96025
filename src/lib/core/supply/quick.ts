import { ok, refuse, type Result } from '../units/result.ts';

/**
 * Power that a flow of free air takes by the quick method: P = e · q.
 *
 * It says what making the air costs on average. It does not say what the supply stops drawing when
 * the flow goes away; a machine that idles or throttles gives back less (see `year.ts`).
 * @param specificPowerKwPerM3PerMin package power per free-air flow, kW per m³/min
 * @param flowM3PerMin free-air flow, m³/min
 * @returns power, kW
 * @validity both finite, specific power > 0, flow ≥ 0
 * @source handbook practice, e.g. US DOE Compressed Air Tip Sheet #3 (from memory); METHOD S1
 */
export function quickPowerKw(
	specificPowerKwPerM3PerMin: number,
	flowM3PerMin: number
): Result<number> {
	if (!(specificPowerKwPerM3PerMin > 0 && specificPowerKwPerM3PerMin < Infinity))
		return refuse('specific-power-out-of-range', { specificPowerKwPerM3PerMin, above: 0 });
	if (!(flowM3PerMin >= 0 && flowM3PerMin < Infinity))
		return refuse('flow-out-of-range', { flowM3PerMin, least: 0 });
	return ok(specificPowerKwPerM3PerMin * flowM3PerMin);
}

/**
 * Energy drawn by a steady power: E = P · t.
 * @param powerKw power, kW
 * @param hours time at that power, h
 * @returns energy, kWh
 * @validity both finite and ≥ 0
 * @source definition; METHOD S1
 */
export function energyKwh(powerKw: number, hours: number): Result<number> {
	if (!(powerKw >= 0 && powerKw < Infinity))
		return refuse('power-out-of-range', { powerKw, least: 0 });
	if (!(hours >= 0 && hours < Infinity)) return refuse('hours-out-of-range', { hours, least: 0 });
	return ok(powerKw * hours);
}
