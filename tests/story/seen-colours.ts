import { readFileSync } from 'node:fs';
import type * as Pdfjs from 'pdfjs-dist';
import type { BrowserContext, Page } from 'playwright-core';

/** The middle of all that has a colour, in shares of the picture, and how wide that is. */
export interface Seen {
	readonly x: number;
	readonly y: number;
	readonly width: number;
}
/** Pure colours, so that lines, letters and what a JPEG makes of edges are none of them. */
const COLOURS = {
	red: [220, 20, 20],
	blue: [20, 20, 220],
	green: [20, 170, 20],
	pink: [220, 20, 220],
	black: [0, 0, 0]
} as const;
export type Colour = keyof typeof COLOURS;
export const hexOf = (colour: Colour): string =>
	`#${COLOURS[colour].map((part) => part.toString(16).padStart(2, '0')).join('')}`;

/** Where the colours are on the plan's picture that is shown. */
export async function onShownPlan(page: Page, colours: readonly Colour[]): Promise<Seen[]> {
	const image = page.locator('.plan-map img.leaflet-image-layer');
	return image.evaluate(
		boundsIn,
		colours.map((colour) => COLOURS[colour])
	);
}

/**
 * Draws a page of a PDF with another program than the one that wrote it, and looks for colours there.
 *
 * @param number counts from 1
 * @param colours the others are looked for only in the box round the first
 */
export async function onPaper(
	context: BrowserContext,
	pdf: Uint8Array,
	number: number,
	colours: readonly Colour[]
): Promise<Seen[]> {
	const page = await context.newPage();
	for (const part of ['pdf.worker', 'pdf'])
		await page.addScriptTag({
			type: 'module',
			content: readFileSync(`node_modules/pdfjs-dist/legacy/build/${part}.mjs`, 'utf8')
		});
	await page.waitForFunction(() => 'pdfjsLib' in globalThis && 'pdfjsWorker' in globalThis);
	await page.evaluate(drawPage, { base64: Buffer.from(pdf).toString('base64'), number });
	const seen = await page.locator('canvas').evaluate(
		boundsIn,
		colours.map((colour) => COLOURS[colour])
	);
	await page.close();
	return seen;
}

/** Runs in the page. */
async function drawPage({ base64, number }: { base64: string; number: number }): Promise<void> {
	const { pdfjsLib } = globalThis as unknown as { pdfjsLib: typeof Pdfjs };
	const data = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
	const sheet = await (await pdfjsLib.getDocument({ data }).promise).getPage(number);
	const viewport = sheet.getViewport({ scale: 3 });
	const canvas = document.createElement('canvas');
	canvas.width = viewport.width;
	canvas.height = viewport.height;
	document.body.append(canvas);
	await sheet.render({ canvas, viewport }).promise;
}

/** Runs in the page: the middles of the boxes round each colour. */
async function boundsIn(
	drawn: SVGElement | HTMLElement,
	colours: readonly (readonly number[])[]
): Promise<Seen[]> {
	const NEAR = 60;
	const onPage = drawn instanceof HTMLCanvasElement;
	const image = drawn as HTMLImageElement | HTMLCanvasElement;
	if ('decode' in image) await image.decode();
	const [wide, high] =
		'naturalWidth' in image
			? [image.naturalWidth, image.naturalHeight]
			: [image.width, image.height];
	const scale = Math.min(1, 2600 / Math.max(wide, high));
	const canvas = new OffscreenCanvas(Math.round(wide * scale), Math.round(high * scale));
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.drawImage(image, 0, 0, canvas.width, canvas.height);
	const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
	let box: readonly [number, number, number, number] = [0, 0, width, height];
	return colours.map(([red = 0, green = 0, blue = 0], index) => {
		let [left, top, right, bottom] = [width, height, -1, -1];
		for (let y = box[1]; y < box[3]; y++)
			for (let x = box[0]; x < box[2]; x++) {
				const at = 4 * (y * width + x);
				if (
					Math.abs((data[at] ?? 0) - red) > NEAR ||
					Math.abs((data[at + 1] ?? 0) - green) > NEAR ||
					Math.abs((data[at + 2] ?? 0) - blue) > NEAR
				)
					continue;
				[left, right] = [Math.min(left, x), Math.max(right, x + 1)];
				[top, bottom] = [Math.min(top, y), Math.max(bottom, y + 1)];
			}
		if (index === 0 && onPage) box = [left, top, right, bottom];
		if (right < 0) throw new Error(`nothing has the colour ${[red, green, blue].join(' ')}`);
		return {
			x: (left + right) / 2 / width,
			y: (top + bottom) / 2 / height,
			width: (right - left) / width
		};
	});
}
