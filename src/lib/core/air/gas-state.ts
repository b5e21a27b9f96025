import {
	CELSIUS_ZERO_K,
	GAS_CONSTANT_DRY_AIR,
	GAS_CONSTANT_WATER_VAPOUR
} from '../units/constants.ts';
import type {
	Kelvin,
	KilogramPerCubicMetre,
	PascalAbsolute,
	PascalGauge
} from '../units/quantity.ts';
import { as } from '../units/quantity.ts';

/** The air around the plant: what gauges are relative to, and what compressors take in. */
export interface SiteAir {
	readonly pressure: PascalAbsolute;
	readonly temperature: Kelvin;
}

/**
 * Gauge pressure made absolute: p_abs = p_gauge + p_site.
 * @param gauge pressure above the site's, Pa
 * @param site the air around the gauge
 * @returns absolute pressure, Pa
 * @validity everywhere; a fixed 101.325 kPa in place of the site's is wrong at altitude
 * @source definition of gauge pressure; METHOD A2
 */
export function absolutePressure(gauge: PascalGauge, site: SiteAir): PascalAbsolute {
	return as<'Pa absolute'>(gauge + site.pressure);
}

/**
 * Absolute pressure as the site's gauges show it: p_gauge = p_abs − p_site.
 * @param absolute pressure above vacuum, Pa
 * @param site the air around the gauge
 * @returns gauge pressure, Pa
 * @validity everywhere
 * @source definition of gauge pressure; METHOD A2
 */
export function gaugePressure(absolute: PascalAbsolute, site: SiteAir): PascalGauge {
	return as<'Pa gauge'>(absolute - site.pressure);
}

/**
 * Pressure of saturated water vapour over water: e_s = 611.2·exp(17.62·t / (243.12 + t)).
 * @param temperature K
 * @returns vapour pressure, Pa
 * @validity −45 to 60 °C, within 0.3 %
 * @source Magnus form with the coefficients of WMO-No. 8 (from memory); METHOD A4
 */
export function saturationPressure(temperature: Kelvin): number {
	const celsius = temperature - CELSIUS_ZERO_K;
	return 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));
}

/**
 * Density of moist air, a mixture of two ideal gases: ρ = (p − e)/(R·T) + e/(R_v·T), e = φ·e_s.
 * @param pressure Pa absolute
 * @param temperature K
 * @param relativeHumidity 0 to 1
 * @returns density, kg/m³
 * @validity ambient air; within 0.05 % of CIPM-2007 there, the compressibility left out
 * @source Dalton's law, any thermodynamics text; METHOD A4
 */
export function moistAirDensity(
	pressure: PascalAbsolute,
	temperature: Kelvin,
	relativeHumidity: number
): KilogramPerCubicMetre {
	const vapour = relativeHumidity * saturationPressure(temperature);
	const dryPart = (pressure - vapour) / (GAS_CONSTANT_DRY_AIR * temperature);
	const vapourPart = vapour / (GAS_CONSTANT_WATER_VAPOUR * temperature);
	return as<'kg/m³'>(dryPart + vapourPart);
}
