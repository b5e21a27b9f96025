import type { Box } from './paper.ts';

export interface Point {
	readonly x: number;
	readonly y: number;
}

type Movable = { -readonly [Key in keyof Point]: Point[Key] };

const GAP = 0.9;
const MOST_TURNS = 60;
/** What a valve keeps clear of numbers, as a share of a pin's radius. */
const VALVE = 0.9;

/**
 * Moves pins apart until none covers another or a valve, each as little as it takes, and keeps them
 * within the frame. Where there is no room for all of them some overlap remains.
 */
export function placePins(
	points: readonly Point[],
	radius: number,
	frame: Box,
	valves: readonly Point[] = []
): Point[] {
	const inFrame = ({ x, y }: Point) => ({
		x: within(x, frame.x + radius, frame.x + frame.width - radius),
		y: within(y, frame.y + radius, frame.y + frame.height - radius)
	});
	const placed: Movable[] = points.map(inFrame);
	const apart = 2 * radius + GAP;
	for (let turn = 0; turn < MOST_TURNS; turn++) {
		let moved = false;
		for (const [i, j] of neighbours(placed, apart)) {
			const [a, b] = [placed[i], placed[j]];
			if (a && b && part(a, b, apart, i * 2.4 + j)) moved = true;
		}
		if (!moved) break;
		for (const point of placed) Object.assign(point, inFrame(point));
	}
	const settled: Point[] = [];
	for (const point of placed) settled.push(nearestFree(point, settled, valves, radius, inFrame));
	return settled;
}

const RINGS = 60;

/** The place nearest to a point where a pin covers neither those that stand nor a valve. */
function nearestFree(
	point: Point,
	standing: readonly Point[],
	valves: readonly Point[],
	radius: number,
	inFrame: (point: Point) => Point
): Point {
	const clear = (at: Point) =>
		standing.every((other) => Math.hypot(at.x - other.x, at.y - other.y) >= 2 * radius + GAP / 2) &&
		valves.every((valve) => Math.hypot(at.x - valve.x, at.y - valve.y) >= (1 + VALVE) * radius);
	if (clear(point)) return { ...point };
	for (let ring = 1; ring <= RINGS; ring++) {
		const steps = 6 * ring;
		for (let step = 0; step < steps; step++) {
			const angle = (2 * Math.PI * step) / steps;
			const away = (ring * radius) / 2;
			const at = inFrame({
				x: point.x + Math.cos(angle) * away,
				y: point.y + Math.sin(angle) * away
			});
			if (clear(at)) return at;
		}
	}
	return { ...point };
}

/**
 * Pushes two pins half the way each until they are `apart`; says whether they had to move. Pins on
 * one spot leave it in the direction `angle`, so that every printing looks the same.
 */
function part(a: Movable, b: Movable, apart: number, angle: number): boolean {
	const [dx, dy] = [b.x - a.x, b.y - a.y];
	const distance = Math.hypot(dx, dy);
	if (distance >= apart - 1e-6) return false;
	const [ux, uy] =
		distance > 1e-6 ? [dx / distance, dy / distance] : [Math.cos(angle), Math.sin(angle)];
	const push = (apart - distance) / 2;
	a.x -= ux * push;
	a.y -= uy * push;
	b.x += ux * push;
	b.y += uy * push;
	return true;
}

/** Pairs that may touch: those in one cell, or next to it, of a grid of so wide a mesh. */
function neighbours(points: readonly Point[], mesh: number): [number, number][] {
	const cells = new Map<string, number[]>();
	const column = ({ x }: Point) => Math.floor(x / mesh);
	const line = ({ y }: Point) => Math.floor(y / mesh);
	points.forEach((point, index) => {
		const key = `${String(column(point))} ${String(line(point))}`;
		cells.set(key, [...(cells.get(key) ?? []), index]);
	});
	const pairs: [number, number][] = [];
	points.forEach((point, index) => {
		for (let across = -1; across <= 1; across++)
			for (let down = -1; down <= 1; down++) {
				const key = `${String(column(point) + across)} ${String(line(point) + down)}`;
				for (const other of cells.get(key) ?? []) if (other > index) pairs.push([index, other]);
			}
	});
	return pairs;
}

function within(value: number, least: number, most: number): number {
	return Math.min(Math.max(value, least), most);
}
