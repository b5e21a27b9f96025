import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rankedOrder } from './ranking.ts';

const few = fc.integer({ min: 0, max: 4 });
const leaks = fc.array(fc.record({ cost: few, energy: few, air: few, tag: few }), {
	maxLength: 60
});

// Expected: the platform's own sort, by the rule of METHOD W3 (derived).
it('[W3] the order is that of a plain sort, whatever order was there before', () => {
	fc.assert(
		fc.property(
			leaks,
			fc.boolean(),
			fc.array(fc.integer({ min: 0, max: 150 }), { maxLength: 80 }),
			fc.integer({ min: 1, max: 3 }),
			(all, priced, before, gap) => {
				const column = (part: 'cost' | 'energy' | 'air' | 'tag') =>
					Float64Array.from(all, (leak) => leak[part]);
				const columns = {
					rows: Float64Array.from(all, (_, index) => index * gap),
					cost: priced ? column('cost') : undefined,
					energy: column('energy'),
					air: column('air'),
					tag: column('tag')
				};
				const plain = [...all.keys()].sort((a, b) => {
					const [one, other] = [all[a]!, all[b]!];
					return (
						(priced ? other.cost - one.cost : 0) ||
						other.energy - one.energy ||
						other.air - one.air ||
						one.tag - other.tag ||
						a - b
					);
				});
				expect([...rankedOrder(columns, Float64Array.from(before))]).toEqual(plain);
			}
		),
		{ numRuns: 500 }
	);
});
