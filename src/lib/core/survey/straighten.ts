import { ok, refuse, type Result } from '../units/result.ts';
import type { Pixel } from './plan-geometry.ts';

/**
 * Takes the unit square to a four-cornered figure, straight lines to straight lines:
 * x = (a·u + b·v + c) / (g·u + h·v + 1), y = (d·u + e·v + f) / (g·u + h·v + 1).
 */
export interface Perspective {
	readonly a: number;
	readonly b: number;
	readonly c: number;
	readonly d: number;
	readonly e: number;
	readonly f: number;
	readonly g: number;
	readonly h: number;
}

export type Corners = readonly [Pixel, Pixel, Pixel, Pixel];

/**
 * The perspective under which a flat sheet was photographed, from where its corners are.
 *
 * @param corners clockwise from the top left: where (0, 0), (1, 0), (1, 1) and (0, 1) are
 * @returns refusal `plan-corners-crossed` when they enclose nothing or are not a convex figure
 * @source derived: the four corners put into the form above and solved for g and h
 */
export function perspectiveOf([p, q, r, s]: Corners): Result<Perspective> {
	const turns = [turn(p, q, r), turn(q, r, s), turn(r, s, p), turn(s, p, q)];
	const size = Math.max(...turns.map(Math.abs));
	// All corners bend the same way, and none is flat.
	if (!(size > 0) || turns.some((each) => each <= size * 1e-3))
		return refuse('plan-corners-crossed');
	const d1 = { x: q.x - r.x, y: q.y - r.y };
	const d2 = { x: s.x - r.x, y: s.y - r.y };
	const sum = { x: p.x - q.x + r.x - s.x, y: p.y - q.y + r.y - s.y };
	const determinant = d1.x * d2.y - d2.x * d1.y;
	const g = (sum.x * d2.y - d2.x * sum.y) / determinant;
	const h = (d1.x * sum.y - sum.x * d1.y) / determinant;
	return ok({
		a: q.x - p.x + g * q.x,
		b: s.x - p.x + h * s.x,
		c: p.x,
		d: q.y - p.y + g * q.y,
		e: s.y - p.y + h * s.y,
		f: p.y,
		g,
		h
	});
}

/** Where a point of the flat sheet, in shares of its width and height, is in the photograph. */
export function inPhotograph(map: Perspective, { x: u, y: v }: Pixel): Pixel {
	const w = map.g * u + map.h * v + 1;
	return { x: (map.a * u + map.b * v + map.c) / w, y: (map.d * u + map.e * v + map.f) / w };
}

/** The size of the straightened sheet: each side as long as the longer of the two seen, px. */
export function sheetSize([p, q, r, s]: Corners): { widthPx: number; heightPx: number } {
	const side = (from: Pixel, to: Pixel): number => Math.hypot(to.x - from.x, to.y - from.y);
	return {
		widthPx: Math.max(1, Math.round(Math.max(side(p, q), side(s, r)))),
		heightPx: Math.max(1, Math.round(Math.max(side(p, s), side(q, r))))
	};
}

function turn(a: Pixel, b: Pixel, c: Pixel): number {
	return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
}
