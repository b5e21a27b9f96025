import type { PartOutcome, YearOutcome } from '../supply/year.ts';
import { stationState, type StationState } from '../supply/sequence.ts';
import { latestRound } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import { siteConditions } from './site-conditions.ts';
import { stationLeaks, stationYear } from './station-year.ts';
import { WASTING, weighRound } from './weigh-round.ts';

/** A part of the year, what the station draws in it, and what each machine does. */
export interface ReportedPart {
	readonly outcome: PartOutcome;
	/** Absent while the supply is off. */
	readonly setPressureBarGauge?: number;
	readonly now?: StationState;
	readonly without?: StationState;
}

export interface StationReport {
	readonly outcome: YearOutcome;
	readonly capacityM3PerMin: number;
	readonly parts: readonly ReportedPart[];
	/** How many leaks were counted, and how many could not be weighed. */
	readonly leaks: { readonly counted: number; readonly unweighed: number };
}

/**
 * The station's year machine by machine, with the leaks that leak now and without them. METHOD S10
 * to S13, W4.
 *
 * @param roundId whose leaks count; the latest round where it is left out
 * @returns `station-missing` when the survey has no station, or a refusal of the station model
 */
export function stationReport(
	survey: Survey,
	roundId = latestRound(survey)?.id
): Result<StationReport> {
	const { station } = survey.supply;
	if (!station) return refuse('station-missing');
	const air = siteConditions(survey.site);
	if (!air.ok) return air;
	const year = stationYear(station, air.value);
	if (!year.ok) return year;
	const ready = year.value;
	const found = roundId === undefined ? undefined : weighRound(survey, roundId, WASTING);
	const leaks = (found?.weighed ?? []).map(({ at }) => at);
	const shared = stationLeaks(ready, leaks, air.value);
	if (!shared.ok) return shared;
	const { outcome } = shared.value;
	const parts = outcome.parts.map((part, place): ReportedPart => {
		const supply = ready.year.parts[place]?.air;
		if (supply?.state !== 'on' || part.delivered === null) return { outcome: part };
		const { setPressureBarGauge } = supply;
		const at = (demand: number) => stationState(ready.station, demand, setPressureBarGauge);
		return {
			outcome: part,
			setPressureBarGauge,
			now: at(part.delivered.nowM3PerMin),
			without: at(part.delivered.withoutM3PerMin)
		};
	});
	return ok({
		outcome,
		capacityM3PerMin: ready.station.capacityM3PerMin,
		parts,
		leaks: { counted: leaks.length, unweighed: found?.unweighed.length ?? 0 }
	});
}
