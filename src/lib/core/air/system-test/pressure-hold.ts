import type { Kelvin, PascalGauge } from '../../units/quantity.ts';
import type { SiteAir } from '../gas-state.ts';
import { absolutePressure, gaugePressure } from '../gas-state.ts';
import { as } from '../../units/quantity.ts';

/**
 * The pressure that shut-in air would show at another temperature: p' = p·T'/T, absolute.
 * @param pressure gauge reading, Pa
 * @param was temperature of the air at the reading, K
 * @param would temperature to state it at, K
 * @param site the site's air
 * @returns gauge pressure at the other temperature, Pa
 * @validity the same air in the same volume
 * @source UFC 4-390-01 (23 July 2003), pressure-hold test, formula read; METHOD T7
 */
export function pressureAtTemperature(
	pressure: PascalGauge,
	was: Kelvin,
	would: Kelvin,
	site: SiteAir
): PascalGauge {
	const absolute = absolutePressure(pressure, site);
	return gaugePressure(as<'Pa absolute'>((absolute * would) / was), site);
}
