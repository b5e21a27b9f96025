import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placePins } from './pin-places.ts';

const frame = { x: 10, y: 20, width: 180, height: 120 };
const point = fc.record({
	x: fc.double({ min: 10, max: 190, noNaN: true }),
	y: fc.double({ min: 20, max: 140, noNaN: true })
});

describe('pins on a printed plan', () => {
	it('none covers another while there is room, and none leaves the plan', () => {
		fc.assert(
			fc.property(fc.array(point, { maxLength: 25 }), (points) => {
				const placed = placePins(points, 3.5, frame);
				for (const [index, a] of placed.entries()) {
					expect(a.x).toBeGreaterThanOrEqual(frame.x + 3.5 - 1e-9);
					expect(a.y).toBeLessThanOrEqual(frame.y + frame.height - 3.5 + 1e-9);
					for (const b of placed.slice(index + 1))
						expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(7);
				}
			}),
			{ numRuns: 60 }
		);
	});

	it('a hundred and fifty on one spot part, and leave the valve there to be seen', () => {
		const points = Array.from({ length: 150 }, () => ({ x: 50, y: 50 }));
		const placed = placePins(points, 3.5, frame, [{ x: 50, y: 50 }]);
		for (const [index, a] of placed.entries()) {
			expect(Math.hypot(a.x - 50, a.y - 50)).toBeGreaterThan(3.5 * 1.8);
			for (const b of placed.slice(index + 1))
				expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(7);
		}
	});

	it('pins with room stay where they are', () => {
		const points = [
			{ x: 50, y: 50 },
			{ x: 90, y: 50 }
		];
		expect(placePins(points, 3.5, frame)).toEqual(points);
	});

	it('pins on one spot part', () => {
		const [a, b] = placePins(
			[
				{ x: 50, y: 50 },
				{ x: 50, y: 50 }
			],
			3.5,
			frame
		);
		expect(Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))).toBeGreaterThan(7);
	});
});
