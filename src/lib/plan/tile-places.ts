import type { Plan } from '#lib/core/survey/schema.ts';
import { TILE_PX, type TilePlace } from './tile-layer.ts';
import { WHOLE, type Box, type Size, type View } from './view.ts';

/** Closer than this a plan is not looked at: the map's own limit. */
export const CLOSEST_ZOOM = 3;
export const TILE_QUALITY = 0.88;

/** The view that a stored plan was cut by; nothing for one that was straightened. */
export function viewOf({ original }: Pick<Plan, 'original'>): View | undefined {
	if (!original || original.corners) return undefined;
	return {
		quarterTurns: (original.quarterTurns ?? 0) as View['quarterTurns'],
		crop: original.crop ?? WHOLE
	};
}

/** What its tiles are kept under: the original, and how the plan was cut from it. */
export function tilesName({ sha256, page = 1 }: NonNullable<Plan['original']>, view: View): string {
	const { quarterTurns, crop } = view;
	return [sha256, page, quarterTurns, crop.x, crop.y, crop.width, crop.height].join(' ');
}

/**
 * Beyond this zoom a photograph has nothing more to show either.
 *
 * @param original its size, in whichever way it lies
 */
export function finestZoom(original: Size, { crop }: View, shown: Size): number {
	const pixels = original.widthPx * original.heightPx * crop.width * crop.height;
	const finer = Math.sqrt(pixels / (shown.widthPx * shown.heightPx));
	// A hundredth more than is shown is what rounding makes of the same fineness.
	return finer < 1.01 ? 0 : Math.min(CLOSEST_ZOOM, Math.ceil(Math.log2(finer)));
}

/** All tiles that show more than the plan's picture does. */
export function tilePlaces({ widthPx, heightPx }: Size, finest: number): TilePlace[] {
	const places: TilePlace[] = [];
	for (let zoom = 1; zoom <= finest; zoom++)
		for (let row = 0; row * TILE_PX < heightPx * 2 ** zoom; row++)
			for (let column = 0; column * TILE_PX < widthPx * 2 ** zoom; column++)
				places.push({ zoom, column, row });
	return places;
}

/** What a tile shows, in shares of the plan, and how large; tiles at the edge are smaller. */
export function tilePart(
	{ zoom, column, row }: TilePlace,
	{ widthPx, heightPx }: Size
): { readonly share: Box; readonly size: Size } {
	const [wide, high] = [widthPx * 2 ** zoom, heightPx * 2 ** zoom];
	const [left, top] = [column * TILE_PX, row * TILE_PX];
	const [width, height] = [Math.min(TILE_PX, wide - left), Math.min(TILE_PX, high - top)];
	return {
		share: { x: left / wide, y: top / high, width: width / wide, height: height / high },
		size: { widthPx: Math.max(1, Math.round(width)), heightPx: Math.max(1, Math.round(height)) }
	};
}
