import type { CubicMetrePerSecond, KilogramPerSecond } from '../units/quantity.ts';
import { as } from '../units/quantity.ts';
import type { Result } from '../units/result.ts';
import { ok } from '../units/result.ts';
import type { Duty } from './duty.ts';
import { dutyFactor } from './duty.ts';
import type { Evidence, EvidenceConditions } from './evidence.ts';
import { effectiveAreaAt } from './evidence.ts';
import type { EffectiveArea } from './evidence/effective-area.ts';
import { conductanceFlow } from './iso-6358.ts';
import { lineAir } from './line-air.ts';
import type { AirStates, Flow, Regime } from './orifice.ts';
import { orificeFlow } from './orifice.ts';
import type { ReferenceId } from './reference-air.ts';
import { freeAirFlow } from './reference-air.ts';

/**
 * Flow through an effective area while it is open: by METHOD A12 where the evidence came with a
 * critical ratio, else by METHOD A3.
 * @param opening effective area in m², and b where there is one
 * @param states absolute pressures in Pa, temperature in K
 * @returns mass flow, kg/s, and whether it is choked
 * @validity as `massFlux`
 * @source as `orificeFlow` and `conductanceFlow`; METHOD A14
 */
export function flowThrough(
	opening: Pick<EffectiveArea, 'areaM2' | 'criticalRatio'>,
	states: AirStates
): Flow {
	const { areaM2, criticalRatio } = opening;
	const { upstream, upstreamTemperature, downstream } = states;
	const parts = { effectiveArea: areaM2, upstream, upstreamTemperature, downstream };
	if (criticalRatio === undefined) return orificeFlow(parts);
	return conductanceFlow({ ...parts, criticalRatio });
}

export interface LeakFlow {
	readonly area: EffectiveArea;
	readonly dutyFactor: number;
	/** Mean over open and shut. */
	readonly massFlow: KilogramPerSecond;
	/** Mean over open and shut, at `reference`. */
	readonly freeAir: CubicMetrePerSecond;
	readonly reference: ReferenceId;
	/** While it is open. */
	readonly regime: Regime;
}

/**
 * What a leak loses while its section is under pressure: ṁ = duty·ṁ(A_e, line), Q = ṁ/ρ_ref.
 * @param evidence what was seen of it
 * @param conditions its line, the site's air and soap bands, the reference of free air, its duty
 * @returns mean mass flow (kg/s) and free air (m³/s), or the refusals of `effectiveArea`,
 * `duty-unreadable`
 * @validity the ranges of METHOD A15
 * @source METHOD A14
 */
export function leakFlow(
	evidence: Evidence,
	conditions: EvidenceConditions & {
		readonly reference: ReferenceId;
		readonly duty?: Duty | undefined;
	}
): Result<LeakFlow> {
	const line = lineAir(conditions);
	if (!line.ok) return line;
	const area = effectiveAreaAt(evidence, line.value, conditions.soapBands);
	if (!area.ok) return area;
	const duty = dutyFactor(conditions.duty);
	if (!duty.ok) return duty;
	const flow = flowThrough(area.value, line.value);
	const massFlow = as<'kg/s'>(duty.value * flow.massFlow);
	return ok({
		area: area.value,
		dutyFactor: duty.value,
		massFlow,
		freeAir: freeAirFlow(massFlow, conditions.reference, conditions.site),
		reference: conditions.reference,
		regime: flow.regime
	});
}
