import { REFERENCES, freeAirFlow } from '../air/reference-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { carbonKg } from '../money/carbon.ts';
import { leakState, sightingIn, type LeakState } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import type { Refusal } from '../units/result.ts';
import type { Assessment, LeakAssessment, Totals, Unweighed } from './assessment.ts';
import { leakCosts } from './cost.ts';
import { leakEnergy } from './energy.ts';
import { sectionOf } from './leak-inputs.ts';
import { siteConditions } from './site-conditions.ts';
import { weighLeakOnce, type WeighedLeak } from './weigh-leak.ts';

const SECONDS_PER_HOUR = 3600;

/** What leaks at the end of the round: all that was found and is not mended. */
export const WASTING: readonly LeakState[] = ['leaking'];
/** What was mended in the round, re-soaped or not. */
export const MENDED: readonly LeakState[] = ['mended', 'tight'];

/**
 * Weighs the leaks of one round: air, energy, money and carbon of each and of all, worst first.
 * METHOD W1, W2, W3.
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
	const weighed: { readonly state: LeakState; readonly at: WeighedLeak }[] = [];
	const air = siteConditions(survey.site);
	if (!air.ok) missing.push(air.error);

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
					scheduleHours: undefined
				})
			: air;
		if (result.ok) weighed.push({ state, at: result.value });
		else unweighed.push({ leakId: leak.id, tag: leak.tag, refusal: result.error });
	}

	const priced = air.ok ? price(survey, air.value, weighed, missing) : NOTHING;
	return {
		roundId,
		method: priced.method,
		missing,
		referenceLabel: REFERENCES[survey.site.reference].label,
		currency: survey.site.currency,
		totals: priced.totals,
		leaks: priced.leaks,
		unweighed: unweighed.sort((a, b) => a.tag - b.tag)
	};
}

const NOTHING: Pick<Assessment, 'method' | 'totals' | 'leaks'> = {
	method: 'none',
	totals: { leakCount: 0, massFlowKgPerS: 0, freeAirM3PerS: 0, freeAirM3PerYear: 0 },
	leaks: []
};

function price(
	survey: Survey,
	air: SiteAir,
	weighed: readonly { readonly state: LeakState; readonly at: WeighedLeak }[],
	missing: Refusal[]
): Pick<Assessment, 'method' | 'totals' | 'leaks'> {
	const {
		method,
		energyKwhPerYear,
		missing: supplyMissing
	} = leakEnergy(
		survey,
		air,
		weighed.map(({ at }) => at)
	);
	if (supplyMissing) missing.push(supplyMissing);

	const costs =
		energyKwhPerYear &&
		leakCosts(
			survey,
			weighed.map(({ at }, index) => ({
				energyKwh: energyKwhPerYear[index] ?? 0,
				freeAirM3:
					freeAirFlow(at.flow.massFlow, 'iso-1217', air) * at.hours.value * SECONDS_PER_HOUR
			}))
		);
	if (costs && !costs.ok) missing.push(costs.error);
	const { carbon } = survey.prices;
	if (!carbon) missing.push({ code: 'carbon-factor-missing' });

	const carbonOf = (kwh: number): number | undefined => {
		if (!carbon) return undefined;
		const kg = carbonKg(kwh, carbon);
		return kg.ok ? kg.value : undefined;
	};
	const leaks = weighed.map(({ at, state }, index) => {
		const energy = energyKwhPerYear?.[index];
		return leakAssessment(at, state, {
			energyKwhPerYear: energy,
			costMinorPerYear: costs?.ok ? costs.value.sharesMinor[index] : undefined,
			co2KgPerYear: energy === undefined ? undefined : carbonOf(energy)
		});
	});
	const energy = energyKwhPerYear && sum(energyKwhPerYear);
	const totals: Totals = {
		leakCount: leaks.length,
		massFlowKgPerS: sum(leaks.map((leak) => leak.massFlowKgPerS)),
		freeAirM3PerS: sum(leaks.map((leak) => leak.freeAirM3PerS)),
		freeAirM3PerYear: sum(
			leaks.map((leak) => leak.freeAirM3PerS * leak.hoursPerYear * SECONDS_PER_HOUR)
		),
		...defined({
			energyKwhPerYear: energy,
			costMinorPerYear: costs?.ok ? costs.value.totalMinor : undefined,
			co2KgPerYear: energy === undefined ? undefined : carbonOf(energy)
		})
	};
	return { method, totals, leaks: ranked(leaks) };
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
