import { quantile, sortedSample, type Series } from './series.ts';

/** A turning point of a pressure: where it begins to rise (a low) or to fall (a high). */
export interface Turn {
	readonly high: boolean;
	/** The sample that is furthest out. */
	readonly at: number;
	/** By the two flanks, between samples. */
	readonly time: number;
	readonly value: number;
}

/** So many standard deviations of noise are not yet a turn. */
const NOISES = 8;
/** A turn counts when the pressure comes back by this share of the usual swing. */
const SWING_SHARE = 0.4;
/** A turn is placed by its flanks: what of the swing, from the turn on, each line is laid through. */
const QUICK_PART = { from: 0.15, to: 0.85 } as const;
/** A falling pressure bends: only what is near the turn is straight enough. */
const SLOW_PART = { from: 0.08, to: 0.4 } as const;
const FLANK_LEAST = 3;
/** Lines that meet further from the outermost sample than this share of the swing say nothing. */
const MEETS_WITHIN = 0.15;

/**
 * Standard deviation of the noise, from second differences, which a saw-tooth has few of:
 * s = 1.4826·median|Δ²v|/√6.
 */
function noiseOf({ values }: Series): number {
	const step = Math.max(1, Math.floor(values.length / 50_000));
	const bends: number[] = [];
	for (let i = 2; i < values.length; i += step)
		bends.push(Math.abs(values[i]! - 2 * values[i - 1]! + values[i - 2]!));
	return bends.length === 0
		? 0
		: (1.4826 *
				quantile(
					bends.sort((a, b) => a - b),
					0.5
				)) /
				Math.sqrt(6);
}

/**
 * Finds where a pressure turns between load and unload: first every turn that stands out of the noise,
 * then, with the swing that most of the movement is made of, those of the machine. METHOD T11.
 *
 * @returns the turns in order and the usual swing; no turns where nothing swings
 */
export function findTurns(series: Series): {
	readonly turns: readonly Turn[];
	readonly swing: number;
	readonly noise: number;
} {
	const sorted = sortedSample(series.values);
	const range = quantile(sorted, 0.999) - quantile(sorted, 0.001);
	const noise = noiseOf(series);
	const rough = zigzag(series, Math.max(NOISES * noise, 0.02 * range));
	const swing = usualSwing(series, rough);
	if (!(swing > NOISES * noise) || !(range > 0)) return { turns: [], swing: 0, noise };
	const turns = zigzag(series, SWING_SHARE * swing);
	return { turns: placed(series, turns), swing, noise };
}

interface RoughTurn {
	readonly high: boolean;
	readonly at: number;
}

/** Highs and lows by turns, each confirmed by a way back of `least`. */
function zigzag({ values }: Series, least: number): RoughTurn[] {
	const turns: RoughTurn[] = [];
	let low = 0;
	let high = 0;
	let rising: boolean | undefined;
	for (let i = 1; i < values.length; i++) {
		const value = values[i]!;
		if (rising !== false && value > values[high]!) high = i;
		if (rising !== true && value < values[low]!) low = i;
		if (rising !== false && value < values[high]! - least) {
			if (rising !== undefined || high > 0) turns.push({ high: true, at: high });
			rising = false;
			low = i;
		} else if (rising !== true && value > values[low]! + least) {
			if (rising !== undefined || low > 0) turns.push({ high: false, at: low });
			rising = true;
			high = i;
		}
	}
	return turns;
}

/** Rises within these shares of one are of its size. */
const ALIKE = { least: 0.6, most: 1.6 } as const;
/** A tank that is filled after a stop is one large rise: a usual one comes again. */
const LEAST_ALIKE = 3;

/** The size of rise that most of all rising is done in. */
function usualSwing({ values }: Series, turns: readonly RoughTurn[]): number {
	const rises: number[] = [];
	for (const [at, turn] of turns.entries()) {
		const next = turns[at + 1];
		if (next && !turn.high) rises.push(values[next.at]! - values[turn.at]!);
	}
	rises.sort((a, b) => a - b);
	let best = { sum: 0, middle: 0 };
	let first = 0;
	let end = 0;
	let sum = 0;
	for (const rise of rises) {
		while (end < rises.length && rises[end]! <= ALIKE.most * rise) sum += rises[end++]!;
		while (rises[first]! < ALIKE.least * rise) sum -= rises[first++]!;
		const often = end - first >= Math.min(LEAST_ALIKE, rises.length);
		if (often && sum > best.sum) best = { sum, middle: rises[(first + end) >> 1]! };
	}
	return best.middle;
}

/** Each turn where the lines through its flanks meet: noise moves the outermost sample, not them. */
function placed(series: Series, turns: readonly RoughTurn[]): Turn[] {
	const { times, values } = series;
	return turns.map((turn, index) => {
		const { high, at } = turn;
		const plain = { high, at, time: times[at]!, value: values[at]! };
		const before = turns[index - 1] ?? { high: !high, at: 0 };
		const after = turns[index + 1] ?? { high: !high, at: values.length - 1 };
		const into = flank(series, turn, before, high ? QUICK_PART : SLOW_PART);
		const out = flank(series, turn, after, high ? SLOW_PART : QUICK_PART);
		if (!into || !out || into.slope === out.slope) return plain;
		const meet = (out.level - into.level) / (into.slope - out.slope);
		const time = plain.time + meet;
		const value = into.level + into.slope * meet;
		const swing = Math.max(
			Math.abs(plain.value - values[before.at]!),
			Math.abs(plain.value - values[after.at]!)
		);
		const between =
			time > (times[before.at]! + plain.time) / 2 && time < (times[after.at]! + plain.time) / 2;
		const near = Math.abs(value - plain.value) <= MEETS_WITHIN * swing;
		return between && near ? { high, at, time, value } : plain;
	});
}

interface Line {
	readonly slope: number;
	/** At the turn's outermost sample. */
	readonly level: number;
}

/** Least squares through the samples of a flank that lie within a part of its swing. */
function flank(
	{ times, values }: Series,
	turn: RoughTurn,
	other: RoughTurn,
	part: { readonly from: number; readonly to: number }
): Line | undefined {
	const origin = times[turn.at]!;
	const start = values[turn.at]!;
	const swing = values[other.at]! - start;
	const step = other.at > turn.at ? 1 : -1;
	let n = 0;
	let t = 0;
	let v = 0;
	let tt = 0;
	let tv = 0;
	for (let i = turn.at + step; i !== other.at; i += step) {
		const share = (values[i]! - start) / swing;
		if (share < part.from || share > part.to) continue;
		const time = times[i]! - origin;
		const value = values[i]! - start;
		n += 1;
		t += time;
		v += value;
		tt += time * time;
		tv += time * value;
	}
	if (n < FLANK_LEAST) return undefined;
	const slope = (tv - (t * v) / n) / (tt - (t * t) / n);
	return { slope, level: start + (v - slope * t) / n };
}
