import type { KilogramPerCubicMetre } from './quantity.ts';

/**
 * Ratio of the specific heats of air.
 * @source NASA Glenn, "Mass Flow Choking", worked for air with 1.4; any gas-dynamics text
 */
export const GAMMA_AIR = 1.4;

/**
 * Specific gas constant of dry air, J/(kg·K).
 * @source ISO 2533:1975, 287.05287, printed short (from memory)
 */
export const GAS_CONSTANT_DRY_AIR = 287.05;

/**
 * Specific gas constant of water vapour, J/(kg·K): 8314.46 / 18.015.
 * @source derived from the molar gas constant and the molar mass of water
 */
export const GAS_CONSTANT_WATER_VAPOUR = 461.52;

/**
 * Standard acceleration of free fall, m/s², exact by definition.
 * @source 3rd CGPM (1901); NIST SP 811
 */
export const STANDARD_GRAVITY = 9.80665;

/**
 * Standard atmosphere, Pa, exact by definition.
 * @source ISO 2533; 10th CGPM (1954)
 */
export const STANDARD_ATMOSPHERE_PA = 101_325;

/**
 * Pressure of the free-air reference states of ISO 1217 and ISO 8778, Pa.
 * @source ISO 1217 annex C, ISO 8778 (from memory)
 */
export const REFERENCE_PRESSURE_PA = 100_000;

/** Zero of the Celsius scale, K, exact by definition. */
export const CELSIUS_ZERO_K = 273.15;

/**
 * Density of dry air as an ideal gas: ρ = p / (R·T).
 * @param pressurePa absolute pressure, Pa
 * @param temperatureK temperature, K
 * @returns density, kg/m³
 * @validity p > 0, T > 0; air near ambient, where the compressibility differs from 1 by under 0.1 %
 * @source ideal-gas law, any thermodynamics text; METHOD A4
 */
export function dryAirDensity(pressurePa: number, temperatureK: number): KilogramPerCubicMetre {
	return (pressurePa / (GAS_CONSTANT_DRY_AIR * temperatureK)) as KilogramPerCubicMetre;
}
