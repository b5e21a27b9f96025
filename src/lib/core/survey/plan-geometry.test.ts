import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	areaM2,
	distanceM,
	isInside,
	metresPerPixel,
	sectionAt,
	shiftBetween,
	shifted,
	type Shift
} from './plan-geometry.ts';
import { newSurvey } from './new-survey.ts';
import { replacePlan } from './replace-plan.ts';
import type { Plan, Survey } from './schema.ts';
import { inPhotograph, perspectiveOf, sheetSize, type Corners } from './straighten.ts';

const image = { sha256: 'a'.repeat(64), mediaType: 'image/png', widthPx: 2000, heightPx: 1000 };
const plan: Plan = {
	id: 'plan-1',
	name: 'Hall',
	image,
	scale: { from: { x: 0.1, y: 0.2 }, to: { x: 0.6, y: 0.2 }, metres: 50 }
};
const HALF = [
	{ x: 0, y: 0 },
	{ x: 0.5, y: 0 },
	{ x: 0.5, y: 1 },
	{ x: 0, y: 1 }
];

describe('a plan with a known distance', () => {
	// derived: 1,000 px are 50 m, so 1 px is 5 cm on both axes
	it('measures along and across, though the plan is not square', () => {
		expect(metresPerPixel(plan)).toBeCloseTo(0.05, 12);
		expect(distanceM(plan, { x: 0, y: 0 }, { x: 0, y: 1 })).toBeCloseTo(50, 9);
		expect(distanceM(plan, { x: 0, y: 0 }, { x: 0.03, y: 0.08 })).toBeCloseTo(5, 9);
	});

	it('measures what an outline encloses, whichever way it is drawn', () => {
		expect(areaM2(plan, HALF)).toBeCloseTo(2500, 6);
		expect(areaM2(plan, HALF.toReversed())).toBeCloseTo(2500, 6);
	});

	it('says nothing without a distance, or with one between a point and itself', () => {
		expect(metresPerPixel({ image })).toBeUndefined();
		const at = { x: 0.5, y: 0.5 };
		expect(metresPerPixel({ image, scale: { from: at, to: at, metres: 3 } })).toBeUndefined();
		expect(areaM2({ image }, HALF)).toBeUndefined();
	});
});

describe('sections drawn on a plan', () => {
	const horseshoe = [
		[0, 0],
		[9, 0],
		[9, 9],
		[6, 9],
		[6, 3],
		[3, 3],
		[3, 9],
		[0, 9]
	].map(([x = 0, y = 0]) => ({ x, y }));

	it('knows what lies within, in the notch and outside', () => {
		expect(isInside({ x: 1, y: 8 }, horseshoe)).toBe(true);
		expect(isInside({ x: 4.5, y: 1 }, horseshoe)).toBe(true);
		expect(isInside({ x: 4.5, y: 6 }, horseshoe)).toBe(false);
		expect(isInside({ x: 10, y: 1 }, horseshoe)).toBe(false);
	});

	it('gives a place the smallest section that it lies in', () => {
		const small = [
			{ x: 0.1, y: 0.1 },
			{ x: 0.2, y: 0.1 },
			{ x: 0.2, y: 0.2 }
		];
		const survey = surveyWith({
			sections: {
				'section-hall': { id: 'section-hall', name: 'Hall' },
				'section-press': { id: 'section-press', name: 'Press' },
				'section-gone': { id: 'section-gone', name: 'Gone', removed: true }
			},
			areas: {
				'area-1': area('area-1', HALF, 'section-hall'),
				'area-2': area('area-2', small, 'section-press'),
				'area-3': area('area-3', small.slice(), 'section-gone')
			}
		});
		expect(sectionAt(survey, 'plan-1', { x: 0.18, y: 0.12 })).toBe('section-press');
		expect(sectionAt(survey, 'plan-1', { x: 0.4, y: 0.9 })).toBe('section-hall');
		expect(sectionAt(survey, 'plan-1', { x: 0.8, y: 0.9 })).toBeUndefined();
		expect(sectionAt(survey, 'plan-2', { x: 0.4, y: 0.9 })).toBeUndefined();
	});
});

describe('a newer drawing', () => {
	const coordinate = fc.double({ min: -5000, max: 5000, noNaN: true });
	const point = fc.record({ x: coordinate, y: coordinate });
	const factor = fc.double({ min: -2, max: 2, noNaN: true });
	const affine: fc.Arbitrary<Shift> = fc
		.record({ a: factor, b: factor, c: factor, d: factor, e: coordinate, f: coordinate })
		.filter(({ a, b, c, d }) => Math.abs(a * d - b * c) > 0.2);

	it('is found again from two points when it was turned and sized (law)', () => {
		fc.assert(
			fc.property(fc.tuple(factor, factor, coordinate, coordinate), point, ([a, b, e, f], at) => {
				fc.pre(Math.hypot(a, b) > 0.1);
				const true_: Shift = { a, b, c: -b, d: a, e, f };
				const matches = [
					{ x: 100, y: 100 },
					{ x: 900, y: 300 }
				].map((from) => ({ from, to: shifted(true_, from) }));
				const found = shiftBetween(matches);
				expect(found.ok && close(shifted(found.value, at), shifted(true_, at))).toBe(true);
			})
		);
	});

	it('is found again from three points under any affine shift (law)', () => {
		fc.assert(
			fc.property(affine, point, (true_, at) => {
				const matches = [
					{ x: 100, y: 100 },
					{ x: 1900, y: 200 },
					{ x: 500, y: 900 }
				].map((from) => ({ from, to: shifted(true_, from) }));
				const found = shiftBetween(matches);
				expect(found.ok && close(shifted(found.value, at), shifted(true_, at))).toBe(true);
			})
		);
	});

	it('is refused when the points cannot tell', () => {
		const at = (x: number, y: number) => ({ from: { x, y }, to: { x, y } });
		expect(shiftBetween([at(1, 1)])).toMatchObject({ error: { code: 'plan-points-missing' } });
		expect(shiftBetween([at(1, 1), at(3, 1)])).toMatchObject({
			error: { code: 'plan-points-too-close' }
		});
		expect(shiftBetween([at(0, 0), at(100, 100), at(200, 201)])).toMatchObject({
			error: { code: 'plan-points-in-line' }
		});
	});

	// derived by hand: a quarter turn clockwise takes (x, y) of 2000 × 1000 to (1000 − y, x)
	it('carries pins, areas, valves, scale and north through a quarter turn', () => {
		const survey = surveyWith({
			plans: { 'plan-1': { ...plan, northDegrees: 30 } },
			sections: {
				'section-a': {
					id: 'section-a',
					name: 'A',
					valveAt: { planId: 'plan-1', at: { x: 0.5, y: 0 } },
					feedAt: { planId: 'plan-1', from: { x: 0.5, y: 0 }, to: { x: 0.25, y: 0.1 } }
				}
			},
			areas: { 'area-1': area('area-1', HALF, 'section-a') },
			leaks: {
				'leak-1': {
					id: 'leak-1',
					tag: 1,
					planId: 'plan-1',
					at: { x: 0.25, y: 0.1 },
					part: 'hose',
					hazards: [],
					sightings: {},
					mendings: {}
				}
			}
		});
		const newer = { image: { ...image, widthPx: 1000, heightPx: 2000 } };
		const turn: Shift = { a: 0, b: 1, c: -1, d: 0, e: 1000, f: 0 };
		const { bodies, outside } = replacePlan(survey, { ...plan, northDegrees: 30 }, newer, turn);
		expect(outside).toEqual([]);
		expect(bodies[0]).toMatchObject({
			kind: 'set-plan',
			changes: { northDegrees: expect.closeTo(120, 9) as number, original: null }
		});
		expect(bodies[1]).toEqual({
			kind: 'move-pin',
			leakId: 'leak-1',
			planId: 'plan-1',
			at: { x: 0.9, y: 0.25 }
		});
		expect(bodies[2]).toMatchObject({ kind: 'set-area', areaId: 'area-1' });
		expect(bodies[3]).toMatchObject({
			kind: 'set-section',
			changes: {
				valveAt: { at: { x: 1, y: 0.5 } },
				feedAt: { from: { x: 1, y: 0.5 }, to: { x: 0.9, y: 0.25 } }
			}
		});
	});

	it('says which pins would fall off it', () => {
		const survey = surveyWith({
			leaks: {
				'leak-1': {
					id: 'leak-1',
					tag: 7,
					planId: 'plan-1',
					at: { x: 0.9, y: 0.5 },
					part: 'hose',
					hazards: [],
					sightings: {},
					mendings: {}
				}
			}
		});
		const right: Shift = { a: 1, b: 0, c: 0, d: 1, e: 500, f: 0 };
		const { bodies, outside } = replacePlan(survey, plan, { image }, right);
		expect(outside).toEqual([7]);
		expect(bodies[1]).toMatchObject({ at: { x: 1, y: 0.5 } });
	});
});

describe('a photographed plan', () => {
	const corners: Corners = [
		{ x: 120, y: 80 },
		{ x: 900, y: 140 },
		{ x: 980, y: 700 },
		{ x: 60, y: 640 }
	];

	it('takes the corners of the sheet to where they were tapped', () => {
		const map = perspectiveOf(corners);
		if (!map.ok) throw new Error(map.error.code);
		const flat = [
			{ x: 0, y: 0 },
			{ x: 1, y: 0 },
			{ x: 1, y: 1 },
			{ x: 0, y: 1 }
		];
		flat.forEach((at, index) => {
			const seen = inPhotograph(map.value, at);
			expect(seen.x).toBeCloseTo(corners[index]?.x ?? NaN, 6);
			expect(seen.y).toBeCloseTo(corners[index]?.y ?? NaN, 6);
		});
	});

	// law of perspective: the diagonals of the sheet cross at its middle, in the photograph too
	it('takes the middle of the sheet to where its diagonals cross', () => {
		const map = perspectiveOf(corners);
		if (!map.ok) throw new Error(map.error.code);
		const [p, q, r, s] = corners;
		const middle = inPhotograph(map.value, { x: 0.5, y: 0.5 });
		const offLine = (from: { x: number; y: number }, to: { x: number; y: number }) =>
			(to.x - from.x) * (middle.y - from.y) - (to.y - from.y) * (middle.x - from.x);
		expect(offLine(p, r)).toBeCloseTo(0, 4);
		expect(offLine(q, s)).toBeCloseTo(0, 4);
	});

	it('refuses corners that cross or are not taken clockwise', () => {
		const [p, q, r, s] = corners;
		for (const wrong of [
			[p, r, q, s],
			[p, s, r, q],
			[p, p, r, s]
		] as const)
			expect(perspectiveOf(wrong)).toMatchObject({ error: { code: 'plan-corners-crossed' } });
		expect(sheetSize(corners)).toEqual({ widthPx: 922, heightPx: 566 });
	});
});

function close(one: { x: number; y: number }, other: { x: number; y: number }): boolean {
	return Math.hypot(one.x - other.x, one.y - other.y) < 1e-5 * (1 + Math.hypot(other.x, other.y));
}

function area(id: string, outline: { x: number; y: number }[], sectionId: string) {
	return { id, planId: 'plan-1', outline, use: { kind: 'section' as const, sectionId } };
}

function surveyWith(parts: Partial<Survey>): Survey {
	const round = { id: 'round-1', name: 'First', startedAt: '2026-03-01T08:00:00Z' };
	const empty = newSurvey({ id: 'site-1', name: 'Works', currency: 'EUR' }, round);
	return { ...empty, plans: { 'plan-1': plan }, ...parts };
}
