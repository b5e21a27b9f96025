import type { SiteAir } from '../../air/gas-state.ts';
import { referenceDensity } from '../../air/reference-air.ts';
import { carbonKg } from '../../money/carbon.ts';
import { toMinor } from '../../money/currency.ts';
import { demandChargePerYear } from '../../money/tariff.ts';
import type { YearOutcome } from '../../supply/year.ts';
import type { Survey } from '../../survey/schema.ts';
import type { SupplyMethod } from '../assessment.ts';
import { leakCosts, type CostRates } from '../cost.ts';
import { leakYears } from '../energy.ts';
import { WASTING, weighRound } from '../weigh-round.ts';
import type { Change } from './change.ts';

/** What is drawn in a year and what it comes to. What is not known is absent. */
export interface Yearly {
	readonly energyKwhPerYear?: number;
	readonly costMinorPerYear?: number;
	readonly co2KgPerYear?: number;
}

export interface YearFigures {
	readonly method: SupplyMethod;
	readonly leakCount: number;
	/** At the survey's reference. */
	readonly freeAirM3PerS: number;
	/** What the leaks waste. */
	readonly leaks: Yearly;
	/** All that the machines draw, with energy and demand charge as its cost; by the station model. */
	readonly station?: Yearly;
	readonly warnings: YearOutcome['warnings'];
}

/** The figures of a survey's round, today's or a changed copy's. METHOD W15. */
export function yearFigures(
	survey: Survey,
	roundId: string,
	air: SiteAir,
	machineOff: Change['machineOff']
): YearFigures {
	const { weighed } = weighRound(survey, roundId, WASTING);
	const leaks = weighed.map(({ at }) => at);
	const found = leakYears(survey, air, leaks);
	const idle = machineOff && leakYears(withoutMachine(survey, machineOff), air, leaks).outcome;
	const outcome = idle && found.outcome ? mixed(found.outcome, idle, machineOff.in) : found.outcome;
	const energy = outcome ? outcome.savingKwh : sum(found.years.map((year) => year.energyKwh ?? 0));
	const known = found.method !== 'none';
	const costs = known
		? leakCosts(
				survey,
				[
					{
						energyKwh: energy,
						freeAirM3: sum(found.years.map(({ freeAirM3 }) => freeAirM3)),
						...(outcome && {
							energyCostAt: (priceOf) =>
								sum(outcome.parts.map((part) => part.savingKwh * priceOf(part.priceId)))
						})
					}
				],
				outcome
			)
		: undefined;
	const rates = costs?.ok ? costs.value.rates : undefined;
	const massFlow = sum(leaks.map(({ flow }) => flow.massFlow));
	return {
		method: found.method,
		leakCount: leaks.length,
		freeAirM3PerS: massFlow / referenceDensity(survey.site.reference, air),
		leaks: known ? yearly(survey, energy, costs?.ok ? costs.value.totalMinor : undefined) : {},
		...(outcome && {
			station: yearly(survey, outcome.energyKwh, rates && stationCost(survey, outcome, rates))
		}),
		warnings: outcome?.warnings ?? []
	};
}

function withoutMachine(
	survey: Survey,
	{ compressorId }: NonNullable<Change['machineOff']>
): Survey {
	const { station } = survey.supply;
	if (!station) return survey;
	const { compressors, trimId } = station;
	return {
		...survey,
		supply: {
			...survey.supply,
			station: {
				...station,
				compressors: compressors.filter(({ id }) => id !== compressorId),
				trimId: trimId === compressorId ? null : trimId
			}
		}
	};
}

/** The year with the machine standing still in some of its parts, and running as it does in the others. */
function mixed(running: YearOutcome, idle: YearOutcome, partIds: readonly string[]): YearOutcome {
	const parts = running.parts.map((part, at) =>
		partIds.includes(part.id) ? (idle.parts[at] ?? part) : part
	);
	const counted = parts.filter(({ hours, delivered }) => hours > 0 && delivered !== null);
	const highest = (power: (part: (typeof parts)[number]) => number) =>
		counted.reduce((most, part) => Math.max(most, power(part)), 0);
	return {
		...running,
		parts,
		energyKwh: sum(parts.map(({ energyKwh }) => energyKwh)),
		savingKwh: sum(parts.map(({ savingKwh }) => savingKwh)),
		peakKw: highest(({ powerKw }) => powerKw),
		peakWithoutKw: highest(({ powerWithoutKw }) => powerWithoutKw),
		warnings: [
			...running.warnings.filter((each) => !('partId' in each) || !partIds.includes(each.partId)),
			...idle.warnings.filter((each) => 'partId' in each && partIds.includes(each.partId))
		]
	};
}

/** Energy by the price of its part of the week, and the demand charge on the peak. METHOD M3, M4. */
function stationCost(survey: Survey, outcome: YearOutcome, rates: CostRates): number | undefined {
	const energy = sum(outcome.parts.map((part) => part.energyKwh * rates.priceOf(part.priceId)));
	const { demandCharge } = survey.prices;
	const demand = demandCharge && demandChargePerYear(demandCharge, outcome.peakKw);
	if (demand && !demand.ok) return undefined;
	const total = toMinor(energy + (demand?.value ?? 0), survey.site.currency);
	return total.ok ? total.value : undefined;
}

function yearly(survey: Survey, energyKwh: number, costMinor: number | undefined): Yearly {
	const { carbon } = survey.prices;
	const co2 = carbon && carbonKg(energyKwh, carbon);
	return {
		energyKwhPerYear: energyKwh,
		...(costMinor !== undefined && { costMinorPerYear: costMinor }),
		...(co2?.ok && { co2KgPerYear: co2.value })
	};
}

function sum(values: readonly number[]): number {
	let total = 0;
	for (const value of values) total += value;
	return total;
}
