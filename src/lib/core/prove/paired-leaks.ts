import { flowThrough } from '../air/leak-flow.ts';
import { lineAir } from '../air/line-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { freeAirFlow } from '../air/reference-air.ts';
import { leaksInOrder, roundsInOrder } from '../survey/leak-state.ts';
import type { Leak, Survey } from '../survey/schema.ts';
import { gaugeFromBar } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import { ok, type Refusal, type Result } from '../units/result.ts';
import { hoursOf, pressureOf, sectionOf } from '../weigh/leak-inputs.ts';
import { siteConditions } from '../weigh/site-conditions.ts';
import {
	weighingConditions,
	weighLeak,
	type WeighedLeak,
	type WeighingConditions
} from '../weigh/weigh-leak.ts';
import { hoursOfSchedule } from '../weigh/weigh-round.ts';
import { standings } from '../survey/standing.ts';
import { fateOf, type Fate, type FateOfLeak, type Reading } from './fate.ts';

/** A survey's site air and what weighing its leaks needs, found once. */
export interface Ground {
	readonly survey: Survey;
	readonly air: SiteAir;
	readonly conditions: WeighingConditions;
}

/** @returns what stands under the figures of a survey, or the refusals of its site's air */
export function groundOf(survey: Survey): Result<Ground> {
	const air = siteConditions(survey.site);
	if (!air.ok) return air;
	const scheduleHours = hoursOfSchedule(survey, air.value);
	return ok({
		survey,
		air: air.value,
		conditions: weighingConditions(survey, air.value, scheduleHours)
	});
}

/** One leak on both sides of a comparison; a side where it did not leak is absent. */
export interface PairedLeak {
	readonly leak: Leak;
	readonly fate: Fate;
	readonly claimFailed: boolean;
	/** As it stood under the conditions of the round before; for the adjustments. */
	readonly beforeAsSeen?: WeighedLeak;
	readonly before?: WeighedLeak;
	readonly after?: WeighedLeak;
	/** One and the same reading stands for both sides: its error is one error. */
	readonly sameReading: boolean;
}

export interface UnweighedPair {
	readonly leak: Leak;
	readonly fate: Fate;
	readonly refusal: Refusal;
}

export interface PairedLeaks {
	readonly pairs: readonly PairedLeak[];
	/** Left out of both sides, so that nothing is saved or lost by a missing reading. */
	readonly unweighed: readonly UnweighedPair[];
}

/**
 * Finds both sides of every leak's comparison: sized by what was seen in its round, and then put under
 * the pressure and hours of the round after. METHOD V1, V2.
 */
export function pairLeaks(
	survey: Survey,
	beforeId: string,
	afterId: string,
	then: Ground,
	now: Ground
): PairedLeaks {
	const roundIds = roundsInOrder(survey).map(({ id }) => id);
	const pairs: PairedLeak[] = [];
	const unweighed: UnweighedPair[] = [];
	for (const leak of leaksInOrder(survey)) {
		const fate = fateOf(standings(leak, roundIds), beforeId, afterId);
		if (!fate) continue;
		const pair = weighPair(leak, fate, then, now);
		if (pair.ok) pairs.push(pair.value);
		else unweighed.push({ leak, fate: fate.fate, refusal: pair.error });
	}
	return { pairs, unweighed };
}

function weighPair(
	leak: Leak,
	{ fate, before, after, claimFailed }: FateOfLeak,
	then: Ground,
	now: Ground
): Result<PairedLeak> {
	// A reading at the joint, where there is one, holds for both sides: the same pressure.
	const reading = after?.seen.pressureBarGauge ?? before?.seen.pressureBarGauge;
	const sameReading = before !== undefined && after !== undefined && sameSize(before, after);
	const made: { -readonly [K in keyof PairedLeak]: PairedLeak[K] } = {
		leak,
		fate,
		claimFailed,
		sameReading
	};
	if (before) {
		const seen = weighLeak(leak, before.seen, sectionOf(then.survey, leak), then.conditions);
		if (!seen.ok) return seen;
		const same = then.survey === now.survey && reading === before.seen.pressureBarGauge;
		const moved = same ? seen : underConditions(seen.value, now, reading);
		if (!moved.ok) return moved;
		made.beforeAsSeen = seen.value;
		made.before = moved.value;
	}
	if (after && sameReading && made.before) made.after = made.before;
	else if (after) {
		const seen = weighLeak(leak, after.seen, sectionOf(now.survey, leak), now.conditions);
		if (!seen.ok) return seen;
		made.after = seen.value;
	}
	return ok(made);
}

/** Whether both rounds go by one reading: carried over, or confirmed without being sized again. */
function sameSize(before: Reading, after: Reading): boolean {
	const [a, b] = [before.seen, after.seen];
	if (a === b || (a.evidence === b.evidence && a.intermittent === b.intermittent)) return true;
	const size = ({ seen }: Reading) => JSON.stringify([seen.evidence, seen.intermittent]);
	return size(before) === size(after);
}

/**
 * A leak of the same size under other conditions: its effective area stays, its pressure, hours and
 * flow are those of the other ground.
 * @param reading gauge pressure at the joint in bar, where one was read
 */
export function underConditions(
	seen: WeighedLeak,
	{ survey, air, conditions }: Ground,
	reading = seen.sighting.pressureBarGauge
): Result<WeighedLeak> {
	const section = sectionOf(survey, seen.leak);
	const { pressureBarGauge: _, ...unread } = seen.sighting;
	const sighting = reading === undefined ? unread : { ...unread, pressureBarGauge: reading };
	const pressure = pressureOf(sighting, section, survey.supply.setPressureBarGauge);
	if (!pressure.ok) return pressure;
	const hours = hoursOf(section, conditions.scheduleHours);
	if (!hours.ok) return hours;
	const line = lineAir({
		linePressure: gaugeFromBar(pressure.value.value),
		lineTemperature: air.temperature,
		site: air
	});
	if (!line.ok) return line;
	const { area, dutyFactor } = seen.flow;
	const { massFlow: open, regime } = flowThrough(area, line.value);
	const massFlow = as<'kg/s'>(dutyFactor * open);
	const { reference } = survey.site;
	const freeAir = freeAirFlow(massFlow, reference, air);
	return ok({
		leak: seen.leak,
		sighting,
		section,
		pressure: pressure.value,
		hours: hours.value,
		flow: { area, dutyFactor, massFlow, freeAir, reference, regime }
	});
}
