import type { Corners } from '#lib/core/survey/straighten.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { JpegPicture, JpegWish } from './plan-source.ts';
import { flatSheet } from './straightened.ts';
import { WHOLE } from './view.ts';

/** Writes a picture as a JPEG, straightened by its corners where they are given; closes the picture. */
export async function paintJpeg(
	picture: ImageBitmap,
	{ quality, corners }: JpegWish
): Promise<Result<JpegPicture>> {
	try {
		const canvas = corners ? straightened(picture, corners) : painted(picture);
		if (!canvas.ok) return canvas;
		const { width: widthPx, height: heightPx } = canvas.value;
		const file = await canvas.value.convertToBlob({ type: 'image/jpeg', quality });
		// Some browsers keep a canvas's memory until it is made empty.
		canvas.value.width = canvas.value.height = 0;
		return ok({ file, widthPx, heightPx });
	} catch {
		return refuse('image-not-decoded');
	} finally {
		picture.close();
	}
}

function painted(picture: ImageBitmap): Result<OffscreenCanvas> {
	const canvas = new OffscreenCanvas(picture.width, picture.height);
	canvas.getContext('2d')?.drawImage(picture, 0, 0);
	return ok(canvas);
}

function straightened(picture: ImageBitmap, corners: Corners): Result<OffscreenCanvas> {
	const sheet = flatSheet(picture, corners);
	if (!sheet.ok) return sheet;
	const { whole, draw } = sheet.value;
	const canvas = new OffscreenCanvas(whole.widthPx, whole.heightPx);
	canvas.getContext('2d')?.putImageData(draw(WHOLE, whole), 0, 0);
	return ok(canvas);
}
