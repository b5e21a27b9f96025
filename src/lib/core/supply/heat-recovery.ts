import { ok, refuse, type Result } from '../units/result.ts';

/** Heat taken from the compressors and used in place of bought heat. */
export interface HeatRecovery {
	/** Share of the package power that is caught as heat. */
	readonly recoveredFraction: number;
	/** Share of the caught heat that replaces bought heat over the year. */
	readonly usefulFraction: number;
}

/**
 * Heat that replaces bought heat: H = E · r · u.
 *
 * Mending leaks makes less of it. The credit that is lost counts against the saving.
 * @param recovery as entered
 * @param energyKwh energy drawn by the compressors, kWh; negative where a change draws more
 * @returns heat used, kWh
 * @validity fractions 0 to 1
 * @source energy balance; METHOD S15
 */
export function recoveredHeatKwh(recovery: HeatRecovery, energyKwh: number): Result<number> {
	const { recoveredFraction, usefulFraction } = recovery;
	for (const fraction of [recoveredFraction, usefulFraction])
		if (!(fraction >= 0 && fraction <= 1))
			return refuse('heat-recovery-out-of-range', { fraction, least: 0, most: 1 });
	if (!Number.isFinite(energyKwh)) return refuse('energy-out-of-range', { energyKwh });
	return ok(energyKwh * recoveredFraction * usefulFraction);
}
