import { fixList } from '../../words/fix-list.ts';
import type { Tick } from '../model.ts';
import type { Sheet, TextStyle } from './sheet.ts';

const LABEL: TextStyle = { size: 10 };
const INITIALS: TextStyle = { size: 9 };
/** The least room for initials to be written in. */
const LEAST_LINE = 8;
const ROW_GAP = 2;

/** How boxes to tick are set; mm at scale 1. */
export interface TickStyle {
	/** What boxes and initials have together. */
	readonly width: number;
	readonly side: number;
	readonly gap: number;
}

/** In as many rows as the words need, with room for initials after the last box. */
function rowsOf(sheet: Sheet, ticks: readonly Tick[], style: TickStyle): Tick[][] {
	const rows: Tick[][] = [[]];
	let used = 0;
	const take = (width: number) => {
		if (used > 0 && used + width > style.width) {
			rows.push([]);
			used = 0;
		}
		used += width;
	};
	for (const tick of ticks) {
		take(widthOf(sheet, tick, style));
		rows.at(-1)?.push(tick);
	}
	take(sheet.textWidth(fixList.initials, INITIALS) + 1.5 + LEAST_LINE);
	return rows;
}

function widthOf(sheet: Sheet, { label }: Tick, { side, gap }: TickStyle): number {
	return side + 1.6 + sheet.textWidth(label, LABEL) + gap;
}

export function ticksHeight(sheet: Sheet, ticks: readonly Tick[], style: TickStyle): number {
	const count = rowsOf(sheet, ticks, style).length;
	return count * style.side + (count - 1) * ROW_GAP;
}

/** Boxes to tick by hand, and a line for the initials of whoever ticks them. */
export function drawTicks(
	sheet: Sheet,
	ticks: readonly Tick[],
	x: number,
	y: number,
	style: TickStyle
): void {
	const { side, width } = style;
	let [right, down] = [x, y];
	rowsOf(sheet, ticks, style).forEach((row, index) => {
		[right, down] = [x, y + index * (side + ROW_GAP)];
		for (const tick of row) {
			drawBox(sheet, tick, right, down, side);
			right += widthOf(sheet, tick, style);
		}
	});
	sheet.write(fixList.initials, right, down + side - 4.6, INITIALS);
	const line = right + sheet.textWidth(fixList.initials, INITIALS) + 1.5;
	sheet.rule(line, down + side, x + width, down + side, 0.3);
}

function drawBox(sheet: Sheet, { label, ticked }: Tick, x: number, y: number, side: number): void {
	sheet.rect({ x, y, width: side, height: side }, { mode: 'S', thickness: 0.45 });
	if (ticked) {
		sheet.rule(x + side * 0.2, y + side * 0.55, x + side * 0.42, y + side * 0.8, 0.8);
		sheet.rule(x + side * 0.42, y + side * 0.8, x + side * 0.85, y + side * 0.18, 0.8);
	}
	sheet.write(label, x + side + 1.6, y + side / 2 - sheet.lineHeight(LABEL) * 0.48, LABEL);
}
