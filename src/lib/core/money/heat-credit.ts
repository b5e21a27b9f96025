import { ok, refuse, type Result } from '../units/result.ts';

/** The bought heat that recovered heat stands in for. */
export interface BoughtHeat {
	/** Price of the fuel, currency per kWh of its heating value. */
	readonly fuelPricePerKwh: number;
	/** What share of the heating value the boiler delivers. */
	readonly boilerEfficiency: number;
}

/**
 * What recovered heat saves in fuel: C = H · c / η.
 * @param heatKwh heat that replaces bought heat, kWh; negative where there is less of it
 * @param bought fuel price and boiler efficiency
 * @returns credit, currency
 * @validity price ≥ 0; 0 < η ≤ 1.1 (condensing boilers on the lower heating value exceed 1)
 * @source energy balance; METHOD M10
 */
export function heatCredit(heatKwh: number, bought: BoughtHeat): Result<number> {
	const { fuelPricePerKwh, boilerEfficiency } = bought;
	if (!Number.isFinite(heatKwh)) return refuse('energy-out-of-range', { energyKwh: heatKwh });
	if (!(fuelPricePerKwh >= 0 && fuelPricePerKwh < Infinity))
		return refuse('price-out-of-range', { pricePerKwh: fuelPricePerKwh, least: 0 });
	if (!(boilerEfficiency > 0 && boilerEfficiency <= 1.1))
		return refuse('boiler-efficiency-out-of-range', { boilerEfficiency, above: 0, most: 1.1 });
	return ok((heatKwh * fuelPricePerKwh) / boilerEfficiency);
}
