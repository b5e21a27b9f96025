import { paintJpeg } from './paint-jpeg.ts';
import type { JpegPicture, JpegWish } from './plan-source.ts';
import { fitted, paintView, viewSize, type Size, type View } from './view.ts';

export interface RasterRequest {
	readonly id: number;
	/** The first request names the picture, the others draw it. */
	readonly open?: Blob;
	readonly draw?: { readonly view: View; readonly size: Size; readonly wish?: JpegWish };
}

export interface RasterAnswer {
	readonly id: number;
	readonly size?: Size;
	readonly picture?: ImageBitmap;
	/** Instead of the picture, where a file was wished for. */
	readonly jpeg?: JpegPicture;
	/** Why there is none. */
	readonly code?: string;
}

let file: Blob | undefined;
let size: Size | undefined;
/** Small enough to be kept; most views are drawn from it. */
let reduced: ImageBitmap | undefined;
/** The whole picture, only once somebody looks closer than the reduced one allows. */
let whole: ImageBitmap | undefined;

const worker = globalThis as unknown as {
	onmessage: ((event: MessageEvent<RasterRequest>) => void) | null;
	postMessage(message: RasterAnswer, transfer?: Transferable[]): void;
};
let queue: Promise<void> = Promise.resolve();

worker.onmessage = ({ data }) => {
	queue = queue.then(() => answer(data)).catch(() => worker.postMessage({ id: data.id }));
};

async function answer({ id, open, draw }: RasterRequest): Promise<void> {
	if (open) {
		file = open;
		const decoded = await createImageBitmap(open, { imageOrientation: 'from-image' });
		size = { widthPx: decoded.width, heightPx: decoded.height };
		reduced = await reduce(decoded, fitted(size));
		worker.postMessage({ id, size });
	} else if (draw) {
		const picture = await drawView(draw.view, draw.size);
		if (!draw.wish) return worker.postMessage({ id, picture }, [picture]);
		const jpeg = await paintJpeg(picture, draw.wish);
		worker.postMessage(jpeg.ok ? { id, jpeg: jpeg.value } : { id, code: jpeg.error.code });
	}
}

async function reduce(decoded: ImageBitmap, to: Size): Promise<ImageBitmap> {
	if (to.widthPx === decoded.width && to.heightPx === decoded.height) return decoded;
	try {
		return await createImageBitmap(decoded, {
			resizeWidth: to.widthPx,
			resizeHeight: to.heightPx,
			resizeQuality: 'high'
		});
	} finally {
		decoded.close();
	}
}

async function drawView(view: View, { widthPx, heightPx }: Size): Promise<ImageBitmap> {
	const canvas = new OffscreenCanvas(widthPx, heightPx);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.fillStyle = 'white';
	context.fillRect(0, 0, widthPx, heightPx);
	paintView(context, await fineEnough(view, widthPx), view, { widthPx, heightPx });
	return canvas.transferToImageBitmap();
}

async function fineEnough(view: View, widthPx: number): Promise<ImageBitmap> {
	if (!file || !size || !reduced) throw new Error('nothing is open');
	const offered = viewSize({ widthPx: reduced.width, heightPx: reduced.height }, view).widthPx;
	if (whole) return whole;
	if (reduced.width === size.widthPx || widthPx <= offered * 1.02) return reduced;
	whole = await createImageBitmap(file, { imageOrientation: 'from-image' });
	return whole;
}
