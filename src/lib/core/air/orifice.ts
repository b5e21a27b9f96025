import { GAMMA_AIR, GAS_CONSTANT_DRY_AIR } from '../units/constants.ts';
import type {
	Kelvin,
	KilogramPerSecond,
	Metre,
	PascalAbsolute,
	SquareMetre
} from '../units/quantity.ts';
import { as } from '../units/quantity.ts';

/** The air before and behind an opening. */
export interface AirStates {
	readonly upstream: PascalAbsolute;
	readonly upstreamTemperature: Kelvin;
	readonly downstream: PascalAbsolute;
}

export type Regime = 'choked' | 'subsonic';

export interface Flow {
	readonly massFlow: KilogramPerSecond;
	readonly regime: Regime;
}

/** r* = (2/(γ+1))^(γ/(γ−1)): below this pressure ratio the flow no longer rises. METHOD A3. */
export const CRITICAL_PRESSURE_RATIO = (2 / (GAMMA_AIR + 1)) ** (GAMMA_AIR / (GAMMA_AIR - 1));

/** √(γ/R)·(2/(γ+1))^((γ+1)/(2(γ−1))), √K·s/m: choked ṁ = 0.0404149·A_e·p1/√T1. METHOD A3. */
export const CHOKED_FLOW_CONSTANT =
	Math.sqrt(GAMMA_AIR / GAS_CONSTANT_DRY_AIR) *
	(2 / (GAMMA_AIR + 1)) ** ((GAMMA_AIR + 1) / (2 * (GAMMA_AIR - 1)));

/**
 * Whether the throat runs at the speed of sound: p2 ≤ r*·p1.
 * @param states absolute pressures in Pa, temperature in K
 * @returns `choked` or `subsonic`
 * @validity as `massFlux`
 * @source as `massFlux`; METHOD A3
 */
export function regimeOf(states: AirStates): Regime {
	return states.downstream <= CRITICAL_PRESSURE_RATIO * states.upstream ? 'choked' : 'subsonic';
}

/**
 * Mass flow through each square metre of effective area of an ideal opening:
 * G = p1·√(2γ/((γ−1)·R·T1)·(r^(2/γ) − r^((γ+1)/γ))), r = max(p2/p1, r*).
 * @param states absolute pressures in Pa, temperature in K
 * @returns mass flux, kg/(s·m²); nothing flows where p2 ≥ p1
 * @validity dry air as an ideal gas, 0.1 to 16 bar gauge, −20 to 60 °C; isentropic to the throat
 * @source any gas-dynamics text; NASA Glenn, "Mass Flow Choking" (formula read); METHOD A3
 */
export function massFlux(states: AirStates): number {
	const { upstream, upstreamTemperature, downstream } = states;
	const perRootKelvin = upstream / Math.sqrt(upstreamTemperature);
	if (regimeOf(states) === 'choked') return CHOKED_FLOW_CONSTANT * perRootKelvin;
	if (downstream >= upstream) return 0;
	const logRatio = Math.log(downstream / upstream);
	const throat =
		-Math.exp((2 / GAMMA_AIR) * logRatio) * Math.expm1(((GAMMA_AIR - 1) / GAMMA_AIR) * logRatio);
	const scale = (2 * GAMMA_AIR) / ((GAMMA_AIR - 1) * GAS_CONSTANT_DRY_AIR);
	return perRootKelvin * Math.sqrt(scale * throat);
}

/**
 * Flow of air through an opening of known effective area: ṁ = A_e·G.
 * @param opening `effectiveArea` = discharge coefficient × area, m²; the states as `massFlux`
 * @returns mass flow, kg/s, and whether it is choked
 * @validity as `massFlux`
 * @source as `massFlux`; METHOD A3
 */
export function orificeFlow(opening: AirStates & { readonly effectiveArea: SquareMetre }): Flow {
	return {
		massFlow: as<'kg/s'>(opening.effectiveArea * massFlux(opening)),
		regime: regimeOf(opening)
	};
}

/**
 * The effective area that passes a known flow, the inverse of `orificeFlow`: A_e = ṁ / G.
 * @param massFlow kg/s
 * @param states as `massFlux`, downstream below upstream
 * @returns effective area, m²
 * @validity as `massFlux`
 * @source as `massFlux`; METHOD A6
 */
export function effectiveAreaForFlow(massFlow: KilogramPerSecond, states: AirStates): SquareMetre {
	const flux = massFlux(states);
	if (!(flux > 0)) throw new RangeError('downstream pressure must be below upstream');
	return as<'m²'>(massFlow / flux);
}

/**
 * The round hole that a reader can picture: d = √(4·A_e / (π·C_d)).
 * @param effectiveArea m²
 * @param coefficient discharge coefficient of the pictured hole, above 0
 * @returns diameter, m
 * @validity any
 * @source geometry; METHOD A6
 */
export function equivalentHole(effectiveArea: SquareMetre, coefficient: number): Metre {
	if (!(coefficient > 0)) throw new RangeError('a discharge coefficient is above zero');
	return as<'m'>(Math.sqrt((4 * effectiveArea) / (Math.PI * coefficient)));
}
