import { freeAirFlow, referenceDensity } from '../air/reference-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { energyKwh, quickPowerKw } from '../supply/quick.ts';
import type { YearOutcome } from '../supply/year.ts';
import type { Survey } from '../survey/schema.ts';
import { fromSi } from '../units/convert.ts';
import { ok, type Refusal, type Result } from '../units/result.ts';
import type { SupplyMethod } from './assessment.ts';
import type { LeakYear } from './cost.ts';
import { stationLeaks, stationYear, type StationLeaks } from './station-year.ts';
import type { WeighedLeak } from './weigh-leak.ts';

const SECONDS_PER_HOUR = 3600;

/** Energy and air a year of each weighed leak, in their order, and how they were found. */
export interface LeakYears {
	readonly method: SupplyMethod;
	readonly years: readonly LeakYear[];
	/** The station's year, by the station model only. */
	readonly outcome?: YearOutcome;
	/** One leak's flow in one part of the year, m³/min at inlet conditions; by the station model only. */
	readonly flowInPart?: StationLeaks['flowInPart'];
	readonly missing: readonly Refusal[];
}

/**
 * Turns flows into energy by the method that the survey has the data for: the station model when
 * there is a station, else the quick method. METHOD W2.
 *
 * @returns `method: 'none'` and what is missing when the survey does not say how the air is made
 */
export function leakYears(survey: Survey, air: SiteAir, leaks: readonly WeighedLeak[]): LeakYears {
	const { station, quick } = survey.supply;
	const missing: Refusal[] = [];
	if (station) {
		const byStation = stationYears(survey, air, leaks);
		if (byStation.ok) return byStation.value;
		missing.push(byStation.error);
	}
	if (quick) {
		const byQuick = quickYears(quick.specificPowerKwPerM3PerMin, air, leaks);
		if (byQuick.ok) return { method: 'quick', years: byQuick.value, missing };
		missing.push(byQuick.error);
	}
	if (missing.length === 0) missing.push({ code: 'supply-missing' });
	return {
		method: 'none',
		years: leaks.map((leak) => ({ freeAirM3: freeAirAYear(leak, air) })),
		missing
	};
}

interface QuickPass {
	readonly specificPower: number;
	readonly air: SiteAir;
	readonly leaks: readonly WeighedLeak[];
	readonly years: readonly LeakYear[];
}

let latest: QuickPass | undefined;

/**
 * All leaks by the quick method, on their free air as ISO 1217 states it. A leak that is the same
 * object as in the pass before, at the same place, has the same year. METHOD S1, W2.
 */
export function quickYears(
	specificPower: number,
	air: SiteAir,
	leaks: readonly WeighedLeak[]
): Result<readonly LeakYear[]> {
	const before = latest?.specificPower === specificPower && latest.air === air ? latest : undefined;
	const years: LeakYear[] = [];
	for (let i = 0; i < leaks.length; i++) {
		const leak = leaks[i]!;
		if (before?.leaks[i] === leak) {
			years.push(before.years[i]!);
			continue;
		}
		const year = quickYear(specificPower, air, leak);
		if (!year.ok) return year;
		years.push(year.value);
	}
	latest = { specificPower, air, leaks, years };
	return ok(years);
}

function quickYear(specificPower: number, air: SiteAir, leak: WeighedLeak): Result<LeakYear> {
	const flow = freeAirFlow(leak.flow.massFlow, 'iso-1217', air);
	const power = quickPowerKw(specificPower, fromSi('volumeFlow', 'm3/min', flow));
	if (!power.ok) return power;
	const energy = energyKwh(power.value, leak.hours.value);
	if (!energy.ok) return energy;
	return ok({ energyKwh: energy.value, freeAirM3: freeAirAYear(leak, air) });
}

function freeAirAYear(leak: WeighedLeak, air: SiteAir): number {
	return freeAirFlow(leak.flow.massFlow, 'iso-1217', air) * leak.hours.value * SECONDS_PER_HOUR;
}

/** All leaks by the station model: what the station stops drawing when they go. METHOD W4. */
function stationYears(
	survey: Survey,
	air: SiteAir,
	leaks: readonly WeighedLeak[]
): Result<LeakYears> {
	const { station } = survey.supply;
	if (!station) return ok({ method: 'none', years: [], missing: [] });
	const year = stationYear(station, air);
	if (!year.ok) return year;
	const shared = stationLeaks(year.value, leaks, air);
	if (!shared.ok) return shared;
	const inletToIso = referenceDensity('site', air) / referenceDensity('iso-1217', air);
	const { parts } = shared.value.outcome;
	return ok({
		method: 'supply',
		outcome: shared.value.outcome,
		flowInPart: shared.value.flowInPart,
		missing: [],
		years: shared.value.leaks.map(({ energyKwh: energy, savingKwhByPart, inletM3 }) => ({
			energyKwh: energy,
			freeAirM3: inletM3 * inletToIso,
			energyCostAt: (priceOf) => savingKwhByPart((part) => priceOf(parts[part]?.priceId ?? null))
		}))
	});
}
