import { NINETY_PERCENT, type Spread } from '../weigh/uncertainty/spread.ts';
import type { Amounts } from './amounts.ts';
import type { Comparison } from './compare.ts';
import type { ComparisonSpread, TermSpread } from './intervals.ts';
import { DAYS_PER_YEAR, yearsBetween } from './rate.ts';

/** What the leaks do when nobody walks, and when to walk next. */
export interface Regrowth {
	/** Between the two rounds. */
	readonly years: number;
	/** So many leaks came back or opened: all that the rate rests on. */
	readonly leaks: number;
	/** What came back and what opened, as a yearly sum, for each year that passes. */
	readonly energyKwhPerYearPerYear?: Grown;
	readonly costMinorPerYearPerYear?: Grown;
	/** Days after the later round at which `REGROWTH_SHARE` of what is held is lost again. */
	readonly nextRoundInDays?: Grown;
}

/** A value and its 90 % interval. */
export interface Grown {
	readonly value: number;
	readonly low: number;
	readonly high: number;
}

/** Of the saving held, what may be lost before the next round. Our starting value. */
export const REGROWTH_SHARE = 0.25;

/**
 * How fast the loss grows back: g = (again + new)/T. The next round is due when g·t has taken a quarter
 * of what is held; a round a year instead of none is worth g for each year. The interval is
 * g·e^(∓1.645·u) with u² = u_s² + Σs²/(Σs)²: how well the sizes s are known, and how few they are.
 * METHOD V8.
 */
export function regrowth(comparison: Comparison, spread: ComparisonSpread): Regrowth {
	const { before, after, terms, counts } = comparison;
	const years = yearsBetween(before.startedAt, after.startedAt);
	const leaks = counts.again + counts.new;
	if (!(years > 0) || leaks === 0) return { years: Math.max(0, years), leaks };
	const ends = spread.terms.regrown;
	const rate = (of: (amounts: Amounts) => number | undefined, range: Spread | undefined) => {
		const yearly = of(terms.regrown);
		if (yearly === undefined || yearly <= 0 || !range) return undefined;
		return around(yearly / years, uncertainty(comparison, of, range));
	};
	const energy = rate(({ energyKwhPerYear }) => energyKwhPerYear, ends.energyKwhPerYear);
	const cost = rate(({ costMinorPerYear }) => costMinorPerYear, ends.costMinorPerYear);
	const flow = rate(({ massFlowKgPerS }) => massFlowKgPerS, ends.massFlowKgPerS);
	const next = daysUntil(cost ?? energy ?? flow, heldOf(terms.held));
	return {
		years,
		leaks,
		...(energy && { energyKwhPerYearPerYear: energy }),
		...(cost && { costMinorPerYearPerYear: cost }),
		...(next && { nextRoundInDays: next })
	};
}

function heldOf({ costMinorPerYear, energyKwhPerYear, massFlowKgPerS }: Amounts): number {
	return costMinorPerYear ?? energyKwhPerYear ?? massFlowKgPerS;
}

/** A quick rate makes an early day. */
function daysUntil(rate: Grown | undefined, held: number): Grown | undefined {
	if (!rate || !(held > 0)) return undefined;
	const days = (perYear: number) => ((REGROWTH_SHARE * held) / perYear) * DAYS_PER_YEAR;
	return { value: days(rate.value), low: days(rate.high), high: days(rate.low) };
}

/** Of the sizes together, and of how many there are: relative, as of a lognormal. */
function uncertainty(
	{ leaks }: Comparison,
	of: (amounts: Amounts) => number | undefined,
	{ low, high }: TermSpread['massFlowKgPerS']
): number {
	let [sum, squares] = [0, 0];
	for (const { fate, after } of leaks) {
		if (fate !== 'again' && fate !== 'new') continue;
		const size = (after && of(after)) ?? 0;
		sum += size;
		squares += size * size;
	}
	const sizes = low > 0 ? Math.log(high / low) / (2 * NINETY_PERCENT) : 0;
	return Math.sqrt(sizes * sizes + squares / (sum * sum));
}

function around(value: number, u: number): Grown {
	const factor = Math.exp(NINETY_PERCENT * u);
	return { value, low: value / factor, high: value * factor };
}
