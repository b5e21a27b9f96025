/** What each leak's flow on one side is multiplied by, as columns; see `LeakErrors`. */
export interface Loadings {
	readonly kind: Uint8Array;
	readonly own: Float64Array;
	readonly method: Float64Array;
	readonly gauge: Float64Array;
}

/** One column of amounts for each quantity. */
export type Quantities = readonly Float64Array[];

export interface Sides {
	readonly fate: Uint8Array;
	/** 1 where one reading stands for both sides. */
	readonly same: Uint8Array;
	readonly was: Quantities;
	readonly is: Quantities;
	readonly before: Loadings;
	readonly after: Loadings;
}

/** Leaks of one fate and one method whose own errors are drawn as one. */
export interface Bundle {
	readonly fate: number;
	readonly kind: number;
	/** Of the logarithm, the mean of its leaks by their flow. */
	readonly method: number;
	readonly gauge: number;
	/** By quantity, before and then after: without the shared errors. */
	readonly mean: Float64Array;
	readonly deviation: Float64Array;
}

export interface BundledLeaks {
	/** Rows that are drawn each by itself. */
	readonly singles: readonly number[];
	readonly bundles: readonly Bundle[];
}

/** Leaks with the largest own errors, which are drawn each by itself. Our starting value. */
const SINGLES = 300;
/** Loadings of a method that differ by less stand in one bundle. */
const METHOD_STEP = 0.01;

/**
 * Splits many leaks into the few that make the sum uncertain and bundles of all others. The sum of a
 * bundle's own errors is drawn as one normal number of its exact mean Σ w·e^{s²/2} and variance
 * Σ w²·e^{s²}·(e^{s²} − 1). METHOD V6.
 */
export function bundled(sides: Sides): BundledLeaks {
	const rows = Array.from(sides.fate.keys());
	const weight = errorWeights(sides);
	const byWeight = rows.toSorted((a, b) => weight[b]! - weight[a]! || a - b);
	const making = new Map<number, Making>();
	for (const row of byWeight.slice(SINGLES)) {
		if (sides.same[row]) put(making, sides, row, BOTH);
		else for (const side of [BEFORE, AFTER]) put(making, sides, row, side);
	}
	return {
		singles: byWeight.slice(0, SINGLES).sort((a, b) => a - b),
		bundles: Array.from(making.values(), finished)
	};
}

const BEFORE = 0;
const AFTER = 1;
const BOTH = 2;

/** Variance of each row's own error, as a share of what leaks in all; the larger side counts. */
function errorWeights({ fate, was, is, before, after }: Sides): Float64Array {
	const weights = new Float64Array(fate.length);
	for (const [amounts, { own }] of [
		[was, before],
		[is, after]
	] as const)
		for (const column of amounts) {
			let sum = 0;
			for (const each of column) sum += each;
			if (sum === 0) continue;
			for (let row = 0; row < weights.length; row++)
				weights[row] = Math.max(weights[row]!, (column[row]! / sum) ** 2 * varianceOf(own[row]!));
		}
	return weights;
}

/** Of e^{s·z}, z standard normal. */
function varianceOf(s: number): number {
	return Math.exp(s * s) * Math.expm1(s * s);
}

interface Making {
	readonly fate: number;
	readonly kind: number;
	flow: number;
	method: number;
	gauge: number;
	readonly mean: Float64Array;
	readonly variance: Float64Array;
}

function put(making: Map<number, Making>, sides: Sides, row: number, side: number): void {
	const loadings = side === AFTER ? sides.after : sides.before;
	const first = side === AFTER ? sides.is : sides.was;
	const flow = first[0]![row]!;
	if (flow <= 0) return;
	const [fate, kind] = [sides.fate[row]!, loadings.kind[row]!];
	const [own, method] = [loadings.own[row]!, loadings.method[row]!];
	const step = Math.round(method / METHOD_STEP);
	const key = ((step * 16 + kind) * 16 + fate) * 4 + side;
	let bundle = making.get(key);
	if (!bundle) {
		const places = 2 * first.length;
		const [mean, variance] = [new Float64Array(places), new Float64Array(places)];
		bundle = { fate, kind, flow: 0, method: 0, gauge: 0, mean, variance };
		making.set(key, bundle);
	}
	bundle.flow += flow;
	bundle.method += flow * method;
	bundle.gauge += flow * loadings.gauge[row]!;
	const [mean, variance] = [Math.exp((own * own) / 2), varianceOf(own)];
	for (let q = 0; q < first.length; q++) {
		const left = side === AFTER ? 0 : sides.was[q]![row]!;
		const right = side === BEFORE ? 0 : sides.is[q]![row]!;
		bundle.mean[2 * q]! += left * mean;
		bundle.mean[2 * q + 1]! += right * mean;
		bundle.variance[2 * q]! += left * left * variance;
		bundle.variance[2 * q + 1]! += right * right * variance;
	}
}

function finished({ fate, kind, flow, method, gauge, mean, variance }: Making): Bundle {
	const deviation = variance.map(Math.sqrt);
	return { fate, kind, method: method / flow, gauge: gauge / flow, mean, deviation };
}
