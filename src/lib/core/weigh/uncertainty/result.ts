import type { Refusal } from '../../units/result.ts';
import type { SupplyMethod } from '../assessment.ts';
import type { LeakCounts } from './leak-counts.ts';
import type { RankSpread } from './rank-counts.ts';
import type { TotalName, UncertaintyRun } from './run.ts';
import {
	HIGH_SHARE,
	LOW_SHARE,
	lognormalSpread,
	quantileError,
	scaled,
	spreadOfSorted,
	type Spread
} from './spread.ts';

/** A total with its interval, and how well the draws know the interval itself. */
export interface TotalSpread extends Spread {
	/** Standard errors of the two ends. */
	readonly lowError: number;
	readonly highError: number;
}

/** How sure one leak's figures are. What is not known is absent. */
export interface LeakUncertainty {
	readonly leakId: string;
	readonly tag: number;
	readonly massFlowKgPerS: Spread;
	/** At the survey's reference. */
	readonly freeAirM3PerS: Spread;
	readonly energyKwhPerYear?: Spread;
	/** Minor units, not rounded to whole ones. */
	readonly costMinorPerYear?: Spread;
	readonly co2KgPerYear?: Spread;
	readonly rank: RankSpread;
}

export interface UncertaintyTotals {
	readonly massFlowKgPerS: TotalSpread;
	readonly freeAirM3PerS: TotalSpread;
	readonly freeAirM3PerYear: TotalSpread;
	readonly energyKwhPerYear?: TotalSpread;
	readonly costMinorPerYear?: TotalSpread;
	readonly co2KgPerYear?: TotalSpread;
}

/** What a round's leaks waste and how sure that is: plain data, safe to post between threads. */
export interface UncertaintyResult {
	readonly roundId: string;
	readonly method: SupplyMethod;
	readonly seed: number;
	readonly draws: number;
	/** False when the most draws were reached before the intervals were as sharp as asked. */
	readonly settled: boolean;
	readonly topN: number;
	/** What the order of the ranks is called. */
	readonly rankedBy: string;
	readonly totals: UncertaintyTotals;
	/** By tag. */
	readonly leaks: readonly LeakUncertainty[];
	/** Draw by draw, for comparing with a system test: all leaks, and those whose flow was measured. */
	readonly flowDraws: { readonly all: Float64Array; readonly measured: Float64Array };
	readonly missing: readonly Refusal[];
}

/** The spreads of a run so far. METHOD W7, W9. */
export function uncertaintyResult(run: UncertaintyRun): UncertaintyResult {
	const { model, options, draws } = run;
	return {
		roundId: model.roundId,
		method: model.year.method,
		seed: options.seed,
		draws,
		settled: run.settled,
		topN: options.topN,
		rankedBy: options.ranking.by,
		totals: totalSpreads(run),
		leaks: model.leakIds.map((_, leak) => leakUncertainty(run, leak)),
		flowDraws: {
			all: run.drawsOf('massFlow').slice(),
			measured: run.drawsOf('measuredFlow').slice()
		},
		missing: model.missing
	};
}

/** The spreads of the totals alone. METHOD W7. */
export function totalSpreads(run: UncertaintyRun): UncertaintyTotals {
	const { year, shownM3PerKg, shownPerIsoM3, kgCo2PerKwh } = run.model;
	const flow = totalSpread(run, 'massFlow');
	const energy = year.energyKnown ? totalSpread(run, 'energyKwh') : undefined;
	return {
		massFlowKgPerS: flow,
		freeAirM3PerS: scaledTotal(flow, shownM3PerKg),
		freeAirM3PerYear: scaledTotal(totalSpread(run, 'airM3'), shownPerIsoM3),
		...(energy && { energyKwhPerYear: energy }),
		...(year.costKnown && { costMinorPerYear: totalSpread(run, 'costMinor') }),
		...(energy && kgCo2PerKwh !== undefined && { co2KgPerYear: scaledTotal(energy, kgCo2PerKwh) })
	};
}

function totalSpread(run: UncertaintyRun, name: TotalName): TotalSpread {
	const sorted = run.drawsOf(name).slice().sort();
	if (sorted.length === 0)
		return { low: 0, median: 0, high: 0, mean: 0, lowError: 0, highError: 0 };
	return {
		...spreadOfSorted(sorted),
		lowError: quantileError(sorted, LOW_SHARE),
		highError: quantileError(sorted, HIGH_SHARE)
	};
}

function scaledTotal(total: TotalSpread, factor: number): TotalSpread {
	return {
		...scaled(total, factor),
		lowError: total.lowError * factor,
		highError: total.highError * factor
	};
}

function leakUncertainty(run: UncertaintyRun, leak: number): LeakUncertainty {
	const { model } = run;
	const { year, errors, shownM3PerKg, kgCo2PerKwh } = model;
	const whole = model.whole[leak] ?? 0;
	const flow = lognormalSpread(model.massFlow[leak] ?? 0, whole);
	const nominal = run.nominal(leak);
	const ofEnergy = [whole, errors.hours, errors.power];
	const energy = year.energyKnown
		? leakSpread(run.leakEnergy, leak, nominal.energyKwh, ofEnergy)
		: undefined;
	const cost = year.costKnown
		? leakSpread(run.leakCost, leak, nominal.costMinor, [...ofEnergy, errors.price])
		: undefined;
	return {
		leakId: model.leakIds[leak] ?? '',
		tag: model.tags[leak] ?? 0,
		massFlowKgPerS: flow,
		freeAirM3PerS: scaled(flow, shownM3PerKg),
		...(energy && { energyKwhPerYear: energy }),
		...(cost && { costMinorPerYear: cost }),
		...(energy && kgCo2PerKwh !== undefined && { co2KgPerYear: scaled(energy, kgCo2PerKwh) }),
		rank: run.ranks.spreadOf(leak)
	};
}

/** From the counts where the station bends it; by the quick method it is lognormal, exactly. */
function leakSpread(
	counts: LeakCounts | undefined,
	leak: number,
	nominal: number,
	spreads: readonly number[]
): Spread {
	return counts?.spreadOf(leak) ?? lognormalSpread(nominal, Math.hypot(...spreads));
}
