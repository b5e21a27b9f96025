import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { annuityFactor, costOfWaiting, netPresentValue, simplePaybackYears } from './return.ts';
import type { Result } from '../units/result.ts';

function value<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

describe('payback', () => {
	// Derived by hand: 600 / 2,400 a year is a quarter.
	it('[M7] divides the cost by the yearly saving', () => {
		expect(simplePaybackYears(600, 2400)).toEqual({ ok: true, value: 0.25 });
		expect(simplePaybackYears(0, 2400)).toEqual({ ok: true, value: 0 });
	});

	it('[M7] refuses what never pays back, and nonsense', () => {
		for (const saving of [0, -1, 5e-324])
			expect(simplePaybackYears(600, saving)).toMatchObject({ error: { code: 'never-pays-back' } });
		expect(simplePaybackYears(-1, 1)).toMatchObject({ error: { code: 'cost-out-of-range' } });
		expect(simplePaybackYears(1, NaN)).toMatchObject({ error: { code: 'saving-out-of-range' } });
	});
});

describe('present value', () => {
	// Derived from the formula NPV = Σ Cₜ / (1 + r)ᵗ of 10 CFR 436 (formula verified, number computed).
	it('[M8] the annuity of ten years at 8 % is 6.7101', () => {
		const factor = annuityFactor(0.08, 10);
		expect(value(factor)).toBeCloseTo(6.7101, 4);
	});

	// Derived by a second route: the sum year by year.
	it('[M8] agrees with adding up the discounted years', () => {
		const rate = fc.double({ min: -0.5, max: 2, noNaN: true });
		fc.assert(
			fc.property(rate, fc.integer({ min: 1, max: 100 }), (r, years) => {
				let sum = 0;
				for (let t = 1; t <= years; t++) sum += (1 + r) ** -t;
				const factor = annuityFactor(r, years);
				if (!factor.ok) throw new Error(factor.error.code);
				expect(Math.abs(factor.value / sum - 1)).toBeLessThan(1e-9);
			})
		);
	});

	// Derived by hand: 1,000 × 6.7101 − 5,000.
	it('[M8] takes the cost from the discounted savings', () => {
		const npv = netPresentValue(5000, 1000, 0.08, 10);
		expect(value(npv)).toBeCloseTo(1710.08, 2);
		expect(netPresentValue(5000, 1000, 0, 10)).toEqual({ ok: true, value: 5000 });
	});

	it('[M8] refuses rates and horizons that mean nothing', () => {
		for (const rate of [-0.6, 8, NaN])
			expect(annuityFactor(rate, 10)).toMatchObject({
				error: { code: 'discount-rate-out-of-range' }
			});
		for (const years of [0, -1, 101, NaN])
			expect(netPresentValue(1, 1, 0.08, years)).toMatchObject({
				error: { code: 'horizon-out-of-range' }
			});
		expect(netPresentValue(NaN, 1, 0.08, 10)).toMatchObject({ ok: false });
		expect(netPresentValue(1, Infinity, 0.08, 10)).toMatchObject({ ok: false });
	});
});

describe('waiting', () => {
	// Derived by hand: 3,650 a year is 10 a day.
	it('[M9] costs a day of the yearly saving for each day', () => {
		expect(costOfWaiting(3650, 1)).toEqual({ ok: true, value: 10 });
		expect(costOfWaiting(3650, 14)).toEqual({ ok: true, value: 140 });
		expect(costOfWaiting(-3650, 1)).toEqual({ ok: true, value: -10 });
	});

	it('[M9] refuses nonsense', () => {
		expect(costOfWaiting(NaN, 1)).toMatchObject({ error: { code: 'saving-out-of-range' } });
		expect(costOfWaiting(1, -1)).toMatchObject({ error: { code: 'days-out-of-range' } });
	});
});
