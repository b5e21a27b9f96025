import { ok, refuse, type Result } from '../units/result.ts';

/** An emission factor never travels without its year and its source; both are printed. */
export interface EmissionFactor {
	readonly kgCo2ePerKwh: number;
	readonly year: number;
	readonly source: string;
}

/**
 * Greenhouse gas that goes with electricity: m = E · f.
 * @param energyKwh energy, kWh; negative where a change costs more instead of less
 * @param factor kg CO₂e per kWh, with its year and source
 * @returns mass, kg CO₂e
 * @validity finite; factor ≥ 0, source not blank
 * @source definition; METHOD M6
 */
export function carbonKg(energyKwh: number, factor: EmissionFactor): Result<number> {
	if (!Number.isFinite(energyKwh)) return refuse('energy-out-of-range', { energyKwh });
	if (!(factor.kgCo2ePerKwh >= 0 && factor.kgCo2ePerKwh < Infinity))
		return refuse('emission-factor-out-of-range', { kgCo2ePerKwh: factor.kgCo2ePerKwh, least: 0 });
	if (factor.source.trim() === '') return refuse('emission-factor-without-source');
	return ok(energyKwh * factor.kgCo2ePerKwh);
}
