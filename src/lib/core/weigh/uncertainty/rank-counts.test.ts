import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LeakCounts } from './leak-counts.ts';
import { RankCounts } from './rank-counts.ts';
import { randomFrom } from './random.ts';
import { lognormalSpread } from './spread.ts';

describe('[W9] ranks', () => {
	it('law: one draw gives each leak the rank that plain sorting gives it, first come first', () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: -100, max: 20, noNaN: true }), { minLength: 1, maxLength: 200 }),
				(keys) => {
					const ranks = new RankCounts(keys.length, 3);
					ranks.add(Float64Array.from(keys));
					const order = keys.map((_, i) => i).sort((a, b) => keys[b]! - keys[a]! || a - b);
					for (const [place, leak] of order.entries())
						expect(ranks.spreadOf(leak)).toEqual({
							low: place + 1,
							median: place + 1,
							high: place + 1,
							chanceOfTop: place < 3 ? 1 : 0
						});
				}
			)
		);
	});

	it('law: the chances of being in the top N add up to N', () => {
		const random = randomFrom(4);
		const ranks = new RankCounts(40, 7);
		const keys = new Float64Array(40);
		for (let draw = 0; draw < 500; draw++) {
			random.fillNormals(keys, 40);
			ranks.add(keys);
		}
		const chances = keys.reduce((sum, _, leak) => sum + ranks.spreadOf(leak).chanceOfTop, 0);
		expect(chances).toBeCloseTo(7, 9);
		// Alike leaks stand anywhere: 5 % and 95 % of 40 ranks.
		const { low, high, median } = ranks.spreadOf(12);
		expect(low).toBeLessThan(6);
		expect(high).toBeGreaterThan(35);
		expect(median).toBeGreaterThan(14);
		expect(median).toBeLessThan(27);
	});

	it('derived: above 1,024 leaks neighbours share a count, and the interval holds the rank still', () => {
		const n = 3000;
		const ranks = new RankCounts(n, 10);
		ranks.add(Float64Array.from({ length: n }, (_, i) => -i));
		for (const leak of [0, 1, 1500, 2999]) {
			const { low, high } = ranks.spreadOf(leak);
			expect(low).toBeLessThanOrEqual(leak + 1);
			expect(high).toBeGreaterThanOrEqual(leak + 1);
			expect(high - low).toBeLessThan(3);
		}
	});
});

describe('[W7] a leak’s interval from counts', () => {
	it('derived: meets the exact lognormal one', () => {
		for (const s of [0.05, 0.4, 1.2]) {
			const draws = 40_000;
			const counts = new LeakCounts(Float64Array.of(3), Float64Array.of(s));
			const z = new Float64Array(draws);
			randomFrom(8).fillNormals(z, draws);
			for (const each of z)
				counts.add(Float64Array.of(s * each), Float64Array.of(Math.exp(s * each)));
			const counted = counts.spreadOf(0);
			const exact = lognormalSpread(3, s);
			// Four standard errors of a 5 % point: 4·2.11·s/√draws of its logarithm.
			const far = (4 * 2.11 * s) / Math.sqrt(draws);
			for (const end of ['low', 'median', 'high'] as const)
				expect(Math.abs(Math.log(counted[end] / exact[end]))).toBeLessThan(far);
			const meanError = Math.sqrt(Math.expm1(s * s) / draws);
			expect(Math.abs(counted.mean / exact.mean - 1)).toBeLessThan(4 * meanError);
		}
	});

	it('a leak that is worth nothing in most draws has nothing at its low end', () => {
		const counts = new LeakCounts(Float64Array.of(1), Float64Array.of(0.3));
		for (let draw = 0; draw < 100; draw++) {
			const worth = draw < 30 ? 0 : 1;
			counts.add(Float64Array.of(Math.log(worth)), Float64Array.of(worth));
		}
		expect(counts.spreadOf(0)).toMatchObject({ low: 0, mean: 0.7 });
		expect(counts.spreadOf(0).median).toBeCloseTo(1, 1);
	});
});
