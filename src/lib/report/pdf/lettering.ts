import type { jsPDF } from 'jspdf';
import { charactersOf } from '../true-type.ts';

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

type FaceName = 'normal' | 'bold';

const MM_PER_POINT = 25.4 / 72;
/** Height of a line of text for each unit of its size, and how far down its baseline lies. */
const LINE = 1.24;
const BASELINE = 0.94;
/** What stands in for a character that the font lacks: better seen than lost. */
const STAND_IN = '□';

/** How texts look and fit in the faces of a document: in millimetres at scale 1, before anything is drawn. */
export class Lettering {
	readonly #doc: jsPDF;
	readonly #known: Readonly<Record<FaceName, ReadonlySet<number>>>;
	readonly #widths = new Map<string, number>();
	readonly #printable = new Map<string, string>();
	readonly #broken = new Map<string, readonly string[]>();

	/** Puts the faces into the document. */
	constructor(doc: jsPDF, fonts: PdfFonts) {
		this.#doc = doc;
		for (const [style, bytes] of [
			['normal', fonts.regular],
			['bold', fonts.bold]
		] as const) {
			doc.addFileToVFS(`${style}.ttf`, faceOf(bytes).file);
			doc.addFont(`${style}.ttf`, 'Body', style);
		}
		this.#known = {
			normal: faceOf(fonts.regular).characters,
			bold: faceOf(fonts.bold).characters
		};
		this.use({});
	}

	/** What the document writes from now on is in this face. */
	use(style: Pick<TextStyle, 'bold'>): void {
		this.#doc.setFont('Body', face(style));
	}

	lineHeight(style: TextStyle): number {
		return style.size * MM_PER_POINT * LINE;
	}

	/** From the upper edge of a line down to what its letters stand on. */
	baseline(style: TextStyle): number {
		return style.size * MM_PER_POINT * BASELINE;
	}

	width(text: string, style: TextStyle): number {
		return this.#units(this.printable(text, style), style) * style.size * MM_PER_POINT;
	}

	/** Breaks a text into lines that fit; a word longer than a line is broken within itself. */
	lines(text: string, style: TextStyle, width: number, most = Infinity): readonly string[] {
		const key = [face(style), style.size, width, most, text].join(' ');
		const known = this.#broken.get(key) ?? this.#breakUp(text, style, width, most);
		this.#broken.set(key, known);
		return known;
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

	#breakUp(text: string, style: TextStyle, width: number, most: number): string[] {
		const lines: string[] = [];
		let line = '';
		for (const word of this.printable(text, style)
			.split(' ')
			.flatMap((word) => this.#pieces(word, style, width))) {
			const longer = line === '' ? word : `${line} ${word}`;
			if (line === '' || this.width(longer, style) <= width) line = longer;
			else {
				lines.push(line);
				line = word;
			}
		}
		if (line !== '') lines.push(line);
		if (lines.length <= most) return lines;
		const last = [...(lines[most - 1] ?? '')];
		while (last.length > 0 && this.width(`${last.join('')} …`, style) > width) last.pop();
		return [...lines.slice(0, most - 1), `${last.join('')} …`];
	}

	#pieces(word: string, style: TextStyle, width: number): string[] {
		if (this.width(word, style) <= width) return [word];
		const pieces: string[] = [];
		let piece = '';
		for (const character of word) {
			if (piece !== '' && this.width(piece + character, style) > width) {
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
				this.use(style);
				width = this.#doc.getStringUnitWidth(character);
				this.#widths.set(key, width);
			}
			sum += width;
		}
		return sum;
	}
}

function face({ bold }: Pick<TextStyle, 'bold'>): FaceName {
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
