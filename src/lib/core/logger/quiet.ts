import { wholeOf, type LoggerCycle } from './cycles.ts';

/** Fewer cycles do not make a shift. */
const LEAST_CYCLES = 3;
/** Quiet and busy lie apart by so much of the busy load fraction. */
const APART = 0.35;
/** How much of the spread must lie between the two groups. */
const EXPLAINED = 0.75;

/**
 * The cycles of the quiet hours, when the leaks alone take air: those below the cut that parts the load
 * fractions best, weighed by their time, if there are two groups. METHOD T12.
 *
 * @returns for each cycle whether it is quiet; all of them where there is one group only
 */
export function quietCycles(cycles: readonly LoggerCycle[]): {
	readonly split: boolean;
	readonly quiet: readonly boolean[];
} {
	const each = cycles
		.map((cycle, index) => ({ index, whole: wholeOf(cycle), f: cycle.loadedS / wholeOf(cycle) }))
		.sort((a, b) => a.f - b.f);
	const all = { split: false, quiet: cycles.map(() => true) };
	if (each.length < 2 * LEAST_CYCLES) return all;
	const total = sums(each);
	let below = { whole: 0, weighted: 0, squares: 0 };
	let best: { readonly last: number; readonly within: number; readonly apart: boolean } | undefined;
	for (let last = 0; last < each.length - LEAST_CYCLES; last++) {
		below = plus(below, sums([each[last]!]));
		if (last + 1 < LEAST_CYCLES) continue;
		const above = plus(total, below, -1);
		const within = spread(below) + spread(above);
		const low = below.weighted / below.whole;
		const high = above.weighted / above.whole;
		if (!best || within < best.within) best = { last, within, apart: low < (1 - APART) * high };
	}
	if (!best?.apart || best.within > (1 - EXPLAINED) * spread(total)) return all;
	const quiet = cycles.map(() => false);
	for (const { index } of each.slice(0, best.last + 1)) quiet[index] = true;
	return { split: true, quiet };
}

interface Sums {
	readonly whole: number;
	readonly weighted: number;
	readonly squares: number;
}

function sums(cycles: readonly { readonly whole: number; readonly f: number }[]): Sums {
	return cycles.reduce(
		(sum, { whole, f }) => ({
			whole: sum.whole + whole,
			weighted: sum.weighted + whole * f,
			squares: sum.squares + whole * f * f
		}),
		{ whole: 0, weighted: 0, squares: 0 }
	);
}

function plus(a: Sums, b: Sums, sign = 1): Sums {
	return {
		whole: a.whole + sign * b.whole,
		weighted: a.weighted + sign * b.weighted,
		squares: a.squares + sign * b.squares
	};
}

function spread({ whole, weighted, squares }: Sums): number {
	return whole > 0 ? Math.max(0, squares - weighted ** 2 / whole) : 0;
}
