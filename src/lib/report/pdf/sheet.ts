import { jsPDF } from 'jspdf';
import { MARGIN, PAPERS, type Box, type Paper, type PaperName } from '../paper.ts';
import { charactersOf } from '../true-type.ts';

export { MARGIN, PAPERS, type Box, type PaperName } from '../paper.ts';

/** Bytes of the two faces that everything is printed in. */
export interface PdfFonts {
	readonly regular: Uint8Array;
	readonly bold: Uint8Array;
}

export interface TextStyle {
	/** Points at scale 1. */
	readonly size: number;
	readonly bold?: boolean;
	readonly white?: boolean;
	readonly align?: 'left' | 'center' | 'right';
}

const MM_PER_POINT = 25.4 / 72;
/** Height of a line of text for each unit of its size, and how far down its baseline lies. */
const LINE = 1.24;
const BASELINE = 0.94;
/** What stands in for a character that the font lacks: better seen than lost. */
const STAND_IN = '□';

/**
 * A page being drawn, in millimetres at scale 1 from its upper left corner. Text is placed by the
 * upper edge of its line, so that blocks can be stacked.
 */
export class Sheet {
	readonly doc: jsPDF;
	readonly #paper: Paper;
	readonly #known: Readonly<Record<'normal' | 'bold', ReadonlySet<number>>>;
	readonly #widths = new Map<string, number>();
	readonly #printable = new Map<string, string>();
	readonly #broken = new Map<string, readonly string[]>();
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
		for (const [style, bytes] of [
			['normal', fonts.regular],
			['bold', fonts.bold]
		] as const) {
			this.doc.addFileToVFS(`${style}.ttf`, faceOf(bytes).file);
			this.doc.addFont(`${style}.ttf`, 'Body', style);
		}
		this.#known = {
			normal: faceOf(fonts.regular).characters,
			bold: faceOf(fonts.bold).characters
		};
		this.doc.setFont('Body', 'normal');
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
		return style.size * MM_PER_POINT * LINE;
	}

	textWidth(text: string, style: TextStyle): number {
		return this.#units(this.printable(text, style), style) * style.size * MM_PER_POINT;
	}

	/** Breaks a text into lines that fit; a word longer than a line is broken within itself. */
	lines(text: string, style: TextStyle, width: number, most = Infinity): readonly string[] {
		const key = [face(style), style.size, width, most, text].join(' ');
		const known = this.#broken.get(key) ?? this.#breakUp(text, style, width, most);
		this.#broken.set(key, known);
		return known;
	}

	#breakUp(text: string, style: TextStyle, width: number, most: number): string[] {
		const lines: string[] = [];
		let line = '';
		for (const word of this.printable(text, style)
			.split(' ')
			.flatMap((word) => this.#pieces(word, style, width))) {
			const longer = line === '' ? word : `${line} ${word}`;
			if (line === '' || this.textWidth(longer, style) <= width) line = longer;
			else {
				lines.push(line);
				line = word;
			}
		}
		if (line !== '') lines.push(line);
		if (lines.length <= most) return lines;
		const last = [...(lines[most - 1] ?? '')];
		while (last.length > 0 && this.textWidth(`${last.join('')} …`, style) > width) last.pop();
		return [...lines.slice(0, most - 1), `${last.join('')} …`];
	}

	/** Writes lines below each other and returns the height they took. */
	write(text: string | readonly string[], x: number, y: number, style: TextStyle): number {
		const { doc } = this;
		const lines = typeof text === 'string' ? [text] : text;
		doc.setFont('Body', face(style));
		doc.setFontSize(style.size * this.#paper.scale);
		doc.setTextColor(style.white ? 255 : 0);
		lines.forEach((line, index) => {
			const shown = this.printable(line, style);
			if (shown === '') return;
			const left =
				style.align === 'right'
					? x - this.textWidth(shown, style)
					: style.align === 'center'
						? x - this.textWidth(shown, style) / 2
						: x;
			const baseline = y + index * this.lineHeight(style) + style.size * MM_PER_POINT * BASELINE;
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

	/** A text as it can be printed: composed, on one line, a box for what the font lacks. */
	printable(text: string, style: TextStyle): string {
		const key = face(style) + text;
		let shown = this.#printable.get(key);
		if (shown !== undefined) return shown;
		const known = this.#known[face(style)];
		shown = '';
		const oneLine = text.normalize('NFC').replace(/[\s\u2028\u2029]+/g, ' ');
		for (const character of oneLine.replace(/[\p{Cc}\p{Cf}]/gu, '').trim())
			shown += known.has(character.codePointAt(0) ?? 0) ? character : STAND_IN;
		this.#printable.set(key, shown);
		return shown;
	}

	#pieces(word: string, style: TextStyle, width: number): string[] {
		if (this.textWidth(word, style) <= width) return [word];
		const pieces: string[] = [];
		let piece = '';
		for (const character of word) {
			if (piece !== '' && this.textWidth(piece + character, style) > width) {
				pieces.push(piece);
				piece = '';
			}
			piece += character;
		}
		return [...pieces, piece];
	}

	/** Width of a text for each unit of its size; characters are measured once. */
	#units(text: string, style: TextStyle): number {
		const weight = face(style);
		let sum = 0;
		for (const character of text) {
			const key = weight + character;
			let width = this.#widths.get(key);
			if (width === undefined) {
				this.doc.setFont('Body', weight);
				width = this.doc.getStringUnitWidth(character);
				this.#widths.set(key, width);
			}
			sum += width;
		}
		return sum;
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

function face({ bold }: TextStyle): 'normal' | 'bold' {
	return bold ? 'bold' : 'normal';
}

interface Face {
	/** The form in which the page maker takes a font file. */
	readonly file: string;
	readonly characters: ReadonlySet<number>;
}

/** A face takes longer to read than a page to draw, so each is read once. */
const faces = new WeakMap<Uint8Array, Face>();

function faceOf(bytes: Uint8Array): Face {
	const known = faces.get(bytes) ?? {
		file: binaryString(bytes),
		characters: charactersOf(bytes)
	};
	faces.set(bytes, known);
	return known;
}

function binaryString(bytes: Uint8Array): string {
	const parts: string[] = [];
	for (let at = 0; at < bytes.length; at += 0x8000)
		parts.push(String.fromCharCode(...bytes.subarray(at, at + 0x8000)));
	return parts.join('');
}
