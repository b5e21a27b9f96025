import { ok, refuse, type Result } from '#lib/core/units/result.ts';

/** What a sheet of A3 shows well, and half of what the smallest tablets can hold in a canvas. */
const MOST_PIXELS = 8_000_000;
const QUALITY = 0.85;

/**
 * Draws a plan as a JPEG for printing, on white, in its own shape and no larger than is useful.
 * A drawing is drawn as an image, in which no script runs and nothing is fetched.
 *
 * @param address where its bytes are, e.g. a blob address
 * @returns `image-not-decoded` when this browser cannot draw it, or has no memory for it
 */
export async function planAsJpeg(
	address: string,
	size: { readonly widthPx: number; readonly heightPx: number }
): Promise<Result<Uint8Array<ArrayBuffer>>> {
	const { widthPx, heightPx } = sizeWithin(size);
	const canvas = document.createElement('canvas');
	try {
		const image = new Image();
		image.src = address;
		await image.decode();
		canvas.width = widthPx;
		canvas.height = heightPx;
		const context = canvas.getContext('2d');
		if (!context) return refuse('image-not-decoded');
		context.fillStyle = 'white';
		context.fillRect(0, 0, widthPx, heightPx);
		context.drawImage(image, 0, 0, widthPx, heightPx);
		const jpeg = await new Promise<Blob | null>((done) =>
			canvas.toBlob(done, 'image/jpeg', QUALITY)
		);
		if (!jpeg) return refuse('image-not-decoded');
		return ok(new Uint8Array(await jpeg.arrayBuffer()));
	} catch {
		return refuse('image-not-decoded');
	} finally {
		// Some browsers keep a canvas's memory until it is made empty.
		canvas.width = 0;
		canvas.height = 0;
	}
}

/** The same shape with at most so many pixels; never larger than it is. */
export function sizeWithin(
	{ widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
	mostPixels = MOST_PIXELS
): { widthPx: number; heightPx: number } {
	const scale = Math.min(1, Math.sqrt(mostPixels / (widthPx * heightPx)));
	return {
		widthPx: Math.max(1, Math.floor(widthPx * scale)),
		heightPx: Math.max(1, Math.floor(heightPx * scale))
	};
}
