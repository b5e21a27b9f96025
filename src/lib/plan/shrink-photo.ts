import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { readImageHeader } from './image-header.ts';
import { sha256 } from './sha256.ts';

/** A photo as it is kept: upright, no larger than is useful, and with nothing in it but the picture. */
export interface ShrunkPhoto {
	readonly bytes: Uint8Array<ArrayBuffer>;
	readonly mediaType: 'image/jpeg';
	readonly sha256: string;
	readonly widthPx: number;
	readonly heightPx: number;
}

/** What the worker is asked for. */
export interface PhotoWish {
	readonly file: Blob;
	readonly longSidePx: number;
	readonly quality: number;
}

const LONG_SIDE_PX = 2000;
const QUALITY = 0.82;
const MOST_MEGABYTES = 60;
const MOST_MEGAPIXELS = 120;

/**
 * Takes in a photo from the camera or a file. It is drawn once, upright, and written anew: the place
 * where it was taken and whatever else its file said of it stay behind.
 *
 * @returns a refusal `image-file-too-big`, `image-too-many-pixels`, `photo-heic`, `photo-not-drawn`,
 * `file-unreadable` or one of `readImageHeader`
 */
export async function shrinkPhoto(file: File): Promise<Result<ShrunkPhoto>> {
	const megabytes = Math.ceil(file.size / 1e6);
	if (megabytes > MOST_MEGABYTES)
		return refuse('image-file-too-big', { megabytes, most: MOST_MEGABYTES });
	const read = await file.arrayBuffer().catch(() => undefined);
	if (!read) return refuse('file-unreadable', { name: file.name });
	const bytes = new Uint8Array(read);
	const header = readImageHeader(bytes);
	const isHeic = !header.ok && header.error.detail?.['kind'] === 'HEIC';
	// Some browsers open HEIC, which says nothing of its size in the place that is read here.
	if (!header.ok && !isHeic) return header;
	if (header.ok && header.value.size) {
		const { widthPx, heightPx } = header.value.size;
		const megapixels = Math.round((widthPx * heightPx) / 1e6);
		if (megapixels > MOST_MEGAPIXELS)
			return refuse('image-too-many-pixels', { megapixels, most: MOST_MEGAPIXELS });
	}
	const copy = new Blob([bytes]);
	const photo = (await shrunkBeside(copy)) ?? (await shrunkHere(copy));
	if (photo) return ok(photo);
	return refuse(isHeic ? 'photo-heic' : 'photo-not-drawn');
}

/** In a worker, so that the page can be used meanwhile; nothing where a worker cannot do it. */
async function shrunkBeside(file: Blob): Promise<ShrunkPhoto | undefined> {
	if (typeof OffscreenCanvas === 'undefined') return undefined;
	const worker = new Worker(new URL('./photo.worker.ts', import.meta.url), { type: 'module' });
	try {
		return await new Promise<ShrunkPhoto | undefined>((answer) => {
			worker.onmessage = ({ data }: MessageEvent<ShrunkPhoto | undefined>) => answer(data);
			worker.onerror = () => answer(undefined);
			const wish: PhotoWish = { file, longSidePx: LONG_SIDE_PX, quality: QUALITY };
			worker.postMessage(wish);
		});
	} finally {
		worker.terminate();
	}
}

/** On the page, by the one way in which every browser turns a photo upright itself. */
async function shrunkHere(blob: Blob): Promise<ShrunkPhoto | undefined> {
	const url = URL.createObjectURL(blob);
	const canvas = document.createElement('canvas');
	try {
		const image = new Image();
		image.src = url;
		await image.decode();
		const { naturalWidth, naturalHeight } = image;
		const scale = Math.min(1, LONG_SIDE_PX / Math.max(naturalWidth, naturalHeight));
		canvas.width = Math.max(1, Math.round(naturalWidth * scale));
		canvas.height = Math.max(1, Math.round(naturalHeight * scale));
		const context = canvas.getContext('2d');
		if (!context || naturalWidth === 0) return undefined;
		context.imageSmoothingQuality = 'high';
		context.drawImage(image, 0, 0, canvas.width, canvas.height);
		const { width: widthPx, height: heightPx } = canvas;
		const jpeg = await new Promise<Blob | null>((done) =>
			canvas.toBlob(done, 'image/jpeg', QUALITY)
		);
		if (!jpeg) return undefined;
		const bytes = new Uint8Array(await jpeg.arrayBuffer());
		return { bytes, mediaType: 'image/jpeg', sha256: await sha256(bytes), widthPx, heightPx };
	} catch {
		return undefined;
	} finally {
		URL.revokeObjectURL(url);
		// Some browsers keep a canvas's memory until it is made empty.
		canvas.width = 0;
		canvas.height = 0;
	}
}
