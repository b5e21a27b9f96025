import type { PlanPage } from '../model.ts';
import { drawPin } from './marks.ts';
import { spreadPins } from './pin-places.ts';
import { MARGIN, type Box, type Sheet, type TextStyle } from './sheet.ts';

/** A plan's picture, decoded or ready to embed: JPEG is quickest, and smallest to print. */
export interface PlanImage {
	readonly bytes: Uint8Array;
	readonly kind: 'JPEG' | 'PNG';
}

const NAME: TextStyle = { size: 16, bold: true };
const KEY: TextStyle = { size: 10 };
const MANY = 60;

/** A plan fills a page, with a numbered pin for each job on it. */
export function drawPlanPage(
	sheet: Sheet,
	plan: PlanPage,
	image: PlanImage | undefined,
	top: number,
	bottom: number
): void {
	let down = top;
	down +=
		sheet.write(sheet.lines(plan.name, NAME, sheet.contentWidth, 1), MARGIN, down, NAME) + 0.5;
	down += drawKey(sheet, down) + 2;
	const frame = fitted(plan, {
		x: MARGIN,
		y: down,
		width: sheet.contentWidth,
		height: bottom - down
	});
	if (image) sheet.image(image.bytes, image.kind, frame, plan.sha256);
	else sheet.write('The picture of this plan is not in the survey.', frame.x + 4, frame.y + 4, KEY);
	sheet.rect(frame, { mode: 'S', thickness: 0.3 });
	drawPins(sheet, plan, frame);
}

function drawPins(sheet: Sheet, plan: PlanPage, frame: Box): void {
	const radius = plan.pins.length > MANY ? 2.7 : 3.5;
	const true_ = plan.pins.map(({ x, y }) => ({
		x: frame.x + x * frame.width,
		y: frame.y + y * frame.height
	}));
	const placed = spreadPins(true_, radius, frame);
	plan.pins.forEach((_, index) => {
		const [from, to] = [true_[index], placed[index]];
		if (!from || !to || Math.hypot(to.x - from.x, to.y - from.y) < radius * 0.5) return;
		sheet.rule(from.x, from.y, to.x, to.y, 0.4);
		sheet.circle(from.x, from.y, 0.8, { mode: 'F' });
	});
	plan.pins.forEach(({ tag, shape }, index) => {
		const at = placed[index];
		if (at) drawPin(sheet, tag, shape, at.x, at.y, radius);
	});
}

function drawKey(sheet: Sheet, y: number): number {
	let x = MARGIN;
	for (const [shape, text] of [
		['open', 'to do'],
		['first', 'do this first'],
		['done', 'done']
	] as const) {
		drawPin(sheet, '', shape, x + 2, y + 2.6, 2);
		x += 5.5;
		sheet.write(text, x, y + 0.4, KEY);
		x += sheet.textWidth(text, KEY) + 7;
	}
	sheet.write('The number is the tag on the joint.', x, y + 0.4, KEY);
	return sheet.lineHeight(KEY);
}

/** The largest box of the plan's shape that fits the room, centred across it. */
function fitted(plan: PlanPage, room: Box): Box {
	const scale = Math.min(room.width / plan.widthPx, room.height / plan.heightPx);
	const [width, height] = [plan.widthPx * scale, plan.heightPx * scale];
	return { x: room.x + (room.width - width) / 2, y: room.y, width, height };
}
