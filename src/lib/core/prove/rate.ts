import { NINETY_PERCENT } from '../weigh/uncertainty/spread.ts';
import { hoursBetween } from '../survey/instants.ts';
import { leaksInOrder, roundsInOrder } from '../survey/leak-state.ts';
import { STARTING_ACTION, type Action, type Part } from '../survey/parts.ts';
import type { Round, Survey } from '../survey/schema.ts';
import type { Comparison } from './compare.ts';
import { standings } from '../survey/standing.ts';

const DAYS_PER_YEAR = 365.25;
const HOURS_PER_DAY = 24;

/** How fast mended joints of one kind leak again. */
export interface ReturnRate {
	readonly part: Part;
	readonly action: Action;
	/** Joints that soap had shown tight and that were looked at again. */
	readonly watched: number;
	/** Years under watch, of all of them together. */
	readonly years: number;
	readonly returned: number;
	/** Returned in a year, per joint, and its 90 % interval. */
	readonly perYear: number;
	readonly low: number;
	readonly high: number;
}

/**
 * How often joints that were mended and proved tight leak again: returned ÷ years under watch, by part
 * and action. A joint is under watch from the soap that proved it to the next look at it; a return
 * is counted when it is found. METHOD V8.
 *
 * @returns kinds with something under watch, the fastest first, and all together
 */
export function returnRates(survey: Survey): {
	readonly all: ReturnRate | undefined;
	readonly kinds: readonly ReturnRate[];
} {
	const rounds = roundsInOrder(survey);
	const kinds = new Map<string, Watch>();
	const all: Watch = { part: 'other', action: 'other', watched: 0, years: 0, returned: 0 };
	for (const leak of leaksInOrder(survey)) {
		const action = leak.action ?? STARTING_ACTION[leak.part];
		const key = `${leak.part} ${action}`;
		for (const { years, returned } of watchesOf(survey, leak.id, rounds)) {
			const kind = kinds.get(key) ?? { part: leak.part, action, watched: 0, years: 0, returned: 0 };
			kinds.set(key, kind);
			for (const watch of [kind, all]) {
				watch.watched++;
				watch.years += years;
				if (returned) watch.returned++;
			}
		}
	}
	const rates = [...kinds.values()]
		.map(rateOf)
		.sort((a, b) => b.perYear - a.perYear || b.years - a.years);
	return { all: all.watched > 0 ? rateOf(all) : undefined, kinds: rates };
}

interface Watch {
	readonly part: Part;
	readonly action: Action;
	watched: number;
	years: number;
	returned: number;
}

/** Each stretch from a proof by soap after a mending to the next look in a later round. */
function watchesOf(
	survey: Survey,
	leakId: string,
	rounds: readonly Round[]
): { readonly years: number; readonly returned: boolean }[] {
	const leak = survey.leaks[leakId];
	if (!leak) return [];
	const watches: { years: number; returned: boolean }[] = [];
	let provedAt: string | undefined;
	for (const { roundId, found } of standings(
		leak,
		rounds.map(({ id }) => id)
	)) {
		const seenAt = leak.sightings[roundId]?.seenAt;
		const looked = found.state !== 'unknown' && !found.carried && seenAt !== undefined;
		if (looked && provedAt !== undefined) {
			const years = yearsBetween(provedAt, seenAt);
			if (years > 0) watches.push({ years, returned: found.state === 'leaking' });
			provedAt = found.state === 'tight' ? seenAt : undefined;
		}
		const mending = leak.mendings[roundId];
		if (mending?.reSoaped === 'tight' && mending.mendedAt !== undefined)
			provedAt = mending.mendedAt;
		else if (looked && found.state === 'tight' && everMended(leak.mendings)) provedAt = seenAt;
	}
	return watches;
}

function everMended(
	mendings: Readonly<Record<string, { readonly mendedAt?: string | undefined }>>
): boolean {
	return Object.values(mendings).some(({ mendedAt }) => mendedAt !== undefined);
}

/**
 * A Poisson rate with its 90 % interval by Jeffreys: the 5 % and 95 % points of a gamma of shape n + ½
 * over the years; the points by Wilson and Hilferty's cube.
 */
function rateOf({ part, action, watched, years, returned }: Watch): ReturnRate {
	const shape = returned + 0.5;
	const point = (z: number) =>
		(shape * Math.max(0, 1 - 1 / (9 * shape) + z / (3 * Math.sqrt(shape))) ** 3) / years;
	return {
		part,
		action,
		watched,
		years,
		returned,
		perYear: returned / years,
		low: returned === 0 ? 0 : point(-NINETY_PERCENT),
		high: point(NINETY_PERCENT)
	};
}

/** What the leaks do when nobody walks, and when to walk next. */
export interface Regrowth {
	/** Between the two rounds. */
	readonly years: number;
	/** What came back and what opened, as a yearly sum, for each year that passes. */
	readonly energyKwhPerYearPerYear?: number;
	readonly costMinorPerYearPerYear?: number;
	/** Days after the later round at which `SHARE` of what is held is lost again. */
	readonly nextRoundInDays?: number;
	/** A round a year against none, over a year: what had come back and opened by the next. */
	readonly programmeMinorPerYear?: number;
}

/** Of the saving held, what may be lost before the next round. Our starting value. */
export const REGROWTH_SHARE = 0.25;

/**
 * How fast the loss grows back: g = (again + new)/T. The next round is due when g·t has taken a quarter
 * of what is held; a yearly round is worth g·1 year for each year. METHOD V8.
 */
export function regrowth({ before, after, terms }: Comparison): Regrowth {
	const years = yearsBetween(before.startedAt, after.startedAt);
	if (!(years > 0)) return { years: 0 };
	const per = (again: number | undefined, fresh: number | undefined) =>
		again === undefined || fresh === undefined ? undefined : (again + fresh) / years;
	const energy = per(terms.again.energyKwhPerYear, terms.new.energyKwhPerYear);
	const cost = per(terms.again.costMinorPerYear, terms.new.costMinorPerYear);
	const flow = per(terms.again.massFlowKgPerS, terms.new.massFlowKgPerS) ?? 0;
	const growth = cost ?? energy ?? flow;
	const held =
		terms.held.costMinorPerYear ?? terms.held.energyKwhPerYear ?? terms.held.massFlowKgPerS;
	return {
		years,
		...(energy !== undefined && { energyKwhPerYearPerYear: energy }),
		...(cost !== undefined && { costMinorPerYearPerYear: cost, programmeMinorPerYear: cost }),
		...(growth > 0 &&
			held > 0 && { nextRoundInDays: ((REGROWTH_SHARE * held) / growth) * DAYS_PER_YEAR })
	};
}

function yearsBetween(from: string, to: string): number {
	return hoursBetween(from, to) / HOURS_PER_DAY / DAYS_PER_YEAR;
}
