import { as, type CubicMetre, type Joule, type PascalAbsolute } from '../units/quantity.ts';
import { ok, refuse, type Result } from '../units/result.ts';

/**
 * Free air that a volume takes in or gives out over a pressure band: S = V · Δp / p₁.
 * @param volume receivers and piping between compressor and load, m³
 * @param bandPa pressure between cut-in and cut-out, Pa
 * @param inlet absolute pressure of the free air, Pa
 * @returns free air at inlet conditions, m³
 * @validity volume ≥ 0, band ≥ 0, p₁ > 0; air in the receiver at inlet temperature
 * @source ideal-gas law at constant temperature; METHOD S5
 */
export function storedFreeAir(
	volume: CubicMetre,
	bandPa: number,
	inlet: PascalAbsolute
): Result<CubicMetre> {
	if (!(volume >= 0 && volume < Infinity))
		return refuse('volume-out-of-range', { volumeM3: volume, least: 0 });
	if (!(bandPa >= 0 && bandPa < Infinity))
		return refuse('pressure-band-out-of-range', { bandPa, least: 0 });
	if (!(inlet > 0 && inlet < Infinity))
		return refuse('pressure-out-of-range', { pressurePaAbsolute: inlet, above: 0 });
	return ok(as<'m³'>((volume * bandPa) / inlet));
}

/**
 * Work that the air in a vessel could do on its way to ambient pressure, at ambient temperature:
 * W = V · (p·ln(p/p₁) − (p − p₁)).
 *
 * It is what a burst or a loosened fitting can set free at most, and why a section is vented first.
 * @param volume vessel volume, m³
 * @param pressure absolute pressure in the vessel, Pa
 * @param ambient absolute ambient pressure, Pa
 * @returns work, J
 * @validity volume ≥ 0; p ≥ p₁ > 0
 * @source availability of an ideal gas at ambient temperature; METHOD S5
 */
export function storedEnergy(
	volume: CubicMetre,
	pressure: PascalAbsolute,
	ambient: PascalAbsolute
): Result<Joule> {
	if (!(volume >= 0 && volume < Infinity))
		return refuse('volume-out-of-range', { volumeM3: volume, least: 0 });
	if (!(ambient > 0 && pressure >= ambient && pressure < Infinity))
		return refuse('pressure-out-of-range', {
			pressurePaAbsolute: pressure,
			leastPaAbsolute: ambient
		});
	return ok(as<'J'>(volume * (pressure * Math.log(pressure / ambient) - (pressure - ambient))));
}
