import { effectiveArea, type Evidence, type EvidenceConditions } from '#lib/core/air/evidence.ts';
import type { EffectiveArea } from '#lib/core/air/evidence/effective-area.ts';
import { leakFlow } from '#lib/core/air/leak-flow.ts';
import { gaugeFromBar, kelvinFromCelsius } from '#lib/core/units/convert.ts';
import { as } from '#lib/core/units/quantity.ts';

const site = { pressure: as<'Pa absolute'>(101_325), temperature: kelvinFromCelsius(20) };
export const conditions: EvidenceConditions = {
	linePressure: gaugeFromBar(7),
	lineTemperature: kelvinFromCelsius(20),
	site,
	soapBands: {}
};

export function area(evidence: Evidence, at: EvidenceConditions = conditions): EffectiveArea {
	const result = effectiveArea(evidence, at);
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

/** The code of the refusal, or that it is accepted. */
export function code(evidence: Evidence, at: EvidenceConditions = conditions): string {
	const result = effectiveArea(evidence, at);
	return result.ok ? 'accepted' : result.error.code;
}

export function flow(evidence: Evidence, at: EvidenceConditions = conditions): number {
	const result = leakFlow(evidence, { ...at, reference: 'iso-1217' });
	if (!result.ok) throw new Error(result.error.code);
	return result.value.massFlow;
}
