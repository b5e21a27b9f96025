import { STANDARD_ATMOSPHERE_PA, STANDARD_GRAVITY } from '../units/constants.ts';
import { fromSi } from '../units/convert.ts';
import type { Kelvin, Metre, PascalAbsolute } from '../units/quantity.ts';
import { as } from '../units/quantity.ts';
import { ok, refuse } from '../units/result.ts';
import type { Result } from '../units/result.ts';
import type { SiteAir } from './gas-state.ts';
import { ALTITUDE_M, BAROMETER_KPA, checkTemperature, within } from './ranges.ts';

const SEA_LEVEL_TEMPERATURE_K = 288.15;
const LAPSE_K_PER_M = 0.0065;
const GAS_CONSTANT_ISO_2533 = 287.052_87;
const EXPONENT = STANDARD_GRAVITY / (GAS_CONSTANT_ISO_2533 * LAPSE_K_PER_M);

/**
 * Pressure of the standard atmosphere: p = 101 325·(1 − 0.0065·h / 288.15)^5.25588.
 * @param altitude height above sea level, m, taken as geopotential (2.5 m apart at 4000 m)
 * @returns absolute pressure, Pa, or `altitude-out-of-range`
 * @validity −400 to 4000 m; the weather moves the true pressure by some 3 %
 * @source ISO 2533:1975 (from memory); METHOD A2
 */
export function pressureAtAltitude(altitude: Metre): Result<PascalAbsolute> {
	if (!within(altitude, ALTITUDE_M)) {
		return refuse('altitude-out-of-range', {
			altitudeM: altitude,
			lowestM: ALTITUDE_M.lowest,
			highestM: ALTITUDE_M.highest
		});
	}
	const warmth = 1 - (LAPSE_K_PER_M * altitude) / SEA_LEVEL_TEMPERATURE_K;
	return ok(as<'Pa absolute'>(STANDARD_ATMOSPHERE_PA * warmth ** EXPONENT));
}

/**
 * The site's air: the barometer's reading where there is one, else the standard atmosphere.
 * @param site `temperature` in K; `barometer` in Pa absolute; `altitude` in m
 * @returns the site's air, or `site-pressure-unknown`, `barometer-out-of-range`,
 * `altitude-out-of-range`, `temperature-out-of-range`
 * @validity −400 to 4000 m, −20 to 60 °C
 * @source ISO 2533:1975 (from memory); METHOD A2
 */
export function siteAir(site: {
	readonly temperature: Kelvin;
	readonly barometer?: PascalAbsolute | undefined;
	readonly altitude?: Metre | undefined;
}): Result<SiteAir> {
	const temperature = checkTemperature(site.temperature, 'site');
	if (!temperature.ok) return temperature;
	if (site.barometer !== undefined) {
		const kiloPascal = fromSi('absolutePressure', 'kPa', site.barometer);
		if (!within(kiloPascal, BAROMETER_KPA)) {
			return refuse('barometer-out-of-range', {
				barometerKPa: kiloPascal,
				lowestKPa: BAROMETER_KPA.lowest,
				highestKPa: BAROMETER_KPA.highest
			});
		}
		return ok({ pressure: site.barometer, temperature: site.temperature });
	}
	if (site.altitude === undefined) return refuse('site-pressure-unknown');
	const pressure = pressureAtAltitude(site.altitude);
	if (!pressure.ok) return pressure;
	return ok({ pressure: pressure.value, temperature: site.temperature });
}
