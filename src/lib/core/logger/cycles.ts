import { ok, refuse, type Result } from '../units/result.ts';
import type { ColumnKind } from './column-kinds.ts';
import { findLevels, findRuns, type Levels, type Run } from './levels.ts';
import { findTurns, type Turn } from './saw-tooth.ts';
import { median, quantile, type Series } from './series.ts';

/** One load and what follows it until the next. */
export interface LoggerCycle {
	/** On the recording's own clock. */
	readonly start: number;
	readonly loadedS: number;
	readonly unloadedS: number;
	/** Time stopped, where the recording tells it from unloaded. */
	readonly offS: number;
	/** Where loading began, where it ended, and where the next one began; of a pressure only. */
	readonly fromBar?: number;
	readonly toBar?: number;
	readonly downToBar?: number;
}

export interface FoundCycles {
	readonly cycles: readonly LoggerCycle[];
	/** Usual time between rows. */
	readonly sampleS: number;
	readonly gaps: number;
	/** Samples that are missing in those gaps. */
	readonly missingSamples: number;
	/** Cycles left out: with a gap in them, followed by a long stop, or with a swing of another size. */
	readonly leftOut: {
		readonly withGap: number;
		readonly stayedOff: number;
		readonly irregular: number;
	};
	/** Of a pressure: standard deviation of the noise and usual swing, bar. */
	readonly noiseBar?: number;
	readonly swingBar?: number;
	/** Of the other kinds: what the machine's states were told by. */
	readonly levels?: Levels;
}

/** Rows further apart than so many usual steps have a gap between them. */
const GAP_STEPS = 6;
/** A swing between these shares of the usual one is a cycle of the machine. */
const SWING_SHARES = { least: 0.5, most: 1.6 } as const;
const LONG_STOP_S = 2 * 3600;
const LONG_STOP_TIMES = 5;

/**
 * Finds the load and unload cycles in a recording: of a pressure by its turning points, of a power, a
 * current or a signal by its levels. Only whole cycles count, and none with a gap, a long stop or a
 * swing of another size. METHOD T11.
 *
 * @returns the cycles in order, or `logger-no-cycles`
 */
export function findCycles(series: Series, kind: ColumnKind): Result<FoundCycles> {
	const sampleS = usualStep(series);
	const gaps = findGaps(series, sampleS);
	const shared = {
		sampleS,
		gaps: gaps.length,
		missingSamples: gaps.reduce((sum, { missing }) => sum + missing, 0)
	};
	if (kind === 'pressure') {
		const { turns, swing, noise } = findTurns(series);
		const candidates = cyclesOfTurns(turns);
		const regular = candidates.filter((cycle) => isRegular(cycle, swing));
		return sorted(regular, candidates.length - regular.length, gaps, {
			...shared,
			noiseBar: noise,
			swingBar: swing
		});
	}
	const levels = findLevels(series, kind);
	if (!levels) return refuse('logger-no-cycles');
	return sorted(cyclesOfRuns(series, findRuns(series, levels)), 0, gaps, { ...shared, levels });
}

interface Gap {
	readonly from: number;
	readonly to: number;
	readonly missing: number;
}

function usualStep({ times }: Series): number {
	const steps: number[] = [];
	const every = Math.max(1, Math.floor(times.length / 20_000));
	for (let i = 1; i < times.length; i += every) steps.push(times[i]! - times[i - 1]!);
	return median(steps);
}

function findGaps({ times }: Series, sampleS: number): readonly Gap[] {
	const gaps: Gap[] = [];
	for (let i = 1; i < times.length; i++) {
		const step = times[i]! - times[i - 1]!;
		if (step > GAP_STEPS * sampleS)
			gaps.push({
				from: times[i - 1]!,
				to: times[i]!,
				missing: Math.round(step / sampleS) - 1
			});
	}
	return gaps;
}

function cyclesOfTurns(turns: readonly Turn[]): LoggerCycle[] {
	const cycles: LoggerCycle[] = [];
	for (const [at, low] of turns.entries()) {
		const high = turns[at + 1];
		const next = turns[at + 2];
		if (low.high || !high || !next) continue;
		cycles.push({
			start: low.time,
			loadedS: high.time - low.time,
			unloadedS: next.time - high.time,
			offS: 0,
			fromBar: low.value,
			toBar: high.value,
			downToBar: next.value
		});
	}
	return cycles;
}

/** A machine that was off for long fills the system from far below, and leaves it far below. */
function isRegular({ fromBar = 0, toBar = 0, downToBar = 0 }: LoggerCycle, swing: number): boolean {
	return [toBar - fromBar, toBar - downToBar].every(
		(change) => change >= SWING_SHARES.least * swing && change <= SWING_SHARES.most * swing
	);
}

function cyclesOfRuns({ times }: Series, runs: readonly Run[]): LoggerCycle[] {
	/** The state changed at some time between two samples. */
	const began = ({ first }: Run): number => (times[first]! + times[Math.max(0, first - 1)]!) / 2;
	const loads = runs.flatMap((run, at) => (run.state === 'loaded' && run.first > 0 ? [at] : []));
	const cycles: LoggerCycle[] = [];
	for (const [place, at] of loads.entries()) {
		const next = loads[place + 1];
		if (next === undefined) break;
		const spent = { loaded: 0, unloaded: 0, off: 0 };
		for (let i = at; i < next; i++) {
			const run = runs[i];
			const after = runs[i + 1];
			if (run && after) spent[run.state] += began(after) - began(run);
		}
		const load = runs[at];
		if (load)
			cycles.push({
				start: began(load),
				loadedS: spent.loaded,
				unloadedS: spent.unloaded,
				offS: spent.off
			});
	}
	return cycles;
}

/** Leaves out what has a gap in it or a long stop behind it. */
function sorted(
	candidates: readonly LoggerCycle[],
	irregular: number,
	gaps: readonly Gap[],
	rest: Omit<FoundCycles, 'cycles' | 'leftOut'>
): Result<FoundCycles> {
	const longest = longestRest(candidates);
	const cycles: LoggerCycle[] = [];
	let withGap = 0;
	let stayedOff = 0;
	let gap = 0;
	for (const cycle of candidates) {
		const end = cycle.start + wholeOf(cycle);
		while (gap < gaps.length && gaps[gap]!.to <= cycle.start) gap += 1;
		if (gap < gaps.length && gaps[gap]!.from < end) withGap += 1;
		else if (cycle.unloadedS + cycle.offS > longest) stayedOff += 1;
		else cycles.push(cycle);
	}
	if (cycles.length === 0) return refuse('logger-no-cycles');
	return ok({ ...rest, cycles, leftOut: { withGap, stayedOff, irregular } });
}

/** Beyond two hours, and five times what time is usually spent in, a machine was switched off. */
function longestRest(cycles: readonly LoggerCycle[]): number {
	const usual = cycles
		.map(({ unloadedS, offS }) => unloadedS + offS)
		.filter((rest) => rest <= LONG_STOP_S)
		.sort((a, b) => a - b);
	if (usual.length === 0) return Infinity;
	const half = usual.reduce((sum, rest) => sum + rest, 0) / 2;
	let sum = 0;
	const middle = usual.find((rest) => (sum += rest) >= half) ?? quantile(usual, 0.5);
	return Math.max(LONG_STOP_S, LONG_STOP_TIMES * middle);
}

/** Loaded and not, seconds. */
export function wholeOf({ loadedS, unloadedS, offS }: LoggerCycle): number {
	return loadedS + unloadedS + offS;
}
