import { sha256 } from './sha256.ts';
import type { PhotoWish, ShrunkPhoto } from './shrink-photo.ts';

const worker = globalThis as unknown as {
	onmessage: ((event: MessageEvent<PhotoWish>) => void) | null;
	postMessage(message: ShrunkPhoto | undefined, transfer?: Transferable[]): void;
};

worker.onmessage = ({ data }) => {
	void shrunk(data)
		.catch(() => undefined)
		.then((photo) => worker.postMessage(photo, photo ? [photo.bytes.buffer] : []));
};

async function shrunk({ file, longSidePx, quality }: PhotoWish): Promise<ShrunkPhoto | undefined> {
	if (!(await turnsUpright())) return undefined;
	const picture = await upright(file);
	const scale = Math.min(1, longSidePx / Math.max(picture.width, picture.height));
	const widthPx = Math.max(1, Math.round(picture.width * scale));
	const heightPx = Math.max(1, Math.round(picture.height * scale));
	const canvas = new OffscreenCanvas(widthPx, heightPx);
	const context = canvas.getContext('2d');
	if (!context) return undefined;
	context.imageSmoothingQuality = 'high';
	context.drawImage(picture, 0, 0, widthPx, heightPx);
	picture.close();
	const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality });
	const bytes = new Uint8Array(await jpeg.arrayBuffer());
	return { bytes, mediaType: 'image/jpeg', sha256: await sha256(bytes), widthPx, heightPx };
}

function upright(file: Blob): Promise<ImageBitmap> {
	return createImageBitmap(file, { imageOrientation: 'from-image' });
}

/** Not every browser turns a photo upright here, as all do in an image on the page. */
async function turnsUpright(): Promise<boolean> {
	const { width, height } = await upright(new Blob([LYING], { type: 'image/jpeg' }));
	return width === 1 && height === 2;
}

const oneCode = [1, ...Array<number>(15).fill(0), 0];

/**
 * A grey picture, 2 px wide and 1 px high, that is to be shown turned by a quarter.
 * @source ITU-T T.81, B.2; Exif 2.32, 4.6.4, tag 0x0112 (from memory)
 */
const LYING = new Uint8Array([
	...[0xff, 0xd8],
	...[0xff, 0xe1, 0, 34, 0x45, 0x78, 0x69, 0x66, 0, 0],
	...[0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1],
	...[0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0],
	...[0xff, 0xdb, 0, 67, 0, ...Array<number>(64).fill(1)],
	...[0xff, 0xc0, 0, 11, 8, 0, 1, 0, 2, 1, 1, 0x11, 0],
	...[0xff, 0xc4, 0, 20, 0x00, ...oneCode],
	...[0xff, 0xc4, 0, 20, 0x10, ...oneCode],
	...[0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0x3f],
	...[0xff, 0xd9]
]);
