import { ok, refuse, type Result } from '../units/result.ts';

/** Air that a desiccant dryer blows away to dry its own bed. */
export type DryerPurge =
	| { readonly kind: 'none' }
	/** The same flow whenever the supply is on: a share of what the dryer is rated for. */
	| {
			readonly kind: 'share-of-capacity';
			readonly fraction: number;
			readonly ratedM3PerMin: number;
	  }
	/** A purge that follows the load: a share of what enters the dryer. */
	| { readonly kind: 'share-of-flow'; readonly fraction: number };

/**
 * Says whether a purge can be computed with.
 * @param purge as entered
 * @returns the purge itself
 * @validity fraction ≥ 0 and < 1; rated flow ≥ 0
 * @source METHOD S14
 */
export function checkPurge(purge: DryerPurge): Result<DryerPurge> {
	if (purge.kind === 'none') return ok(purge);
	if (!(purge.fraction >= 0 && purge.fraction < 1))
		return refuse('purge-out-of-range', { fraction: purge.fraction, least: 0, below: 1 });
	if (
		purge.kind === 'share-of-capacity' &&
		!(purge.ratedM3PerMin >= 0 && purge.ratedM3PerMin < Infinity)
	)
		return refuse('flow-out-of-range', { flowM3PerMin: purge.ratedM3PerMin, least: 0 });
	return ok(purge);
}

/**
 * Flow the compressors deliver for a flow that leaves the dryer: q + φ·Q_rated, or q / (1 − φ).
 * @param purge checked
 * @param plantM3PerMin flow that leaves the dryer, m³/min
 * @returns flow that the compressors deliver, m³/min
 * @validity flow ≥ 0
 * @source mass balance of the dryer; METHOD S14
 */
export function deliveredFlow(purge: DryerPurge, plantM3PerMin: number): number {
	switch (purge.kind) {
		case 'none':
			return plantM3PerMin;
		case 'share-of-capacity':
			return plantM3PerMin + purge.fraction * purge.ratedM3PerMin;
		case 'share-of-flow':
			return plantM3PerMin / (1 - purge.fraction);
	}
}

/**
 * Flow that leaves the dryer; the inverse of `deliveredFlow`.
 * @param purge checked
 * @param deliveredM3PerMin flow that the compressors deliver, m³/min
 * @returns flow to the plant, m³/min; negative where the purge alone is more than is delivered
 * @validity flow ≥ 0
 * @source mass balance of the dryer; METHOD S14
 */
export function plantFlow(purge: DryerPurge, deliveredM3PerMin: number): number {
	switch (purge.kind) {
		case 'none':
			return deliveredM3PerMin;
		case 'share-of-capacity':
			return deliveredM3PerMin - purge.fraction * purge.ratedM3PerMin;
		case 'share-of-flow':
			return deliveredM3PerMin * (1 - purge.fraction);
	}
}
