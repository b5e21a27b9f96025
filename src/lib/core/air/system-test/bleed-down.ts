import { GAS_CONSTANT_DRY_AIR } from '../../units/constants.ts';
import type {
	CubicMetre,
	CubicMetrePerSecond,
	Kelvin,
	PascalAbsolute,
	PascalGauge,
	Second,
	SquareMetre
} from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';
import type { Result } from '../../units/result.ts';
import { ok } from '../../units/result.ts';
import { absolutePressure } from '../gas-state.ts';
import { checkPositive, checkTemperature } from '../ranges.ts';
import { bleedIntegral, lowestChokedPressure } from './bleed-integral.ts';
import { pressureAtTemperature } from './pressure-hold.ts';
import type { SystemLeak, TestConditions } from './readings.ts';
import {
	checkConditions,
	checkNotNegative,
	checkPressurePair,
	fluxAt,
	resolutionUncertainty,
	systemLeak
} from './readings.ts';

/** How finely the readings of a receiver test were taken. */
export interface ReceiverResolution {
	/** Smallest step of the pressure gauge that is read, Pa. */
	readonly gaugeResolution: number;
	/** Smallest step of the clock that is read. */
	readonly clockResolution: Second;
	/** Relative standard uncertainty of the volume of receivers and pipes. */
	readonly volumeRelativeUncertainty: number;
}

export interface BleedDownReadings extends ReceiverResolution {
	readonly volume: CubicMetre;
	readonly from: PascalGauge;
	readonly to: PascalGauge;
	readonly duration: Second;
	/** Of the air at the end, where it was read and differs from the line temperature. */
	readonly endTemperature?: Kelvin | undefined;
}

export interface BleedDownLeak {
	/** All the system's leaks as one opening. */
	readonly effectiveArea: SquareMetre;
	/** False: part of the fall was below the choked limit, and that part was integrated. */
	readonly chokedThroughout: boolean;
	/** At the normal set pressure. */
	readonly leak: SystemLeak;
	/** The handbook's figure, free air at the site's pressure, beside ours. */
	readonly handbook: { readonly freeAir: CubicMetrePerSecond; readonly factor: number };
	/** What the handbook's 1.25 would be for this fall through a fixed opening. */
	readonly physicsFactor: number;
}

/** The handbook's correction of the mean flow to the starting pressure. METHOD T4. */
export const HANDBOOK_FACTOR = 1.25;

/**
 * Bleed-down by the handbook: q = V·(p1 − p2)/(t·p_atm)·1.25.
 * @param readings volume m³, gauge pressures Pa, seconds
 * @param ambient the site's pressure, Pa absolute
 * @returns free air at the site's pressure and the tank's temperature, m³/s
 * @validity a fall to about half; 1.25 is exact for a fixed choked opening when the absolute
 * pressure falls by 37 %, and too small for a longer fall
 * @source US DOE / Compressed Air Challenge sourcebook, as quoted widely (read); METHOD T4
 */
export function handbookBleedDown(
	readings: Pick<BleedDownReadings, 'volume' | 'from' | 'to' | 'duration'>,
	ambient: PascalAbsolute
): CubicMetrePerSecond {
	const { volume, from, to, duration } = readings;
	return as<'m³/s'>(((volume * (from - to)) / (duration * ambient)) * HANDBOOK_FACTOR);
}

function checkReadings(readings: BleedDownReadings): Result<true> {
	for (const name of ['volume', 'duration'] as const) {
		const part = checkPositive(name, readings[name]);
		if (!part.ok) return part;
	}
	for (const name of ['gaugeResolution', 'clockResolution', 'volumeRelativeUncertainty'] as const) {
		const part = checkNotNegative(name, readings[name]);
		if (!part.ok) return part;
	}
	if (readings.endTemperature !== undefined) {
		const temperature = checkTemperature(readings.endTemperature, 'tank');
		if (!temperature.ok) return temperature;
	}
	return checkPressurePair(readings.from, readings.to, 'above-zero');
}

/**
 * The system's leak from the fall of its pressure with the supply shut off:
 * A_e = V·I/(R·T·t), which is V·ln(p1/p2)/(0.0404149·R·√T·t) while choked.
 * @param readings volume in m³, gauge pressures in Pa, seconds, how finely they were read
 * @param conditions the site, line temperature (K), set pressure and reference
 * @returns effective area (m²), leak at the set pressure, the handbook's figure beside it, whether
 * the flow was choked all the way; or `pressures-not-apart`, `test-pressure-out-of-range`,
 * `reading-not-positive` and the refusals of the ranges
 * @validity isothermal, a fixed opening, no supply and no production; the leak law may be another,
 * which only a series of readings shows (METHOD T6)
 * @source derived from METHOD A3 and the mass balance of the receiver; METHOD T3, T5, T9
 */
export function bleedDownLeak(
	readings: BleedDownReadings,
	conditions: TestConditions
): Result<BleedDownLeak> {
	const checked = checkConditions(conditions);
	if (!checked.ok) return checked;
	const readable = checkReadings(readings);
	if (!readable.ok) return readable;
	const { site, lineTemperature } = conditions;
	const to =
		readings.endTemperature === undefined
			? readings.to
			: pressureAtTemperature(readings.to, readings.endTemperature, lineTemperature, site);
	const pair = checkPressurePair(readings.from, to, 'above-zero');
	if (!pair.ok) return pair;

	const high = absolutePressure(readings.from, site);
	const low = absolutePressure(to, site);
	const integral = bleedIntegral(high, low, lineTemperature, site);
	const perSecond = readings.volume / (GAS_CONSTANT_DRY_AIR * lineTemperature * readings.duration);
	const effectiveArea = as<'m²'>(perSecond * integral);

	const slownessAtEnds = Math.hypot(
		1 / fluxAt(readings.from, conditions),
		1 / fluxAt(to, conditions)
	);
	const relative = Math.hypot(
		readings.volumeRelativeUncertainty,
		(Math.SQRT2 * resolutionUncertainty(readings.clockResolution)) / readings.duration,
		(resolutionUncertainty(readings.gaugeResolution) * slownessAtEnds) / integral
	);
	const atSet = effectiveArea * fluxAt(conditions.setPressure, conditions);
	return ok({
		effectiveArea,
		chokedThroughout: low >= lowestChokedPressure(site),
		leak: systemLeak(atSet, relative, conditions),
		handbook: { freeAir: handbookBleedDown(readings, site.pressure), factor: HANDBOOK_FACTOR },
		physicsFactor: (fluxAt(readings.from, conditions) * integral) / (high - low)
	});
}
