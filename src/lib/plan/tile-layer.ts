import * as L from 'leaflet';

/** Side of one tile, px. */
export const TILE_PX = 512;

/** A closer look at a plan, in tiles: at zoom 0 one pixel of a tile is one of the plan's picture. */
export interface PlanTiles {
	readonly widthPx: number;
	readonly heightPx: number;
	/** The zoom at which one pixel of a tile is one of the original. */
	readonly finest: number;
	/**
	 * Paints a tile; it may take its time, and is told when nobody looks any more.
	 * @returns the picture, to be closed by whoever asked; nothing where the tile is not there
	 */
	draw(tile: TilePlace, signal: AbortSignal): Promise<ImageBitmap | undefined>;
	/** Lets go of what it holds; it is opened again when a tile is asked for. */
	close(): void;
}

export interface TilePlace {
	readonly zoom: number;
	readonly column: number;
	readonly row: number;
}

/** Shows tiles over the plan's picture from the zoom at which that alone would be blurred. */
export function tileLayer(map: L.Map, tiles: PlanTiles): () => void {
	const watched = new Map<HTMLElement, AbortController>();
	const Layer = L.GridLayer.extend({
		createTile(coords: L.Coords, done: L.DoneCallback): HTMLElement {
			const canvas = document.createElement('canvas');
			const stop = new AbortController();
			watched.set(canvas, stop);
			const place = { zoom: coords.z, column: coords.x, row: coords.y };
			void tiles.draw(place, stop.signal).then(
				(picture) => {
					watched.delete(canvas);
					if (picture && !stop.signal.aborted) {
						canvas.width = canvas.height = TILE_PX;
						canvas.getContext('2d')?.drawImage(picture, 0, 0);
					}
					picture?.close();
					done(undefined, canvas);
				},
				() => done(undefined, canvas) // The picture below still shows the place.
			);
			return canvas;
		}
	}) as unknown as new (options: L.GridLayerOptions) => L.GridLayer;
	const layer = new Layer({
		tileSize: TILE_PX,
		minZoom: 1,
		minNativeZoom: 1,
		maxNativeZoom: tiles.finest,
		bounds: L.latLngBounds([-tiles.heightPx, 0], [0, tiles.widthPx]),
		updateWhenZooming: false,
		keepBuffer: 1,
		zIndex: 2
	});
	layer.on('tileunload', ({ tile }: { tile: HTMLElement }) => {
		watched.get(tile)?.abort();
		watched.delete(tile);
		if (tile instanceof HTMLCanvasElement) tile.width = tile.height = 0;
	});
	layer.addTo(map);
	return () => {
		layer.remove();
		tiles.close();
	};
}
