import { dryAirDensity } from '../../units/constants.ts';
import type { SquareMetre } from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';
import type { LineAir } from '../line-air.ts';
import { effectiveAreaForFlow } from '../orifice.ts';

/**
 * Effective area from air caught at site pressure: ṁ = V·ρ_site/t, A_e = ṁ/G(line).
 * @param volumeM3 what was caught, m³
 * @param seconds how long it took
 * @param line the air on both sides of the leak
 * @returns effective area, m²
 * @validity the catching vessel at site pressure and temperature: a limp bag, a growing bubble
 * @source ideal-gas law; METHOD A9
 */
export function areaFromCollectedAir(
	volumeM3: number,
	seconds: number,
	line: LineAir
): SquareMetre {
	const density = dryAirDensity(line.site.pressure, line.site.temperature);
	return effectiveAreaForFlow(as<'kg/s'>((volumeM3 / seconds) * density), line);
}
