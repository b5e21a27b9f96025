import { savingsReport } from '../../words/savings-report.ts';
import type { BridgeLine, SavingsModel } from '../savings-model.ts';
import { BOLD, HEADING, RUNNING, TEXT, type Pages } from './savings-sheets.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

const SITE: TextStyle = { size: 22, bold: true };
const UNDER: TextStyle = { size: 11.5 };
const LEAD: TextStyle = { size: 13, bold: true };
const LABEL: TextStyle = { size: 9.5, bold: true };
const FIGURE: TextStyle = { size: 17, bold: true };

/** For the manager: strengths, bridge, what it comes to, and how firmly it stands. */
export function firstPage(pages: Pages, model: SavingsModel): void {
	const words = savingsReport;
	pages.write(model.site, SITE);
	pages.write(words.roundsPrinted(model.rounds, model.printedOn), UNDER, 3);
	pages.write(model.headline, LEAD, 4);
	pages.write(words.strengthsLead, HEADING, 1.5);
	drawBoxes(
		pages,
		model.strengths.map(({ name, value, interval, note }) => ({
			label: name,
			value,
			notes: [interval === '' ? '' : words.within(interval), note].filter((text) => text !== '')
		}))
	);
	if (model.agreement) pages.write(words.agreement(model.agreement), TEXT, 1);
	pages.down += 3;
	pages.write(words.bridge, HEADING, 2);
	for (const bar of model.bridge) drawBar(pages, bar);
	if (model.mendedNote) pages.write(model.mendedNote, TEXT);
	pages.down += 3;
	pages.write(words.lessTitle, HEADING, 1.5);
	drawBoxes(
		pages,
		model.figures.map(({ label, value, note }) => ({
			label,
			value,
			notes: note === undefined ? [] : [words.within(note)]
		}))
	);
	pages.write(model.payback, TEXT, 3);
	pages.write(words.otherwiseTitle, HEADING, 1);
	pages.table(
		[words.if, words.lessAYear, words.againstThis],
		model.otherwise.map(({ what, value, change }) => [what, value, change]),
		38
	);
}

interface FigureBox {
	readonly label: string;
	readonly value: string;
	readonly notes: readonly string[];
}

function drawBoxes(pages: Pages, boxes: readonly FigureBox[]): void {
	const { sheet } = pages;
	const each = sheet.contentWidth / boxes.length;
	const inner = each - 5;
	const laid = boxes.map(({ label, value, notes }) => ({
		label,
		value,
		name: fitted(sheet, label, LABEL, inner),
		style: fitted(sheet, value, FIGURE, inner),
		notes: notes.flatMap((note) => sheet.lines(note, RUNNING, inner))
	}));
	const most = Math.max(...laid.map(({ notes }) => notes.length));
	const height =
		6 + sheet.lineHeight(LABEL) + sheet.lineHeight(FIGURE) + most * sheet.lineHeight(RUNNING);
	pages.room(height);
	for (const [index, { label, value, name, style, notes }] of laid.entries()) {
		const x = MARGIN + index * each;
		sheet.rect({ x, y: pages.down, width: each, height }, { mode: 'S', thickness: 0.5 });
		let down = pages.down + 2.5;
		down += sheet.write(label, x + 2.5, down, name);
		down += sheet.lineHeight(FIGURE) - sheet.lineHeight(style);
		down += sheet.write(value, x + 2.5, down, style);
		sheet.write(notes, x + 2.5, down, RUNNING);
	}
	pages.down += height + 2;
}

/** The style, as much smaller as the text needs to stay on one line. */
function fitted(sheet: Sheet, text: string, style: TextStyle, width: number): TextStyle {
	return { ...style, size: style.size * Math.min(1, width / sheet.textWidth(text, style)) };
}

const BAR = 6;
const NAME_WIDTH = 26;
const SUM_WIDTH = 30;

/** A solid bar is a sum, a white one takes away, a striped one adds. */
function drawBar(pages: Pages, { label, value, from, to, kind }: BridgeLine): void {
	const { sheet } = pages;
	pages.room(BAR + 3);
	const left = MARGIN + NAME_WIDTH;
	const room = sheet.contentWidth - NAME_WIDTH - SUM_WIDTH;
	const y = pages.down;
	const box = {
		x: left + Math.min(from, to) * room,
		y,
		width: Math.max(0.5, Math.abs(to - from) * room),
		height: BAR
	};
	const text = y + BAR / 2 - sheet.lineHeight(BOLD) * 0.48;
	sheet.write(label, MARGIN, text, BOLD);
	sheet.write(value, sheet.width - MARGIN, text, { ...BOLD, align: 'right' });
	sheet.rect(box, kind === 'whole' ? { mode: 'F' } : { mode: 'S', thickness: 0.5 });
	if (kind === 'more')
		for (let x = box.x + 1.4; x < box.x + box.width; x += 1.4) sheet.rule(x, y, x, y + BAR, 0.25);
	pages.down += BAR + 3;
}
