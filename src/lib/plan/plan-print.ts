import type { Plan } from '#lib/core/survey/schema.ts';
import type { Corners } from '#lib/core/survey/straighten.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { viewOf } from './tile-places.ts';
import { openPlanBytes } from './open-plan.ts';
import type { PlanSource } from './plan-source.ts';
import { openStraightened, type DrawSheet } from './straightened.ts';
import { fitted, viewSize, WHOLE, within, type Box, type Size, type View } from './view.ts';

/** A plan opened to be printed; it holds memory until it is closed. */
export interface PlanToPrint {
	/** A part of the plan, in its shares, as a JPEG of at most that size: never finer than the original. */
	cut(part: Box, size: Size): Promise<Result<Uint8Array<ArrayBuffer>>>;
	/** The same, not yet packed; whoever asked closes it. */
	draw(part: Box, size: Size): Promise<Result<ImageBitmap>>;
	close(): void;
}

const QUALITY = 0.85;
const SMALL_QUALITY = 0.8;
const SIDE_LIMIT = 16_384;

/**
 * Opens what a plan was made from, so that print shows all that it has: lines and letters are drawn
 * anew for the paper.
 *
 * @param bytesOf reads bytes by their SHA-256
 * @returns refusal `image-not-decoded` when the bytes are not there, or what says why they do not open
 */
export async function openPlanToPrint(
	plan: Plan,
	bytesOf: (sha256: string) => Promise<Uint8Array | undefined>
): Promise<Result<PlanToPrint>> {
	const { original, ...shown } = plan;
	const bytes = await bytesOf((original ?? plan.image).sha256);
	const opened = bytes
		? await openPlanBytes(bytes as Uint8Array<ArrayBuffer>)
		: refuse('image-not-decoded');
	// What is shown prints too, only less finely.
	if (!opened.ok) return original ? openPlanToPrint(shown, bytesOf) : opened;
	const source = opened.value;
	const page = original?.page ?? 1;
	const drawing = await drawingOf(source, page, plan);
	if (!drawing.ok) {
		source.close();
		return drawing;
	}
	const { whole, draw } = drawing.value;
	const drawPart: DrawSheet = (part, size) => {
		const most = viewSize(whole, { quarterTurns: 0, crop: part });
		const scale = source.vector ? 1 : Math.min(1, most.widthPx / size.widthPx);
		return draw(
			part,
			fitted(
				{ widthPx: size.widthPx * scale, heightPx: size.heightPx * scale },
				undefined,
				SIDE_LIMIT
			)
		);
	};
	return ok({
		draw: drawPart,
		async cut(part, size) {
			const drawn = await drawPart(part, size);
			return drawn.ok ? packed(drawn.value) : drawn;
		},
		close: () => source.close()
	});
}

/** How parts of the plan are drawn, and how large the whole is at the original's own fineness. */
async function drawingOf(
	source: PlanSource,
	page: number,
	plan: Plan
): Promise<Result<{ readonly whole: Size; readonly draw: DrawSheet }>> {
	const size = await source.pageSize(page);
	if (!size.ok) return size;
	const { corners, quarterTurns = 0 } = plan.original ?? {};
	if (corners?.length === 4) {
		const turned: View = { quarterTurns: quarterTurns as View['quarterTurns'], crop: WHOLE };
		return openStraightened(source, page, turned, corners as unknown as Corners, size.value);
	}
	const view = viewOf(plan) ?? { quarterTurns: 0, crop: WHOLE };
	return ok({
		whole: viewSize(size.value, view),
		draw: (part, wanted) => source.draw(page, within(view, part), wanted)
	});
}

/**
 * Cuts many small squares from a plan, each packed as a JPEG: the plan itself is drawn but once.
 *
 * @param parts in shares of the plan, all about as large
 * @param sidePx of each square
 * @param take is given each with its index; while it answers false no more are cut
 */
export async function cutSmall(
	plan: PlanToPrint,
	{ widthPx, heightPx }: Size,
	parts: readonly Box[],
	sidePx: number,
	take: (index: number, jpeg: Uint8Array<ArrayBuffer>) => boolean
): Promise<Result<null>> {
	const smallest = Math.min(...parts.map((part) => part.width * widthPx));
	const scale = sidePx / smallest;
	const size = fitted({ widthPx: widthPx * scale, heightPx: heightPx * scale });
	const drawn = await plan.draw(WHOLE, size);
	if (!drawn.ok) return drawn;
	const whole = drawn.value;
	const canvas = new OffscreenCanvas(sidePx, sidePx);
	try {
		const context = canvas.getContext('2d');
		if (!context) return refuse('image-not-decoded');
		context.imageSmoothingQuality = 'high';
		for (const [index, { x, y, width, height }] of parts.entries()) {
			const [across, down] = [width * whole.width, height * whole.height];
			context.fillStyle = 'white';
			context.fillRect(0, 0, sidePx, sidePx);
			context.drawImage(
				whole,
				x * whole.width,
				y * whole.height,
				across,
				down,
				0,
				0,
				sidePx,
				sidePx
			);
			const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: SMALL_QUALITY });
			if (!take(index, new Uint8Array(await blob.arrayBuffer()))) break;
		}
		return ok(null);
	} catch {
		return refuse('image-not-decoded');
	} finally {
		whole.close();
	}
}

/** Packs a picture as a JPEG and lets go of it. */
async function packed(picture: ImageBitmap): Promise<Result<Uint8Array<ArrayBuffer>>> {
	const canvas = new OffscreenCanvas(picture.width, picture.height);
	try {
		canvas.getContext('bitmaprenderer')?.transferFromImageBitmap(picture);
		const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
		return ok(new Uint8Array(await blob.arrayBuffer()));
	} catch {
		return refuse('image-not-decoded');
	} finally {
		picture.close();
		// A sheet takes some tens of megabytes: not only when somebody tidies up.
		canvas.width = canvas.height = 0;
	}
}
