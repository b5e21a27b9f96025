import { toSi } from '../../units/convert.ts';
import type { Result } from '../../units/result.ts';
import { ok } from '../../units/result.ts';
import type { LineAir } from '../line-air.ts';
import { effectiveAreaForFlow } from '../orifice.ts';
import { checkPositive } from '../ranges.ts';
import type { ReferenceId } from '../reference-air.ts';
import { massFlowOfFreeAir, REFERENCES } from '../reference-air.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { effectiveAreaOf, STARTING } from './effective-area.ts';

export interface MeterReading extends OwnUncertainty {
	readonly kind: 'meter';
	readonly flowLPerS: number;
	/** The air that the meter's litres are stated at; a reading without it means nothing. */
	readonly reference: ReferenceId;
}

/** The meter itself and how it was piped in. */
const RELATIVE_UNCERTAINTY = 0.05;

/**
 * Effective area from a flow meter: ṁ = Q·ρ_ref, A_e = ṁ/G(line).
 * @param reading free air in L/s at its reference
 * @param line the air on both sides of the leak while the meter was read
 * @returns effective area, or `reading-not-positive`
 * @validity a meter inside its range, reading one leak
 * @source definition; METHOD A11
 */
export function meterArea(reading: MeterReading, line: LineAir): Result<EffectiveArea> {
	const flow = checkPositive('flowLPerS', reading.flowLPerS);
	if (!flow.ok) return flow;
	const freeAir = toSi('volumeFlow', 'L/s', flow.value);
	const massFlow = massFlowOfFreeAir(freeAir, reading.reference, line.site);
	return ok(
		effectiveAreaOf({
			area: effectiveAreaForFlow(massFlow, line),
			basis: 'A11',
			own: reading.relativeUncertainty,
			starting: RELATIVE_UNCERTAINTY,
			reason: `${STARTING}: a meter inside its range, as piped in`,
			choices: [
				{
					name: 'reference-density',
					value: massFlow / freeAir,
					unit: 'kg/m³',
					source: REFERENCES[reading.reference].label
				}
			]
		})
	);
}
