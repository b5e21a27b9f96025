import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apportionMinor } from './apportion.ts';

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

describe('apportionment', () => {
	// Published. The worked example of the largest-remainder method in encyclopaedias: 100 seats for
	// 47,000 16,000 15,800 12,000 6,100 3,100 votes give 47 16 16 12 6 3. Status: from memory.
	it('[M2] meets the textbook example of the largest remainder', () => {
		expect(apportionMinor(100, [47_000, 16_000, 15_800, 12_000, 6_100, 3_100])).toEqual({
			ok: true,
			value: [47, 16, 16, 12, 6, 3]
		});
	});

	// Derived by hand.
	it('[M2] gives ties to the earlier share, and mirrors a negative total', () => {
		expect(apportionMinor(100, [1, 1, 1])).toEqual({ ok: true, value: [34, 33, 33] });
		expect(apportionMinor(-100, [1, 1, 1])).toEqual({ ok: true, value: [-34, -33, -33] });
		expect(apportionMinor(2, [0, 1, 0, 1])).toEqual({ ok: true, value: [0, 1, 0, 1] });
		expect(apportionMinor(1, [0, 5, 0])).toEqual({ ok: true, value: [0, 1, 0] });
	});

	// Law.
	it('[M2] adds up exactly, is within one unit of the quota, and leaves zero weights at zero', () => {
		const weights = fc.array(
			fc.oneof(fc.constant(0), fc.double({ min: 1e-12, max: 1e12, noNaN: true })),
			{ minLength: 1, maxLength: 60 }
		);
		fc.assert(
			fc.property(fc.integer({ min: -1e12, max: 1e12 }), weights, (total, w) => {
				fc.pre(sum(w) > 0);
				const shares = apportionMinor(total, w);
				if (!shares.ok) throw new Error(shares.error.code);
				expect(sum(shares.value)).toBe(total);
				shares.value.forEach((share, i) => {
					const quota = (total * (w[i] ?? 0)) / sum(w);
					expect(Math.abs(share - quota)).toBeLessThan(1.01);
					if (w[i] === 0) expect(share).toBe(0);
				});
			})
		);
	});

	// Law, at the edge of exact integers.
	it('[M2] adds up exactly with totals near 2⁵³ and weights that overflow when added', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: Number.MAX_SAFE_INTEGER - 1000, max: Number.MAX_SAFE_INTEGER }),
				fc.array(fc.double({ min: 1, max: Number.MAX_VALUE, noNaN: true }), { minLength: 2 }),
				(total, weights) => {
					const shares = apportionMinor(total, weights);
					if (!shares.ok) throw new Error(shares.error.code);
					expect(shares.value.reduce((a, b) => a + BigInt(b), 0n)).toBe(BigInt(total));
				}
			)
		);
	});

	it('[M2] shares nothing among nobody, and refuses to share something among them', () => {
		expect(apportionMinor(0, [])).toEqual({ ok: true, value: [] });
		expect(apportionMinor(0, [0, 0])).toEqual({ ok: true, value: [0, 0] });
		expect(apportionMinor(1, [0, 0])).toMatchObject({
			error: { code: 'weights-add-up-to-nothing' }
		});
		expect(apportionMinor(1, [1, -1])).toMatchObject({ error: { code: 'weight-out-of-range' } });
		expect(apportionMinor(0.5, [1])).toMatchObject({ error: { code: 'amount-out-of-range' } });
	});
});
