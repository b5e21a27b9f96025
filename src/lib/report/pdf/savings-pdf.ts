import type { BridgeLine, EvidenceGroup, EvidenceLine, SavingsModel } from '../savings-model.ts';
import { drawPageNumber } from './furniture.ts';
import { MARGIN, Sheet, type PaperName, type PdfFonts, type TextStyle } from './sheet.ts';

const RUNNING: TextStyle = { size: 8.5 };
const SITE: TextStyle = { size: 22, bold: true };
const UNDER: TextStyle = { size: 11.5 };
const LEAD: TextStyle = { size: 13, bold: true };
const HEADING: TextStyle = { size: 13, bold: true };
const LABEL: TextStyle = { size: 9.5, bold: true };
const FIGURE: TextStyle = { size: 17, bold: true };
const TEXT: TextStyle = { size: 9.5 };
const BOLD: TextStyle = { size: 9.5, bold: true };
const TOP = 15;
const BOTTOM = 12;

/**
 * Prints the savings report: one page for the manager with what would change the
 * answer, then the evidence leak by leak, what was not reached and what was assumed.
 */
export function buildSavingsPdf(
	model: SavingsModel,
	{ fonts, paper }: { readonly fonts: PdfFonts; readonly paper: PaperName }
): Uint8Array<ArrayBuffer> {
	const sheet = new Sheet(paper, fonts);
	sheet.doc.setProperties({ title: `${model.title} · ${model.site}`, creator: 'Airtally' });
	sheet.doc.setLanguage(model.language);
	sheet.doc.setCreationDate(new Date(model.printedAt));
	const pages = new Pages(sheet, model);

	firstPage(pages, model);
	pages.turn();
	pages.bookmark('Evidence by leak');
	for (const group of model.groups) drawGroup(pages, group);
	drawList(pages, 'Not reached', model.notReached, 'Every stop was reached.');
	drawList(
		pages,
		'Made the same',
		model.adjustments.map(({ what, size, reason }) => `${what}: ${size} a year (${reason}).`),
		'Nothing was adjusted.'
	);
	drawList(pages, 'What this rests on', model.assumptions, '');
	pages.number();
	return new Uint8Array(sheet.doc.output('arraybuffer'));
}

/** Where the next thing goes, and a new page when it does not fit. */
class Pages {
	readonly sheet: Sheet;
	readonly #model: SavingsModel;
	#count = 1;
	down = TOP;

	constructor(sheet: Sheet, model: SavingsModel) {
		this.sheet = sheet;
		this.#model = model;
		this.#head();
		this.bookmark(model.title);
	}

	#head(): void {
		const { title, site } = this.#model;
		const { sheet } = this;
		sheet.write(
			sheet.lines(`${title}  ·  ${site}`, RUNNING, sheet.contentWidth - 40, 1),
			MARGIN,
			7,
			RUNNING
		);
		this.down = TOP;
	}

	turn(): void {
		this.sheet.addPage('portrait');
		this.#count++;
		this.#head();
	}

	/** Turns the page unless so much fits. */
	room(height: number): void {
		if (this.down + height > this.sheet.height - BOTTOM) this.turn();
	}

	bookmark(title: string): void {
		const { doc } = this.sheet;
		doc.outline.add(null, title, { pageNumber: doc.getNumberOfPages() });
	}

	write(text: string, style: TextStyle, gap = 0): void {
		const { sheet } = this;
		const lines = sheet.lines(text, style, sheet.contentWidth);
		this.room(lines.length * sheet.lineHeight(style));
		this.down += sheet.write(lines, MARGIN, this.down, style) + gap;
	}

	number(): void {
		for (let page = 1; page <= this.#count; page++) {
			this.sheet.doc.setPage(page);
			drawPageNumber(
				this.sheet,
				`Page ${String(page)} of ${String(this.#count)}`,
				this.sheet.width
			);
		}
	}
}

function firstPage(pages: Pages, model: SavingsModel): void {
	pages.write(model.site, SITE);
	pages.write(`${model.rounds}  ·  printed ${model.printedOn}`, UNDER, 3);
	pages.write(model.headline, LEAD, 4);
	pages.write('Three strengths, never added up', HEADING, 1.5);
	drawBoxes(
		pages,
		model.strengths.map(({ name, value, interval, note }) => ({
			label: name,
			value,
			notes: [interval === '' ? '' : `90 %: ${interval}`, note].filter((text) => text !== '')
		}))
	);
	if (model.agreement) pages.write(`Proved beside measured: ${model.agreement}`, TEXT, 1);
	pages.down += 3;
	pages.write('From before to after, a year', HEADING, 2);
	for (const bar of model.bridge) drawBar(pages, bar);
	pages.down += 3;
	pages.write('Less than before, at the same conditions', HEADING, 1.5);
	drawBoxes(
		pages,
		model.figures.map(({ label, value, note }) => ({
			label,
			value,
			notes: note === undefined ? [] : [`90 %: ${note}`]
		}))
	);
	pages.down += 1;
	pages.write('What would change the answer', HEADING, 1);
	for (const text of model.wouldChange) pages.write(`• ${text}`, TEXT, 0.4);
}

interface FigureBox {
	readonly label: string;
	readonly value: string;
	readonly notes: readonly string[];
}

function drawBoxes(pages: Pages, boxes: readonly FigureBox[]): void {
	const { sheet } = pages;
	const each = sheet.contentWidth / boxes.length;
	const inner = each - 6;
	const laid = boxes.map(({ label, value, notes }) => ({
		label,
		value,
		style: { ...FIGURE, size: FIGURE.size * Math.min(1, inner / sheet.textWidth(value, FIGURE)) },
		notes: notes.flatMap((note) => sheet.lines(note, RUNNING, inner))
	}));
	const most = Math.max(...laid.map(({ notes }) => notes.length));
	const height =
		6 + sheet.lineHeight(LABEL) + sheet.lineHeight(FIGURE) + most * sheet.lineHeight(RUNNING);
	pages.room(height);
	for (const [index, { label, value, style, notes }] of laid.entries()) {
		const x = MARGIN + index * each;
		sheet.rect({ x, y: pages.down, width: each, height }, { mode: 'S', thickness: 0.5 });
		let down = pages.down + 2.5;
		down += sheet.write(label, x + 3, down, LABEL);
		down += sheet.lineHeight(FIGURE) - sheet.lineHeight(style);
		down += sheet.write(value, x + 3, down, style);
		sheet.write(notes, x + 3, down, RUNNING);
	}
	pages.down += height + 2;
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

function drawGroup(pages: Pages, group: EvidenceGroup): void {
	const { sheet } = pages;
	pages.room(26);
	pages.write(group.heading, HEADING);
	pages.write(`${group.sum}, a year`, TEXT, 1.5);
	for (const line of group.lines) drawEvidence(pages, line);
	sheet.rule(MARGIN, pages.down, sheet.width - MARGIN, pages.down, 0.2);
	pages.down += 4;
}

const TAG_WIDTH = 14;

function drawEvidence(
	pages: Pages,
	{ tag, what, where, before, after, evidence }: EvidenceLine
): void {
	const { sheet } = pages;
	const inner = sheet.contentWidth - TAG_WIDTH;
	const head = sheet.lines(`${what}${where === '' ? '' : `, ${where}`}`, BOLD, inner - 62);
	const told = sheet.lines(evidence.join(' · '), RUNNING, inner);
	const height =
		head.length * sheet.lineHeight(BOLD) + told.length * sheet.lineHeight(RUNNING) + 2.4;
	pages.room(height);
	const y = pages.down + 1;
	const x = MARGIN + TAG_WIDTH;
	sheet.rule(MARGIN, pages.down, sheet.width - MARGIN, pages.down, 0.2);
	sheet.write(tag, MARGIN, y, { ...LABEL, size: 12 });
	const under = y + sheet.write(head, x, y, BOLD);
	sheet.write(`${before} → ${after}`, sheet.width - MARGIN, y, { ...TEXT, align: 'right' });
	sheet.write(told, x, under, RUNNING);
	pages.down += height;
}

function drawList(pages: Pages, heading: string, texts: readonly string[], none: string): void {
	pages.room(20);
	pages.bookmark(heading);
	pages.write(heading, HEADING, 1);
	for (const text of texts) pages.write(`• ${text}`, TEXT, 0.6);
	if (texts.length === 0) pages.write(none, TEXT);
	pages.down += 4;
}
