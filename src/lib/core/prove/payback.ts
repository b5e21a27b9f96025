import { toMinor } from '../money/currency.ts';
import { simplePaybackYears } from '../money/return.ts';
import { leaksInOrder, roundsInOrder } from '../survey/leak-state.ts';
import type { Leak, Survey } from '../survey/schema.ts';
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

/** One joint that was said to be mended between two rounds. */
export interface Repair {
	readonly leak: Leak;
	/** The round in which its mending is logged. */
	readonly roundId: string;
	/** In major units; absent when it was not written down. */
	readonly cost?: number;
}

/**
 * The joints that were mended between two rounds, by tag: said to be, or found tight without a word. Bills come when the
 * next round has long begun, so their cost is written down from here too.
 */
export function repairsBetween(survey: Survey, { before, after, leaks }: Comparison): Repair[] {
	const held = new Set(leaks.flatMap(({ fate, leakId }) => (fate === 'held' ? [leakId] : [])));
	const told = mendingsBetween(survey, before.id, after.id).filter(
		({ leak, mending }) => mending.mendedAt !== undefined || held.has(leak.id)
	);
	const tagged = new Set(told.map(({ leak }) => leak.id));
	const untold = leaksInOrder(survey).filter(({ id }) => held.has(id) && !tagged.has(id));
	return [
		...told.map(({ leak, roundId, mending: { cost } }) => ({
			leak,
			roundId,
			...(cost !== undefined && { cost })
		})),
		...untold.map((leak) => ({ leak, roundId: before.id }))
	].sort((a, b) => a.leak.tag - b.leak.tag);
}

function mendingsBetween(survey: Survey, beforeId: string, afterId: string) {
	const ids = roundsInOrder(survey).map(({ id }) => id);
	const between = ids.slice(ids.indexOf(beforeId), ids.indexOf(afterId));
	return leaksInOrder(survey).flatMap((leak) =>
		between.flatMap((roundId) => {
			const mending = leak.mendings[roundId];
			return mending ? [{ leak, roundId, mending }] : [];
		})
	);
}

/**
 * Adds up what was written down as spent on leaks from the round before until the round after began; a
 * repair that failed is in it too. METHOD V9.
 */
export function spentBetween(survey: Survey, beforeId: string, afterId: string): Spent {
	let [minor, repairs, priced] = [0, 0, 0];
	for (const { mending } of mendingsBetween(survey, beforeId, afterId)) {
		if (mending.mendedAt !== undefined) repairs++;
		if (mending.cost === undefined) continue;
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
