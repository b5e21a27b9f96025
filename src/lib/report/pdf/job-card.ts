import { STATE_WORDS } from '../../words/actions.ts';
import type { JobRow } from '../model.ts';
import { cautionsHeight, drawCautions, drawPin, drawTicks } from './marks.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

const PLACE: TextStyle = { size: 13, bold: true };
const WORK: TextStyle = { size: 11.5 };
const FLAG: TextStyle = { size: 10, bold: true };
const SMALL: TextStyle = { size: 9 };
const MONEY: TextStyle = { size: 13, bold: true, align: 'right' };
const MONEY_SMALL: TextStyle = { size: 9, align: 'right' };
const PAD = 3;
const PIN_COLUMN = 19;
const MONEY_COLUMN = 42;
const TICK_SIDE = 6.5;
/** A note is quoted; the whole of it stays in the survey. Cautions are never cut. */
const NOTE_LINES = 3;

interface Line {
	readonly text: readonly string[];
	readonly style: TextStyle;
}

/** How high the job's card is; it is drawn on a page that has that much room, never on two. */
export function jobCardHeight(sheet: Sheet, row: JobRow): number {
	return (
		PAD +
		Math.max(15, heightOf(sheet, middle(sheet, row)), heightOf(sheet, money(sheet, row))) +
		4 +
		cautionsHeight(sheet, row.cautions, sheet.contentWidth - 2 * PAD) +
		2 +
		TICK_SIDE +
		PAD
	);
}

/** One job: what and where, what waiting costs, its cautions, boxes and room for initials. */
export function drawJobCard(sheet: Sheet, row: JobRow, y: number): void {
	const height = jobCardHeight(sheet, row);
	const right = sheet.width - MARGIN;
	const thickness = row.shape === 'first' ? 1.2 : 0.4;
	sheet.rect({ x: MARGIN, y, width: right - MARGIN, height }, { mode: 'S', thickness });
	drawPin(sheet, row.tag, row.shape, MARGIN + PAD + 7, y + PAD + 7, 7);
	const texts = middle(sheet, row);
	const sums = money(sheet, row);
	writeAll(sheet, texts, MARGIN + PIN_COLUMN, y + PAD);
	writeAll(sheet, sums, right - PAD, y + PAD);
	let down = y + PAD + Math.max(15, heightOf(sheet, texts), heightOf(sheet, sums)) + 1.6;
	sheet.rule(MARGIN + PAD, down, right - PAD, down, 0.2);
	down += 2.4;
	down += drawCautions(sheet, row.cautions, MARGIN + PAD, down, sheet.contentWidth - 2 * PAD) + 2;
	const next = drawTicks(sheet, row.ticks, MARGIN + PAD, down, TICK_SIDE, 4.2);
	sheet.write('Initials', next, down + TICK_SIDE - 4.6, SMALL);
	const line = next + sheet.textWidth('Initials', SMALL) + 1.5;
	sheet.rule(line, down + TICK_SIDE, right - PAD, down + TICK_SIDE, 0.3);
}

function middle(sheet: Sheet, row: JobRow): Line[] {
	const width = sheet.contentWidth - PIN_COLUMN - MONEY_COLUMN - PAD;
	const line = (text: string, style: TextStyle, most?: number): Line[] =>
		text === '' ? [] : [{ text: sheet.lines(text, style, width, most), style }];
	const state = row.state === STATE_WORDS.leaking ? '' : row.state;
	const risks = row.hazards.join(' · ');
	const quoted = [row.couldNot && `Could not: ${row.couldNot}`, row.note && `Note: ${row.note}`];
	return [
		...(row.flag ? line(row.flag.toUpperCase(), FLAG) : []),
		...line(row.place === '' ? 'Place not given' : row.place, PLACE),
		...line(`${row.part} — ${row.action}`, WORK),
		...line(risks === '' ? '' : `Mind: ${risks}`, FLAG),
		...line(
			[state, row.plan === '' ? 'Not on a plan' : row.plan].filter(Boolean).join(' · '),
			SMALL
		),
		...quoted.flatMap((text) => line(text ?? '', SMALL, NOTE_LINES))
	];
}

function money(sheet: Sheet, row: JobRow): Line[] {
	if (row.costPerYear === '') {
		const text = row.why ? `Not weighed. ${row.why}` : 'No cost worked out.';
		return [{ text: sheet.lines(text, MONEY_SMALL, MONEY_COLUMN), style: MONEY_SMALL }];
	}
	return [
		{ text: sheet.lines(row.costPerYear, MONEY, MONEY_COLUMN), style: MONEY },
		{ text: ['a year'], style: MONEY_SMALL },
		{
			text: sheet.lines(`waiting: ${row.costOfWaiting} a day`, MONEY_SMALL, MONEY_COLUMN),
			style: MONEY_SMALL
		}
	];
}

function heightOf(sheet: Sheet, lines: readonly Line[]): number {
	return lines.reduce((sum, { text, style }) => sum + text.length * sheet.lineHeight(style), 0);
}

function writeAll(sheet: Sheet, lines: readonly Line[], x: number, y: number): void {
	let down = y;
	for (const { text, style } of lines) down += sheet.write(text, x, down, style);
}
