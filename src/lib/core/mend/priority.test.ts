import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PRIORITIES, priorities } from './priority.ts';

const job = (leakId: string, costMinorPerYear?: number, more = {}) => ({
	leakId,
	done: false,
	pinnedFirst: false,
	...(costMinorPerYear !== undefined && { costMinorPerYear }),
	...more
});

describe('priorities of work orders', () => {
	it('[P9] the first half of the cost is high, its last tenth low (derived: 400 + 300 of 1000 pass half)', () => {
		const found = priorities([
			job('leak-a', 400),
			job('leak-b', 300),
			job('leak-c', 210),
			job('leak-d', 50),
			job('leak-e', 40)
		]);
		// Dearest first, what comes before each: 0, 400, 700, 910, 960 of 1000.
		expect([...found.values()]).toEqual(['high', 'high', 'normal', 'low', 'low']);
	});

	it('[P9] what must come first is first without a price; what is done or has no price is normal', () => {
		const found = priorities([
			job('leak-a', undefined, { pinnedFirst: true }),
			job('leak-b'),
			job('leak-c', 900, { done: true, pinnedFirst: true }),
			job('leak-d', 0)
		]);
		expect([...found.values()]).toEqual(['first', 'normal', 'normal', 'normal']);
	});

	it('[P9] a dearer open repair is never less urgent than a cheaper one (law)', () => {
		fc.assert(
			fc.property(fc.array(fc.nat(1e7), { maxLength: 40 }), (costs) => {
				const jobs = costs.map((cost, index) => job(`leak-${String(index)}`, cost));
				const found = priorities(jobs);
				const ranks = jobs
					.toSorted((a, b) => (b.costMinorPerYear ?? 0) - (a.costMinorPerYear ?? 0))
					.map(({ costMinorPerYear: cost, leakId }) => ({
						cost,
						rank: PRIORITIES.indexOf(found.get(leakId) ?? 'first')
					}));
				for (const [index, { cost, rank }] of ranks.entries()) {
					const next = ranks[index + 1];
					if (next && next.cost !== cost) expect(next.rank).toBeGreaterThanOrEqual(rank);
				}
			})
		);
	});
});
