import type { ColumnKind } from './column-kinds.ts';
import { quantile, sortedSample, type Series } from './series.ts';

export type MachineState = 'loaded' | 'unloaded' | 'off';

/** The levels that a power, a current or a signal stands at. */
export interface Levels {
	readonly states: readonly MachineState[];
	/** Means of the levels, rising, in the file's own unit. */
	readonly means: readonly number[];
}

const BINS = 256;
/** Levels lie apart by so many of their own widths: a single hump cut in two does by 2.7. */
const APART = 4;
const LEAST_SHARE = 0.003;
/** Below this share of the loaded level a machine is off, not unloaded. Our starting value. */
const OFF_BELOW = 0.1;

interface Histogram {
	readonly low: number;
	readonly width: number;
	readonly count: Float64Array;
	readonly sum: Float64Array;
	readonly squares: Float64Array;
}

/**
 * Finds the two or three levels of a recording by the cuts that leave least spread within them
 * (Otsu). METHOD T11.
 *
 * @returns the levels, or nothing where there is one level or none stand apart
 */
export function findLevels({ values }: Series, kind: ColumnKind): Levels | undefined {
	const sorted = sortedSample(values);
	const low = quantile(sorted, 0.0005);
	const high = quantile(sorted, 0.9995);
	if (!(high > low)) return undefined;
	const histogram = histogramOf(sorted, low, high);
	const three =
		kind === 'load-signal' ? undefined : standingApart(histogram, bestTwoCuts(histogram));
	const means = three ?? standingApart(histogram, [bestCut(histogram, 0, BINS)]);
	if (!means) return undefined;
	const [first = 0] = means;
	const last = means.at(-1) ?? 0;
	const hasOff = kind !== 'load-signal' && first < OFF_BELOW * last;
	if (means.length === 2) return { means, states: [hasOff ? 'off' : 'unloaded', 'loaded'] };
	return { means, states: [hasOff ? 'off' : 'unloaded', 'unloaded', 'loaded'] };
}

function histogramOf(sorted: Float64Array, low: number, high: number): Histogram {
	const width = (high - low) / BINS;
	const count = new Float64Array(BINS + 1);
	const sum = new Float64Array(BINS + 1);
	const squares = new Float64Array(BINS + 1);
	for (const raw of sorted) {
		const value = Math.min(high, Math.max(low, raw));
		const bin = Math.min(BINS - 1, Math.floor((value - low) / width)) + 1;
		count[bin] = count[bin]! + 1;
		sum[bin] = sum[bin]! + (value - low);
		squares[bin] = squares[bin]! + (value - low) ** 2;
	}
	for (let bin = 1; bin <= BINS; bin++) {
		count[bin] = count[bin]! + count[bin - 1]!;
		sum[bin] = sum[bin]! + sum[bin - 1]!;
		squares[bin] = squares[bin]! + squares[bin - 1]!;
	}
	return { low, width, count, sum, squares };
}

/** Sum of squares about the mean of the bins from `a` up to `b`. */
function within({ count, sum, squares }: Histogram, a: number, b: number): number {
	const n = count[b]! - count[a]!;
	if (n === 0) return 0;
	return squares[b]! - squares[a]! - (sum[b]! - sum[a]!) ** 2 / n;
}

function bestCut(histogram: Histogram, from: number, to: number): number {
	let best = from + 1;
	let least = Infinity;
	for (let cut = from + 1; cut < to; cut++) {
		const spread = within(histogram, from, cut) + within(histogram, cut, to);
		if (spread < least) {
			least = spread;
			best = cut;
		}
	}
	return best;
}

function bestTwoCuts(histogram: Histogram): readonly number[] {
	let best: readonly number[] = [1, 2];
	let least = Infinity;
	for (let first = 1; first < BINS - 1; first++) {
		const below = within(histogram, 0, first);
		if (below >= least) continue;
		for (let second = first + 1; second < BINS; second++) {
			const spread = below + within(histogram, first, second) + within(histogram, second, BINS);
			if (spread < least) {
				least = spread;
				best = [first, second];
			}
		}
	}
	return best;
}

/** Means of the classes, if each is a class of its own. */
function standingApart(histogram: Histogram, cuts: readonly number[]): number[] | undefined {
	const edges = [0, ...cuts, BINS];
	const all = histogram.count[BINS]!;
	const classes = edges.slice(1).map((to, at) => {
		const from = edges[at] ?? 0;
		const n = histogram.count[to]! - histogram.count[from]!;
		const mean = (histogram.sum[to]! - histogram.sum[from]!) / n;
		const spread = Math.sqrt(Math.max(0, within(histogram, from, to)) / n);
		return { n, mean, spread: Math.max(spread, histogram.width / 2) };
	});
	for (const [at, each] of classes.entries()) {
		if (!(each.n >= LEAST_SHARE * all)) return undefined;
		const before = classes[at - 1];
		if (before && each.mean - before.mean < APART * Math.max(each.spread, before.spread))
			return undefined;
	}
	return classes.map(({ mean }) => histogram.low + mean);
}

/** A stretch of samples in one state: the first and the last of them. */
export interface Run {
	readonly state: MachineState;
	readonly first: number;
	readonly last: number;
}

/** How far beyond the middle between two levels a sample must be to change the state. */
const BEYOND_MIDDLE = 0.1;
/** A state that usually lasts so many samples is not left for a single one. */
const LONG_RUN = 5;

/** Cuts a recording into runs of one state each, single stray samples taken out. METHOD T11. */
export function findRuns({ values }: Series, levels: Levels): readonly Run[] {
	const { means } = levels;
	const up = means.slice(1).map((mean, at) => {
		const below = means[at] ?? 0;
		return below + (0.5 + BEYOND_MIDDLE) * (mean - below);
	});
	const down = means.slice(1).map((mean, at) => {
		const below = means[at] ?? 0;
		return below + (0.5 - BEYOND_MIDDLE) * (mean - below);
	});
	const runs: { level: number; first: number; last: number }[] = [];
	let level = 0;
	for (let i = 0; i < values.length; i++) {
		const value = values[i]!;
		while (level < up.length && value > up[level]!) level += 1;
		while (level > 0 && value < down[level - 1]!) level -= 1;
		const run = runs.at(-1);
		if (run?.level === level) run.last = i;
		else runs.push({ level, first: i, last: i });
	}
	const top = means.length - 1;
	const peaksOnly = means.length === 3 && isPeaks(runs, top);
	const stateOf = (at: number) =>
		peaksOnly ? (at === 0 ? levels.states[0] : 'loaded') : levels.states[at];
	const named = runs.map(({ level: at, first, last }) => ({
		state: stateOf(at) ?? 'off',
		first,
		last
	}));
	return withoutStrays(joined(named));
}

/** A third level that lasts for a sample or two each time is the starting current. */
function isPeaks(runs: readonly { level: number; first: number; last: number }[], top: number) {
	const lengths = runs.filter(({ level }) => level === top).map((run) => run.last - run.first + 1);
	const middle = runs
		.filter(({ level }) => level === top - 1)
		.map((run) => run.last - run.first + 1);
	return (
		quantile(
			lengths.sort((a, b) => a - b),
			0.5
		) <= 2 &&
		quantile(
			middle.sort((a, b) => a - b),
			0.5
		) > 3
	);
}

function joined(runs: readonly Run[]): Run[] {
	const whole: Run[] = [];
	for (const run of runs) {
		const before = whole.at(-1);
		if (before?.state === run.state) whole[whole.length - 1] = { ...before, last: run.last };
		else whole.push(run);
	}
	return whole;
}

function withoutStrays(runs: readonly Run[]): Run[] {
	const usual = new Map<MachineState, number>();
	for (const state of ['loaded', 'unloaded', 'off'] as const) {
		const lengths = runs
			.filter((run) => run.state === state && run.last > run.first)
			.map(({ first, last }) => last - first + 1);
		usual.set(
			state,
			lengths.length === 0
				? 0
				: quantile(
						lengths.sort((a, b) => a - b),
						0.5
					)
		);
	}
	const kept: Run[] = [];
	for (const run of runs) {
		const stray = run.first === run.last && (usual.get(run.state) ?? 0) >= LONG_RUN;
		const before = kept.at(-1);
		if (stray && before) kept[kept.length - 1] = { ...before, last: run.last };
		else kept.push(run);
	}
	return joined(kept);
}
