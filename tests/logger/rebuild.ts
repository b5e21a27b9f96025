import type { Series } from '#lib/core/logger/series.ts';
import { civilText, daysFromCivil } from '#lib/core/logger/time-stamps.ts';

/** One cycle of a machine as it truly was. */
export interface TrueCycle {
	readonly loadedS: number;
	readonly restS: number;
	readonly fromBar: number;
	readonly toBar: number;
	readonly downToBar: number;
}

/**
 * The first 2 h 45 min of the MetroPT-3 recording, a railway air production unit parked at night.
 * Source: Davari, Veloso, Ribeiro, Gama: MetroPT-3 Dataset, UCI Machine Learning Repository,
 * doi 10.24432/C5VW3R, licence CC BY 4.0; computed from the published rows (verified).
 */
export const METRO_NIGHT: readonly TrueCycle[] = [
	{ loadedS: 109, restS: 1942, fromBar: 8.072, toBar: 10.098, downToBar: 8.064 },
	{ loadedS: 99, restS: 1903, fromBar: 8.064, toBar: 10.066, downToBar: 8.066 },
	{ loadedS: 99, restS: 1923, fromBar: 8.066, toBar: 10.096, downToBar: 8.066 },
	{ loadedS: 99, restS: 1912, fromBar: 8.066, toBar: 10.098, downToBar: 8.068 }
];
/** 1 February 2020, as that recording begins. */
export const METRO_START = daysFromCivil(2020, 2, 1) * 86_400;

/** Numbers from a seed, between 0 and 1. */
export function dice(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
	};
}

export interface Recording {
	readonly cycles: readonly TrueCycle[];
	readonly start: number;
	/** Rows come so often, give or take the jitter. */
	readonly stepS: number;
	readonly jitterS: number;
	/** Standard deviation. */
	readonly noise: number;
	/** Share of the rows that are missing, one by one. */
	readonly lost: number;
	/** What the column shows: the pressure in bar, or a level for loaded, unloaded and off. */
	readonly levels?: { readonly loaded: number; readonly unloaded: number; readonly off?: number };
	/** With an off level: how long the machine runs unloaded before it stops. */
	readonly runOnS?: number;
	readonly seed: number;
}

/** A recording of known cycles, with half a cycle of the same before and after it. */
export function record(recording: Recording): Series & { readonly truth: readonly TrueCycle[] } {
	const { cycles, start, stepS, jitterS, noise, lost, levels, runOnS = 0, seed } = recording;
	const roll = dice(seed);
	const normal = () => Math.sqrt(-2 * Math.log(1 - roll())) * Math.cos(2 * Math.PI * roll());
	const first = cycles[0];
	const last = cycles.at(-1);
	if (!first || !last) throw new RangeError('no cycles');
	const all = [first, ...cycles, last];
	const times: number[] = [];
	const values: number[] = [];
	let cycleStart = start - first.loadedS - first.restS;
	const end = start + cycles.reduce((sum, c) => sum + c.loadedS + c.restS, 0) + 0.8 * last.loadedS;
	let at = 0;
	for (let time = start - first.restS / 2; time < end;) {
		let cycle = all[at];
		while (cycle && time >= cycleStart + cycle.loadedS + cycle.restS) {
			cycleStart += cycle.loadedS + cycle.restS;
			at += 1;
			cycle = all[at];
		}
		if (!cycle) break;
		if (roll() >= lost) {
			times.push(time);
			values.push(shown(cycle, time - cycleStart) + noise * normal());
		}
		time += stepS + (2 * roll() - 1) * jitterS;
	}
	return { times: Float64Array.from(times), values: Float64Array.from(values), truth: cycles };

	function shown(cycle: TrueCycle, into: number): number {
		const rest = into - cycle.loadedS;
		if (levels) {
			if (rest < 0) return levels.loaded;
			return levels.off !== undefined && rest > runOnS ? levels.off : levels.unloaded;
		}
		if (rest < 0) return cycle.fromBar + ((cycle.toBar - cycle.fromBar) * into) / cycle.loadedS;
		// Absolute pressure falls through a choked hole as an exponential.
		const ratio = (cycle.downToBar + 1) / (cycle.toBar + 1);
		return (cycle.toBar + 1) * ratio ** (rest / cycle.restS) - 1;
	}
}

/** The lines of a file for a recording: two columns, ISO stamps, a header. */
export function asFile(series: Series, name: string, digits = 3): string {
	const lines = [`timestamp,${name}`];
	for (let i = 0; i < series.times.length; i++)
		lines.push(
			`${civilText(series.times[i] ?? 0).replace('T', ' ')},${(series.values[i] ?? 0).toFixed(digits)}`
		);
	return `${lines.join('\n')}\n`;
}
