import type { LeakFlow } from '../../air/leak-flow.ts';
import { flowThrough } from '../../air/leak-flow.ts';
import { lineAir } from '../../air/line-air.ts';
import type { SiteAir } from '../../air/gas-state.ts';
import type { EvidenceKind } from '../../survey/evidence-schema.ts';
import { gaugeFromBar } from '../../units/convert.ts';
import { as } from '../../units/quantity.ts';
import { ok, type Result } from '../../units/result.ts';
import { FLOW_KINDS } from '../scaled-flow.ts';
import type { WeighedLeak } from '../weigh-leak.ts';
import type { ReadySharedErrors } from './shared-errors.ts';

/** Kinds of evidence, in the order of their shared errors. */
export const KINDS = [
	'hole',
	'slit',
	'thread-gap',
	'bubble-growth',
	'soap-response',
	'bag',
	'meter',
	'catalogue'
] as const satisfies readonly EvidenceKind[];

/** What a leak's flow is multiplied by: e^(own·z + method·b[kind] + gauge·g), z, b, g standard normal. */
export interface LeakErrors {
	/** Place in `KINDS`. */
	readonly kind: number;
	readonly own: number;
	readonly method: number;
	readonly gauge: number;
	/** Standard deviation of the logarithm, all three together. */
	readonly whole: number;
}

/**
 * The errors of one leak's flow. The method's shared error is never larger than the reading's own
 * uncertainty: who states a reading well has not got it by the method's guess. METHOD W6.
 *
 * @returns loadings of the logarithm, or a refusal of the pressure range
 */
export function leakErrors(
	leak: WeighedLeak,
	errors: ReadySharedErrors,
	air: SiteAir
): Result<LeakErrors> {
	const kind = leak.sighting.evidence?.kind ?? 'soap-response';
	const own = leak.flow.area.relativeStandardUncertainty;
	const method = Math.min(errors.methods[kind], own);
	let gauge = 0;
	if (!FLOW_KINDS.has(kind)) {
		const perBar = pressureSensitivity(leak.flow, leak.pressure.value, air);
		if (!perBar.ok) return perBar;
		gauge = perBar.value * errors.gaugeBar;
	}
	return ok({
		kind: KINDS.indexOf(kind),
		own,
		method,
		gauge,
		whole: Math.hypot(own, method, gauge)
	});
}

const HALF_STEP_BAR = 0.01;

/**
 * How much the logarithm of a flow rises with the line pressure: ∂ln ṁ/∂p; while choked 1/p₁.
 * @param flow of the leak
 * @param barGauge line pressure
 * @returns per bar, or a refusal of the pressure range
 * @validity METHOD A15
 * @source derived from METHOD A3 and A12 by a difference of 0.02 bar; METHOD W6
 */
function pressureSensitivity(flow: LeakFlow, barGauge: number, air: SiteAir): Result<number> {
	const line = lineAir({
		linePressure: gaugeFromBar(barGauge),
		lineTemperature: air.temperature,
		site: air
	});
	if (!line.ok) return line;
	const at = (stepBar: number): number =>
		flowThrough(flow.area, {
			...line.value,
			upstream: as<'Pa absolute'>(line.value.upstream + gaugeFromBar(stepBar))
		}).massFlow;
	return ok(Math.log(at(HALF_STEP_BAR) / at(-HALF_STEP_BAR)) / (2 * HALF_STEP_BAR));
}
