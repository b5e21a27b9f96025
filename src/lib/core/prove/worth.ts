import { carbonKg } from '../money/carbon.ts';
import type { Refusal } from '../units/result.ts';
import type { SupplyMethod } from '../weigh/assessment.ts';
import { newWeights, yearOfLeaks } from '../weigh/uncertainty/year-weights.ts';
import type { WeighedLeak } from '../weigh/weigh-leak.ts';
import type { Ground, PairedLeak } from './paired-leaks.ts';

/** What each leak takes a year on either side, as columns: row i is pair i; 0 where it did not leak. */
export interface SideColumns {
	readonly massFlow: Float64Array;
	readonly freeAir: Float64Array;
	readonly energyKwh: Float64Array;
	/** Minor units, not rounded. */
	readonly costMinor: Float64Array;
}

export interface Worth {
	readonly method: SupplyMethod;
	readonly energyKnown: boolean;
	readonly costKnown: boolean;
	readonly missing: readonly Refusal[];
	/** Absent when the survey has no factor. */
	readonly kgCo2PerKwh?: number;
	readonly before: SideColumns;
	readonly after: SideColumns;
}

/**
 * Prices both sides by one set of rates: what a m³ of each part of the year takes when all leaks of
 * the round before blow. So what did not change has the same price on both sides, parts add up, and a
 * tariff changes both alike. METHOD V2.
 */
export function worthOf(pairs: readonly PairedLeak[], now: Ground): Worth {
	const before = pairs.flatMap((pair) => pair.before ?? []);
	const after = pairs.flatMap((pair) => pair.after ?? []);
	const all = [...before, ...after];
	const year = yearOfLeaks(now.survey, now.air, all);
	const weights = newWeights(year.amounts.length);
	const basis = before.length > 0 ? before.length : all.length;
	year.weigh(
		Float64Array.from(year.amounts, (each) => each.subarray(0, basis).reduce((a, b) => a + b, 0)),
		weights
	);
	const worthAt = (row: number, per: Float64Array) =>
		Math.max(
			0,
			year.amounts.reduce((sum, each, k) => sum + (each[row] ?? 0) * (per[k] ?? 0), 0)
		);
	const side = (of: (pair: PairedLeak) => WeighedLeak | undefined, first: number): SideColumns => {
		const n = pairs.length;
		const columns = {
			massFlow: new Float64Array(n),
			freeAir: new Float64Array(n),
			energyKwh: new Float64Array(n),
			costMinor: new Float64Array(n)
		};
		let row = first;
		for (const [i, pair] of pairs.entries()) {
			const leak = of(pair);
			if (!leak) continue;
			columns.massFlow[i] = leak.flow.massFlow;
			columns.freeAir[i] = leak.flow.freeAir;
			columns.energyKwh[i] = worthAt(row, weights.energyKwh);
			columns.costMinor[i] = worthAt(row, weights.costMinor);
			row++;
		}
		return columns;
	};
	const { carbon } = now.survey.prices;
	const factor = carbon && carbonKg(1, carbon);
	return {
		method: year.method,
		energyKnown: year.energyKnown,
		costKnown: year.costKnown,
		missing: year.missing,
		...(factor?.ok && { kgCo2PerKwh: factor.value }),
		before: side(({ before: leak }) => leak, 0),
		after: side(({ after: leak }) => leak, before.length)
	};
}
