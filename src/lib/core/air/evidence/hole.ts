import { metreFromMillimetre } from '../../units/convert.ts';
import type { Result } from '../../units/result.ts';
import type { Edge } from '../edge-coefficient.ts';
import { checkPositive } from '../ranges.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { openingArea } from './opening.ts';

export interface HoleReading extends OwnUncertainty {
	readonly kind: 'hole';
	readonly diameterMm: number;
	readonly edge: Edge;
	/** A known discharge coefficient in place of the edge's. */
	readonly coefficient?: number | undefined;
}

/** A diameter judged by eye is good to about 20 %, so the area to 40 %: our starting value. */
const GEOMETRY_UNCERTAINTY = 0.4;

/**
 * Effective area of a round hole: A_e = C_d·π·d²/4.
 * @param reading diameter in mm and edge
 * @returns effective area, or `reading-not-positive`, `coefficient-out-of-range`
 * @validity a hole small against the pipe it sits in
 * @source geometry; METHOD A8
 */
export function holeArea(reading: HoleReading): Result<EffectiveArea> {
	const diameter = checkPositive('diameterMm', reading.diameterMm);
	if (!diameter.ok) return diameter;
	return openingArea({
		areaM2: (Math.PI / 4) * metreFromMillimetre(diameter.value) ** 2,
		edge: reading.edge,
		coefficient: reading.coefficient,
		own: reading.relativeUncertainty,
		geometryUncertainty: GEOMETRY_UNCERTAINTY,
		reason: 'our starting value: a diameter judged by eye to 20 %, and the edge'
	});
}
