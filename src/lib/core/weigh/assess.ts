import { REFERENCES, referenceDensity } from '../air/reference-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { carbonKg } from '../money/carbon.ts';
import type { LeakState } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import type { Refusal } from '../units/result.ts';
import type { Assessment, LeakAssessment, Totals } from './assessment.ts';
import { leakCosts } from './cost.ts';
import { leakYears, quickYears } from './energy.ts';
import { rankedOrder } from './ranking.ts';
import type { WeighedLeak } from './weigh-leak.ts';
import { BLEW, MENDED, WASTING, weighRound, type StatedLeak } from './weigh-round.ts';

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
	const priced = air.ok ? price(survey, air.value, weighed, missing, memoryOf(states)) : NOTHING;
	return {
		roundId,
		...priced,
		missing,
		reference: survey.site.reference,
		referenceLabel: REFERENCES[survey.site.reference].label,
		currency: survey.site.currency,
		unweighed
	};
}

/**
 * The leaks that were mended in the round, by what they took while they leaked: priced beside those that
 * leak still, as before they were mended, so that one repair costs the same here and in the proof. METHOD W2, V2.
 */
export function mendedLeaks(survey: Survey, roundId: string): LeakAssessment[] {
	return assess(survey, roundId, BLEW).leaks.filter(({ state }) => MENDED.includes(state));
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
	missing: Refusal[],
	memory: Memory
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
	// The factor is checked once: the mass is in proportion to the energy.
	const kgPerKwh = carbon && carbonKg(1, carbon);
	const carbonOf = (kwh: number | undefined): number | undefined =>
		kgPerKwh?.ok && kwh !== undefined && Number.isFinite(kwh) ? kwh * kgPerKwh.value : undefined;

	const shares = costs?.ok ? costs.value.sharesMinor : undefined;
	const energies = column(years, ({ energyKwh }) => energyKwh ?? 0);
	const airM3 = column(years, ({ freeAirM3 }) => freeAirM3);
	const order = rankedOrder(
		{
			rows: column(weighed, ({ row }) => row),
			cost: shares,
			energy: energies,
			air: airM3,
			tag: column(weighed, ({ at }) => at.leak.tag)
		},
		memory.order
	);
	memory.order = column(order, (index) => weighed[index]!.row);
	makeRoom(memory, weighed.at(-1)?.row ?? -1);
	const rank = new Int32Array(order.length);
	for (let place = 0; place < order.length; place++) rank[order[place]!] = place + 1;
	// In the order of the table, in which they lie in memory.
	const figures = weighed.map((stated, index) =>
		leakAssessment(memory, stated, rank[index]!, {
			energyKwhPerYear: known ? energies[index] : undefined,
			costMinorPerYear: shares?.[index],
			co2KgPerYear: known ? carbonOf(energies[index]) : undefined
		})
	);
	const leaks = Array.from<LeakAssessment>({ length: order.length });
	for (let place = 0; place < order.length; place++) leaks[place] = figures[order[place]!]!;
	const energy = known ? sum(energies) : undefined;
	const isoToShown =
		referenceDensity('iso-1217', air) / referenceDensity(survey.site.reference, air);
	const total: Yearly = {
		energyKwhPerYear: energy,
		costMinorPerYear: costs?.ok ? costs.value.totalMinor : undefined,
		co2KgPerYear: carbonOf(energy)
	};
	const totals: Totals = {
		leakCount: leaks.length,
		massFlowKgPerS: sum(column(flows, ({ flow }) => flow.massFlow)),
		freeAirM3PerS: sum(column(flows, ({ flow }) => flow.freeAir)),
		freeAirM3PerYear: sum(airM3) * isoToShown,
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
			energyKwhPerYear: sum(column(years.value, ({ energyKwh }) => energyKwh ?? 0)),
			...(costs.ok && { costMinorPerYear: costs.value.totalMinor })
		}
	};
}

interface Yearly {
	readonly energyKwhPerYear: number | undefined;
	readonly costMinorPerYear: number | undefined;
	readonly co2KgPerYear: number | undefined;
}

/** What the pass before left behind; nothing of it changes a figure. */
interface Memory {
	/** Rows of the survey's table, worst first. */
	order: Float64Array;
	/** By row. */
	readonly from: (WeighedLeak | undefined)[];
	readonly made: (LeakAssessment | undefined)[];
}

/** By the states that were asked for: different rooms ask for different ones in turn. */
const memories = new Map<string, Memory>();

function memoryOf(states: readonly LeakState[]): Memory {
	const key = states.join(' ');
	let memory = memories.get(key);
	if (!memory) {
		memory = { order: new Float64Array(0), from: [], made: [] };
		memories.set(key, memory);
	}
	return memory;
}

/** Arrays that are filled out of order from nothing are slow ever after. */
function makeRoom({ from, made }: Memory, lastRow: number): void {
	while (from.length <= lastRow) {
		from.push(undefined);
		made.push(undefined);
	}
}

/**
 * One leak's figures. As long as they stay the same they are the same object: after an edit of one
 * leak the others need not be made again, nor drawn again.
 */
function leakAssessment(
	{ from, made }: Memory,
	stated: StatedLeak,
	rank: number,
	yearly: Yearly
): LeakAssessment {
	const { row } = stated;
	const before = from[row] === stated.at ? made[row] : undefined;
	if (
		before?.rank === rank &&
		before.state === stated.state &&
		before.energyKwhPerYear === yearly.energyKwhPerYear &&
		before.costMinorPerYear === yearly.costMinorPerYear &&
		before.co2KgPerYear === yearly.co2KgPerYear
	)
		return before;
	const figures = newLeakAssessment(stated, rank, yearly);
	from[row] = stated.at;
	made[row] = figures;
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

function sum(values: Float64Array): number {
	let total = 0;
	for (const value of values) total += value;
	return total;
}

function column<T>(items: ArrayLike<T>, part: (item: T) => number): Float64Array {
	const values = new Float64Array(items.length);
	for (let i = 0; i < values.length; i++) values[i] = part(items[i]!);
	return values;
}
