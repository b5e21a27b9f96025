import { describe, expect, it } from 'vitest';
import { heatCredit } from './heat-credit.ts';
import type { Result } from '../units/result.ts';

function value<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

describe('heat credit', () => {
	// Derived by hand: 28,000 · 0.09 / 0.9.
	it('[M10] is the fuel that the boiler does not burn', () => {
		const bought = { fuelPricePerKwh: 0.09, boilerEfficiency: 0.9 };
		expect(value(heatCredit(28_000, bought))).toBeCloseTo(2800, 9);
		expect(value(heatCredit(-28_000, bought))).toBeCloseTo(-2800, 9);
	});

	it('[M10] refuses nonsense', () => {
		const bought = { fuelPricePerKwh: 0.09, boilerEfficiency: 0.9 };
		expect(heatCredit(NaN, bought)).toMatchObject({ error: { code: 'energy-out-of-range' } });
		expect(heatCredit(1, { ...bought, fuelPricePerKwh: -1 })).toMatchObject({
			error: { code: 'price-out-of-range' }
		});
		for (const boilerEfficiency of [0, 90, NaN])
			expect(heatCredit(1, { ...bought, boilerEfficiency })).toMatchObject({
				error: { code: 'boiler-efficiency-out-of-range' }
			});
	});
});
