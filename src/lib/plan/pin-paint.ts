import { OUTLINES, TICK, numberSize, type Pin } from './pin.ts';

/** How wide a pin is drawn by its size, px at full scale; the elements' style says the same. */
export const PIN_WIDTHS: Readonly<Record<Pin['size'], number>> = { 1: 30, 2: 36, 3: 42 };

/** A token of the look, or white, which a pin is on a plan by day and by night. */
type Colour = 'white' | 'ink' | 'rust' | 'straw' | 'straw-pale' | 'moss';

interface Ink<Of = string> {
	readonly fill: Of;
	readonly line: Of;
	readonly text: Of;
	readonly thick: number;
	readonly dashed?: boolean;
}

const OPEN: Ink<Colour> = { fill: 'white', line: 'ink', text: 'ink', thick: 2, dashed: true };

/** What a pin is drawn with; the elements' style says the same. */
export const PIN_INKS: Readonly<Record<Pin['state'], Ink<Colour>>> = {
	leaking: { fill: 'rust', line: 'white', text: 'white', thick: 2 },
	mended: { fill: 'straw-pale', line: 'straw', text: 'ink', thick: 2.5 },
	tight: { fill: 'white', line: 'moss', text: 'moss', thick: 2.5 },
	unseen: OPEN,
	'not-reached': OPEN
};

/** Pins by the tip, in pixels of the screen. */
interface Tip {
	readonly pin: Pin;
	readonly x: number;
	readonly y: number;
}

/** Shapes that are kept: those of one look at the plan, and of a few before. */
const MOST_SHAPES = 60;

/** Paints many pins, each shape once and then copied; a shape stays for the next painting. */
export class PinBrush {
	readonly #shapes = new Map<string, OffscreenCanvas>();
	#inks: Readonly<Record<Pin['state'], Ink>> | undefined;
	#font = '';

	/** A painted pin looks as its element does: its colours and letters are asked of the page. */
	dip(canvas: HTMLCanvasElement): void {
		const style = getComputedStyle(canvas);
		const inks = inksOf(style);
		if (JSON.stringify(inks) !== JSON.stringify(this.#inks)) this.#shapes.clear();
		this.#inks = inks;
		this.#font = style.fontFamily;
	}

	/** Paints over what is there. */
	paint(
		context: CanvasRenderingContext2D,
		tips: readonly Tip[],
		scale: number,
		ratio: number
	): void {
		const inks = this.#inks;
		if (!inks) return;
		context.setTransform(ratio, 0, 0, ratio, 0, 0);
		context.textAlign = 'center';
		let letters = 0;
		let fill = '';
		for (const { pin, x, y } of tips) {
			const width = PIN_WIDTHS[pin.size] * scale;
			const unit = width / 40;
			const shape = this.#shape(pin, inks[pin.state], unit * ratio);
			context.drawImage(
				shape,
				x - width / 2 - 2 * unit,
				y - 48 * unit,
				shape.width / ratio,
				shape.height / ratio
			);
			const size = (pin.state === 'tight' ? 13 : numberSize(pin.tag)) * unit;
			if (size < 5) continue; // Nobody could read it.
			const { text } = inks[pin.state];
			if (size !== letters) context.font = `700 ${size}px ${this.#font}`;
			if (text !== fill) context.fillStyle = text;
			[letters, fill] = [size, text];
			context.fillText(String(pin.tag), x, y - (pin.state === 'tight' ? 25 : 23) * unit);
		}
	}

	#shape(pin: Pin, ink: Ink, unit: number): OffscreenCanvas {
		const key = `${pin.state} ${pin.size} ${unit}`;
		const before = this.#shapes.get(key);
		if (before) return before;
		if (this.#shapes.size >= MOST_SHAPES) this.#shapes.clear();
		const shape = shapeOf(pin, ink, unit);
		this.#shapes.set(key, shape);
		return shape;
	}
}

function inksOf(style: CSSStyleDeclaration): Readonly<Record<Pin['state'], Ink>> {
	const asked = (name: Colour): string =>
		name === 'white' ? '#fff' : style.getPropertyValue(`--${name}`).trim();
	const mixed = (state: Pin['state']): Ink => {
		const { fill, line, text, ...drawn } = PIN_INKS[state];
		return { fill: asked(fill), line: asked(line), text: asked(text), ...drawn };
	};
	return {
		leaking: mixed('leaking'),
		mended: mixed('mended'),
		tight: mixed('tight'),
		unseen: mixed('unseen'),
		'not-reached': mixed('not-reached')
	};
}

function shapeOf(pin: Pin, ink: Ink, unit: number): OffscreenCanvas {
	const canvas = new OffscreenCanvas(Math.ceil(44 * unit), Math.ceil(50 * unit));
	const context = canvas.getContext('2d');
	if (!context) return canvas;
	context.setTransform(unit, 0, 0, unit, 2 * unit, 2 * unit);
	const outline = new Path2D(OUTLINES[pin.state]);
	context.fillStyle = ink.fill;
	context.strokeStyle = ink.line;
	context.lineWidth = ink.thick;
	if (ink.dashed) context.setLineDash([4, 3]);
	context.fill(outline);
	context.stroke(outline);
	if (pin.state === 'tight') {
		context.lineWidth = 3;
		context.stroke(new Path2D(TICK));
	}
	return canvas;
}
