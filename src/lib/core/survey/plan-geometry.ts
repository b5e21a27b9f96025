import { refuse, ok, type Result } from '../units/result.ts';
import type { Plan, PlanPoint, Survey } from './schema.ts';

/** A place in pixels of a plan's picture, y downwards. */
export interface Pixel {
	readonly x: number;
	readonly y: number;
}

type Sized = Pick<Plan, 'image' | 'scale'>;

export function toPixel({ image }: Pick<Plan, 'image'>, { x, y }: PlanPoint): Pixel {
	return { x: x * image.widthPx, y: y * image.heightPx };
}

/**
 * Metres that one pixel of the plan's picture stands for, from the distance that is known on it.
 *
 * @returns m/px; nothing when no distance is known or its ends are one point
 */
export function metresPerPixel(plan: Sized): number | undefined {
	if (!plan.scale) return undefined;
	const px = distancePx(toPixel(plan, plan.scale.from), toPixel(plan, plan.scale.to));
	const metres = plan.scale.metres / px;
	return px > 0 && Number.isFinite(metres) ? metres : undefined;
}

/** The distance between two places in a straight line, m; nothing without a scale. */
export function distanceM(plan: Sized, from: PlanPoint, to: PlanPoint): number | undefined {
	const metres = metresPerPixel(plan);
	return metres === undefined
		? undefined
		: metres * distancePx(toPixel(plan, from), toPixel(plan, to));
}

/** What an outline encloses, m²; nothing without a scale. */
export function areaM2(plan: Sized, outline: readonly PlanPoint[]): number | undefined {
	const metres = metresPerPixel(plan);
	if (metres === undefined) return undefined;
	return metres ** 2 * enclosed(outline.map((at) => toPixel(plan, at)));
}

/** What a polygon encloses: half the sum of its edges' cross products, whichever way it turns. */
function enclosed(outline: readonly Pixel[]): number {
	let twice = 0;
	outline.forEach((at, index) => {
		const next = outline[(index + 1) % outline.length] ?? at;
		twice += at.x * next.y - next.x * at.y;
	});
	return Math.abs(twice) / 2;
}

/**
 * Whether a place lies within an outline: a ray from it to the right crosses the outline an odd
 * number of times. What is on the edge may count either way.
 */
export function isInside({ x, y }: Pixel, outline: readonly Pixel[]): boolean {
	let inside = false;
	outline.forEach((from, index) => {
		const to = outline[(index + 1) % outline.length] ?? from;
		if (from.y > y === to.y > y) return;
		if (x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
	});
	return inside;
}

/** The section that a place lies in; where drawn sections lie over each other, the smallest. */
export function sectionAt(survey: Survey, planId: string, at: PlanPoint): string | undefined {
	let found: { readonly sectionId: string; readonly size: number } | undefined;
	for (const area of Object.values(survey.areas ?? {})) {
		if (area.removed || area.planId !== planId || area.use.kind !== 'section') continue;
		const { sectionId } = area.use;
		const section = survey.sections[sectionId];
		if (!section || section.removed || !isInside(at, area.outline)) continue;
		const size = enclosed(area.outline);
		if (!found || size < found.size) found = { sectionId, size };
	}
	return found?.sectionId;
}

/** Takes places of one picture to another: x' = a·x + c·y + e, y' = b·x + d·y + f, in pixels. */
export interface Shift {
	readonly a: number;
	readonly b: number;
	readonly c: number;
	readonly d: number;
	readonly e: number;
	readonly f: number;
}

/** One point that can be found on both drawings. */
export interface Match {
	readonly from: Pixel;
	readonly to: Pixel;
}

/** Closer together than this, points say nothing about turn and size, px. */
const CLOSEST_PX = 8;

/**
 * The shift that takes matching points to each other: with two, turned and sized without being
 * mirrored or skewed; with three, any affine shift.
 *
 * @returns refusal `plan-points-missing`, `plan-points-too-close` or `plan-points-in-line`
 */
export function shiftBetween(matches: readonly Match[]): Result<Shift> {
	const [first, second, third] = matches;
	if (!first || !second) return refuse('plan-points-missing');
	const u = between(first.from, second.from);
	const v = between(first.to, second.to);
	if (Math.hypot(u.x, u.y) < CLOSEST_PX || Math.hypot(v.x, v.y) < CLOSEST_PX)
		return refuse('plan-points-too-close');
	if (!third) {
		const square = u.x ** 2 + u.y ** 2;
		const a = (u.x * v.x + u.y * v.y) / square;
		const b = (u.x * v.y - u.y * v.x) / square;
		return ok(through(first, { a, b, c: -b, d: a }));
	}
	const s = between(first.from, third.from);
	const t = between(first.to, third.to);
	const cross = u.x * s.y - u.y * s.x;
	const flat = (p: Pixel, q: Pixel): boolean =>
		Math.abs(p.x * q.y - p.y * q.x) < CLOSEST_PX * Math.max(Math.hypot(p.x, p.y), CLOSEST_PX);
	if (flat(u, s) || flat(v, t)) return refuse('plan-points-in-line');
	return ok(
		through(first, {
			a: (v.x * s.y - t.x * u.y) / cross,
			b: (v.y * s.y - t.y * u.y) / cross,
			c: (t.x * u.x - v.x * s.x) / cross,
			d: (t.y * u.x - v.y * s.x) / cross
		})
	);
}

export function shifted({ a, b, c, d, e, f }: Shift, { x, y }: Pixel): Pixel {
	return { x: a * x + c * y + e, y: b * x + d * y + f };
}

function through({ from, to }: Match, turn: Pick<Shift, 'a' | 'b' | 'c' | 'd'>): Shift {
	const origin = shifted({ ...turn, e: 0, f: 0 }, from);
	return { ...turn, e: to.x - origin.x, f: to.y - origin.y };
}

function between(from: Pixel, to: Pixel): Pixel {
	return { x: to.x - from.x, y: to.y - from.y };
}

function distancePx(from: Pixel, to: Pixel): number {
	return Math.hypot(to.x - from.x, to.y - from.y);
}
