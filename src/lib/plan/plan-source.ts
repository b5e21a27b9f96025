import type { Result } from '#lib/core/units/result.ts';
import type { Size, View } from './view.ts';

/** A file that plans can be cut from, open; it holds memory until it is closed. */
export interface PlanSource {
	readonly bytes: Uint8Array<ArrayBuffer>;
	readonly mediaType: string;
	readonly pageCount: number;
	/** Lines and letters, drawn as fine as is asked for. */
	readonly vector: boolean;
	/** A page's size as it stands upright by its own account; `page` counts from 1. */
	pageSize(page: number): Promise<Result<Size>>;
	/** Draws a view of a page on white; whoever asked closes the picture. */
	draw(page: number, view: View, size: Size): Promise<Result<ImageBitmap>>;
	close(): void;
}
