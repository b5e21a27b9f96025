import { metreFromMillimetre } from '../../units/convert.ts';
import type { Result } from '../../units/result.ts';
import type { Edge } from '../edge-coefficient.ts';
import { checkPositive } from '../ranges.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { openingArea } from './opening.ts';

export interface ThreadGapReading extends OwnUncertainty {
	readonly kind: 'thread-gap';
	readonly threadDiameterMm: number;
	readonly gapMm: number;
	readonly edge: Edge;
}

/** The gap is judged, not measured, and seldom runs all the way round: our starting value. */
const GEOMETRY_UNCERTAINTY = 0.5;

/**
 * Effective area of the ring between a loose thread and its seat: A_e = C_d·π·D·gap.
 * @param reading thread diameter and gap in mm, and edge
 * @returns effective area, or `reading-not-positive`
 * @validity gap small against the diameter; a long thread path passes less than this
 * @source geometry; METHOD A8
 */
export function threadGapArea(reading: ThreadGapReading): Result<EffectiveArea> {
	const diameter = checkPositive('threadDiameterMm', reading.threadDiameterMm);
	if (!diameter.ok) return diameter;
	const gap = checkPositive('gapMm', reading.gapMm);
	if (!gap.ok) return gap;
	return openingArea({
		areaM2: Math.PI * metreFromMillimetre(diameter.value) * metreFromMillimetre(gap.value),
		edge: reading.edge,
		own: reading.relativeUncertainty,
		geometryUncertainty: GEOMETRY_UNCERTAINTY,
		reason: 'our starting value: a gap judged to 50 %, and the edge'
	});
}
