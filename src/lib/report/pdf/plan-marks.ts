import type { PlanArea, PlanFlow, PlanMark } from '../../core/survey/plan-shapes.ts';
import { fixList as words } from '../../words/fix-list.ts';
import type { Point } from '../pin-places.ts';
import type { Box, Sheet, TextStyle } from './sheet.ts';

type Place = (at: Point) => Point;

const LABEL: TextStyle = { size: 7.5 };
const VALVE_LABEL: TextStyle = { size: 8, bold: true };
const SCALE: TextStyle = { size: 9 };
const SECTION = { thickness: 0.7, dash: [4, 1, 0.8, 1] } as const;
const WALKED = { thickness: 0.4, dash: [0.4, 1.1] } as const;
/** How long the head of an arrow is, mm at scale 1. */
const FLOW_HEAD = 3.2;
/** How wide a valve is drawn, mm at scale 1. */
export const VALVE_WIDTH = 5.2;

/** Outlines told apart by their strokes, each on a white edge, with their names in the middle. */
export function drawShapes(
	sheet: Sheet,
	{ areas }: { readonly areas: readonly PlanArea[] },
	place: Place
): void {
	for (const { kind, outline, name } of areas) {
		const points = outline.map(place);
		const { thickness, dash } = kind === 'section' ? SECTION : WALKED;
		sheet.outline(points, thickness, dash);
		if (name === undefined) continue;
		const { x, y } = middleOf(points);
		drawLabel(sheet, name, x - sheet.textWidth(name, LABEL) / 2, y, LABEL);
	}
}

/** The isolating valves, each a bow tie with its name beside it. */
export function drawValves(
	sheet: Sheet,
	valves: readonly PlanMark[],
	place: Place,
	within?: Box
): void {
	const [half, high] = [VALVE_WIDTH / 2, 1.7];
	for (const { at, text } of valves) {
		const { x, y } = place(at);
		if (within && !isWithin({ x, y }, within)) continue;
		const back = { x: x - half - 0.6, y: y - high - 0.6 };
		sheet.rect(
			{ ...back, width: VALVE_WIDTH + 1.2, height: 2 * high + 1.2 },
			{ mode: 'F', white: true }
		);
		for (const side of [-half, half])
			sheet.triangle(
				[
					[x, y],
					[x + side, y - high],
					[x + side, y + high]
				],
				{ mode: 'S', thickness: 0.5 }
			);
		if (text === '') continue;
		const width = sheet.textWidth(text, VALVE_LABEL);
		const right = x + half + 1.4;
		const fits = !within || right + width + 1 <= within.x + within.width;
		drawLabel(sheet, text, fits ? right : x - half - 1.4 - width, y, VALVE_LABEL);
	}
}

/** The ways of the air into the sections: arrows on a white edge. */
export function drawFlows(sheet: Sheet, flows: readonly PlanFlow[], place: Place): void {
	for (const { from, to } of flows) {
		const [start, end] = [place(from), place(to)];
		const length = Math.hypot(end.x - start.x, end.y - start.y);
		if (length === 0) continue;
		const [ux, uy] = [(end.x - start.x) / length, (end.y - start.y) / length];
		const at = (back: number, aside: number): [number, number] => [
			end.x - back * ux - aside * uy,
			end.y - back * uy + aside * ux
		];
		const head = (grown: number): [number, number][] => [
			at(-grown, 0),
			at(FLOW_HEAD + grown, FLOW_HEAD / 2 + grown),
			at(FLOW_HEAD + grown, -FLOW_HEAD / 2 - grown)
		];
		sheet.rule(start.x, start.y, ...at(FLOW_HEAD / 2, 0), 1.6, 255);
		sheet.triangle(head(0.5), { mode: 'F', white: true });
		sheet.rule(start.x, start.y, ...at(FLOW_HEAD / 2, 0), 0.8);
		sheet.triangle(head(0), { mode: 'F' });
	}
}

/** A bar of a round number of metres, and what that is. */
export function drawScaleBar(
	sheet: Sheet,
	x: number,
	y: number,
	frameWidth: number,
	frameMetres: number
): void {
	const metres = roundBelow(frameMetres / 4);
	const length = (metres / frameMetres) * frameWidth;
	sheet.rect({ x, y: y + 1.2, width: length, height: 1.8 }, { mode: 'S', thickness: 0.3 });
	sheet.rect({ x, y: y + 1.2, width: length / 2, height: 1.8 }, { mode: 'F' });
	sheet.write(`${String(metres)} m`, x + length + 2, y, SCALE);
}

/** The largest of 1, 2, 5, 10, 20, 50 … (and 0.5, 0.2 …) that is no more than a value. */
export function roundBelow(value: number): number {
	const power = Math.floor(Math.log10(value));
	const step = [5, 2, 1].find((each) => each <= value / 10 ** power) ?? 1;
	return power < 0 ? step / 10 ** -power : step * 10 ** power;
}

/** An arrow to north with its letter. */
export function drawNorth(sheet: Sheet, x: number, y: number, degrees: number): void {
	const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
	const turned = (across: number, up: number): [number, number] => [
		x + across * cos + up * sin,
		y + across * sin - up * cos
	];
	sheet.triangle([turned(0, 3), turned(-1.4, -2.4), turned(0, -1.4)], { mode: 'F' });
	sheet.triangle([turned(0, 3), turned(1.4, -2.4), turned(0, -1.4)], {
		mode: 'S',
		thickness: 0.25
	});
	sheet.write(words.north, x - 4.5, y - 2.2, { ...SCALE, bold: true, align: 'right' });
}

/** Text on white, so that it reads over the lines of a plan. */
function drawLabel(sheet: Sheet, text: string, x: number, y: number, style: TextStyle): void {
	const [width, height] = [sheet.textWidth(text, style), sheet.lineHeight(style)];
	const top = y - height / 2;
	sheet.rect({ x: x - 0.6, y: top, width: width + 1.2, height }, { mode: 'F', white: true });
	sheet.write(text, x, top + 0.1, style);
}

function isWithin({ x, y }: Point, box: Box): boolean {
	return x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;
}

function middleOf(points: readonly Point[]): Point {
	const between = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
	return { x: between(points.map(({ x }) => x)), y: between(points.map(({ y }) => y)) };
}
