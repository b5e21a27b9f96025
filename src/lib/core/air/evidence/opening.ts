import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import type { DischargeCoefficient, Edge } from '../edge-coefficient.ts';
import { EDGE_COEFFICIENTS } from '../edge-coefficient.ts';
import type { EffectiveArea } from './effective-area.ts';
import { effectiveAreaOf } from './effective-area.ts';

function coefficientFor(edge: Edge, entered: number | undefined): Result<DischargeCoefficient> {
	if (entered === undefined) return ok(EDGE_COEFFICIENTS[edge]);
	if (!(entered > 0 && entered <= 1)) {
		return refuse('coefficient-out-of-range', {
			coefficient: String(entered),
			above: 0,
			highest: 1
		});
	}
	return ok({
		central: entered,
		lowest: entered,
		highest: entered,
		relativeStandardUncertainty: 0,
		source: 'entered by the user'
	});
}

/**
 * Effective area of an opening whose shape was measured or judged: A_e = C_d·A.
 * @param opening `areaM2` geometric area, m²; `edge`; `coefficient` in place of the edge's;
 * `geometryUncertainty` relative standard uncertainty of the area and why it is that
 * @returns the effective area, its uncertainty the geometry's and the coefficient's in quadrature,
 * or `coefficient-out-of-range`
 * @validity any opening small against the pipe it sits in
 * @source definition of the discharge coefficient; METHOD A7, A8
 */
export function openingArea(opening: {
	readonly areaM2: number;
	readonly edge: Edge;
	readonly coefficient?: number | undefined;
	readonly own: number | undefined;
	readonly geometryUncertainty: number;
	readonly reason: string;
}): Result<EffectiveArea> {
	const coefficient = coefficientFor(opening.edge, opening.coefficient);
	if (!coefficient.ok) return coefficient;
	const { central, relativeStandardUncertainty, source } = coefficient.value;
	return ok(
		effectiveAreaOf({
			area: central * opening.areaM2,
			basis: 'A8',
			own: opening.own,
			starting: Math.hypot(opening.geometryUncertainty, relativeStandardUncertainty),
			reason: opening.reason,
			choices: [{ name: 'discharge-coefficient', value: central, unit: '', source }]
		})
	);
}
