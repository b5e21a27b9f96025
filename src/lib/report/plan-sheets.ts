import type { PinShape, PlanPage, PlanPin } from './model.ts';
import { MARGIN, PAPERS, type Box, type PaperName } from './paper.ts';
import { placePins, type Point } from './pin-places.ts';

type Orientation = 'portrait' | 'landscape';

/** What the furniture of a page leaves free at its head and foot, mm at scale 1. */
export type PageEdges = Readonly<
	Record<Orientation, { readonly top: number; readonly bottom: number }>
>;

/** What the plan's own name and key take above it, and its scale below it, mm at scale 1. */
export const PLAN_HEAD = 13.5;
export const PLAN_FOOT = 9;

export interface PlacedPin {
	readonly tag: string;
	readonly shape: PinShape;
	/** Where the leak is on the page, and where its number stands, mm at scale 1. */
	readonly spot: Point;
	readonly at: Point;
}

/** One page of a plan. */
export interface PlanSheet {
	/** `A1` and so on; empty for a plan that is on one page. */
	readonly name: string;
	/** Names its picture; pages that show the same share it. */
	readonly key: string;
	readonly orientation: Orientation;
	/** What it shows, in shares of the plan, and its own part of that: the rest is on others too. */
	readonly part: Box;
	readonly cell: Box;
	/** Where that is on the page, mm at scale 1. */
	readonly frame: Box;
	/** The size of the picture that fills the frame at print's fineness. */
	readonly picture: { readonly widthPx: number; readonly heightPx: number };
	readonly radius: number;
	readonly pins: readonly PlacedPin[];
}

/** How a plan is printed: on one page, or on sheets with a page before them that shows which. */
export interface PlanLayout {
	readonly overview?: PlanSheet;
	readonly sheets: readonly PlanSheet[];
	/** Names of sheets by tag; nothing in it for a plan on one page. */
	readonly sheetOf: ReadonlyMap<string, string>;
}

const DOTS_PER_MM = 300 / 25.4;
/** What one canvas may hold on the smallest devices, px. */
const MOST_PIXELS = 16_700_000;
/** Half the width of a pin on paper, mm: its number reads at arm's length. */
const RADIUS_MM = 3.5;
/** A number that stands further from its leak than this is hard to follow, mm. */
const FAR_MM = 9;
/** More on one sheet are hard to search through, and take long to part. */
const MOST_PINS = 90;
/** Of the frame, what pins may take so that each finds a place of its own. */
const MOST_COVERED = 0.5;
const MOST_ACROSS = 6;
/** Half a valve, a letter of its name, and how closely what they take is marked, mm at scale 1. */
const VALVE_MM = 4;
const LETTER_MM = 1.7;
const STEP_MM = 3;
/** What a sheet shows beyond its own part on each side, as a share of it. */
const LAP = 0.06;

interface Grid {
	readonly columns: number;
	readonly rows: number;
}

const WHOLE: Box = { x: 0, y: 0, width: 1, height: 1 };
const COUNTS = Array.from({ length: MOST_ACROSS }, (_, index) => index + 1);

/**
 * Divides a plan into as few sheets as let each number stand at its leak, and on none of which two
 * numbers overlap. The same plan and paper give the same sheets wherever this is asked.
 */
export function planSheets(plan: PlanPage, paper: PaperName, edges: PageEdges): PlanLayout {
	const draw = (cell: Cell) => sheetOf(plan, paper, edges, cell);
	const room = (cell: Cell) => roomFor(plan, paper, edges, cell);
	const far = (sheets: readonly PlanSheet[]) =>
		sheets.reduce((sum, each) => sum + farPins(each), 0);
	const whole = { name: '', part: WHOLE, cell: WHOLE, pins: plan.pins };
	const one = draw(whole.pins.length > room(whole) ? { ...whole, pins: [] } : whole);
	let best = { sheets: [one], far: one.pins.length < plan.pins.length ? Infinity : farPins(one) };
	for (const grid of gridsFor(plan)) {
		if (best.far === 0) break;
		const cells = filledCells(plan, grid);
		const last = grid.columns === MOST_ACROSS && grid.rows === MOST_ACROSS;
		const crowded = cells.some((cell) => cell.pins.length > room(cell));
		if (crowded && !(last && best.far === Infinity)) continue;
		const sheets = cells.flatMap((cell) => inTurn(cell, room(cell))).map(draw);
		// A finer grid that brings no number nearer to its leak is only more paper.
		if (best.far === Infinity || far(sheets) < best.far) best = { sheets, far: far(sheets) };
	}
	if (best.sheets[0] === one) return { sheets: [one], sheetOf: new Map() };
	return {
		overview: draw({ ...whole, pins: [] }),
		sheets: best.sheets,
		sheetOf: new Map(best.sheets.flatMap(({ name, pins }) => pins.map(({ tag }) => [tag, name])))
	};
}

/** Coarsest first; of those with as many sheets, the one whose parts are nearest to square. */
function gridsFor({ widthPx, heightPx }: PlanPage): Grid[] {
	const skew = ({ columns, rows }: Grid) =>
		Math.abs(Math.log(widthPx / columns / (heightPx / rows)));
	return COUNTS.flatMap((columns) => COUNTS.map((rows) => ({ columns, rows })))
		.filter(({ columns, rows }) => columns * rows > 1)
		.sort((a, b) => a.columns * a.rows - b.columns * b.rows || skew(a) - skew(b));
}

interface Cell {
	readonly name: string;
	readonly part: Box;
	readonly cell: Box;
	readonly pins: readonly PlanPin[];
}

/** The parts of a grid that have pins, by columns A, B, C and rows 1, 2, 3, line by line. */
function filledCells(plan: PlanPage, { columns, rows }: Grid): Cell[] {
	const index = (share: number, count: number) => Math.min(count - 1, Math.floor(share * count));
	const byCell = new Map<number, PlanPin[]>();
	for (const pin of plan.pins) {
		const at = index(pin.y, rows) * columns + index(pin.x, columns);
		byCell.set(at, [...(byCell.get(at) ?? []), pin]);
	}
	return [...byCell.keys()]
		.sort((a, b) => a - b)
		.map((at) => {
			const [column, row] = [at % columns, Math.floor(at / columns)];
			const [left, right] = lapped(column, columns);
			const [top, bottom] = lapped(row, rows);
			return {
				name: `${String.fromCharCode(65 + column)}${String(row + 1)}`,
				part: { x: left, y: top, width: right - left, height: bottom - top },
				cell: { x: column / columns, y: row / rows, width: 1 / columns, height: 1 / rows },
				pins: byCell.get(at) ?? []
			};
		});
}

function lapped(index: number, count: number): [number, number] {
	return [Math.max(0, (index - LAP) / count), Math.min(1, (index + 1 + LAP) / count)];
}

/** How many pins find a place of their own on a sheet. */
function roomFor(plan: PlanPage, paper: PaperName, edges: PageEdges, { part }: Cell): number {
	const { width, height } = placeOnPage(plan, paper, edges, part).frame;
	const side = (2 * RADIUS_MM) / PAPERS[paper].scale + 1;
	const fit = Math.floor((MOST_COVERED * width * height) / side ** 2);
	return Math.max(1, Math.min(MOST_PINS, fit));
}

/** As many at a time as a sheet has room for. */
function inTurn(cell: Cell, most: number): Cell[] {
	const turns: Cell[] = [];
	for (let at = 0; at < cell.pins.length; at += most) {
		const name = at === 0 ? cell.name : `${cell.name} (${String(at / most + 1)})`;
		turns.push({ ...cell, name, pins: cell.pins.slice(at, at + most) });
	}
	return turns;
}

function sheetOf(
	plan: PlanPage,
	paper: PaperName,
	edges: PageEdges,
	{ name, part, cell, pins }: Cell
): PlanSheet {
	const { orientation, frame } = placeOnPage(plan, paper, edges, part);
	const { scale } = PAPERS[paper];
	const radius = RADIUS_MM / scale;
	const spots = pins.map((pin) => onSheet(pin, part, frame));
	const places = placePins(spots, radius, frame, keptClear(plan, part, frame));
	return {
		name,
		key: [plan.planId, part.x, part.y, part.width, part.height].join(' '),
		orientation,
		part,
		cell,
		frame,
		picture: pictureSize(frame.width * scale, frame.height * scale),
		radius,
		pins: pins.flatMap(({ tag, shape }, index) => {
			const [spot, at] = [spots[index], places[index]];
			return spot && at ? [{ tag, shape, spot, at }] : [];
		})
	};
}

/** The valves with the names beside them, and the heads of arrows: no number may hide what shuts the air off. */
function keptClear({ valves, flows }: PlanPage, part: Box, frame: Box): Point[] {
	const heads = flows.map(({ to }) => onSheet(to, part, frame));
	const names = valves.flatMap(({ at, text }) => {
		const { x, y } = onSheet(at, part, frame);
		if (x < frame.x || x > frame.x + frame.width || y < frame.y || y > frame.y + frame.height)
			return [];
		const steps = Math.ceil((VALVE_MM + text.length * LETTER_MM) / STEP_MM);
		const right = x + steps * STEP_MM <= frame.x + frame.width ? 1 : -1;
		return Array.from({ length: steps + 1 }, (_, step) => ({ x: x + right * step * STEP_MM, y }));
	});
	return [...names, ...heads];
}

/** Where a place of the plan is on the page. */
export function onSheet({ x, y }: Point, part: Box, frame: Box): Point {
	return {
		x: frame.x + ((x - part.x) / part.width) * frame.width,
		y: frame.y + ((y - part.y) / part.height) * frame.height
	};
}

/** Pins whose number stands far from its leak, or on another. */
function farPins({ pins, radius }: PlanSheet): number {
	const far = (FAR_MM / RADIUS_MM) * radius;
	const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
	return pins.filter(
		(pin) =>
			apart(pin.at, pin.spot) > far ||
			pins.some((other) => other !== pin && apart(pin.at, other.at) < 2 * radius)
	).length;
}

/** The page turned the way that shows the part larger. */
function placeOnPage(
	plan: PlanPage,
	paper: PaperName,
	edges: PageEdges,
	part: Box
): { readonly orientation: Orientation; readonly frame: Box } {
	const { widthMm, heightMm, scale } = PAPERS[paper];
	const [short, long] = [widthMm / scale, heightMm / scale];
	const shape = { width: plan.widthPx * part.width, height: plan.heightPx * part.height };
	const placed = (['landscape', 'portrait'] as const).map((orientation) => {
		const { top, bottom } = edges[orientation];
		const [across, down] = orientation === 'portrait' ? [short, long] : [long, short];
		const room = { width: across - 2 * MARGIN, height: down - top - bottom };
		const times = Math.min(room.width / shape.width, room.height / shape.height);
		const [width, height] = [shape.width * times, shape.height * times];
		const frame = { x: MARGIN + (room.width - width) / 2, y: top, width, height };
		return { orientation, frame, times };
	});
	const [wide, high] = placed;
	if (!wide || !high) throw new RangeError('no way to turn the page');
	return high.times > wide.times ? high : wide;
}

function pictureSize(widthMm: number, heightMm: number): PlanSheet['picture'] {
	const dots = Math.min(DOTS_PER_MM, Math.sqrt(MOST_PIXELS / (widthMm * heightMm)));
	return {
		widthPx: Math.max(1, Math.floor(widthMm * dots)),
		heightPx: Math.max(1, Math.floor(heightMm * dots))
	};
}
