import { NINETY_PERCENT } from '../weigh/uncertainty/spread.ts';
import { hoursBetween } from '../survey/instants.ts';
import { leaksInOrder, roundsInOrder } from '../survey/leak-state.ts';
import { STARTING_ACTION, type Action, type Part } from '../survey/parts.ts';
import type { Round, Survey } from '../survey/schema.ts';
import { standings } from '../survey/standing.ts';

export const DAYS_PER_YEAR = 365.25;
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

/** Of 365.25 days. */
export function yearsBetween(from: string, to: string): number {
	return hoursBetween(from, to) / HOURS_PER_DAY / DAYS_PER_YEAR;
}
