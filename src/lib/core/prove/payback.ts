import { toMinor } from '../money/currency.ts';
import { simplePaybackYears } from '../money/return.ts';
import { leaksInOrder, roundsInOrder } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import type { Comparison } from './compare.ts';
import type { ComparisonSpread } from './intervals.ts';

/** What the repairs between two rounds cost, as it was written down. */
export interface Spent {
	/** Whole minor units. */
	readonly minor: number;
	/** Joints that were said to be mended. */
	readonly repairs: number;
	/** Of these, how many have what they cost written down. */
	readonly priced: number;
}

/** Years until what is proved has paid for what was spent. */
export interface Payback {
	readonly spent: Spent;
	/** Absent when nothing is proved. */
	readonly years?: number;
	/** 90 %. `high` is absent where the saving may be nothing. */
	readonly low?: number;
	readonly high?: number;
}

/**
 * Adds up what was written down as spent on leaks from the round before until the round after began; a
 * repair that failed is in it too. METHOD V9.
 */
export function spentBetween(survey: Survey, beforeId: string, afterId: string): Spent {
	const ids = roundsInOrder(survey).map(({ id }) => id);
	const between = ids.slice(ids.indexOf(beforeId), ids.indexOf(afterId));
	let [minor, repairs, priced] = [0, 0, 0];
	for (const leak of leaksInOrder(survey))
		for (const roundId of between) {
			const mending = leak.mendings[roundId];
			if (mending?.mendedAt !== undefined) repairs++;
			if (mending?.cost === undefined) continue;
			const cost = toMinor(mending.cost, survey.site.currency);
			if (!cost.ok) continue;
			minor += cost.value;
			if (mending.mendedAt !== undefined) priced++;
		}
	return { minor, repairs, priced };
}

/**
 * Simple payback of what was spent on repairs by what soap has proved: t = C / s, all of the money against
 * the proved part of the saving alone. METHOD V9.
 *
 * @returns nothing when no cost was written down
 */
export function payback(
	survey: Survey,
	{ before, after, terms }: Comparison,
	spread: ComparisonSpread
): Payback | undefined {
	const spent = spentBetween(survey, before.id, after.id);
	if (spent.minor === 0) return undefined;
	const within = (saving: number | undefined) => {
		const years = saving === undefined ? undefined : simplePaybackYears(spent.minor, saving);
		return years?.ok ? years.value : undefined;
	};
	const ends = spread.terms.held.costMinorPerYear;
	const [years, low, high] = [
		within(terms.held.costMinorPerYear),
		within(ends?.high),
		within(ends?.low)
	];
	return {
		spent,
		...(years !== undefined && { years }),
		...(low !== undefined && { low }),
		...(high !== undefined && { high })
	};
}
