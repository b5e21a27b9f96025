import { ok, refuse, type Result } from '#lib/core/units/result.ts';

const QUALITY = 0.85;

/**
 * Draws a photo smaller, as a JPEG on white. What is unpacked for it is let go of at once: hundreds are drawn
 * one after the other for a print.
 *
 * @returns `image-not-decoded` when this browser cannot draw it, or has no memory for it
 */
export async function smallPhoto(
	photo: Blob,
	{ widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number }
): Promise<Result<Uint8Array<ArrayBuffer>>> {
	let picture: ImageBitmap | undefined;
	try {
		picture = await createImageBitmap(photo, {
			resizeWidth: widthPx,
			resizeHeight: heightPx,
			resizeQuality: 'medium'
		});
		const canvas = new OffscreenCanvas(widthPx, heightPx);
		const context = canvas.getContext('2d', { alpha: false });
		if (!context) return refuse('image-not-decoded');
		context.fillStyle = 'white';
		context.fillRect(0, 0, widthPx, heightPx);
		context.drawImage(picture, 0, 0);
		const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
		return ok(new Uint8Array(await jpeg.arrayBuffer()));
	} catch {
		return refuse('image-not-decoded');
	} finally {
		picture?.close();
	}
}
