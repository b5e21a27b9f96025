import { CELSIUS_ZERO_K } from '../units/constants.ts';
import { cubicMetreFromLitre, gaugeFromBar } from '../units/convert.ts';
import type { SquareMetre } from '../units/quantity.ts';
import { as } from '../units/quantity.ts';
import type { AirStates, Flow } from './orifice.ts';
import { CHOKED_FLOW_CONSTANT } from './orifice.ts';

/**
 * Density that sonic conductance is stated with, kg/m³. ISO 6358 fixes it, and catalogue figures
 * were reduced with it, so it stays 1.185 here although METHOD A5 computes 1.182 for that air.
 * @source ISO 6358 / ISO 8778 (from memory)
 */
const CONDUCTANCE_DENSITY = 1.185;
const CONDUCTANCE_TEMPERATURE_K = CELSIUS_ZERO_K + 20;

/**
 * Sonic conductance as an effective area: A_e = C·ρ0·√T0 / 0.0404149, from equating choked flows.
 * @param cDm3PerSBar sonic conductance as catalogues print it, dm³/(s·bar)
 * @returns effective area, m²
 * @validity any C above 0
 * @source derived from ISO 6358's choked flow; METHOD A12
 */
export function areaOfConductance(cDm3PerSBar: number): SquareMetre {
	const conductance = cubicMetreFromLitre(cDm3PerSBar) / gaugeFromBar(1);
	const choked = conductance * CONDUCTANCE_DENSITY * Math.sqrt(CONDUCTANCE_TEMPERATURE_K);
	return as<'m²'>(choked / CHOKED_FLOW_CONSTANT);
}

/**
 * Sonic conductance of an effective area, the inverse of `areaOfConductance`.
 * @param effectiveArea m²
 * @returns sonic conductance, dm³/(s·bar)
 * @validity any
 * @source derived; METHOD A12
 */
export function conductanceOfArea(effectiveArea: SquareMetre): number {
	return effectiveArea / areaOfConductance(1);
}

/**
 * Flow through a component by the quarter ellipse of ISO 6358: choked ṁ = C·p1·ρ0·√(T0/T1);
 * above the critical ratio × √(1 − ((p2/p1 − b)/(1 − b))²).
 * @param component `effectiveArea` from `areaOfConductance`, m²; `criticalRatio` b, 0 ≤ b < 1;
 * the states as `massFlux`
 * @returns mass flow, kg/s, and whether it is choked
 * @validity as `massFlux`; near p2 = p1 the ellipse overstates laminar paths
 * @source ISO 6358, formula read in a simulation tool's manual; METHOD A12
 */
export function conductanceFlow(
	component: AirStates & { readonly effectiveArea: SquareMetre; readonly criticalRatio: number }
): Flow {
	const { effectiveArea, criticalRatio, upstream, upstreamTemperature, downstream } = component;
	const choked = (CHOKED_FLOW_CONSTANT * effectiveArea * upstream) / Math.sqrt(upstreamTemperature);
	const ratio = Math.min(1, downstream / upstream);
	if (ratio <= criticalRatio) return { massFlow: as<'kg/s'>(choked), regime: 'choked' };
	const along = (ratio - criticalRatio) / (1 - criticalRatio);
	return { massFlow: as<'kg/s'>(choked * Math.sqrt(1 - along * along)), regime: 'subsonic' };
}
