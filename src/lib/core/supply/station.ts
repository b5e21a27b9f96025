import { toSi } from '../units/convert.ts';
import { as, type PascalAbsolute } from '../units/quantity.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import { checkCompressor } from './check-compressor.ts';
import type { Compressor } from './compressor.ts';
import { workFactor } from './isentropic.ts';
import { storedFreeAir } from './receiver.ts';

/** The compressors in the order they are started, and what stores their air. */
export interface Station {
	readonly compressors: readonly Compressor[];
	/** The machine that takes the varying part; null: whichever was started last. */
	readonly trimId: string | null;
	readonly receiverVolumeM3: number;
	readonly pipingVolumeM3: number;
}

/** A station whose figures have been checked, at a site. */
export interface ReadyStation {
	readonly compressors: readonly Compressor[];
	/** Place of the named trim machine in `compressors`; −1 where none is named. */
	readonly namedTrim: number;
	readonly capacityM3PerMin: number;
	readonly storedM3PerBar: number;
	readonly inlet: PascalAbsolute;
}

/**
 * Checks a station and works out what does not depend on the demand.
 * @param station as entered
 * @param inlet absolute pressure of the air at the compressors' inlets, Pa
 * @returns the station, ready to compute with
 * @validity at least one compressor, each within its own ranges; volumes ≥ 0
 * @source METHOD S5, S10
 */
export function readyStation(station: Station, inlet: PascalAbsolute): Result<ReadyStation> {
	const { compressors, trimId, receiverVolumeM3, pipingVolumeM3 } = station;
	if (compressors.length === 0) return refuse('station-has-no-compressor');
	const seen = new Set<string>();
	for (const compressor of compressors) {
		const checked = checkCompressor(compressor);
		if (!checked.ok) return checked;
		if (seen.has(compressor.id)) return refuse('compressor-twice', { id: compressor.id });
		seen.add(compressor.id);
	}
	const namedTrim = compressors.findIndex(({ id }) => id === trimId);
	if (trimId !== null && namedTrim < 0) return refuse('trim-unknown', { trimId });
	const volume = as<'m³'>(receiverVolumeM3 + pipingVolumeM3);
	const perBar = storedFreeAir(volume, toSi('pressure', 'bar', 1), inlet);
	if (!perBar.ok) return perBar;
	return ok({
		compressors,
		namedTrim,
		capacityM3PerMin: compressors.reduce((sum, { capacityM3PerMin }) => sum + capacityM3PerMin, 0),
		storedM3PerBar: perBar.value,
		inlet
	});
}

/**
 * Compression work of a machine at a set pressure over that at its rated pressure.
 * @param station checked
 * @param compressor one of its machines
 * @param setPressureBarGauge set pressure, bar gauge, > 0
 * @returns factor on the power while compressing
 * @validity set pressure > 0, within a bar or so of the rated one
 * @source METHOD S3
 */
export function factorAt(
	{ inlet }: ReadyStation,
	{ ratedPressureBarGauge }: Compressor,
	setPressureBarGauge: number
): number {
	if (setPressureBarGauge === ratedPressureBarGauge) return 1;
	const absolute = (barGauge: number): PascalAbsolute =>
		as<'Pa absolute'>(inlet + toSi('pressure', 'bar', barGauge));
	return workFactor(inlet, absolute(ratedPressureBarGauge), absolute(setPressureBarGauge));
}
