import type { SiteAir } from '../air/gas-state.ts';
import { leakState, sightingIn, type LeakState } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import { ok, type Result } from '../units/result.ts';
import type { Unweighed } from './assessment.ts';
import { sectionOf } from './leak-inputs.ts';
import { siteConditions } from './site-conditions.ts';
import { pressurisedHours, stationYear } from './station-year.ts';
import { weighingConditions, weighLeakOnce, type WeighedLeak } from './weigh-leak.ts';

/** What leaks at the end of the round: all that was found and is not mended. */
export const WASTING: readonly LeakState[] = ['leaking'];
/** What was mended in the round, re-soaped or not. */
export const MENDED: readonly LeakState[] = ['mended', 'tight'];

export interface StatedLeak {
	readonly state: LeakState;
	readonly at: WeighedLeak;
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

	for (const leak of Object.values(survey.leaks)) {
		if (leak.removed) continue;
		const sighting = sightingIn(leak, roundId);
		const state = leakState(leak, roundId);
		if (sighting?.state !== 'leaking' || !states.includes(state)) continue;
		const result = conditions.ok
			? weighLeakOnce(leak, sighting, sectionOf(survey, leak), conditions.value)
			: conditions;
		if (result.ok) weighed.push({ state, at: result.value });
		else unweighed.push({ leakId: leak.id, tag: leak.tag, refusal: result.error });
	}
	return { air, weighed, unweighed: unweighed.sort((a, b) => a.tag - b.tag) };
}

/** Hours a year under pressure by the station's week, when the survey has one that can be read. */
export function hoursOfSchedule(survey: Survey, air: SiteAir): number | undefined {
	const { station } = survey.supply;
	const year = station && stationYear(station, air);
	return year?.ok ? pressurisedHours(year.value) : undefined;
}
