import type { Plan } from '#lib/core/survey/schema.ts';
import { viewOf } from './cut-plan.ts';
import { openPlanBytes } from './open-plan.ts';
import type { PlanSource } from './plan-source.ts';
import { TILE_PX, type PlanTiles, type TilePlace } from './tile-layer.ts';
import { TileStore } from './tile-store.ts';
import { viewSize, within, type View } from './view.ts';

/** Closer than this a plan is not looked at: the map's own limit. */
const FINEST = 3;
const QUALITY = 0.88;
/** The original is let go when no tile was asked of it for so long, ms. */
const IDLE_MS = 15_000;

/**
 * Tiles of a plan that has more to show than its picture: cut from the original when they are looked
 * at, and kept on this device. Memory is held only while tiles are being cut.
 *
 * @param original reads the bytes that the plan was made from
 * @returns nothing for a plan whose picture is all that there is
 */
export function openTiles(
	plan: Plan,
	original: () => Promise<Uint8Array<ArrayBuffer> | undefined>
): PlanTiles | undefined {
	const view = viewOf(plan);
	if (!plan.original || !view) return undefined;
	const { sha256, page = 1 } = plan.original;
	const { quarterTurns, crop } = view;
	const store = new TileStore(
		[sha256, page, quarterTurns, crop.x, crop.y, crop.width, crop.height].join(' ')
	);
	const { widthPx, heightPx } = plan.image;
	let source: Promise<PlanSource | undefined> | undefined;
	let idle: ReturnType<typeof setTimeout> | undefined;
	let finest: Promise<number> | undefined;

	function opened(): Promise<PlanSource | undefined> {
		clearTimeout(idle);
		idle = setTimeout(() => {
			void source?.then((open) => open?.close());
			source = undefined;
		}, IDLE_MS);
		source ??= original().then(async (bytes) => {
			const open = bytes && (await openPlanBytes(bytes));
			return open?.ok ? open.value : undefined;
		});
		return source;
	}

	/** Beyond this zoom the original has nothing more to show either. */
	async function finestOf(open: PlanSource): Promise<number> {
		if (open.vector) return FINEST;
		const size = await open.pageSize(page);
		if (!size.ok) return 0;
		return Math.ceil(
			Math.log2(viewSize(size.value, view ?? { quarterTurns: 0, crop }).widthPx / widthPx)
		);
	}

	async function cut(place: TilePlace, signal: AbortSignal): Promise<ImageBitmap | undefined> {
		const open = await opened();
		if (!open || signal.aborted) return undefined;
		finest ??= finestOf(open);
		if (place.zoom > (await finest)) return undefined;
		const part = partOf(place, widthPx, heightPx);
		const drawn = await open.draw(page, within(view as View, part.share), part.size);
		return drawn.ok ? drawn.value : undefined;
	}

	return {
		widthPx,
		heightPx,
		finest: FINEST,
		async draw(place, signal) {
			const name = `${place.zoom}/${place.column}/${place.row}`;
			const kept = await store.read(name);
			if (kept) return createImageBitmap(kept);
			if (signal.aborted) return undefined;
			const picture = await cut(place, signal);
			if (picture) await store.keep(name, await asJpeg(picture));
			return picture;
		}
	};
}

/** What a tile shows, in shares of the plan, and how large; tiles at the edge are smaller. */
function partOf({ zoom, column, row }: TilePlace, widthPx: number, heightPx: number) {
	const [wide, high] = [widthPx * 2 ** zoom, heightPx * 2 ** zoom];
	const [left, top] = [column * TILE_PX, row * TILE_PX];
	const [width, height] = [Math.min(TILE_PX, wide - left), Math.min(TILE_PX, high - top)];
	return {
		share: { x: left / wide, y: top / high, width: width / wide, height: height / high },
		size: { widthPx: Math.max(1, Math.round(width)), heightPx: Math.max(1, Math.round(height)) }
	};
}

async function asJpeg(picture: ImageBitmap): Promise<Blob> {
	const canvas = new OffscreenCanvas(picture.width, picture.height);
	canvas.getContext('2d')?.drawImage(picture, 0, 0);
	return canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
}
