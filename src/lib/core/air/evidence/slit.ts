import { metreFromMillimetre } from '../../units/convert.ts';
import type { Result } from '../../units/result.ts';
import type { Edge } from '../edge-coefficient.ts';
import { checkPositive } from '../ranges.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { openingArea } from './opening.ts';

export interface SlitReading extends OwnUncertainty {
	readonly kind: 'slit';
	readonly lengthMm: number;
	readonly widthMm: number;
	readonly edge: Edge;
}

/** Length judged to 10 %, width to 40 %: our starting value. */
const GEOMETRY_UNCERTAINTY = Math.hypot(0.1, 0.4);

/**
 * Effective area of a slit, such as a cracked hose or a worn seal: A_e = C_d·length·width.
 * @param reading length and width in mm, and edge
 * @returns effective area, or `reading-not-positive`
 * @validity width small against length, and the opening small against the pipe
 * @source geometry; METHOD A8
 */
export function slitArea(reading: SlitReading): Result<EffectiveArea> {
	const length = checkPositive('lengthMm', reading.lengthMm);
	if (!length.ok) return length;
	const width = checkPositive('widthMm', reading.widthMm);
	if (!width.ok) return width;
	return openingArea({
		areaM2: metreFromMillimetre(length.value) * metreFromMillimetre(width.value),
		edge: reading.edge,
		own: reading.relativeUncertainty,
		geometryUncertainty: GEOMETRY_UNCERTAINTY,
		reason: 'our starting value: length judged to 10 %, width to 40 %, and the edge'
	});
}
