import { fromSi, metreFromMillimetre } from '../../units/convert.ts';
import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import type { LineAir } from '../line-air.ts';
import { checkPositive } from '../ranges.ts';
import { areaFromCollectedAir } from './collected-air.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { effectiveAreaOf, STARTING } from './effective-area.ts';

export interface BubbleGrowthReading extends OwnUncertainty {
	readonly kind: 'bubble-growth';
	readonly bubbleDiameterMm: number;
	readonly seconds: number;
}

/**
 * The fastest growth that an eye and a watch can follow, cm³/s: a 16 mm bubble every second.
 * Our starting value. Above it the soap film's response is the evidence to give.
 */
const FASTEST_BUBBLE_CM3_PER_S = 2;

/** Diameter to 10 % is volume to 30 %; the bubble is a sphere only roughly: our starting value. */
const RELATIVE_UNCERTAINTY = 0.4;

/**
 * Effective area from one growing bubble: V = π·d³/6, then as air caught at site pressure.
 * @param reading diameter reached in mm, and the seconds it took
 * @param line the air on both sides of the leak
 * @returns effective area, or `reading-not-positive`, `bubble-rate-too-high`
 * @validity growth up to 2 cm³/s; the film's own pressure, some ten pascal, is left out
 * @source geometry of the sphere; METHOD A9
 */
export function bubbleGrowthArea(
	reading: BubbleGrowthReading,
	line: LineAir
): Result<EffectiveArea> {
	const diameter = checkPositive('bubbleDiameterMm', reading.bubbleDiameterMm);
	if (!diameter.ok) return diameter;
	const seconds = checkPositive('seconds', reading.seconds);
	if (!seconds.ok) return seconds;
	const volume = (Math.PI / 6) * metreFromMillimetre(diameter.value) ** 3;
	const rateCm3PerS = fromSi('volumeFlow', 'cm3/s', volume / seconds.value);
	if (rateCm3PerS > FASTEST_BUBBLE_CM3_PER_S) {
		return refuse('bubble-rate-too-high', {
			rateCm3PerS,
			highestCm3PerS: FASTEST_BUBBLE_CM3_PER_S,
			evidenceInstead: 'soap-response'
		});
	}
	return ok(
		effectiveAreaOf({
			area: areaFromCollectedAir(volume, seconds.value, line),
			basis: 'A9',
			own: reading.relativeUncertainty,
			starting: RELATIVE_UNCERTAINTY,
			reason: `${STARTING}: a diameter judged to 10 %, and a bubble that is not quite a sphere`
		})
	);
}
