import type { SiteAir } from '../air/gas-state.ts';
import { pressureEffect, type PressureEffect } from '../supply/pressure.ts';
import { CLOSED } from '../supply/schedule.ts';
import type { Survey } from '../survey/schema.ts';
import { toSi } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import { ok, refuse, type Refusal, type Result } from '../units/result.ts';
import { leakYears } from './energy.ts';
import { siteConditions } from './site-conditions.ts';
import { WASTING, weighRound } from './weigh-round.ts';
import type { Change } from './what-if/change.ts';
import { changedSurvey, setPressureOf } from './what-if/changed-survey.ts';
import { yearFigures, type YearFigures } from './what-if/year-figures.ts';

export type { Change } from './what-if/change.ts';
export { setPressureOf } from './what-if/changed-survey.ts';
export type { YearFigures } from './what-if/year-figures.ts';

/** A change of set pressure: what physics says of it, and the handbook's rule beside it. */
export interface TriedPressure {
	readonly fromBarGauge: number;
	readonly toBarGauge: number;
	readonly effect: PressureEffect;
}

export interface WhatIf {
	readonly today: YearFigures;
	readonly then: YearFigures;
	/** The changed copy; the survey itself is as it was. */
	readonly survey: Survey;
	readonly pressure?: TriedPressure;
}

/**
 * Tries a change on a copy of the survey and puts its year beside today's. METHOD W15.
 *
 * @param roundId whose leaks count
 * @returns both years, or why it cannot be tried: `set-pressure-missing`, `what-if-id-unknown` or a
 * refusal of the formulas
 */
export function whatIf(survey: Survey, roundId: string, change: Change): Result<WhatIf> {
	const site = siteConditions(survey.site);
	if (!site.ok) return site;
	const air = site.value;
	const fault = faultOf(survey, change);
	if (fault) return { ok: false, error: fault };
	const { weighed } = weighRound(survey, roundId, WASTING);
	const found = leakYears(
		survey,
		air,
		weighed.map(({ at }) => at)
	);
	const leaksInParts = (found.outcome?.parts ?? []).map((_, part) =>
		weighed.reduce((sum, _leak, leak) => sum + (found.flowInPart?.(leak, part) ?? 0), 0)
	);
	const today = yearFigures(survey, roundId, air, undefined);
	// A station that cannot be reckoned with is not changed either: the quick method stands in for it.
	const usable = found.method === 'supply' ? survey : withoutStation(survey);
	const changed = changedSurvey(usable, change, air, leaksInParts);
	if (!changed.ok) return changed;
	const pressure = triedPressure(usable, change.pressureStepBar ?? 0, air);
	if (!pressure.ok) return pressure;
	return ok({
		today,
		then: yearFigures(changed.value, roundId, air, change.machineOff),
		survey: changed.value,
		...(pressure.value && { pressure: pressure.value })
	});
}

function withoutStation(survey: Survey): Survey {
	const { station: _, ...supply } = survey.supply;
	return { ...survey, supply };
}

/** What the change names and the survey does not have. */
function faultOf(
	survey: Survey,
	{ airOffIn = [], machineOff, mended = [] }: Change
): Refusal | undefined {
	const { station } = survey.supply;
	const parts = [CLOSED, ...(station?.schedule.periods ?? []).map(({ id }) => id)];
	const unknown =
		[...airOffIn, ...(machineOff?.in ?? [])].find((id) => !parts.includes(id)) ??
		mended.find((id) => !Object.hasOwn(survey.leaks, id)) ??
		[machineOff?.compressorId].find(
			(wanted) => wanted !== undefined && !station?.compressors.some(({ id }) => id === wanted)
		);
	return unknown === undefined
		? undefined
		: { code: 'what-if-id-unknown', detail: { id: unknown } };
}

function triedPressure(
	survey: Survey,
	step: number,
	air: SiteAir
): Result<TriedPressure | undefined> {
	if (step === 0) return ok(undefined);
	const from = setPressureOf(survey);
	if (from === undefined) return refuse('set-pressure-missing');
	const absolute = (bar: number) => as<'Pa absolute'>(air.pressure + toSi('pressure', 'bar', bar));
	const effect = pressureEffect(air.pressure, absolute(from), absolute(from + step));
	if (!effect.ok) return effect;
	return ok({ fromBarGauge: from, toBarGauge: from + step, effect: effect.value });
}
