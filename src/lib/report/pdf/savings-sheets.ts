import { savingsReport } from '../../words/savings-report.ts';
import type { SavingsModel } from '../savings-model.ts';
import { drawPageNumber } from './furniture.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

export const RUNNING: TextStyle = { size: 8.5 };
export const HEADING: TextStyle = { size: 13, bold: true };
export const TEXT: TextStyle = { size: 9.5 };
export const BOLD: TextStyle = { size: 9.5, bold: true };
const TOP = 15;
const BOTTOM = 12;

/** Where the next thing goes, and a new page when it does not fit. */
export class Pages {
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

	/** A heading that stays with what follows it, and is listed at the side. */
	heading(title: string, keep: number): void {
		this.room(keep);
		this.bookmark(title);
		this.write(title, HEADING, 1);
	}

	/** Points of a list, or a sentence that there are none. */
	list(texts: readonly string[], none: string): void {
		for (const text of texts) this.write(`• ${text}`, TEXT, 0.6);
		if (texts.length === 0) this.write(none, TEXT);
		this.down += 4;
	}

	/** Rows of columns; the first is as wide as the rest leave it, the rest stand at the right. */
	table(head: readonly string[], rows: readonly (readonly string[])[], width: number): void {
		this.#row(head, width, BOLD);
		for (const row of rows) this.#row(row, width, TEXT);
		this.down += 2;
	}

	#row([first = '', ...rest]: readonly string[], width: number, style: TextStyle): void {
		const { sheet } = this;
		const lines = sheet.lines(first, style, sheet.contentWidth - rest.length * width - 2);
		const height = Math.max(1, lines.length) * sheet.lineHeight(style) + 1.2;
		this.room(height);
		sheet.write(lines, MARGIN, this.down, style);
		for (const [index, text] of rest.entries()) {
			const x = sheet.width - MARGIN - (rest.length - 1 - index) * width;
			sheet.write(text, x, this.down, { ...style, align: 'right' });
		}
		this.down += height;
		sheet.rule(MARGIN, this.down - 0.5, sheet.width - MARGIN, this.down - 0.5, 0.15);
	}

	number(): void {
		for (let page = 1; page <= this.#count; page++) {
			this.sheet.doc.setPage(page);
			drawPageNumber(
				this.sheet,
				savingsReport.page(String(page), String(this.#count)),
				this.sheet.width
			);
		}
	}
}
