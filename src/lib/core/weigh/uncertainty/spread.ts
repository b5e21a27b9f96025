/** The middle 90 %: 5 % of the draws lie below `low` and 5 % above `high`. */
export interface Spread {
	readonly low: number;
	readonly median: number;
	readonly high: number;
	/** Means of parts add up to the mean of the whole; medians do not. */
	readonly mean: number;
}

export const LOW_SHARE = 0.05;
export const HIGH_SHARE = 0.95;
/** How many standard deviations of a normal lie either side of its middle 90 %. */
export const NINETY_PERCENT = 1.644_853_626_951_472_2;

/**
 * A quantile of numbers in order, between neighbours in proportion.
 * @param sorted rising, at least one
 * @param share 0 to 1
 * @source JCGM 101:2008, 7.7 (probabilistically symmetric interval); interpolation common practice;
 * METHOD W7
 */
export function quantileOf(sorted: Float64Array, share: number): number {
	const place = Math.min(1, Math.max(0, share)) * (sorted.length - 1);
	const below = Math.floor(place);
	const low = sorted[below] ?? NaN;
	const high = sorted[below + 1] ?? low;
	return low + (place - below) * (high - low);
}

/**
 * Standard error of a quantile, from the draws beside it: half the distance between the quantiles
 * √(M·p·(1 − p)) places below and above.
 * @param sorted rising, M numbers
 * @param share p
 * @source binomial count of draws below a quantile, any statistics text; METHOD W7
 */
export function quantileError(sorted: Float64Array, share: number): number {
	const step = Math.sqrt((share * (1 - share)) / sorted.length);
	return (quantileOf(sorted, share + step) - quantileOf(sorted, share - step)) / 2;
}

/** The spread of numbers in rising order. */
export function spreadOfSorted(sorted: Float64Array): Spread {
	let sum = 0;
	for (const value of sorted) sum += value;
	return {
		low: quantileOf(sorted, LOW_SHARE),
		median: quantileOf(sorted, 0.5),
		high: quantileOf(sorted, HIGH_SHARE),
		mean: sum / sorted.length
	};
}

/**
 * The spread of a lognormal number, exactly: median·e^(±1.645·s), mean median·e^(s²/2).
 * @param median of the number, its own unit
 * @param s standard deviation of its logarithm
 * @source definition of the lognormal distribution; METHOD W7
 */
export function lognormalSpread(median: number, s: number): Spread {
	return {
		low: median * Math.exp(-NINETY_PERCENT * s),
		median,
		high: median * Math.exp(NINETY_PERCENT * s),
		mean: median * Math.exp((s * s) / 2)
	};
}

/** The spread of the same numbers times a factor above zero. */
export function scaled(spread: Spread, factor: number): Spread {
	return {
		low: spread.low * factor,
		median: spread.median * factor,
		high: spread.high * factor,
		mean: spread.mean * factor
	};
}
