import { expect, test } from 'vitest';
import { sizeWithin } from './plan-jpeg.ts';

test('derived: 8,000 by 4,000 pixels keep their shape within 8 million: half of each', () => {
	expect(sizeWithin({ widthPx: 8000, heightPx: 4000 })).toEqual({ widthPx: 4000, heightPx: 2000 });
});

test('a small plan is not enlarged', () => {
	expect(sizeWithin({ widthPx: 640, heightPx: 480 })).toEqual({ widthPx: 640, heightPx: 480 });
});

test('a panorama keeps at least one pixel of height', () => {
	const { widthPx, heightPx } = sizeWithin({ widthPx: 1_000_000_000, heightPx: 1 });
	expect(heightPx).toBe(1);
	expect(widthPx).toBeLessThanOrEqual(1_000_000_000);
});
