import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws, modelOf, resultOf } from '../../../../../tests/arbitrary/uncertainty-model.ts';
import type { Spread } from './spread.ts';

describe('[W7] laws', () => {
	const leak = fc.record({
		massFlow: fc.double({ min: 1e-6, max: 1, noNaN: true }),
		own: fc.double({ min: 0.05, max: 1, noNaN: true }),
		method: fc.double({ min: 0, max: 0.5, noNaN: true }),
		kind: fc.integer({ min: 0, max: 7 })
	});
	const some = fc.array(leak, { minLength: 1, maxLength: 12 });
	const options = draws(300);

	it('twice the flows are twice the total, draw by draw', () => {
		fc.assert(
			fc.property(some, (leaks) => {
				const one = resultOf(modelOf(leaks), options).flowDraws.all;
				const twice = resultOf(
					modelOf(leaks.map((each) => ({ ...each, massFlow: 2 * each.massFlow }))),
					options
				).flowDraws.all;
				for (let i = 0; i < one.length; i++) expect(twice[i]! / one[i]!).toBeCloseTo(2, 9);
			}),
			{ numRuns: 30 }
		);
	});

	it('ends stand in order, nothing is negative or not a number, ranks fill 1 to n', () => {
		fc.assert(
			fc.property(some, (leaks) => {
				const { totals, leaks: each } = resultOf(modelOf(leaks), { ...options, topN: 3 });
				const spreads: Spread[] = [
					totals.massFlowKgPerS,
					totals.freeAirM3PerYear,
					totals.costMinorPerYear!,
					...each.flatMap((one) => [one.massFlowKgPerS, one.costMinorPerYear!])
				];
				for (const { low, median, high, mean } of spreads) {
					expect(low).toBeGreaterThan(0);
					expect(low).toBeLessThanOrEqual(median);
					expect(median).toBeLessThanOrEqual(high);
					expect(Number.isFinite(mean)).toBe(true);
				}
				let chances = 0;
				for (const { rank } of each) {
					expect(rank.low).toBeGreaterThanOrEqual(1);
					expect(rank.low).toBeLessThanOrEqual(rank.median);
					expect(rank.median).toBeLessThanOrEqual(rank.high);
					expect(rank.high).toBeLessThanOrEqual(leaks.length);
					chances += rank.chanceOfTop;
				}
				expect(chances).toBeCloseTo(Math.min(3, leaks.length), 9);
			}),
			{ numRuns: 40 }
		);
	});
});
