import type { Plan } from '#lib/core/survey/schema.ts';
import { readImageHeader } from './image-header.ts';
import { openPlanBytes } from './open-plan.ts';
import { paintJpeg } from './paint-jpeg.ts';
import type { PlanSource } from './plan-source.ts';
import type { PlanTiles, TilePlace } from './tile-layer.ts';
import {
	CLOSEST_ZOOM,
	finestZoom,
	tilePart,
	tilesName,
	TILE_QUALITY,
	viewOf
} from './tile-places.ts';
import { TileStore } from './tile-store.ts';
import { within, type View } from './view.ts';

/** The original is let go when no tile was asked of it for so long, ms. */
const IDLE_MS = 15_000;

/**
 * Tiles of a plan that has more to show than its picture: those that were cut when it was taken in, or
 * cut from the original when they are looked at, and kept on this device. Memory is held only while
 * tiles are being cut.
 *
 * @param original reads the bytes that the plan was made from
 * @returns nothing for a plan whose picture is all that there is
 */
export async function openTiles(
	plan: Plan,
	original: () => Promise<Uint8Array<ArrayBuffer> | undefined>
): Promise<PlanTiles | undefined> {
	const view = viewOf(plan);
	if (!plan.original || !view) return undefined;
	const { mediaType, page = 1 } = plan.original;
	const store = new TileStore(tilesName(plan.original, view));
	const { widthPx, heightPx } = plan.image;

	/** Beyond this zoom the original has nothing more to show either. */
	async function finestOf(whole: View): Promise<number> {
		if (mediaType === 'application/pdf' || mediaType === 'image/svg+xml') return CLOSEST_ZOOM;
		const known = await store.finest();
		if (known !== undefined) return known;
		const bytes = await original();
		const header = bytes && readImageHeader(bytes);
		if (!header?.ok || !header.value.size) return 0;
		const found = finestZoom(header.value.size, whole, plan.image);
		await store.keepFinest(found);
		return found;
	}

	const finest = await finestOf(view);
	if (finest === 0) {
		await store.close();
		return undefined;
	}
	const held = new HeldOriginal(original);

	function cut(place: TilePlace, whole: View, signal: AbortSignal) {
		const { share, size } = tilePart(place, plan.image);
		return held.use(async (source) => {
			if (signal.aborted) return undefined;
			const drawn = await source.draw(page, within(whole, share), size);
			return drawn.ok ? drawn.value : undefined;
		});
	}

	return {
		widthPx,
		heightPx,
		finest,
		async draw(place, signal) {
			const name = `${place.zoom}/${place.column}/${place.row}`;
			const kept = await store.read(name);
			if (signal.aborted) return undefined;
			if (kept) return createImageBitmap(kept);
			const picture = await cut(place, view, signal);
			if (!picture) return undefined;
			const jpeg = await paintJpeg(await createImageBitmap(picture), { quality: TILE_QUALITY });
			if (jpeg.ok) await store.keep([[name, jpeg.value.file]]);
			return picture;
		},
		close() {
			held.letGo();
			void store.close();
		}
	};
}

/** The original, open while tiles are cut from it and a little longer. */
class HeldOriginal {
	readonly #read: () => Promise<Uint8Array<ArrayBuffer> | undefined>;
	#source: Promise<PlanSource | undefined> | undefined;
	#idle: ReturnType<typeof setTimeout> | undefined;
	#users = 0;

	constructor(read: () => Promise<Uint8Array<ArrayBuffer> | undefined>) {
		this.#read = read;
	}

	async use<T>(what: (source: PlanSource) => Promise<T>): Promise<T | undefined> {
		clearTimeout(this.#idle);
		this.#users += 1;
		try {
			this.#source ??= this.#open();
			const source = await this.#source;
			return source && (await what(source));
		} finally {
			this.#users -= 1;
			if (this.#users === 0) this.#idle = setTimeout(() => this.letGo(), IDLE_MS);
		}
	}

	letGo(): void {
		clearTimeout(this.#idle);
		const source = this.#source;
		this.#source = undefined;
		void source?.then((open) => open?.close());
	}

	async #open(): Promise<PlanSource | undefined> {
		const bytes = await this.#read();
		const opened = bytes && (await openPlanBytes(bytes));
		return opened?.ok ? opened.value : undefined;
	}
}
