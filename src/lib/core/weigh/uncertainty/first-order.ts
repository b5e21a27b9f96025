import { combinedUncertainty } from './gum.ts';
import { KINDS } from './leak-errors.ts';
import type { UncertaintyModel } from './model.ts';
import { NINETY_PERCENT } from './spread.ts';
import { newWeights } from './year-weights.ts';

/** A total by the law of propagation, to stand beside the draws. */
export interface FirstOrder {
	/** With every error at zero. */
	readonly value: number;
	readonly standardUncertainty: number;
	/** value ∓ 1.645·u; the low end may fall below zero, which says that the law does not hold. */
	readonly low: number;
	readonly high: number;
	/** Share of the variance that comes from errors all leaks of a kind share: more leaks do not help. */
	readonly sharedPart: number;
}

export interface FirstOrderTotals {
	readonly massFlowKgPerS: FirstOrder;
	readonly energyKwhPerYear?: FirstOrder;
	readonly costMinorPerYear?: FirstOrder;
}

/**
 * Totals with their standard uncertainty to first order, shared errors as full correlation:
 * u² = Σ (cᵢ·ownᵢ)² + Σ_kinds (Σ cᵢ·methodᵢ)² + (Σ cᵢ·gaugeᵢ)² + …, cᵢ = ∂total/∂(ln flowᵢ).
 * @param model a round's leaks with their errors
 * @returns totals as `assess` has them, and their uncertainty
 * @validity errors small enough for a straight line, some 20 % each; else the draws hold
 * @source JCGM 100:2008, 5.1.2 and 5.2.2 (note 1: r = 1 adds linearly); METHOD W8
 */
export function firstOrder(model: UncertaintyModel): FirstOrderTotals {
	const { year, errors, massFlow } = model;
	const { hours, power, price } = errors;
	const slopes = yearSlopes(model);
	const flow = sum(massFlow);
	return {
		massFlowKgPerS: propagate(model, flow, massFlow, []),
		...(year.energyKnown && {
			energyKwhPerYear: propagate(model, slopes.energy, slopes.ofEnergy, [hours, power])
		}),
		...(year.costKnown && {
			costMinorPerYear: propagate(model, slopes.cost, slopes.ofCost, [hours, power, price])
		})
	};
}

/** @param common relative uncertainties of factors on the whole total */
function propagate(
	model: UncertaintyModel,
	value: number,
	slopes: Float64Array,
	common: readonly number[]
): FirstOrder {
	const own = new Float64Array(slopes.length);
	const shared = new Float64Array(KINDS.length + 1 + common.length);
	for (let i = 0; i < slopes.length; i++) {
		own[i] = slopes[i]! * model.own[i]!;
		shared[model.kind[i]!]! += slopes[i]! * model.method[i]!;
		shared[KINDS.length]! += slopes[i]! * model.gauge[i]!;
	}
	for (const [j, relative] of common.entries()) shared[KINDS.length + 1 + j] = relative * value;
	const ofShared = combinedUncertainty(shared);
	const u = combinedUncertainty([combinedUncertainty(own), ofShared]);
	return {
		value,
		standardUncertainty: u,
		low: value - NINETY_PERCENT * u,
		high: value + NINETY_PERCENT * u,
		sharedPart: u > 0 ? (ofShared / u) ** 2 : 0
	};
}

const STEP = 0.005;

/** How the year's energy and cost rise with each leak's flow: a central difference by class. */
function yearSlopes({ year, massFlow }: UncertaintyModel) {
	const weights = newWeights(year.amounts.length);
	const totals = Float64Array.from(year.amounts, sum);
	const figures = (at: Float64Array) => {
		year.weigh(at, weights);
		let energy = 0;
		let cost = 0;
		for (let k = 0; k < at.length; k++) {
			energy += at[k]! * weights.energyKwh[k]!;
			cost += at[k]! * weights.costMinor[k]!;
		}
		return { energy, cost };
	};
	const ofEnergy = new Float64Array(massFlow.length);
	const ofCost = new Float64Array(massFlow.length);
	for (const [k, amounts] of year.amounts.entries()) {
		const step = totals[k]! * STEP;
		if (step === 0) continue;
		const up = figures(totals.with(k, totals[k]! + step));
		const down = figures(totals.with(k, totals[k]! - step));
		const energySlope = (up.energy - down.energy) / (2 * step);
		const costSlope = (up.cost - down.cost) / (2 * step);
		for (let i = 0; i < amounts.length; i++) {
			ofEnergy[i]! += amounts[i]! * energySlope;
			ofCost[i]! += amounts[i]! * costSlope;
		}
	}
	return { ...figures(totals), ofEnergy, ofCost };
}

function sum(values: Float64Array): number {
	let total = 0;
	for (const value of values) total += value;
	return total;
}
