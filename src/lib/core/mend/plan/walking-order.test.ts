import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { walkingOrder, walkLength, type Stop } from './walking-order.ts';

const stop = fc.record({
	x: fc.double({ min: 0, max: 100, noNaN: true }),
	y: fc.double({ min: 0, max: 100, noNaN: true })
});

/** Every order of so many stops. */
function orders(count: number): number[][] {
	if (count === 0) return [[]];
	return orders(count - 1).flatMap((order) =>
		Array.from({ length: count }, (_, at) => order.toSpliced(at, 0, count - 1))
	);
}

describe('a short walk', () => {
	// Expected: the corners of a square with the start on one side, by hand (derived).
	it('[P8] goes round a square and does not cross it', () => {
		const corners = [
			{ x: 0, y: 0 },
			{ x: 10, y: 10 },
			{ x: 10, y: 0 },
			{ x: 0, y: 10 }
		];
		const start = { x: 5, y: 0 };
		const order = walkingOrder(corners, start);
		expect(walkLength(corners, order, start)).toBeCloseTo(40, 9);
	});

	it('[P8] law: visits each stop once, and no stretch turned round is shorter', () => {
		fc.assert(
			fc.property(fc.array(stop, { maxLength: 12 }), stop, (stops: Stop[], start) => {
				const order = walkingOrder(stops, start);
				expect(order.toSorted((a, b) => a - b)).toEqual(stops.map((_, index) => index));
				const length = walkLength(stops, order, start);
				for (let i = 0; i < order.length; i++)
					for (let j = i + 1; j < order.length; j++) {
						const turned = order.toSpliced(i, j - i + 1, ...order.slice(i, j + 1).reverse());
						expect(walkLength(stops, turned, start)).toBeGreaterThanOrEqual(length - 1e-6);
					}
			})
		);
	});

	// Expected: every order tried (derived).
	it('[P8] is within a quarter of the shortest walk through six stops', () => {
		const all = orders(6);
		fc.assert(
			fc.property(fc.array(stop, { minLength: 6, maxLength: 6 }), stop, (stops, start) => {
				const best = Math.min(...all.map((order) => walkLength(stops, order, start)));
				const walked = walkLength(stops, walkingOrder(stops, start), start);
				expect(walked).toBeLessThanOrEqual(1.25 * best + 1e-9);
			}),
			{ numRuns: 60, seed: 8 }
		);
	});
});
