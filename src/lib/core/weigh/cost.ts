import { apportionMinor } from '../money/apportion.ts';
import { toMinor } from '../money/currency.ts';
import { heatCredit } from '../money/heat-credit.ts';
import { airCost, demandChargePerYear } from '../money/tariff.ts';
import { recoveredHeatKwh } from '../supply/heat-recovery.ts';
import type { YearOutcome } from '../supply/year.ts';
import type { Survey } from '../survey/schema.ts';
import { ok, refuse, type Result } from '../units/result.ts';

/** What one leak takes in a year. */
export interface LeakYear {
	/** Absent when the survey does not say how the air is made. */
	readonly energyKwh?: number;
	/** Free air at ISO 1217, m³. */
	readonly freeAirM3: number;
	/** Its energy priced part by part; left out where one price holds all year. */
	readonly energyCostAt?: (priceOf: (priceId: string | null) => number) => number;
}

export interface LeakCosts {
	readonly totalMinor: number;
	/** One per leak; they add up to the total to the last cent. */
	readonly sharesMinor: readonly number[];
}

/**
 * Prices the leaks: the total is rounded once, and shared out so that not a cent is lost. METHOD W5,
 * M2 to M5, M10.
 *
 * @param outcome the station's year, for the demand charge and the heat that is lost
 * @returns `price-missing` when the survey has no price of energy, `tariff-price-unknown` when a
 * period names a price that is not there
 */
export function leakCosts(
	survey: Survey,
	years: readonly LeakYear[],
	outcome: YearOutcome | undefined
): Result<LeakCosts> {
	const prices = pricesOf(survey);
	if (!prices.ok) return prices;
	const perM3 = survey.prices.costPerM3;
	const rest = sharedCosts(survey, outcome);
	if (!rest.ok) return rest;
	const energy = years.reduce((sum, year) => sum + (year.energyKwh ?? 0), 0);
	const costs: number[] = [];
	for (const year of years) {
		const energyCost =
			year.energyCostAt?.(prices.value) ?? (year.energyKwh ?? 0) * prices.value(null);
		const air = airCost(
			perM3 === undefined ? [] : [{ name: 'air', pricePerM3: perM3 }],
			year.freeAirM3
		);
		if (!air.ok) return air;
		const share = energy > 0 ? (year.energyKwh ?? 0) / energy : 0;
		costs.push(energyCost + air.value + rest.value * share);
	}
	const total = toMinor(
		costs.reduce((sum, cost) => sum + cost, 0),
		survey.site.currency
	);
	if (!total.ok) return total;
	// A station with a gap in its sequence can make a leak's saving negative: then it is worth nothing.
	const shares = apportionMinor(
		Math.max(0, total.value),
		costs.map((cost) => Math.max(0, cost))
	);
	if (!shares.ok) return shares;
	return ok({ totalMinor: Math.max(0, total.value), sharesMinor: shares.value });
}

/** The price of a kilowatt-hour by the id that a period names; `null` is the price at other times. */
function pricesOf(survey: Survey): Result<(priceId: string | null) => number> {
	const { pricePerKwh, periodPrices = [] } = survey.prices;
	if (pricePerKwh === undefined) return refuse('price-missing');
	const named = new Map(periodPrices.map((price) => [price.id, price.pricePerKwh]));
	for (const { priceId } of survey.supply.station?.schedule.periods ?? [])
		if (priceId !== null && !named.has(priceId)) return refuse('tariff-price-unknown', { priceId });
	return ok((priceId) => (priceId === null ? undefined : named.get(priceId)) ?? pricePerKwh);
}

/** What belongs to no leak alone: the demand charge that falls, less the heat that is lost. */
function sharedCosts(survey: Survey, outcome: YearOutcome | undefined): Result<number> {
	if (!outcome) return ok(0);
	const { demandCharge } = survey.prices;
	let sum = 0;
	if (demandCharge) {
		const now = demandChargePerYear(demandCharge, outcome.peakKw);
		if (!now.ok) return now;
		const without = demandChargePerYear(demandCharge, outcome.peakWithoutKw);
		if (!without.ok) return without;
		sum += now.value - without.value;
	}
	const heat = survey.supply.station?.heatRecovery;
	if (heat) {
		const lost = recoveredHeatKwh(heat, outcome.savingKwh);
		if (!lost.ok) return lost;
		const credit = heatCredit(lost.value, heat);
		if (!credit.ok) return credit;
		sum -= credit.value;
	}
	return ok(sum);
}
