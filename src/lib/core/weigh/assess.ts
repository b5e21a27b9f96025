import { REFERENCES, referenceDensity } from '../air/reference-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { carbonKg } from '../money/carbon.ts';
import type { LeakState } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import type { Refusal } from '../units/result.ts';
import type { Assessment, LeakAssessment, Totals } from './assessment.ts';
import { leakCosts, type LeakYear } from './cost.ts';
import { leakYears, quickYears } from './energy.ts';
import type { WeighedLeak } from './weigh-leak.ts';
import { WASTING, weighRound, type StatedLeak } from './weigh-round.ts';

export { MENDED, WASTING } from './weigh-round.ts';

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
	const { air, weighed, unweighed } = weighRound(survey, roundId, states);
	const missing: Refusal[] = [];
	if (!air.ok) missing.push(air.error);
	const priced = air.ok ? price(survey, air.value, weighed, missing) : NOTHING;
	return {
		roundId,
		...priced,
		missing,
		referenceLabel: REFERENCES[survey.site.reference].label,
		currency: survey.site.currency,
		unweighed
	};
}

const NOTHING: Priced = {
	method: 'none',
	totals: { leakCount: 0, massFlowKgPerS: 0, freeAirM3PerS: 0, freeAirM3PerYear: 0 },
	leaks: [],
	warnings: []
};

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

	const shares = costs?.ok ? costs.value.sharesMinor : undefined;
	const leaks = rankedOrder(weighed, years, shares).map((index, place) =>
		leakAssessment(weighed[index] as StatedLeak, place + 1, {
			energyKwhPerYear: years[index]?.energyKwh,
			costMinorPerYear: shares?.[index],
			co2KgPerYear: carbonOf(years[index]?.energyKwh)
		})
	);
	const energy = known ? sum(years.map(({ energyKwh }) => energyKwh ?? 0)) : undefined;
	const isoToShown =
		referenceDensity('iso-1217', air) / referenceDensity(survey.site.reference, air);
	const total: Yearly = {
		energyKwhPerYear: energy,
		costMinorPerYear: costs?.ok ? costs.value.totalMinor : undefined,
		co2KgPerYear: carbonOf(energy)
	};
	const totals: Totals = {
		leakCount: leaks.length,
		massFlowKgPerS: sum(leaks.map((leak) => leak.massFlowKgPerS)),
		freeAirM3PerS: sum(leaks.map((leak) => leak.freeAirM3PerS)),
		freeAirM3PerYear: sum(years.map(({ freeAirM3 }) => freeAirM3)) * isoToShown,
		...(total.energyKwhPerYear !== undefined && { energyKwhPerYear: total.energyKwhPerYear }),
		...(total.costMinorPerYear !== undefined && { costMinorPerYear: total.costMinorPerYear }),
		...(total.co2KgPerYear !== undefined && { co2KgPerYear: total.co2KgPerYear })
	};
	return {
		method,
		totals,
		leaks,
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

const made = new WeakMap<WeighedLeak, LeakAssessment>();

/**
 * One leak's figures. As long as they stay the same they are the same object: after an edit of one
 * leak the others need not be made again, nor drawn again.
 */
function leakAssessment(stated: StatedLeak, rank: number, yearly: Yearly): LeakAssessment {
	const before = made.get(stated.at);
	if (
		before?.rank === rank &&
		before.state === stated.state &&
		before.energyKwhPerYear === yearly.energyKwhPerYear &&
		before.costMinorPerYear === yearly.costMinorPerYear &&
		before.co2KgPerYear === yearly.co2KgPerYear
	)
		return before;
	const figures = newLeakAssessment(stated, rank, yearly);
	made.set(stated.at, figures);
	return figures;
}

/** A field that is not known is left out, so that missing is never zero. */
function newLeakAssessment(
	{ at, state }: StatedLeak,
	rank: number,
	yearly: Yearly
): LeakAssessment {
	const figures: { -readonly [K in keyof LeakAssessment]: LeakAssessment[K] } = {
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
		rank
	};
	if (yearly.energyKwhPerYear !== undefined) figures.energyKwhPerYear = yearly.energyKwhPerYear;
	if (yearly.costMinorPerYear !== undefined) figures.costMinorPerYear = yearly.costMinorPerYear;
	if (yearly.co2KgPerYear !== undefined) figures.co2KgPerYear = yearly.co2KgPerYear;
	return figures;
}

/** Worst first: by money where it is known, else by energy, else by air a year; ties by tag. */
function rankedOrder(
	weighed: readonly StatedLeak[],
	years: readonly LeakYear[],
	costs: readonly number[] | undefined
): readonly number[] {
	const energy = Float64Array.from(years, ({ energyKwh }) => energyKwh ?? 0);
	const air = Float64Array.from(years, ({ freeAirM3 }) => freeAirM3);
	const by = (values: ArrayLike<number>, a: number, b: number) =>
		(values[b] ?? 0) - (values[a] ?? 0);
	// Sorting what is nearly sorted is quick, and an edit moves few leaks.
	if (lastOrder.length !== weighed.length) lastOrder = Array.from(weighed.keys());
	lastOrder = lastOrder.toSorted(
		(a, b) =>
			(costs ? by(costs, a, b) : 0) ||
			by(energy, a, b) ||
			by(air, a, b) ||
			(weighed[a]?.at.leak.tag ?? 0) - (weighed[b]?.at.leak.tag ?? 0)
	);
	return lastOrder;
}

let lastOrder: readonly number[] = [];

function sum(values: readonly number[]): number {
	let total = 0;
	for (const value of values) total += value;
	return total;
}
