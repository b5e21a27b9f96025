import type { Plan } from '#lib/core/survey/schema.ts';
import type { Corners } from '#lib/core/survey/straighten.ts';
import { ok, type Result } from '#lib/core/units/result.ts';
import type { PlanSource } from './plan-source.ts';
import { sha256 } from './sha256.ts';
import { MOST_STRAIGHTENED_PIXELS } from './straightened.ts';
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
	const { corners } = cut;
	const view: View = corners ? { ...cut, crop: WHOLE } : cut;
	const drawnSize = fitted(
		viewSize(size.value, view),
		corners ? MOST_STRAIGHTENED_PIXELS : MOST_CANVAS_PIXELS
	);
	const shown = await source.drawJpeg(page, view, drawnSize, { quality: QUALITY, corners });
	if (!shown.ok) return shown;
	const shownBytes = new Uint8Array(await shown.value.file.arrayBuffer());
	const { widthPx, heightPx } = shown.value;
	const image = {
		sha256: await sha256(shownBytes),
		mediaType: 'image/jpeg',
		widthPx,
		heightPx
	} as const;
	const { x, y, width, height } = cut.crop;
	const original = {
		...own,
		...(source.mediaType === 'application/pdf' && { page }),
		...(cut.quarterTurns !== 0 && { quarterTurns: cut.quarterTurns }),
		...(!isWhole(cut) && !cut.corners && { crop: { x, y, width, height } }),
		...(cut.corners && { corners: [...cut.corners] })
	};
	return ok({
		image,
		original,
		blobs: [
			{ sha256: image.sha256, mediaType: image.mediaType, bytes: shownBytes },
			{ ...own, bytes }
		]
	});
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
