import { fromMinor } from '#lib/core/money/currency.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { uncertaintyModel } from '#lib/core/weigh/uncertainty/model.ts';
import { uncertaintyResult, type UncertaintyResult } from '#lib/core/weigh/uncertainty/result.ts';
import { startRun, type RunOptions } from '#lib/core/weigh/uncertainty/run.ts';
import type { Spread } from '#lib/core/weigh/uncertainty/spread.ts';
import type { JsonKey } from '../command.ts';

/** Low end and high end of the middle 90 %; null where the figure itself is not known. */
type Interval = [low: number, high: number] | null;

interface Intervals {
	readonly freeAirM3PerS: Interval;
	readonly energyKwhPerYear: Interval;
	readonly costPerYear: Interval;
	readonly co2KgPerYear: Interval;
}

interface LeakSureness {
	readonly interval90: Intervals;
	readonly rankInterval: [low: number, high: number];
	readonly chanceOfTop10: number;
}

/** How sure the figures of an audit are. METHOD W7, W9. */
export interface Sureness {
	readonly totals: Intervals | null;
	/** By tag. */
	readonly leaks: ReadonlyMap<number, LeakSureness>;
	/** What the fixed seed was drawn to, so that others can repeat it. */
	readonly draws: {
		readonly seed: number;
		readonly count: number;
		readonly settled: boolean;
	} | null;
}

/** Nothing was weighed; the audit says why. */
const NOT_KNOWN: Sureness = { totals: null, leaks: new Map(), draws: null };
const DRAWS_AT_ONCE = 500;

export const SURENESS_KEYS: readonly JsonKey[] = [
	[
		'totals.interval90',
		'[low, high] of freeAirM3PerS, energyKwhPerYear, costPerYear, co2KgPerYear: the middle 90 % of'
	],
	['', 'the draws (METHOD W7); the totals themselves take every reading at face value'],
	['leaks[].interval90', 'the same for each leak'],
	['leaks[].rankInterval', '[low, high] of its places in the ranking, the middle 90 %'],
	['leaks[].chanceOfTop10', 'how often it is among the ten that waste most'],
	['draws', 'what the intervals were drawn with: seed, count, settled; null when they could not be']
];

/**
 * Draws the errors of a round's leaks on the spot, from a fixed seed: the same survey gives the same
 * intervals.
 */
export function sureness(survey: Survey, roundId: string): Sureness {
	const found = drawn(survey, roundId);
	if (!found) return NOT_KNOWN;
	const of = (figures: typeof found.totals | (typeof found.leaks)[number]) =>
		intervals(figures, survey.site.currency);
	return {
		totals: of(found.totals),
		leaks: new Map(
			found.leaks.map((leak) => [
				leak.tag,
				{
					interval90: of(leak),
					rankInterval: [leak.rank.low, leak.rank.high],
					chanceOfTop10: leak.rank.chanceOfTop
				}
			])
		),
		draws: { seed: found.seed, count: found.draws, settled: found.settled }
	};
}

/** The draws themselves; nothing where no leak can be weighed. */
export function drawn(
	survey: Survey,
	roundId: string,
	options: RunOptions = {}
): UncertaintyResult | undefined {
	const model = uncertaintyModel(survey, roundId);
	if (!model.ok || model.value.leakIds.length === 0) return undefined;
	const run = startRun(model.value, options);
	if (!run.ok) return undefined;
	while (!run.value.finished) run.value.step(DRAWS_AT_ONCE);
	return uncertaintyResult(run.value);
}

function intervals(
	figures: {
		readonly freeAirM3PerS: Spread;
		readonly energyKwhPerYear?: Spread;
		readonly costMinorPerYear?: Spread;
		readonly co2KgPerYear?: Spread;
	},
	currency: string
): Intervals {
	const major = (minor: number): number | null => {
		const amount = fromMinor(Math.round(minor), currency);
		return amount.ok ? amount.value : null;
	};
	const { costMinorPerYear: cost } = figures;
	const low = cost && major(cost.low);
	const high = cost && major(cost.high);
	return {
		freeAirM3PerS: ends(figures.freeAirM3PerS),
		energyKwhPerYear: ends(figures.energyKwhPerYear),
		costPerYear: typeof low === 'number' && typeof high === 'number' ? [low, high] : null,
		co2KgPerYear: ends(figures.co2KgPerYear)
	};
}

function ends(spread: Spread | undefined): Interval {
	return spread ? [spread.low, spread.high] : null;
}
