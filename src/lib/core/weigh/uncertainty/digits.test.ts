import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { earnedDigits, earnedStep } from './digits.ts';

describe('[W10] digits that an interval earns', () => {
	it('published: half widths that begin with 10 to 35 keep two digits, others one (Particle Data Group’s rule, from memory)', () => {
		expect(earnedStep(0.119)).toBe(0.01);
		expect(earnedStep(0.367)).toBe(0.1);
		expect(earnedStep(8400)).toBe(1000);
		expect(earnedStep(1200)).toBe(100);
		expect(earnedStep(0)).toBe(0);
	});

	it('derived: by hand', () => {
		expect(earnedDigits(15_575, 9_200, 26_000)).toEqual({
			value: 16_000,
			low: 9_000,
			high: 26_000,
			step: 1000,
			decimals: 0
		});
		expect(earnedDigits(1.4567, 1.33, 1.58)).toEqual({
			value: 1.46,
			low: 1.33,
			high: 1.58,
			step: 0.01,
			decimals: 2
		});
		// A lopsided interval does not reach zero.
		expect(earnedDigits(3, 0.2, 40)).toMatchObject({ value: 3, low: 0.2, high: 40, step: 10 / 10 });
		expect(earnedDigits(5, 5, 5)).toMatchObject({ value: 5, step: 0 });
		expect(earnedDigits(-120, -420, 130)).toMatchObject({ value: -120, low: -420, step: 10 });
	});

	it('law: rounding moves nothing by more than half a step, and the step is worth 3 to 36 % of the half width', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1e-9, max: 1e12, noNaN: true }),
				fc.double({ min: 0.001, max: 3, noNaN: true }),
				(value, spread) => {
					const low = value * Math.exp(-spread);
					const high = value * Math.exp(spread);
					const earned = earnedDigits(value, low, high);
					const half = (high - low) / 2;
					expect(earned.step / half).toBeGreaterThan(0.027);
					expect(earned.step / half).toBeLessThan(0.29);
					for (const [rounded, exact] of [
						[earned.value, value],
						[earned.low, low],
						[earned.high, high]
					] as const)
						expect(Math.abs(rounded - exact)).toBeLessThanOrEqual(earned.step * 0.5000001);
					expect(earned.low).toBeGreaterThan(0);
					expect(earned.low).toBeLessThanOrEqual(earned.value);
					if (earned.value >= earned.step)
						expect(Number(earned.value.toFixed(earned.decimals))).toBe(earned.value);
				}
			)
		);
	});
});
