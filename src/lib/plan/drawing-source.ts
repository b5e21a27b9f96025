import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { DRAWING_LONG_SIDE_PX } from './image-header.ts';
import { paintJpeg } from './paint-jpeg.ts';
import type { PlanSource } from './plan-source.ts';
import { paintView, type Size, type View } from './view.ts';

/**
 * An SVG, drawn as an image that never enters the page: no script of it runs, nothing is fetched.
 *
 * @param stated the size that its root tag states
 * @returns refusal `image-not-decoded` or `image-without-size`
 */
export async function openDrawing(
	bytes: Uint8Array<ArrayBuffer>,
	stated: Size | undefined
): Promise<Result<PlanSource>> {
	const mediaType = 'image/svg+xml';
	const address = URL.createObjectURL(new Blob([bytes], { type: mediaType }));
	const image = new Image();
	try {
		image.src = address;
		await image.decode();
	} catch {
		URL.revokeObjectURL(address);
		return refuse('image-not-decoded');
	}
	const size = stated ?? enlarged({ widthPx: image.naturalWidth, heightPx: image.naturalHeight });
	if (!size) {
		URL.revokeObjectURL(address);
		return refuse('image-without-size');
	}
	return ok({
		bytes,
		mediaType,
		pageCount: 1,
		vector: true,
		pageSize: () => Promise.resolve(ok(size)),
		draw: (_page: number, view: View, wanted: Size) => draw(image, view, wanted),
		async drawJpeg(_page, view, wanted, wish) {
			const drawn = await draw(image, view, wanted);
			return drawn.ok ? paintJpeg(drawn.value, wish) : drawn;
		},
		close: () => URL.revokeObjectURL(address)
	});
}

async function draw(
	image: HTMLImageElement,
	view: View,
	{ widthPx, heightPx }: Size
): Promise<Result<ImageBitmap>> {
	const canvas = document.createElement('canvas');
	canvas.width = widthPx;
	canvas.height = heightPx;
	try {
		const context = canvas.getContext('2d');
		if (!context) return refuse('image-not-decoded');
		context.fillStyle = 'white';
		context.fillRect(0, 0, widthPx, heightPx);
		paintView(context, image, view, { widthPx, heightPx });
		return ok(await createImageBitmap(canvas));
	} catch {
		return refuse('image-not-decoded');
	} finally {
		canvas.width = canvas.height = 0;
	}
}

function enlarged(size: Size): Size | undefined {
	const scale = DRAWING_LONG_SIDE_PX / Math.max(size.widthPx, size.heightPx);
	if (!Number.isFinite(scale)) return undefined;
	const [widthPx, heightPx] = [size.widthPx * scale, size.heightPx * scale].map(Math.round);
	return widthPx && heightPx ? { widthPx, heightPx } : undefined;
}
