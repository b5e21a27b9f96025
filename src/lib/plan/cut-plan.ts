import type { Plan } from '#lib/core/survey/schema.ts';
import type { Corners } from '#lib/core/survey/straighten.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { PlanSource } from './plan-source.ts';
import { sha256 } from './sha256.ts';
import { openStraightened } from './straightened.ts';
import { fitted, MOST_CANVAS_PIXELS, viewSize, WHOLE, type Size, type View } from './view.ts';

/** How a plan is cut from a page. */
export interface Cut extends View {
	/** Where the corners of a photographed sheet are, in shares of the turned page. */
	readonly corners?: Corners | undefined;
}

/** A plan as it is stored: what is shown, what it came from, and the bytes of both. */
export interface CutPlan {
	readonly image: Plan['image'];
	readonly original?: NonNullable<Plan['original']>;
	readonly blobs: readonly {
		readonly sha256: string;
		readonly mediaType: string;
		readonly bytes: Uint8Array<ArrayBuffer>;
	}[];
}

const QUALITY = 0.9;

/**
 * Makes a plan from a page: its bytes as they came where they can be shown as they are, else a
 * picture small enough for every device, with the original beside it for print and closer looks.
 */
export async function cutPlan(
	source: PlanSource,
	page: number,
	cut: Cut
): Promise<Result<CutPlan>> {
	const size = await source.pageSize(page);
	if (!size.ok) return size;
	const { bytes, mediaType } = source;
	const own = { sha256: await sha256(bytes), mediaType };
	if (isShownAsItIs(source, size.value, cut)) {
		const image = { ...own, ...size.value };
		return ok({ image, blobs: [{ ...own, bytes }] });
	}
	const picture = cut.corners
		? await straightened(source, page, { ...cut, corners: cut.corners }, size.value)
		: await source.draw(page, cut, fitted(viewSize(size.value, cut)));
	if (!picture.ok) return picture;
	const shown = await asJpeg(picture.value);
	if (!shown.ok) return shown;
	const { x, y, width, height } = cut.crop;
	const original = {
		...own,
		...(source.mediaType === 'application/pdf' && { page }),
		...(cut.quarterTurns !== 0 && { quarterTurns: cut.quarterTurns }),
		...(!isWhole(cut) && !cut.corners && { crop: { x, y, width, height } }),
		...(cut.corners && { corners: [...cut.corners] })
	};
	const { bytes: shownBytes, ...image } = shown.value;
	return ok({
		image,
		original,
		blobs: [
			{ sha256: image.sha256, mediaType: image.mediaType, bytes: shownBytes },
			{ ...own, bytes }
		]
	});
}

/** The view that a stored plan was cut by; nothing for one that was straightened, or taken whole. */
export function viewOf({ original }: Pick<Plan, 'original'>): View | undefined {
	if (!original || original.corners) return undefined;
	return {
		quarterTurns: (original.quarterTurns ?? 0) as View['quarterTurns'],
		crop: original.crop ?? WHOLE
	};
}

function isWhole({ crop }: View): boolean {
	return crop.x === 0 && crop.y === 0 && crop.width === 1 && crop.height === 1;
}

function isShownAsItIs({ mediaType }: PlanSource, size: Size, cut: Cut): boolean {
	return (
		mediaType !== 'application/pdf' &&
		cut.quarterTurns === 0 &&
		isWhole(cut) &&
		!cut.corners &&
		size.widthPx * size.heightPx <= MOST_CANVAS_PIXELS &&
		Math.max(size.widthPx, size.heightPx) <= 8192
	);
}

async function asJpeg(
	picture: ImageBitmap
): Promise<Result<Plan['image'] & { bytes: Uint8Array<ArrayBuffer> }>> {
	const { width: widthPx, height: heightPx } = picture;
	const mediaType = 'image/jpeg';
	try {
		const canvas = new OffscreenCanvas(widthPx, heightPx);
		canvas.getContext('bitmaprenderer')?.transferFromImageBitmap(picture);
		const blob = await canvas.convertToBlob({ type: mediaType, quality: QUALITY });
		const bytes = new Uint8Array(await blob.arrayBuffer());
		return ok({ sha256: await sha256(bytes), mediaType, widthPx, heightPx, bytes });
	} catch {
		return refuse('image-not-decoded');
	} finally {
		picture.close();
	}
}

async function straightened(
	source: PlanSource,
	page: number,
	{ quarterTurns, corners }: Cut & { readonly corners: Corners },
	pageSize: Size
): Promise<Result<ImageBitmap>> {
	const view: View = { quarterTurns, crop: WHOLE };
	const sheet = await openStraightened(source, page, view, corners, pageSize);
	return sheet.ok ? sheet.value.draw(WHOLE, sheet.value.whole) : sheet;
}
