import {
	inPhotograph,
	perspectiveOf,
	sheetSize,
	type Corners
} from '#lib/core/survey/straighten.ts';
import { ok, type Result } from '#lib/core/units/result.ts';
import type { PlanSource } from './plan-source.ts';
import { fitted, viewSize, type Box, type Size, type View } from './view.ts';

/** Draws a part of a flat sheet, in its shares; whoever asked closes the picture. */
export type DrawSheet = (part: Box, size: Size) => Promise<Result<ImageBitmap>>;

/** Straightening works point by point: what an eye makes out, and a phone can do in a second, px. */
export const MOST_STRAIGHTENED_PIXELS = 6_000_000;

interface FlatSheet {
	/** Its size at the fineness of the photograph. */
	readonly whole: Size;
	readonly draw: (part: Box, size: Size) => ImageData;
}

/**
 * Takes each point of the flat sheet from where it is in the turned photograph.
 *
 * @param photograph is read at once, and closed by whoever has it
 * @param corners where the sheet's corners are, in shares of the photograph
 */
export function flatSheet(photograph: ImageBitmap, corners: Corners): Result<FlatSheet> {
	const { width, height } = photograph;
	const at = ({ x, y }: Corners[number]) => ({ x: x * width, y: y * height });
	const [p, q, r, s] = corners;
	const seen: Corners = [at(p), at(q), at(r), at(s)];
	const map = perspectiveOf(seen);
	if (!map.ok) return map;
	const perspective = map.value;
	const read = new Uint32Array(pixelsOf(photograph).data.buffer);

	function draw(part: Box, wanted: Size): ImageData {
		const to = fitted(wanted, MOST_STRAIGHTENED_PIXELS);
		const sheet = new ImageData(to.widthPx, to.heightPx);
		const written = new Uint32Array(sheet.data.buffer);
		for (let row = 0; row < to.heightPx; row++) {
			for (let column = 0; column < to.widthPx; column++) {
				const { x, y } = inPhotograph(perspective, {
					x: part.x + ((column + 0.5) / to.widthPx) * part.width,
					y: part.y + ((row + 0.5) / to.heightPx) * part.height
				});
				const nearX = Math.min(width - 1, Math.max(0, Math.floor(x)));
				const nearY = Math.min(height - 1, Math.max(0, Math.floor(y)));
				written[row * to.widthPx + column] = read[nearY * width + nearX] ?? 0xffffffff;
			}
		}
		return sheet;
	}
	return ok({ whole: fitted(sheetSize(seen), MOST_STRAIGHTENED_PIXELS), draw });
}

/** Draws the turned page once, to take parts of its flat sheet from. */
export async function openStraightened(
	source: PlanSource,
	page: number,
	view: View,
	corners: Corners,
	pageSize: Size
): Promise<Result<{ readonly whole: Size; readonly draw: DrawSheet }>> {
	const from = fitted(viewSize(pageSize, view), MOST_STRAIGHTENED_PIXELS);
	const drawn = await source.draw(page, view, from);
	if (!drawn.ok) return drawn;
	const sheet = flatSheet(drawn.value, corners);
	drawn.value.close();
	if (!sheet.ok) return sheet;
	const { whole, draw } = sheet.value;
	return ok({
		whole,
		draw: async (part, size) => ok(await createImageBitmap(draw(part, size)))
	});
}

function pixelsOf(picture: ImageBitmap): ImageData {
	const { width, height } = picture;
	const canvas = new OffscreenCanvas(width, height);
	const context = canvas.getContext('2d', { willReadFrequently: true });
	context?.drawImage(picture, 0, 0);
	const pixels = context?.getImageData(0, 0, width, height) ?? new ImageData(width, height);
	// Some browsers keep a canvas's memory until it is made empty.
	canvas.width = canvas.height = 0;
	return pixels;
}
