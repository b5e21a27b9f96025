import { cubicMetreFromLitre } from '../../units/convert.ts';
import type { Result } from '../../units/result.ts';
import { ok } from '../../units/result.ts';
import type { LineAir } from '../line-air.ts';
import { checkPositive } from '../ranges.ts';
import { areaFromCollectedAir } from './collected-air.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { effectiveAreaOf, STARTING } from './effective-area.ts';

export interface BagReading extends OwnUncertainty {
	readonly kind: 'bag';
	readonly volumeL: number;
	readonly seconds: number;
}

/** Bag volume to 10 %, the moment it is full to 10 %, some air lost at the mouth. */
const RELATIVE_UNCERTAINTY = 0.15;

/**
 * Effective area from a limp bag held over the leak: ṁ = V·ρ_site/t, A_e = ṁ/G(line).
 * @param reading volume of the full bag in litres, and the seconds it took to fill
 * @param line the air on both sides of the leak
 * @returns effective area, or `reading-not-positive`
 * @validity a bag limp until it is full, sealed by hand, timed over some seconds
 * @source ideal-gas law; METHOD A9
 */
export function bagArea(reading: BagReading, line: LineAir): Result<EffectiveArea> {
	const volume = checkPositive('volumeL', reading.volumeL);
	if (!volume.ok) return volume;
	const seconds = checkPositive('seconds', reading.seconds);
	if (!seconds.ok) return seconds;
	return ok(
		effectiveAreaOf({
			area: areaFromCollectedAir(cubicMetreFromLitre(volume.value), seconds.value, line),
			basis: 'A9',
			own: reading.relativeUncertainty,
			starting: RELATIVE_UNCERTAINTY,
			reason: `${STARTING}: bag volume and full mark to 10 % each, some air lost at the mouth`
		})
	);
}
