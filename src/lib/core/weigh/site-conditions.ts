import type { SiteAir } from '../air/gas-state.ts';
import { siteAir } from '../air/atmosphere.ts';
import type { Site } from '../survey/schema.ts';
import { kelvinFromCelsius, toSi } from '../units/convert.ts';
import type { Result } from '../units/result.ts';

const known = new WeakMap<Site, Result<SiteAir>>();

/**
 * The air around the plant, from what the survey says of the site: its barometer, else its altitude.
 * METHOD A2.
 */
export function siteConditions(site: Site): Result<SiteAir> {
	let air = known.get(site);
	if (!air) {
		air = siteAir({
			temperature: kelvinFromCelsius(site.airTemperatureC),
			barometer:
				site.barometerKPa === undefined
					? undefined
					: toSi('absolutePressure', 'kPa', site.barometerKPa),
			altitude: site.altitudeM === undefined ? undefined : toSi('length', 'm', site.altitudeM)
		});
		known.set(site, air);
	}
	return air;
}
