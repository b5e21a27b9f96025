import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import { areaOfConductance } from '../iso-6358.ts';
import { checkPositive } from '../ranges.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { effectiveAreaOf, STARTING } from './effective-area.ts';

export interface CatalogueReading extends OwnUncertainty {
	readonly kind: 'catalogue';
	/** Sonic conductance C of ISO 6358, dm³/(s·bar). */
	readonly cDm3PerSBar: number;
	/** Critical pressure ratio b of ISO 6358. */
	readonly b: number;
}

/** Pieces of one type differ, and one left open in a plant is seldom as new. */
const RELATIVE_UNCERTAINTY = 0.1;

/**
 * Effective area of a component from its catalogue: A_e = C·ρ0·√T0/0.0404149; b is kept with it.
 * @param reading C in dm³/(s·bar) and b
 * @returns effective area with its critical ratio, or `reading-not-positive`,
 * `critical-ratio-out-of-range`
 * @validity 0 ≤ b < 1; the component fully open
 * @source derived from ISO 6358; METHOD A12
 */
export function catalogueArea(reading: CatalogueReading): Result<EffectiveArea> {
	const conductance = checkPositive('cDm3PerSBar', reading.cDm3PerSBar);
	if (!conductance.ok) return conductance;
	if (!(reading.b >= 0 && reading.b < 1)) {
		return refuse('critical-ratio-out-of-range', { b: String(reading.b), lowest: 0, below: 1 });
	}
	return ok({
		...effectiveAreaOf({
			area: areaOfConductance(conductance.value),
			basis: 'A12',
			own: reading.relativeUncertainty,
			starting: RELATIVE_UNCERTAINTY,
			reason: `${STARTING}: spread between pieces, and wear`
		}),
		criticalRatio: reading.b
	});
}
