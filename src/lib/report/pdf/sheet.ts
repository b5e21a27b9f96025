import { jsPDF } from 'jspdf';
import { MARGIN, PAPERS, type Box, type Paper, type PaperName } from '../paper.ts';
import { Lettering, type PdfFonts, type TextStyle } from './lettering.ts';

export { MARGIN, PAPERS, type Box, type PaperName } from '../paper.ts';
export type { PdfFonts, TextStyle } from './lettering.ts';

/**
 * A page being drawn, in millimetres at scale 1 from its upper left corner. Text is placed by the
 * upper edge of its line, so that blocks can be stacked.
 */
export class Sheet {
	readonly doc: jsPDF;
	readonly #paper: Paper;
	readonly #lettering: Lettering;
	#landscape = false;

	constructor(paper: PaperName, fonts: PdfFonts) {
		this.#paper = PAPERS[paper];
		const { widthMm, heightMm } = this.#paper;
		this.doc = new jsPDF({
			unit: 'mm',
			format: [widthMm, heightMm],
			compress: true,
			putOnlyUsedFonts: true
		});
		this.#lettering = new Lettering(this.doc, fonts);
	}

	get width(): number {
		const { widthMm, heightMm, scale } = this.#paper;
		return (this.#landscape ? heightMm : widthMm) / scale;
	}

	get height(): number {
		const { widthMm, heightMm, scale } = this.#paper;
		return (this.#landscape ? widthMm : heightMm) / scale;
	}

	/** Between the margins. */
	get contentWidth(): number {
		return this.width - 2 * MARGIN;
	}

	addPage(orientation: 'portrait' | 'landscape'): void {
		const { widthMm, heightMm } = this.#paper;
		this.#landscape = orientation === 'landscape';
		this.doc.addPage([widthMm, heightMm], orientation);
	}

	lineHeight(style: TextStyle): number {
		return this.#lettering.lineHeight(style);
	}

	textWidth(text: string, style: TextStyle): number {
		return this.#lettering.width(text, style);
	}

	/** Breaks a text into lines that fit, `most` of them at the most. */
	lines(text: string, style: TextStyle, width: number, most?: number): readonly string[] {
		return this.#lettering.lines(text, style, width, most);
	}

	/** Writes lines below each other and returns the height they took. */
	write(text: string | readonly string[], x: number, y: number, style: TextStyle): number {
		const { doc } = this;
		const lines = typeof text === 'string' ? [text] : text;
		this.#lettering.use(style);
		doc.setFontSize(style.size * this.#paper.scale);
		doc.setTextColor(style.white ? 255 : 0);
		lines.forEach((line, index) => {
			const shown = this.#lettering.printable(line, style);
			if (shown === '') return;
			const left =
				style.align === 'right'
					? x - this.textWidth(shown, style)
					: style.align === 'center'
						? x - this.textWidth(shown, style) / 2
						: x;
			const baseline = y + index * this.lineHeight(style) + this.#lettering.baseline(style);
			doc.text(shown, this.#mm(left), this.#mm(baseline));
		});
		return lines.length * this.lineHeight(style);
	}

	rule(x1: number, y1: number, x2: number, y2: number, thickness: number, grey = 0): void {
		this.doc.setDrawColor(grey);
		this.doc.setLineWidth(this.#mm(thickness));
		this.doc.line(this.#mm(x1), this.#mm(y1), this.#mm(x2), this.#mm(y2));
	}

	/** An outline where `thickness` is given, else a filled shape. */
	rect({ x, y, width, height }: Box, fill: Fill): void {
		this.#ink(fill);
		const [left, top, wide, high] = [x, y, width, height].map((value) => this.#mm(value));
		this.doc.rect(left ?? 0, top ?? 0, wide ?? 0, high ?? 0, fill.mode);
	}

	/** Black boxes as one shape, so that no seam shows between those that touch. */
	cells(boxes: readonly Box[]): void {
		this.#ink({ mode: 'F' });
		boxes.forEach(({ x, y, width, height }, index) => {
			const [left, top, wide, high] = [x, y, width, height].map((value) => this.#mm(value));
			const last = index === boxes.length - 1;
			this.doc.rect(left ?? 0, top ?? 0, wide ?? 0, high ?? 0, last ? 'F' : null);
		});
	}

	/** What is drawn meanwhile is seen within the box only. */
	clipped({ x, y, width, height }: Box, draw: () => void): void {
		const [left, top, wide, high] = [x, y, width, height].map((value) => this.#mm(value));
		this.doc.saveGraphicsState();
		this.doc.rect(left ?? 0, top ?? 0, wide ?? 0, high ?? 0, null);
		this.doc.clip();
		this.doc.discardPath();
		draw();
		this.doc.restoreGraphicsState();
	}

	/** A closed outline; `dash` gives the lengths of its strokes and gaps. */
	outline(
		points: readonly { readonly x: number; readonly y: number }[],
		thickness: number,
		dash: readonly number[] = []
	): void {
		const [first, ...rest] = points.map(({ x, y }) => ({ x: this.#mm(x), y: this.#mm(y) }));
		if (!first) return;
		this.#ink({ mode: 'S', thickness });
		this.doc.setLineDashPattern(
			dash.map((length) => this.#mm(length)),
			0
		);
		this.doc.moveTo(first.x, first.y);
		for (const { x, y } of rest) this.doc.lineTo(x, y);
		this.doc.close();
		this.doc.stroke();
		this.doc.setLineDashPattern([], 0);
	}

	circle(x: number, y: number, radius: number, fill: Fill): void {
		this.#ink(fill);
		this.doc.circle(this.#mm(x), this.#mm(y), this.#mm(radius), fill.mode);
	}

	triangle(points: readonly (readonly [number, number])[], fill: Fill): void {
		this.#ink(fill);
		const [[x1, y1] = [0, 0], [x2, y2] = [0, 0], [x3, y3] = [0, 0]] = points;
		const [a, b, c, d, e, f] = [x1, y1, x2, y2, x3, y3].map((value) => this.#mm(value));
		this.doc.triangle(a ?? 0, b ?? 0, c ?? 0, d ?? 0, e ?? 0, f ?? 0, fill.mode);
	}

	image(
		bytes: Uint8Array,
		kind: 'JPEG' | 'PNG',
		{ x, y, width, height }: Box,
		alias: string
	): void {
		this.doc.addImage(
			bytes,
			kind,
			this.#mm(x),
			this.#mm(y),
			this.#mm(width),
			this.#mm(height),
			alias,
			'FAST'
		);
	}

	#ink({ mode, thickness, white }: Fill): void {
		this.doc.setDrawColor(white && mode === 'S' ? 255 : 0);
		this.doc.setFillColor(white ? '#ffffff' : '#000000');
		if (thickness !== undefined) this.doc.setLineWidth(this.#mm(thickness));
	}

	#mm(value: number): number {
		return value * this.#paper.scale;
	}
}

/** `S` outlines, `F` fills, `FD` does both. */
export interface Fill {
	readonly mode: 'S' | 'F' | 'FD';
	readonly thickness?: number;
	readonly white?: boolean;
}
