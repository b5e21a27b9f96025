import { fixList as words } from '../../words/fix-list.ts';
import type { ReportParts } from '../model.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

const HEADING: TextStyle = { size: 13, bold: true };
const NOTE: TextStyle = { size: 8.5 };
const CELL: TextStyle = { size: 10.5 };
const SUM: TextStyle = { size: 10.5, bold: true };
const GAP = 4;

/** Windows of the plan with their jobs and parts, and the sum against the budget. Returns where it ends. */
export function drawPlanParts(
	sheet: Sheet,
	{ rows, sum }: ReportParts,
	y: number,
	bottom: number,
	startPage: () => number
): number {
	const right = sheet.width - MARGIN;
	const jobsX = MARGIN + sheet.contentWidth * 0.72;
	const inner = sheet.contentWidth * 0.68;
	const cells = rows.map((row) => ({ ...row, lines: sheet.lines(row.window, CELL, inner, 2) }));
	const heightOf = ({ lines }: { readonly lines: readonly string[] }) =>
		lines.length * sheet.lineHeight(CELL) + 1.6;
	const sumLines = sheet.lines(sum, SUM, sheet.contentWidth);
	const sumHeight = sumLines.length * sheet.lineHeight(SUM);
	const head = (at: number): number => {
		let down = at + sheet.write(words.partsTitle, MARGIN, at, HEADING) + 1;
		sheet.write(words.columns.window, MARGIN, down, NOTE);
		sheet.write(words.columns.jobs, jobsX, down, { ...NOTE, align: 'right' });
		sheet.write(words.columns.parts, right, down, { ...NOTE, align: 'right' });
		down += 4.2;
		sheet.rule(MARGIN, down, right, down, 0.4);
		return down + 1.2;
	};
	const opening = sheet.lineHeight(HEADING) + 6.4;
	const whole = opening + cells.reduce((high, cell) => high + heightOf(cell), 0) + sumHeight;
	// Kept together where a page has room for it.
	let down = head(y + Math.min(whole, bottom / 2) > bottom ? startPage() : y);
	for (const cell of cells) {
		if (down + heightOf(cell) + sumHeight > bottom) down = head(startPage());
		sheet.write(cell.lines, MARGIN, down, CELL);
		sheet.write(cell.jobs, jobsX, down, { ...CELL, align: 'right' });
		sheet.write(cell.parts, right, down, { ...CELL, align: 'right' });
		down += heightOf(cell);
		sheet.rule(MARGIN, down - 0.8, right, down - 0.8, 0.15);
	}
	return down + sheet.write(sumLines, MARGIN, down, SUM) + GAP;
}
