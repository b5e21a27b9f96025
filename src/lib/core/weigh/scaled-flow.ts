import type { LeakFlow } from '../air/leak-flow.ts';
import type { EvidenceKind } from '../survey/evidence-schema.ts';
import { as } from '../units/quantity.ts';

/** Kinds that measure the flow itself: the gauge has no part in it, and a test does not correct them. */
export const FLOW_KINDS: ReadonlySet<EvidenceKind> = new Set(['bubble-growth', 'bag', 'meter']);

/**
 * A leak's flow after the estimates were scaled to a system test: its effective area times the factor.
 *
 * @param flow as the evidence gives it
 * @param factor that the user took over from a system test
 * @returns the scaled flow; its uncertainty stays as it was
 * @validity flows that were estimated; one that was caught or metered is not scaled
 * @source derived; METHOD W12
 */
export function scaledFlow(flow: LeakFlow, factor: number): LeakFlow {
	return {
		...flow,
		area: { ...flow.area, areaM2: as<'m²'>(flow.area.areaM2 * factor) },
		massFlow: as<'kg/s'>(flow.massFlow * factor),
		freeAir: as<'m³/s'>(flow.freeAir * factor)
	};
}
