import { apportionMinor } from '../money/apportion.ts';
import { toMinor } from '../money/currency.ts';
import { airCost, flatEnergyCost } from '../money/tariff.ts';
import type { Survey } from '../survey/schema.ts';
import { ok, refuse, type Result } from '../units/result.ts';

export interface LeakCosts {
	readonly totalMinor: number;
	/** One per leak; they add up to the total to the last cent. */
	readonly sharesMinor: readonly number[];
}

/**
 * Prices the leaks: the total is rounded once, and shared out so that not a cent is lost. METHOD M2,
 * M3, M5.
 *
 * @param yearly energy in kWh and free air (ISO 1217) in m³ of each leak, a year
 * @returns `price-missing` when the survey has no price of energy
 */
export function leakCosts(
	survey: Survey,
	yearly: readonly { readonly energyKwh: number; readonly freeAirM3: number }[]
): Result<LeakCosts> {
	const { pricePerKwh, costPerM3 } = survey.prices;
	if (pricePerKwh === undefined) return refuse('price-missing');
	const perM3 = costPerM3 === undefined ? [] : [{ name: 'air', pricePerM3: costPerM3 }];
	const costs: number[] = [];
	for (const { energyKwh, freeAirM3 } of yearly) {
		const energy = flatEnergyCost(energyKwh, pricePerKwh);
		if (!energy.ok) return energy;
		const air = airCost(perM3, freeAirM3);
		if (!air.ok) return air;
		costs.push(energy.value + air.value);
	}
	const total = toMinor(
		costs.reduce((sum, cost) => sum + cost, 0),
		survey.site.currency
	);
	if (!total.ok) return total;
	const shares = apportionMinor(total.value, costs);
	if (!shares.ok) return shares;
	return ok({ totalMinor: total.value, sharesMinor: shares.value });
}
