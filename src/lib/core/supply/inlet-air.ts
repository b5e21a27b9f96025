import type { Kelvin, PascalAbsolute } from '../units/quantity.ts';
import { ok, refuse, type Result } from '../units/result.ts';

export interface AirState {
	readonly pressure: PascalAbsolute;
	readonly temperature: Kelvin;
}

/**
 * What a cubic metre of reference air takes up at the compressor's inlet:
 * f = (p_ref / p_in) · (T_in / T_ref).
 *
 * A displacement compressor draws in a volume, so in thin or warm air it delivers less mass for the
 * same power. Every flow in this room is at inlet conditions; flows stated at a reference are
 * multiplied by this factor first, and then altitude and inlet temperature are accounted for.
 * @param reference state that a flow is stated at
 * @param inlet state of the air at the compressor's inlet
 * @returns inlet volume per reference volume, dimensionless
 * @validity dry ideal gas; pressures and temperatures > 0
 * @source ideal-gas law; METHOD S18
 */
export function inletVolumeFactor(reference: AirState, inlet: AirState): Result<number> {
	for (const { pressure, temperature } of [reference, inlet])
		if (!(pressure > 0 && pressure < Infinity && temperature > 0 && temperature < Infinity))
			return refuse('air-state-out-of-range', {
				pressurePaAbsolute: pressure,
				temperatureK: temperature
			});
	return ok((reference.pressure / inlet.pressure) * (inlet.temperature / reference.temperature));
}
