import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import { KINDS } from './leak-errors.ts';
import { LeakCounts } from './leak-counts.ts';
import type { UncertaintyModel } from './model.ts';
import { randomFrom, type Random } from './random.ts';
import { RankCounts } from './rank-counts.ts';
import { HIGH_SHARE, LOW_SHARE, quantileError, quantileOf } from './spread.ts';
import { newWeights, type Weights } from './year-weights.ts';

/** An order by what a leak wastes for each unit of something that is taken as known. */
export interface Ranking {
	/** What the order is called by whoever asked for it. */
	readonly by: string;
	/** Minutes or money by leak; what takes none of it comes first, and what is left out counts as 1. */
	readonly divisors: Readonly<Record<string, number>>;
}

export interface RunOptions {
	/** The same seed gives the same figures. */
	readonly seed?: number;
	/** For the chance of being among the first so many. */
	readonly topN?: number;
	/** What leaks are ordered by; by what they waste if it is left out. */
	readonly ranking?: Ranking;
	/** Whether leaks are put in order at all; the totals are the same without. */
	readonly ranked?: boolean;
	/** Standard error of either end of an interval that is good enough, as a share of its width. */
	readonly tolerance?: number;
	readonly leastDraws?: number;
	readonly mostDraws?: number;
}

/** Counters of draws hold 16 bits. */
const MOST_DRAWS = 60_000;
const STARTING: Required<RunOptions> = {
	seed: 1,
	topN: 10,
	ranking: { by: 'worth', divisors: {} },
	ranked: true,
	tolerance: 0.01,
	leastDraws: 2000,
	mostDraws: MOST_DRAWS
};

const GAUGE = KINDS.length;
const POWER = GAUGE + 1;
const HOURS = GAUGE + 2;
const PRICE = GAUGE + 3;
/** Normals of a draw that leaks share; each leak's own follow. */
const SHARED = GAUGE + 4;
/** Logarithm that stands for nothing at all, so that what is ordered is finite. */
const NOTHING = -100;
/** Divided by nothing: before all that is divided by something. */
const FREE = 300;

export const TOTALS = ['massFlow', 'measuredFlow', 'airM3', 'energyKwh', 'costMinor'] as const;
export type TotalName = (typeof TOTALS)[number];

/**
 * Propagates the errors of all leaks by drawing them again and again: JCGM 101 with leaks that share
 * errors. It runs in steps, so that whoever drives it can show progress or stop. METHOD W7.
 */
export class UncertaintyRun {
	readonly model: UncertaintyModel;
	readonly options: Required<RunOptions>;
	readonly ranks: RankCounts;
	/** Of single leaks, where their figures are not simply lognormal. */
	readonly leakEnergy: LeakCounts | undefined;
	readonly leakCost: LeakCounts | undefined;
	readonly #random: Random;
	readonly #draws: Readonly<Record<TotalName, Float64Array>>;
	readonly #normals: Float64Array;
	readonly #logs: Float64Array;
	readonly #ratios: Float64Array;
	readonly #keys: Float64Array;
	readonly #leakLogs: Float64Array;
	readonly #leakRatios: Float64Array;
	readonly #classTotals: Float64Array;
	readonly #weights: Weights;
	/** Logarithm of the one class's amounts, or of what a leak is worth in the draw. */
	readonly #logWorth: Float64Array;
	/** Taken from the logarithm of what a leak is worth before leaks are put in order. */
	readonly #logDivisors: Float64Array;
	readonly #nominalEnergy: Float64Array;
	readonly #nominalCost: Float64Array;
	#done = 0;
	#target: number;
	#settled = false;

	constructor(model: UncertaintyModel, options: Required<RunOptions>) {
		const n = model.leakIds.length;
		const { amounts, weightsVary, energyKnown, costKnown } = model.year;
		this.model = model;
		this.options = options;
		this.ranks = new RankCounts(n, options.topN);
		this.#random = randomFrom(options.seed);
		this.#draws = Object.fromEntries(
			TOTALS.map((name) => [name, new Float64Array(options.mostDraws)])
		) as Record<TotalName, Float64Array>;
		this.#normals = new Float64Array(n + SHARED);
		this.#logs = new Float64Array(n);
		this.#ratios = new Float64Array(n);
		this.#keys = new Float64Array(n);
		this.#leakLogs = new Float64Array(n);
		this.#leakRatios = new Float64Array(n);
		this.#classTotals = Float64Array.from(amounts, (each) => each.reduce((a, b) => a + b, 0));
		this.#weights = newWeights(amounts.length);
		model.year.weigh(this.#classTotals, this.#weights);
		this.#nominalEnergy = this.#worth(this.#weights.energyKwh);
		this.#nominalCost = this.#worth(this.#weights.costMinor);
		this.#logDivisors = Float64Array.from(model.leakIds, (id) => {
			const divisor = options.ranking.divisors[id] ?? 1;
			return divisor > 0 ? Math.log(divisor) : -FREE;
		});
		this.#logWorth = Float64Array.from(amounts[0] ?? [], floorLog);
		if (weightsVary && energyKnown)
			this.leakEnergy = new LeakCounts(this.#nominalEnergy, model.whole);
		if (weightsVary && costKnown) this.leakCost = new LeakCounts(this.#nominalCost, model.whole);
		this.#target = Math.min(options.leastDraws, options.mostDraws);
	}

	get draws(): number {
		return this.#done;
	}

	/** Whether every total's interval is as sharp as was asked; if not, the most draws were reached. */
	get settled(): boolean {
		return this.#settled;
	}

	get finished(): boolean {
		return this.#settled || this.#done >= this.options.mostDraws;
	}

	/** Share of the draws that will be needed, as far as is known by now. */
	get progress(): number {
		return this.finished ? 1 : this.#done / this.#target;
	}

	/** The draws of a total so far, in the order they were drawn. */
	drawsOf(total: TotalName): Float64Array {
		return this.#draws[total].subarray(0, this.#done);
	}

	nominal(leak: number): { readonly energyKwh: number; readonly costMinor: number } {
		return { energyKwh: this.#nominalEnergy[leak]!, costMinor: this.#nominalCost[leak]! };
	}

	/** Draws up to so many times more. */
	step(draws: number): void {
		for (let left = draws; left > 0 && !this.finished; left--) {
			this.#drawOnce();
			if (this.#done >= this.#target) this.#judge();
		}
	}

	#drawOnce(): void {
		const { massFlow, measured, kind, own, method, gauge, year } = this.model;
		const n = massFlow.length;
		const normals = this.#normals;
		const logs = this.#logs;
		const ratios = this.#ratios;
		this.#random.fillNormals(normals, n + SHARED);
		const gaugeError = normals[GAUGE]!;
		let flow = 0;
		let flowMeasured = 0;
		for (let i = 0; i < n; i++) {
			const log =
				own[i]! * normals[SHARED + i]! + method[i]! * normals[kind[i]!]! + gauge[i]! * gaugeError;
			const ratio = Math.exp(log);
			const leak = massFlow[i]! * ratio;
			logs[i] = log;
			ratios[i] = ratio;
			flow += leak;
			flowMeasured += leak * measured[i]!;
		}
		const totals = this.#classTotals;
		for (let k = 0; k < totals.length; k++) {
			const amounts = year.amounts[k]!;
			let total = 0;
			for (let i = 0; i < n; i++) total += amounts[i]! * ratios[i]!;
			totals[k] = total;
		}
		year.weigh(totals, this.#weights);
		this.#keep(flow, flowMeasured);
		if (this.options.ranked) this.#countLeaks();
		this.#done++;
	}

	#keep(flow: number, flowMeasured: number): void {
		const { errors } = this.model;
		const normals = this.#normals;
		const weights = this.#weights;
		const hours = Math.exp(errors.hours * normals[HOURS]!);
		const energy = hours * Math.exp(errors.power * normals[POWER]!);
		const cost = energy * Math.exp(errors.price * normals[PRICE]!);
		const at = this.#done;
		let air = 0;
		let kwh = 0;
		let minor = 0;
		for (let k = 0; k < this.#classTotals.length; k++) {
			const total = this.#classTotals[k]!;
			weights.airM3[k]! *= hours;
			weights.energyKwh[k]! *= energy;
			weights.costMinor[k]! *= cost;
			air += total * weights.airM3[k]!;
			kwh += total * weights.energyKwh[k]!;
			minor += total * weights.costMinor[k]!;
		}
		this.#draws.massFlow[at] = flow;
		this.#draws.measuredFlow[at] = flowMeasured;
		this.#draws.airM3[at] = air;
		this.#draws.energyKwh[at] = kwh;
		// As in `leakCosts`: a gap in the station's sequence makes a saving worth nothing, not less.
		this.#draws.costMinor[at] = Math.max(0, minor);
	}

	#countLeaks(): void {
		const { year } = this.model;
		const n = this.#logs.length;
		if (this.leakEnergy)
			this.#compare(this.leakEnergy, this.#weights.energyKwh, this.#nominalEnergy);
		if (this.leakCost) this.#compare(this.leakCost, this.#weights.costMinor, this.#nominalCost);
		if (year.amounts.length > 1) {
			const worth = this.#worth(this.#ranking());
			for (let i = 0; i < n; i++) this.#logWorth[i] = floorLog(worth[i]!);
		}
		for (let i = 0; i < n; i++)
			this.#keys[i] = this.#logWorth[i]! + this.#logs[i]! - this.#logDivisors[i]!;
		this.ranks.add(this.#keys);
	}

	/** By money where it is known, else by energy, else by air; by air too where none is worth anything. */
	#ranking(): Float64Array {
		const { energyKnown, costKnown } = this.model.year;
		const { costMinor, energyKwh, airM3 } = this.#weights;
		const chosen = costKnown ? costMinor : energyKnown ? energyKwh : airM3;
		return chosen.some((weight) => weight > 0) ? chosen : airM3;
	}

	/** What each leak is worth without its own error, by the weights of its classes. */
	#worth(weights: Float64Array): Float64Array {
		const { amounts } = this.model.year;
		const worth = new Float64Array(this.#logs.length);
		for (const [k, each] of amounts.entries()) {
			const weight = weights[k]!;
			for (let i = 0; i < worth.length; i++) worth[i]! += each[i]! * weight;
		}
		for (let i = 0; i < worth.length; i++) if (worth[i]! < 0) worth[i] = 0;
		return worth;
	}

	#compare(counts: LeakCounts, weights: Float64Array, nominal: Float64Array): void {
		const worth = this.#worth(weights);
		for (let i = 0; i < worth.length; i++) {
			const ratio = nominal[i]! > 0 ? worth[i]! / nominal[i]! : 0;
			this.#leakLogs[i] = ratio > 0 ? Math.log(ratio) + this.#logs[i]! : -Infinity;
			this.#leakRatios[i] = ratio * this.#ratios[i]!;
		}
		counts.add(this.#leakLogs, this.#leakRatios);
	}

	/** Draws on until both ends of every total's interval are known well enough. METHOD W7. */
	#judge(): void {
		const { tolerance, mostDraws } = this.options;
		let worst = 0;
		for (const name of TOTALS) {
			const sorted = this.drawsOf(name).slice().sort();
			const width = quantileOf(sorted, HIGH_SHARE) - quantileOf(sorted, LOW_SHARE);
			if (width === 0) continue;
			const error = Math.max(quantileError(sorted, LOW_SHARE), quantileError(sorted, HIGH_SHARE));
			worst = Math.max(worst, error / width);
		}
		if (worst <= tolerance) {
			this.#settled = true;
			return;
		}
		const needed = this.#done * Math.min(4, (worst / tolerance) ** 2) * 1.1;
		this.#target = Math.min(mostDraws, Math.max(this.#done + 500, Math.ceil(needed)));
	}
}

function floorLog(value: number): number {
	return value > 0 ? Math.max(NOTHING, Math.log(value)) : NOTHING;
}

/** Starts a run, or refuses options that make no sense as `run-option-out-of-range`. */
export function startRun(
	model: UncertaintyModel,
	options: RunOptions = {}
): Result<UncertaintyRun> {
	const ready = { ...STARTING, ...options };
	const limits = {
		topN: [1, Infinity],
		tolerance: [1e-4, 1],
		leastDraws: [100, MOST_DRAWS],
		mostDraws: [100, MOST_DRAWS]
	} as const;
	for (const [option, [least, most]] of Object.entries(limits)) {
		const value = ready[option as keyof typeof limits];
		if (!(value >= least && value <= most))
			return refuse('run-option-out-of-range', { option, value: String(value), least });
	}
	return ok(new UncertaintyRun(model, ready));
}
