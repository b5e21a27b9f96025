import type { SiteAir } from '../../air/gas-state.ts';
import type { ReadyYear } from '../../supply/supply-year.ts';
import type { LeakState } from '../../survey/leak-state.ts';
import type { Survey } from '../../survey/schema.ts';
import { ok, type Result } from '../../units/result.ts';
import { leakCosts, type LeakCosts, type LeakYear } from '../cost.ts';
import { leakYears, quickYears, type LeakYears } from '../energy.ts';
import { stationYear } from '../station-year.ts';
import type { WeighedLeak } from '../weigh-leak.ts';
import { weighRound, type WeighedRound } from '../weigh-round.ts';

/** One round as `assess` weighs it, with everything on the way still in hand. */
export interface Weighing {
	readonly survey: Survey;
	readonly air: SiteAir;
	readonly leaks: readonly WeighedLeak[];
	readonly unweighed: WeighedRound['unweighed'];
	readonly found: LeakYears;
	/** Absent when there is no energy or no price. */
	readonly costs?: LeakCosts;
	/** The station, ready to compute with; by the station model only. */
	readonly station?: ReadyYear;
	/** The quick method's years and costs, beside the station model's. */
	readonly quick?: { readonly years: readonly LeakYear[]; readonly costs?: LeakCosts };
}

/** Weighs a round by the same steps as `assess`. METHOD W1 to W5. */
export function weighing(
	survey: Survey,
	roundId: string,
	states: readonly LeakState[]
): Result<Weighing> {
	const { air, weighed, unweighed } = weighRound(survey, roundId, states);
	if (!air.ok) return air;
	const leaks = weighed.map(({ at }) => at);
	const found = leakYears(survey, air.value, leaks);
	const costs = found.method === 'none' ? undefined : leakCosts(survey, found.years, found.outcome);
	const { station } = survey.supply;
	const year = found.method === 'supply' && station ? stationYear(station, air.value) : undefined;
	return ok({
		survey,
		air: air.value,
		leaks,
		unweighed,
		found,
		...(costs?.ok && { costs: costs.value }),
		...(year?.ok && { station: year.value }),
		...quickOf(survey, air.value, leaks, found)
	});
}

function quickOf(
	survey: Survey,
	air: SiteAir,
	leaks: readonly WeighedLeak[],
	found: LeakYears
): Pick<Weighing, 'quick'> {
	const { quick } = survey.supply;
	if (found.method !== 'supply' || !quick) return {};
	const years = quickYears(quick.specificPowerKwPerM3PerMin, air, leaks);
	if (!years.ok) return {};
	const costs = leakCosts(survey, years.value, undefined);
	return { quick: { years: years.value, ...(costs.ok && { costs: costs.value }) } };
}
