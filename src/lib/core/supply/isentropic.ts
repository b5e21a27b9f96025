import { GAMMA_AIR } from '../units/constants.ts';
import { as, type CubicMetrePerSecond, type PascalAbsolute, type Watt } from '../units/quantity.ts';
import { ok, refuse, type Result } from '../units/result.ts';

/** κ/(κ − 1) of air. */
const K = GAMMA_AIR / (GAMMA_AIR - 1);

/**
 * Work of isentropic compression per unit of inlet pressure and volume:
 * w = κ/(κ−1) · ((p₂/p₁)^((κ−1)/κ) − 1).
 * @param ratio p₂/p₁, absolute
 * @returns dimensionless work
 */
function isentropicWork(ratio: number): number {
	return K * (ratio ** (1 / K) - 1);
}

/**
 * Power that isentropic compression of a flow takes: P = p₁ · V₁ · w.
 * @param flow volume flow at inlet conditions, m³/s
 * @param inlet absolute inlet pressure, Pa
 * @param discharge absolute discharge pressure, Pa
 * @returns power, W
 * @validity flow ≥ 0; 0 < p₁ ≤ p₂; air as an ideal gas, κ = 1.4
 * @source 10 CFR 431 subpart T appendix A, after ISO 1217:2009 (from memory); METHOD S2
 */
export function isentropicPower(
	flow: CubicMetrePerSecond,
	inlet: PascalAbsolute,
	discharge: PascalAbsolute
): Result<Watt> {
	const bad = outOfRange(flow, inlet, discharge);
	return bad ?? ok(as<'W'>(inlet * flow * isentropicWork(discharge / inlet)));
}

/**
 * Least power that any compressor can take, all heat being led away: P = p₁ · V₁ · ln(p₂/p₁).
 * @param flow volume flow at inlet conditions, m³/s
 * @param inlet absolute inlet pressure, Pa
 * @param discharge absolute discharge pressure, Pa
 * @returns power, W
 * @validity flow ≥ 0; 0 < p₁ ≤ p₂; air as an ideal gas, inlet at ambient temperature
 * @source isothermal work of an ideal gas, any text on thermodynamics; METHOD S2
 */
export function isothermalPower(
	flow: CubicMetrePerSecond,
	inlet: PascalAbsolute,
	discharge: PascalAbsolute
): Result<Watt> {
	const bad = outOfRange(flow, inlet, discharge);
	return bad ?? ok(as<'W'>(inlet * flow * Math.log(discharge / inlet)));
}

/**
 * How compression work changes when the discharge pressure does: f = w(p₂/p₁) / w(p₀/p₁).
 * @param inlet absolute inlet pressure p₁, Pa
 * @param rated absolute discharge pressure p₀ at which the power is known, Pa
 * @param actual absolute discharge pressure p₂, Pa
 * @returns factor on the power, dimensionless
 * @validity 0 < p₁ < p₀ and p₁ < p₂; the machine's efficiency does not change with pressure
 * @source ratio of isentropic work, e.g. Çengel and Boles, Thermodynamics, p. 399; METHOD S3
 */
export function workFactor(
	inlet: PascalAbsolute,
	rated: PascalAbsolute,
	actual: PascalAbsolute
): number {
	return isentropicWork(actual / inlet) / isentropicWork(rated / inlet);
}

function outOfRange(
	flowM3PerS: number,
	inletPaAbsolute: number,
	dischargePaAbsolute: number
): ReturnType<typeof refuse> | undefined {
	if (!(flowM3PerS >= 0 && flowM3PerS < Infinity))
		return refuse('flow-out-of-range', { flowM3PerS, least: 0 });
	if (
		inletPaAbsolute > 0 &&
		dischargePaAbsolute >= inletPaAbsolute &&
		dischargePaAbsolute < Infinity
	)
		return undefined;
	return refuse('discharge-below-inlet', { inletPaAbsolute, dischargePaAbsolute });
}
