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

/** What costs are reckoned with, in major units of the currency. */
export interface CostRates {
	/** By the id that a period names; `null` is the price at other times. */
	readonly priceOf: (priceId: string | null) => number;
	/** Paid by the cubic metre of free air; absent where nothing is. */
	readonly perM3: number | undefined;
	/** What belongs to no leak alone; the leaks bear it in proportion to their energy. */
	readonly shared: SharedCosts;
	/** Of all leaks, kWh a year. */
	readonly energyKwh: number;
}

/** A year's change in what is paid for the station as a whole, in major units. */
export interface SharedCosts {
	/** By which the demand charge falls. */
	readonly demandCharge: number;
	/** Worth of the recovered heat that is lost. */
	readonly lostHeat: number;
}

/** What one leak costs a year and why, in major units, before it is rounded. */
export interface CostParts {
	readonly energy: number;
	readonly air: number;
	readonly shared: number;
}

export interface LeakCosts {
	readonly totalMinor: number;
	/** One per leak; they add up to the total to the last cent. */
	readonly sharesMinor: readonly number[];
	readonly rates: CostRates;
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
	const priceOf = pricesOf(survey);
	if (!priceOf.ok) return priceOf;
	const shared = sharedCosts(survey, outcome);
	if (!shared.ok) return shared;
	const rates: CostRates = {
		priceOf: priceOf.value,
		perM3: survey.prices.costPerM3,
		shared: shared.value,
		energyKwh: years.reduce((sum, year) => sum + (year.energyKwh ?? 0), 0)
	};
	const costs: number[] = [];
	for (const year of years) {
		const parts = costParts(year, rates);
		if (!parts.ok) return parts;
		costs.push(parts.value.energy + parts.value.air + parts.value.shared);
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
	return ok({ totalMinor: Math.max(0, total.value), sharesMinor: shares.value, rates });
}

/** Prices one leak's year before rounding: energy, air by the cubic metre, its part of the rest. METHOD W5. */
export function costParts(year: LeakYear, rates: CostRates): Result<CostParts> {
	const { priceOf, perM3, shared } = rates;
	const kwh = year.energyKwh ?? 0;
	const air = airCost(
		perM3 === undefined ? [] : [{ name: 'air', pricePerM3: perM3 }],
		year.freeAirM3
	);
	if (!air.ok) return air;
	const share = rates.energyKwh > 0 ? kwh / rates.energyKwh : 0;
	return ok({
		energy: year.energyCostAt?.(priceOf) ?? kwh * priceOf(null),
		air: air.value,
		shared: (shared.demandCharge - shared.lostHeat) * share
	});
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

/** What belongs to no leak alone: the demand charge that falls, and the heat that is lost. */
export function sharedCosts(survey: Survey, outcome: YearOutcome | undefined): Result<SharedCosts> {
	if (!outcome) return ok({ demandCharge: 0, lostHeat: 0 });
	let demand = 0;
	const { demandCharge } = survey.prices;
	if (demandCharge) {
		const now = demandChargePerYear(demandCharge, outcome.peakKw);
		if (!now.ok) return now;
		const without = demandChargePerYear(demandCharge, outcome.peakWithoutKw);
		if (!without.ok) return without;
		demand = now.value - without.value;
	}
	const heat = survey.supply.station?.heatRecovery;
	if (!heat) return ok({ demandCharge: demand, lostHeat: 0 });
	const lost = recoveredHeatKwh(heat, outcome.savingKwh);
	if (!lost.ok) return lost;
	const credit = heatCredit(lost.value, heat);
	if (!credit.ok) return credit;
	return ok({ demandCharge: demand, lostHeat: credit.value });
}
