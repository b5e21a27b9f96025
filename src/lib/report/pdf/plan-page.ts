import type { PlanPoint } from '../../core/survey/schema.ts';
import { fixList as words } from '../../words/fix-list.ts';
import type { PlanPage, PinShape } from '../model.ts';
import type { PlanLayout, PlanSheet } from '../plan-sheets.ts';
import { onSheet } from '../plan-sheets.ts';
import { drawPin } from './marks.ts';
import {
	drawFlows,
	drawNorth,
	drawScaleBar,
	drawShapes,
	drawValves,
	VALVE_WIDTH
} from './plan-marks.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

/** A plan's picture, decoded or ready to embed: JPEG is quickest, and smallest to print. */
export interface PlanImage {
	readonly bytes: Uint8Array;
	readonly kind: 'JPEG' | 'PNG';
}

export interface PlanPagesToDraw {
	readonly plan: PlanPage;
	readonly layout: PlanLayout;
	/** By the key of the sheet that they are of. */
	readonly images: ReadonlyMap<string, PlanImage>;
	/** What its three shapes of pin say here. */
	readonly key: readonly (readonly [PinShape, string])[];
	/** Opens a page and returns where its own matter starts. */
	readonly startPage: (orientation: PlanSheet['orientation'], bookmark: string) => number;
}

const NAME: TextStyle = { size: 16, bold: true };
const KEY: TextStyle = { size: 9.5 };
const SHEET_NAME: TextStyle = { size: 20, bold: true, align: 'center' };

/** The pages of a plan: one, or a page that shows the sheets and then those. */
export function drawPlanPages(sheet: Sheet, pages: PlanPagesToDraw): void {
	const { plan, layout } = pages;
	const { overview } = layout;
	if (overview) {
		beginPage(sheet, pages, overview, words.planSheets(plan.name));
		drawSheetNames(sheet, plan, layout, overview);
	}
	for (const each of layout.sheets) {
		const title = each.name === '' ? plan.name : words.planSheet(plan.name, each.name);
		beginPage(sheet, pages, each, title);
		drawNumbers(sheet, each);
	}
}

/** The plan and what is drawn on it, under its name and key and over its scale. */
function beginPage(
	sheet: Sheet,
	{ plan, images, key, startPage }: PlanPagesToDraw,
	each: PlanSheet,
	title: string
): void {
	const top = startPage(each.orientation, words.plan(title));
	const head = sheet.lines(title, NAME, sheet.contentWidth, 1);
	drawKey(sheet, plan, key, top + sheet.write(head, MARGIN, top, NAME) + 0.5);
	const { frame, part } = each;
	const image = images.get(each.key);
	if (image) sheet.image(image.bytes, image.kind, frame, each.key);
	else sheet.write(words.noPicture, frame.x + 4, frame.y + 4, KEY);
	sheet.clipped(frame, () => {
		const place = (at: PlanPoint) => onSheet(at, part, frame);
		drawShapes(sheet, plan, place);
		drawFlows(sheet, plan.flows, place);
	});
	sheet.rect(frame, { mode: 'S', thickness: 0.3 });
	drawValves(sheet, plan.valves, (at) => onSheet(at, part, frame), frame);
	const under = frame.y + frame.height + 2;
	if (plan.northDegrees !== undefined)
		drawNorth(sheet, frame.x + frame.width - 4, under + 2.6, plan.northDegrees);
	if (plan.widthM === undefined) {
		// One after the other: side by side they run into each other in the longer language.
		sheet.write(`${words.noScale} ${words.tagsOnPlan}`, frame.x, under, KEY);
		return;
	}
	drawScaleBar(sheet, frame.x, under, frame.width, plan.widthM * part.width);
	sheet.write(words.tagsOnPlan, frame.x + frame.width / 2, under, { ...KEY, align: 'center' });
}

/** Pins that had to move are joined to the spot of the leak. */
function drawNumbers(sheet: Sheet, { pins, radius }: PlanSheet): void {
	for (const { spot, at } of pins) {
		if (Math.hypot(at.x - spot.x, at.y - spot.y) < 0.05) continue;
		sheet.rule(spot.x, spot.y, at.x, at.y, 0.4);
		sheet.circle(spot.x, spot.y, 0.8, { mode: 'F' });
	}
	for (const { tag, shape, at } of pins) drawPin(sheet, tag, shape, at.x, at.y, radius);
}

function drawSheetNames(
	sheet: Sheet,
	plan: PlanPage,
	{ sheets }: PlanLayout,
	{ part, frame }: PlanSheet
): void {
	for (const pin of plan.pins) {
		const { x, y } = onSheet(pin, part, frame);
		sheet.circle(x, y, 1.1, { mode: 'F', white: true });
		sheet.circle(x, y, 0.8, { mode: 'F' });
	}
	const named = new Map<string, PlanSheet[]>();
	for (const each of sheets) named.set(each.key, [...(named.get(each.key) ?? []), each]);
	for (const [first, ...others] of named.values()) {
		if (!first) continue;
		const { x, y } = onSheet(first.cell, part, frame);
		const width = first.cell.width * frame.width;
		const height = first.cell.height * frame.height;
		sheet.rect({ x, y, width, height }, { mode: 'S', thickness: 0.7 });
		const name = others.length === 0 ? first.name : `${first.name} +${String(others.length)}`;
		const style = { ...SHEET_NAME, size: Math.min(SHEET_NAME.size, height * 1.6) };
		const [wide, high] = [sheet.textWidth(name, style) + 4, sheet.lineHeight(style) + 1];
		const box = {
			x: x + (width - wide) / 2,
			y: y + (height - high) / 2,
			width: wide,
			height: high
		};
		sheet.rect(box, { mode: 'FD', white: true, thickness: 0.5 });
		sheet.write(name, x + width / 2, box.y + 0.5, style);
	}
}

function drawKey(sheet: Sheet, plan: PlanPage, key: PlanPagesToDraw['key'], y: number): void {
	let x = MARGIN;
	const say = (text: string, width: number) => {
		sheet.write(text, x + width, y + 0.3, KEY);
		x += width + sheet.textWidth(text, KEY) + 5;
	};
	for (const [shape, text] of key) {
		drawPin(sheet, '', shape, x + 2, y + 2.4, 1.8);
		say(text, 5.2);
	}
	if (plan.valves.length > 0) {
		drawValves(sheet, [{ id: '', kind: 'valve', at: { x: 0, y: 0 }, text: '' }], () => ({
			x: x + VALVE_WIDTH / 2,
			y: y + 2.4
		}));
		say(words.isolatingValve, VALVE_WIDTH + 1.2);
	}
	if (plan.flows.length > 0) {
		drawFlows(
			sheet,
			[{ id: '', sectionId: '', from: { x: 0, y: 0 }, to: { x: 7, y: 0 } }],
			(at) => ({
				x: x + at.x,
				y: y + 2.4
			})
		);
		say(words.wayOfAir, 8.2);
	}
	const kinds = new Set(plan.areas.map(({ kind }) => kind));
	for (const [kind, text] of [
		['section', words.areas.section],
		['walked', words.areas.walked]
	] as const) {
		if (!kinds.has(kind)) continue;
		drawShapes(
			sheet,
			{
				areas: [
					{
						id: '',
						kind,
						outline: [
							{ x: 0, y: 0 },
							{ x: 6, y: 0 },
							{ x: 6, y: 3.4 },
							{ x: 0, y: 3.4 }
						]
					}
				]
			},
			(at) => ({ x: x + at.x, y: y + 0.8 + at.y })
		);
		say(text, 7.2);
	}
}
