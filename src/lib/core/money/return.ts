import { ok, refuse, type Result } from '../units/result.ts';

const DAYS_PER_YEAR = 365;

/**
 * Years until the savings, undiscounted, have paid for the work: t = C / s.
 * @param cost what the work costs, currency
 * @param savingPerYear net saving, currency per year
 * @returns time, years
 * @validity cost finite and ≥ 0; saving finite and > 0, else it never pays back
 * @source 10 CFR 436.20 to 436.23, simple payback (verified); METHOD M7
 */
export function simplePaybackYears(cost: number, savingPerYear: number): Result<number> {
	if (!(cost >= 0 && cost < Infinity)) return refuse('cost-out-of-range', { cost, least: 0 });
	if (!Number.isFinite(savingPerYear)) return refuse('saving-out-of-range', { savingPerYear });
	if (savingPerYear <= 0) return refuse('never-pays-back', { cost, savingPerYear });
	const years = cost / savingPerYear;
	return Number.isFinite(years) ? ok(years) : refuse('never-pays-back', { cost, savingPerYear });
}

/**
 * Present value of one unit paid at the end of each year: a = (1 − (1 + r)⁻ⁿ) / r, and n at r = 0.
 * @param ratePerYear discount rate as a fraction, e.g. 0.08
 * @param years how many years; a part of a year is allowed
 * @returns annuity factor, years
 * @validity −0.5 ≤ r ≤ 2; 0 < n ≤ 100
 * @source annuity formula, any text on engineering economics; METHOD M8
 */
export function annuityFactor(ratePerYear: number, years: number): Result<number> {
	if (!(ratePerYear >= -0.5 && ratePerYear <= 2))
		return refuse('discount-rate-out-of-range', { ratePerYear, least: -0.5, most: 2 });
	if (!(years > 0 && years <= 100))
		return refuse('horizon-out-of-range', { years, above: 0, most: 100 });
	if (ratePerYear === 0) return ok(years);
	// expm1 and log1p keep the digits that 1 − (1 + r)⁻ⁿ loses when r is small.
	return ok(-Math.expm1(-years * Math.log1p(ratePerYear)) / ratePerYear);
}

/**
 * What work is worth today beyond its cost: NPV = s · a(r, n) − C, savings at the end of each year.
 * @param cost what the work costs now, currency
 * @param savingPerYear net saving, currency per year; negative where the work loses money
 * @param ratePerYear discount rate as a fraction
 * @param years how long the saving lasts, years
 * @returns net present value, currency
 * @validity cost finite and ≥ 0; rate and years as `annuityFactor`
 * @source 10 CFR 436.20 to 436.23 (verified): NPV = Σ Cₜ / (1 + r)ᵗ; METHOD M8
 */
export function netPresentValue(
	cost: number,
	savingPerYear: number,
	ratePerYear: number,
	years: number
): Result<number> {
	if (!(cost >= 0 && cost < Infinity)) return refuse('cost-out-of-range', { cost, least: 0 });
	if (!Number.isFinite(savingPerYear)) return refuse('saving-out-of-range', { savingPerYear });
	const annuity = annuityFactor(ratePerYear, years);
	return annuity.ok ? ok(savingPerYear * annuity.value - cost) : annuity;
}

/**
 * What a day's waiting costs: w = s · d / 365.
 * @param savingPerYear net saving, currency per year; negative where mending would lose money
 * @param days days waited
 * @returns cost of waiting, currency
 * @validity finite; days ≥ 0
 * @source definition, on a year of 365 days; METHOD M9
 */
export function costOfWaiting(savingPerYear: number, days: number): Result<number> {
	if (!Number.isFinite(savingPerYear)) return refuse('saving-out-of-range', { savingPerYear });
	if (!(days >= 0 && days < Infinity)) return refuse('days-out-of-range', { days, least: 0 });
	return ok((savingPerYear * days) / DAYS_PER_YEAR);
}
