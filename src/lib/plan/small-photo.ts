import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { Size } from './view.ts';

const QUALITY = 0.85;

interface Drawable {
	readonly image: ImageBitmap | HTMLImageElement;
	readonly close: () => void;
}

/**
 * Draws a photo smaller, as a JPEG on white. What is unpacked for it is let go of at once: hundreds are drawn
 * one after the other for a print.
 *
 * @returns `image-not-decoded` when this browser cannot draw it, or has no memory for it
 */
export async function smallPhoto(
	photo: Blob,
	size: Size
): Promise<Result<Uint8Array<ArrayBuffer>>> {
	const { widthPx, heightPx } = size;
	let picture: Drawable | undefined;
	try {
		picture = await (photo.type === 'image/svg+xml' ? drawing(photo) : bitmap(photo, size));
		const canvas = new OffscreenCanvas(widthPx, heightPx);
		const context = canvas.getContext('2d', { alpha: false });
		if (!context) return refuse('image-not-decoded');
		context.fillStyle = 'white';
		context.fillRect(0, 0, widthPx, heightPx);
		context.drawImage(picture.image, 0, 0, widthPx, heightPx);
		const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
		return ok(new Uint8Array(await jpeg.arrayBuffer()));
	} catch {
		return refuse('image-not-decoded');
	} finally {
		picture?.close();
	}
}

async function bitmap(photo: Blob, { widthPx, heightPx }: Size): Promise<Drawable> {
	const image = await createImageBitmap(photo, {
		resizeWidth: widthPx,
		resizeHeight: heightPx,
		resizeQuality: 'medium'
	});
	return { image, close: () => image.close() };
}

/** No browser makes a bitmap of an SVG; as an image that never enters the page it is drawn, and nothing in it runs. */
async function drawing(photo: Blob): Promise<Drawable> {
	const address = URL.createObjectURL(photo);
	const image = new Image();
	image.src = address;
	const close = () => URL.revokeObjectURL(address);
	try {
		await image.decode();
	} catch (error) {
		close();
		throw error;
	}
	return { image, close };
}
