import type { CautionLine, PinShape } from '../model.ts';
import type { Sheet, TextStyle } from './sheet.ts';

const CAUTION: TextStyle = { size: 9.3 };
const CAUTION_ID: TextStyle = { size: 7, bold: true };
const ID_COLUMN = 7;
const CAUTION_GAP = 0.7;

/** A numbered pin: a black disc for work, a black square for what comes first, a ring when done. */
export function drawPin(
	sheet: Sheet,
	tag: string,
	shape: PinShape,
	x: number,
	y: number,
	radius: number
): void {
	const side = 2 * radius;
	// A white edge keeps a pin apart from whatever is drawn below it.
	if (shape === 'first') {
		const edge = radius + 0.4;
		sheet.rect(
			{ x: x - edge, y: y - edge, width: 2 * edge, height: 2 * edge },
			{ mode: 'F', white: true }
		);
		sheet.rect({ x: x - radius, y: y - radius, width: side, height: side }, { mode: 'F' });
	} else {
		sheet.circle(x, y, radius + 0.4, { mode: 'F', white: true });
		if (shape === 'open') sheet.circle(x, y, radius, { mode: 'F' });
		else sheet.circle(x, y, radius - 0.2, { mode: 'FD', white: true, thickness: 0.5 });
	}
	const fitting = (shape === 'first' ? 1.8 : 1.66) * radius;
	let style: TextStyle = {
		size: radius * 2.9,
		bold: true,
		white: shape !== 'done',
		align: 'center'
	};
	const width = sheet.textWidth(tag, style);
	if (width > fitting) style = { ...style, size: (style.size * fitting) / width };
	sheet.write(tag, x, y - sheet.lineHeight(style) * 0.48, style);
}

/** A ring with a dot in it: here, with what lies round the place left to be seen. */
export function drawRing(sheet: Sheet, x: number, y: number): void {
	sheet.circle(x, y, 2.6, { mode: 'S', white: true, thickness: 1.3 });
	sheet.circle(x, y, 2.6, { mode: 'S', thickness: 0.7 });
	sheet.circle(x, y, 0.8, { mode: 'F', white: true });
	sheet.circle(x, y, 0.6, { mode: 'F' });
}

/** A warning sign: a white triangle with a black stroke and dot, for a black ground. */
export function drawWarningSign(sheet: Sheet, x: number, y: number, height: number): void {
	const half = height * 0.58;
	sheet.triangle(
		[
			[x, y - height / 2],
			[x - half, y + height / 2],
			[x + half, y + height / 2]
		],
		{ mode: 'F', white: true }
	);
	const width = height * 0.12;
	sheet.rect(
		{ x: x - width / 2, y: y - height * 0.14, width, height: height * 0.34 },
		{ mode: 'F' }
	);
	sheet.circle(x, y + height * 0.33, width * 0.62, { mode: 'F' });
}

/** Cautions below each other, whole, each behind its METHOD id. Returns the height they take. */
export function cautionsHeight(
	sheet: Sheet,
	cautions: readonly CautionLine[],
	width: number
): number {
	return cautions.reduce(
		(sum, { id, text }) =>
			sum +
			sheet.lines(text, styleOf(id), width - ID_COLUMN).length * sheet.lineHeight(CAUTION) +
			CAUTION_GAP,
		0
	);
}

/** The caution that comes before all others stands out. */
function styleOf(id: string): TextStyle {
	return id === 'C1' ? { ...CAUTION, bold: true } : CAUTION;
}

export function drawCautions(
	sheet: Sheet,
	cautions: readonly CautionLine[],
	x: number,
	y: number,
	width: number
): number {
	let down = y;
	for (const { id, text } of cautions) {
		sheet.write(id, x, down + 0.75, CAUTION_ID);
		const style = styleOf(id);
		const lines = sheet.lines(text, style, width - ID_COLUMN);
		down += sheet.write(lines, x + ID_COLUMN, down, style) + CAUTION_GAP;
	}
	return down - y;
}
