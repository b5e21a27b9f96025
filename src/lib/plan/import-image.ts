import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { DRAWING_LONG_SIDE_PX, readImageHeader, type ImageHeader } from './image-header.ts';

/** A picture that this browser has shown it can draw, with its bytes as they came. */
export interface ImportedImage {
	readonly bytes: Uint8Array;
	readonly mediaType: ImageHeader['mediaType'];
	readonly sha256: string;
	readonly widthPx: number;
	readonly heightPx: number;
}

/** More pixels than this take more memory to decode than a phone has. */
const MOST_MEGAPIXELS = 120;
/** A survey file holds no single picture much larger. */
const MOST_MEGABYTES = 60;

/**
 * Takes in a floor plan. The header is read first, then the browser decodes the picture as an image
 * that never enters the page, in which no script of a drawing runs and nothing is fetched.
 *
 * @returns a refusal `image-file-too-big`, `image-too-many-pixels`, `image-not-decoded`,
 * `image-without-size`, `file-unreadable` or one of `readImageHeader`
 */
export async function importImage(file: File): Promise<Result<ImportedImage>> {
	const megabytes = Math.ceil(file.size / 1e6);
	if (megabytes > MOST_MEGABYTES)
		return refuse('image-file-too-big', { megabytes, most: MOST_MEGABYTES });
	const bytes = await readBytes(file);
	if (!bytes.ok) return bytes;
	const header = readImageHeader(bytes.value);
	if (!header.ok) return header;
	const { mediaType, size } = header.value;
	if (size && size.widthPx * size.heightPx > MOST_MEGAPIXELS * 1e6) {
		const megapixels = Math.round((size.widthPx * size.heightPx) / 1e6);
		return refuse('image-too-many-pixels', { megapixels, most: MOST_MEGAPIXELS });
	}
	const decoded = await decode(new Blob([bytes.value], { type: mediaType }));
	if (!decoded.ok) return decoded;
	const shown = mediaType === 'image/svg+xml' ? (size ?? enlarged(decoded.value)) : decoded.value;
	if (!shown) return refuse('image-without-size');
	return ok({ bytes: bytes.value, mediaType, sha256: await sha256(bytes.value), ...shown });
}

async function readBytes(file: File): Promise<Result<Uint8Array<ArrayBuffer>>> {
	try {
		return ok(new Uint8Array(await file.arrayBuffer()));
	} catch {
		return refuse('file-unreadable', { name: file.name });
	}
}

/** The size as it is shown, a photograph's turning included. */
async function decode(
	blob: Blob
): Promise<Result<{ widthPx: number; heightPx: number } | undefined>> {
	const url = URL.createObjectURL(blob);
	try {
		const image = new Image();
		image.src = url;
		await image.decode();
		const { naturalWidth: widthPx, naturalHeight: heightPx } = image;
		return ok(widthPx > 0 && heightPx > 0 ? { widthPx, heightPx } : undefined);
	} catch {
		return refuse('image-not-decoded');
	} finally {
		URL.revokeObjectURL(url);
	}
}

function enlarged(size: { widthPx: number; heightPx: number } | undefined) {
	if (!size) return undefined;
	const scale = DRAWING_LONG_SIDE_PX / Math.max(size.widthPx, size.heightPx);
	return {
		widthPx: Math.max(1, Math.round(size.widthPx * scale)),
		heightPx: Math.max(1, Math.round(size.heightPx * scale))
	};
}

async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
	const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
	return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
