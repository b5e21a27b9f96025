import { ok, refuse, type Result } from '../units/result.ts';

/** One price of electricity, e.g. "day" or "night". */
export interface EnergyPrice {
	readonly id: string;
	readonly name: string;
	readonly pricePerKwh: number;
}

/** What the peak is charged at, beside the energy. */
export interface DemandCharge {
	readonly pricePerKw: number;
	/** Monthly charges fall due twelve times a year on that month's peak. */
	readonly per: 'month' | 'year';
}

/** Something paid by the cubic metre of free air made: cooling water, service. */
export interface AirCost {
	readonly name: string;
	readonly pricePerM3: number;
}

/** What energy and air cost, in major units of one currency. */
export interface Tariff {
	/** At least one. A period that names no price is charged at the first. */
	readonly energy: readonly EnergyPrice[];
	readonly demandCharge: DemandCharge | null;
	readonly air: readonly AirCost[];
}

/** Energy drawn at one price; `priceId` null means the first price of the tariff. */
export interface PricedEnergy {
	readonly priceId: string | null;
	readonly energyKwh: number;
}

/**
 * Cost of energy at one price: C = E · c.
 * @param energyKwh energy, kWh; negative where a change costs more instead of less
 * @param pricePerKwh price, currency per kWh
 * @returns cost, currency
 * @validity both finite, price ≥ 0
 * @source definition; METHOD M3
 */
export function flatEnergyCost(energyKwh: number, pricePerKwh: number): Result<number> {
	if (!Number.isFinite(energyKwh)) return refuse('energy-out-of-range', { energyKwh });
	if (!isPrice(pricePerKwh)) return refuse('price-out-of-range', { pricePerKwh, least: 0 });
	return ok(energyKwh * pricePerKwh);
}

/**
 * Cost of energy drawn in periods at their prices: C = Σ Eᵢ · cᵢ.
 * @param tariff the prices
 * @param drawn energy by price, kWh; negative where a change costs more instead of less
 * @returns cost, currency
 * @validity every price named exists and is finite and ≥ 0
 * @source definition; METHOD M3
 */
export function energyCost(tariff: Tariff, drawn: readonly PricedEnergy[]): Result<number> {
	const first = tariff.energy[0];
	if (first === undefined) return refuse('tariff-has-no-price');
	let sum = 0;
	for (const { priceId, energyKwh } of drawn) {
		const price = priceId === null ? first : tariff.energy.find(({ id }) => id === priceId);
		if (price === undefined) return refuse('tariff-price-unknown', { priceId: priceId ?? '' });
		const cost = flatEnergyCost(energyKwh, price.pricePerKwh);
		if (!cost.ok) return cost;
		sum += cost.value;
	}
	return ok(sum);
}

/**
 * Yearly charge on the peak: C = P · c · n, n = 12 for a monthly charge and 1 for a yearly one.
 * Monthly peaks are taken as equal over the year.
 * @param charge the price of the peak
 * @param peakKw peak power, kW
 * @returns charge per year, currency
 * @validity peak and price finite and ≥ 0
 * @source common practice of electricity supply contracts; METHOD M4
 */
export function demandChargePerYear(charge: DemandCharge, peakKw: number): Result<number> {
	if (!(peakKw >= 0 && peakKw < Infinity)) return refuse('power-out-of-range', { powerKw: peakKw });
	if (!isPrice(charge.pricePerKw))
		return refuse('price-out-of-range', { pricePerKw: charge.pricePerKw, least: 0 });
	return ok(peakKw * charge.pricePerKw * (charge.per === 'month' ? 12 : 1));
}

/**
 * What is paid by the cubic metre of free air: C = V · Σ cⱼ.
 * @param costs what is charged by the cubic metre
 * @param freeAirM3 free air, m³; negative where a change costs more instead of less
 * @returns cost, currency
 * @validity finite; prices ≥ 0
 * @source definition; METHOD M5
 */
export function airCost(costs: readonly AirCost[], freeAirM3: number): Result<number> {
	if (!Number.isFinite(freeAirM3)) return refuse('volume-out-of-range', { freeAirM3 });
	let sum = 0;
	for (const { pricePerM3 } of costs) {
		if (!isPrice(pricePerM3)) return refuse('price-out-of-range', { pricePerM3, least: 0 });
		sum += freeAirM3 * pricePerM3;
	}
	return ok(sum);
}

function isPrice(price: number): boolean {
	return price >= 0 && price < Infinity;
}
