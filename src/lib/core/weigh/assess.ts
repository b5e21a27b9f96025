import { REFERENCES, referenceDensity } from '../air/reference-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { carbonKg } from '../money/carbon.ts';
import { leakState, sightingIn, type LeakState } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import type { Refusal } from '../units/result.ts';
import type { Assessment, LeakAssessment, Totals, Unweighed } from './assessment.ts';
import { leakCosts } from './cost.ts';
import { leakYears, quickYears } from './energy.ts';
import { sectionOf } from './leak-inputs.ts';
import { siteConditions } from './site-conditions.ts';
import { pressurisedHours, stationYear } from './station-year.ts';
import { weighLeakOnce, type WeighedLeak } from './weigh-leak.ts';

/** What leaks at the end of the round: all that was found and is not mended. */
export const WASTING: readonly LeakState[] = ['leaking'];
/** What was mended in the round, re-soaped or not. */
export const MENDED: readonly LeakState[] = ['mended', 'tight'];

/**
 * Weighs the leaks of one round: air, energy, money and carbon of each and of all, worst first.
 * METHOD W1 to W5.
 *
 * @param states which leaks count; by default those that leak now. A leak that was seen leaking
 * and has been mended since is weighed by what it leaked.
 */
export function assess(
	survey: Survey,
	roundId: string,
	states: readonly LeakState[] = WASTING
): Assessment {
	const missing: Refusal[] = [];
	const unweighed: Unweighed[] = [];
	const weighed: StatedLeak[] = [];
	const air = siteConditions(survey.site);
	if (!air.ok) missing.push(air.error);
	const scheduleHours = air.ok ? hoursOfSchedule(survey, air.value) : undefined;

	for (const leak of Object.values(survey.leaks)) {
		if (leak.removed) continue;
		const sighting = sightingIn(leak, roundId);
		const state = leakState(leak, roundId);
		if (sighting?.state !== 'leaking' || !states.includes(state)) continue;
		const result = air.ok
			? weighLeakOnce(leak, sighting, sectionOf(survey, leak), {
					survey,
					air: air.value,
					soapBands: survey.startingValues.soapBands,
					scheduleHours
				})
			: air;
		if (result.ok) weighed.push({ state, at: result.value });
		else unweighed.push({ leakId: leak.id, tag: leak.tag, refusal: result.error });
	}

	const priced = air.ok ? price(survey, air.value, weighed, missing) : NOTHING;
	return {
		roundId,
		...priced,
		missing,
		referenceLabel: REFERENCES[survey.site.reference].label,
		currency: survey.site.currency,
		unweighed: unweighed.sort((a, b) => a.tag - b.tag)
	};
}

/** Hours a year under pressure by the station's week, when the survey has one that can be read. */
function hoursOfSchedule(survey: Survey, air: SiteAir): number | undefined {
	const { station } = survey.supply;
	const year = station && stationYear(station, air);
	return year?.ok ? pressurisedHours(year.value) : undefined;
}

const NOTHING: Priced = {
	method: 'none',
	totals: { leakCount: 0, massFlowKgPerS: 0, freeAirM3PerS: 0, freeAirM3PerYear: 0 },
	leaks: [],
	warnings: []
};

interface StatedLeak {
	readonly state: LeakState;
	readonly at: WeighedLeak;
}

type Priced = Pick<
	Assessment,
	'method' | 'totals' | 'leaks' | 'warnings' | 'station' | 'quickTotals'
>;

function price(
	survey: Survey,
	air: SiteAir,
	weighed: readonly StatedLeak[],
	missing: Refusal[]
): Priced {
	const flows = weighed.map(({ at }) => at);
	const found = leakYears(survey, air, flows);
	missing.push(...found.missing);
	const { method, years, outcome } = found;
	const known = method !== 'none';

	const costs = known ? leakCosts(survey, years, outcome) : undefined;
	if (costs && !costs.ok) missing.push(costs.error);
	const { carbon } = survey.prices;
	if (!carbon) missing.push({ code: 'carbon-factor-missing' });
	const carbonOf = (kwh: number | undefined): number | undefined => {
		if (!carbon || kwh === undefined) return undefined;
		const kg = carbonKg(kwh, carbon);
		return kg.ok ? kg.value : undefined;
	};

	const leaks = weighed.map(({ at, state }, index) => {
		const energy = years[index]?.energyKwh;
		return leakAssessment(at, state, {
			energyKwhPerYear: energy,
			costMinorPerYear: costs?.ok ? costs.value.sharesMinor[index] : undefined,
			co2KgPerYear: carbonOf(energy)
		});
	});
	const energy = known ? sum(years.map(({ energyKwh }) => energyKwh ?? 0)) : undefined;
	const isoToShown =
		referenceDensity('iso-1217', air) / referenceDensity(survey.site.reference, air);
	const totals: Totals = {
		leakCount: leaks.length,
		massFlowKgPerS: sum(leaks.map((leak) => leak.massFlowKgPerS)),
		freeAirM3PerS: sum(leaks.map((leak) => leak.freeAirM3PerS)),
		freeAirM3PerYear: sum(years.map(({ freeAirM3 }) => freeAirM3)) * isoToShown,
		...defined({
			energyKwhPerYear: energy,
			costMinorPerYear: costs?.ok ? costs.value.totalMinor : undefined,
			co2KgPerYear: carbonOf(energy)
		})
	};
	return {
		method,
		totals,
		leaks: ranked(leaks),
		warnings: outcome?.warnings ?? [],
		...(outcome && { station: { energyKwhPerYear: outcome.energyKwh, peakKw: outcome.peakKw } }),
		...quickBeside(survey, air, flows, method)
	};
}

/** The quick method's totals, to stand beside the station model's. */
function quickBeside(
	survey: Survey,
	air: SiteAir,
	flows: readonly WeighedLeak[],
	method: Assessment['method']
): Pick<Assessment, 'quickTotals'> {
	const { quick } = survey.supply;
	if (method !== 'supply' || !quick) return {};
	const years = quickYears(quick.specificPowerKwPerM3PerMin, air, flows);
	if (!years.ok) return {};
	const costs = leakCosts(survey, years.value, undefined);
	return {
		quickTotals: {
			energyKwhPerYear: sum(years.value.map(({ energyKwh }) => energyKwh ?? 0)),
			...(costs.ok && { costMinorPerYear: costs.value.totalMinor })
		}
	};
}

interface Yearly {
	readonly energyKwhPerYear: number | undefined;
	readonly costMinorPerYear: number | undefined;
	readonly co2KgPerYear: number | undefined;
}

function leakAssessment(at: WeighedLeak, state: LeakState, yearly: Yearly): LeakAssessment {
	return {
		leakId: at.leak.id,
		tag: at.leak.tag,
		state,
		effectiveAreaM2: at.flow.area.areaM2,
		relativeUncertainty: at.flow.area.relativeStandardUncertainty,
		pressureBarGauge: at.pressure.value,
		hoursPerYear: at.hours.value,
		regime: at.flow.regime,
		massFlowKgPerS: at.flow.massFlow,
		freeAirM3PerS: at.flow.freeAir,
		...defined(yearly),
		rank: 0
	};
}

/** Worst first: by money where it is known, else by energy, else by air a year; ties by tag. */
function ranked(leaks: readonly LeakAssessment[]): LeakAssessment[] {
	const worth = (leak: LeakAssessment) => leak.energyKwhPerYear ?? 0;
	const air = (leak: LeakAssessment) => leak.freeAirM3PerS * leak.hoursPerYear;
	return leaks
		.toSorted(
			(a, b) =>
				(b.costMinorPerYear ?? 0) - (a.costMinorPerYear ?? 0) ||
				worth(b) - worth(a) ||
				air(b) - air(a) ||
				a.tag - b.tag
		)
		.map((leak, index) => ({ ...leak, rank: index + 1 }));
}

/** Drops what is undefined: a field that is absent is missing, one that is there is known. */
function defined<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
	return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
		[K in keyof T]?: Exclude<T[K], undefined>;
	};
}

function sum(values: readonly number[]): number {
	return values.reduce((total, value) => total + value, 0);
}
