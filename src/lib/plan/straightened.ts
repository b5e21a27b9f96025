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
const MOST_STRAIGHTENED_PIXELS = 6_000_000;

/** Takes each point of the flat sheet from where it is in the turned photograph. */
export async function openStraightened(
	source: PlanSource,
	page: number,
	view: View,
	corners: Corners,
	pageSize: Size
): Promise<Result<{ readonly whole: Size; readonly draw: DrawSheet }>> {
	const from = fitted(viewSize(pageSize, view), MOST_STRAIGHTENED_PIXELS);
	const at = (corner: Corners[number]) => ({
		x: corner.x * from.widthPx,
		y: corner.y * from.heightPx
	});
	const [p, q, r, s] = corners;
	const seen: Corners = [at(p), at(q), at(r), at(s)];
	const map = perspectiveOf(seen);
	if (!map.ok) return map;
	const drawn = await source.draw(page, view, from);
	if (!drawn.ok) return drawn;
	const photograph = pixelsOf(drawn.value);
	const read = new Uint32Array(photograph.data.buffer);

	async function draw(part: Box, wanted: Size): Promise<Result<ImageBitmap>> {
		if (!map.ok) return map;
		const to = fitted(wanted, MOST_STRAIGHTENED_PIXELS);
		const sheet = new ImageData(to.widthPx, to.heightPx);
		const written = new Uint32Array(sheet.data.buffer);
		for (let row = 0; row < to.heightPx; row++) {
			for (let column = 0; column < to.widthPx; column++) {
				const { x, y } = inPhotograph(map.value, {
					x: part.x + ((column + 0.5) / to.widthPx) * part.width,
					y: part.y + ((row + 0.5) / to.heightPx) * part.height
				});
				const nearX = Math.min(from.widthPx - 1, Math.max(0, Math.floor(x)));
				const nearY = Math.min(from.heightPx - 1, Math.max(0, Math.floor(y)));
				written[row * to.widthPx + column] = read[nearY * from.widthPx + nearX] ?? 0xffffffff;
			}
		}
		return ok(await createImageBitmap(sheet));
	}
	return ok({ whole: fitted(sheetSize(seen), MOST_STRAIGHTENED_PIXELS), draw });
}

function pixelsOf(picture: ImageBitmap): ImageData {
	const canvas = new OffscreenCanvas(picture.width, picture.height);
	const context = canvas.getContext('2d', { willReadFrequently: true });
	context?.drawImage(picture, 0, 0);
	const { width, height } = picture;
	picture.close();
	return context?.getImageData(0, 0, width, height) ?? new ImageData(width, height);
}
