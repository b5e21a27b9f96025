import type { SiteAir } from '../air/gas-state.ts';
import type { LeakState } from '../survey/leak-state.ts';
import type { Leak, Survey } from '../survey/schema.ts';
import { knownLeak, roundsUntil } from '../survey/standing.ts';
import { ok, type Result } from '../units/result.ts';
import type { Unweighed } from './assessment.ts';
import { sectionOf } from './leak-inputs.ts';
import { siteConditions } from './site-conditions.ts';
import { pressurisedHours, stationYear } from './station-year.ts';
import {
	weighingConditions,
	weighLeakOnce,
	type WeighedLeak,
	type WeighingConditions
} from './weigh-leak.ts';

/** What leaks at the end of the round: all that is known to leak and is not mended. */
export const WASTING: readonly LeakState[] = ['leaking'];
/** What was mended in the round, re-soaped or not. */
export const MENDED: readonly LeakState[] = ['mended', 'tight'];
/** All that blew when the round was walked: what a mended leak is priced among. */
export const BLEW: readonly LeakState[] = [...WASTING, ...MENDED];

export interface StatedLeak {
	readonly state: LeakState;
	readonly at: WeighedLeak;
	/** Its place in the survey's table of leaks. */
	readonly row: number;
}

/** The leaks of one round with their flows, before anything is priced. */
export interface WeighedRound {
	readonly air: Result<SiteAir>;
	readonly weighed: readonly StatedLeak[];
	/** By tag. */
	readonly unweighed: readonly Unweighed[];
}

/** Finds the flow of every leak of a round that is in one of the states. METHOD W1. */
export function weighRound(
	survey: Survey,
	roundId: string,
	states: readonly LeakState[]
): WeighedRound {
	const unweighed: Unweighed[] = [];
	const weighed: StatedLeak[] = [];
	const air = siteConditions(survey.site);
	const conditions = air.ok
		? ok(weighingConditions(survey, air.value, hoursOfSchedule(survey, air.value)))
		: air;
	for (const found of foundInRound(survey, roundId, conditions)) {
		if (!found || !states.includes(found.state)) continue;
		if ('at' in found) weighed.push(found);
		else unweighed.push(found.unweighed);
	}
	return { air, weighed, unweighed: unweighed.sort((a, b) => a.tag - b.tag) };
}

/** A leak known to leak or to have leaked, weighed or with the reason why not. */
type Found = StatedLeak | { readonly state: LeakState; readonly unweighed: Unweighed };

interface Pass {
	readonly roundId: string;
	readonly rounds: Survey['rounds'];
	readonly sections: Survey['sections'];
	readonly conditions: WeighingConditions;
	readonly leaks: readonly Leak[];
	readonly found: readonly (Found | undefined)[];
}

let latest: Pass | undefined;

/**
 * What is known in a round, row by row of the survey's table; nothing for a row that has no
 * reading. A row whose leak is the same object as in the pass before is the same row again.
 */
function foundInRound(
	survey: Survey,
	roundId: string,
	conditions: Result<WeighingConditions>
): Pass['found'] {
	const leaks = Object.values(survey.leaks);
	const roundIds = roundsUntil(survey, roundId);
	if (!conditions.ok)
		return leaks.map((leak, row) => foundAt(survey, roundIds, conditions, leak, row));
	const same =
		latest?.roundId === roundId &&
		latest.rounds === survey.rounds &&
		latest.sections === survey.sections &&
		latest.conditions === conditions.value;
	const before = same ? latest : undefined;
	const found = leaks.map((leak, row) =>
		before?.leaks[row] === leak
			? before.found[row]
			: foundAt(survey, roundIds, conditions, leak, row)
	);
	const { rounds, sections } = survey;
	latest = { roundId, rounds, sections, conditions: conditions.value, leaks, found };
	return found;
}

function foundAt(
	survey: Survey,
	roundIds: readonly string[],
	conditions: Result<WeighingConditions>,
	leak: Leak,
	row: number
): Found | undefined {
	if (leak.removed) return undefined;
	const { state, reading } = knownLeak(leak, roundIds);
	if (!reading) return undefined;
	const result = conditions.ok
		? weighLeakOnce(leak, reading, sectionOf(survey, leak), conditions.value)
		: conditions;
	return result.ok
		? { state, at: result.value, row }
		: { state, unweighed: { leakId: leak.id, tag: leak.tag, refusal: result.error } };
}

/** Hours a year under pressure by the station's week, when the survey has one that can be read. */
export function hoursOfSchedule(survey: Survey, air: SiteAir): number | undefined {
	const { station } = survey.supply;
	const year = station && stationYear(station, air);
	return year?.ok ? pressurisedHours(year.value) : undefined;
}
