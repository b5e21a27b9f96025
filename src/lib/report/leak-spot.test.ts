import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../core/survey/schema.ts';
import { leakSpot } from './leak-spot.ts';

const planOf = (widthPx: number, heightPx: number, metres?: number): Plan => ({
	id: 'plan-1',
	name: 'Hall',
	image: { sha256: 'a'.repeat(64), mediaType: 'image/png', widthPx, heightPx },
	...(metres !== undefined && { scale: { from: { x: 0, y: 0 }, to: { x: 1, y: 0 }, metres } })
});

describe('the cut of a plan round a leak', () => {
	it('is square on the plan, lies within it, and has the leak where its mark is drawn', () => {
		const share = fc.double({ min: 0, max: 1, noNaN: true });
		const px = fc.integer({ min: 50, max: 20_000 });
		const metres = fc.option(fc.double({ min: 1, max: 900, noNaN: true }), { nil: undefined });
		fc.assert(
			fc.property(px, px, metres, share, share, (widthPx, heightPx, wide, x, y) => {
				const { part, at } = leakSpot('leak-1', planOf(widthPx, heightPx, wide), { x, y });
				expect(part.width * widthPx).toBeCloseTo(part.height * heightPx, 6);
				for (const edge of [part.x, part.y, 1 - part.x - part.width, 1 - part.y - part.height])
					expect(edge).toBeGreaterThanOrEqual(-1e-9);
				expect(part.x + at.x * part.width).toBeCloseTo(x, 9);
				expect(part.y + at.y * part.height).toBeCloseTo(y, 9);
			})
		);
	});

	it('derived: of a plan 80 m wide it shows 16 m, a fifth', () => {
		const { part } = leakSpot('leak-1', planOf(1000, 800, 80), { x: 0.5, y: 0.5 });
		expect(part.width).toBeCloseTo(0.2, 9);
	});
});
