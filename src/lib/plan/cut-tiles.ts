import type { CutPlan } from './cut-plan.ts';
import type { PlanSource } from './plan-source.ts';
import {
	finestZoom,
	tilePart,
	tilePlaces,
	tilesName,
	TILE_QUALITY,
	viewOf
} from './tile-places.ts';
import { TileStore } from './tile-store.ts';
import { within } from './view.ts';

/** So many tiles are written at once. */
const BATCH = 24;

/**
 * Cuts all closer looks at a photographed or scanned plan while it is open anyway, one tile after the
 * other, so that it need not be decoded again in the hall. What lines and letters show is drawn when
 * it is looked at.
 *
 * @param ondone how much of it is done, 0 to 1
 * @returns how many tiles were kept; fewer than there are when it was stopped or the disk is full
 */
export async function cutTiles(
	source: PlanSource,
	{ image, original }: Pick<CutPlan, 'image' | 'original'>,
	ondone: (share: number) => void,
	signal: AbortSignal
): Promise<number> {
	const view = viewOf({ original });
	if (source.vector || !view || !original) return 0;
	const size = await source.pageSize(1);
	if (!size.ok) return 0;
	const finest = finestZoom(size.value, view, image);
	const places = tilePlaces(image, finest);
	const store = new TileStore(tilesName(original, view));
	let kept = 0;
	try {
		if (!(await store.keepFinest(finest))) return 0;
		let batch: [string, Blob][] = [];
		for (const [index, place] of places.entries()) {
			const { share, size: tile } = tilePart(place, image);
			const wish = { quality: TILE_QUALITY };
			const drawn = await source.drawJpeg(1, within(view, share), tile, wish);
			if (signal.aborted || !drawn.ok) return kept;
			batch.push([`${place.zoom}/${place.column}/${place.row}`, drawn.value.file]);
			ondone((index + 1) / places.length);
			if (batch.length < BATCH && index + 1 < places.length) continue;
			if (!(await store.keep(batch))) return kept;
			kept += batch.length;
			batch = [];
		}
		return kept;
	} finally {
		await store.close();
	}
}
