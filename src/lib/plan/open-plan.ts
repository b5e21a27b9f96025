import { refuse, type Result } from '#lib/core/units/result.ts';
import { readImageHeader } from './image-header.ts';
import type { PlanSource } from './plan-source.ts';

/** More pixels than this take more memory to decode than a phone has. */
const MOST_MEGAPIXELS = 120;
/** A survey file holds no single picture much larger. */
const MOST_MEGABYTES = 60;
/** Some programs write a few bytes before a PDF's own beginning. */
const PDF_HEAD_BYTES = 1024;

/**
 * Opens a file that a plan is to be made from. Headers are read first; what the name and the sender
 * say of its kind is not trusted.
 *
 * @param signal gives it up; what is returned then is not to be used
 * @returns a refusal `image-file-too-big`, `image-too-many-pixels`, `file-unreadable`, or one of the
 * kind that it is of
 */
export async function openPlanFile(file: File, signal?: AbortSignal): Promise<Result<PlanSource>> {
	const megabytes = Math.ceil(file.size / 1e6);
	if (megabytes > MOST_MEGABYTES)
		return refuse('image-file-too-big', { megabytes, most: MOST_MEGABYTES });
	try {
		return await openPlanBytes(new Uint8Array(await file.arrayBuffer()), signal);
	} catch {
		return refuse('file-unreadable', { name: file.name });
	}
}

export async function openPlanBytes(
	bytes: Uint8Array<ArrayBuffer>,
	signal?: AbortSignal
): Promise<Result<PlanSource>> {
	if (isPdf(bytes)) return (await import('./pdf-source.ts')).openPdf(bytes, signal);
	const header = readImageHeader(bytes);
	if (!header.ok) return header;
	const { mediaType, size } = header.value;
	if (mediaType === 'image/svg+xml')
		return (await import('./drawing-source.ts')).openDrawing(bytes, size);
	if (size && size.widthPx * size.heightPx > MOST_MEGAPIXELS * 1e6) {
		const megapixels = Math.round((size.widthPx * size.heightPx) / 1e6);
		return refuse('image-too-many-pixels', { megapixels, most: MOST_MEGAPIXELS });
	}
	return (await import('./raster-source.ts')).openRaster(bytes, mediaType, signal);
}

function isPdf(bytes: Uint8Array): boolean {
	const head = String.fromCharCode(...bytes.subarray(0, PDF_HEAD_BYTES));
	return head.includes('%PDF-');
}
