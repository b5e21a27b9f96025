import type { Corners } from '#lib/core/survey/straighten.ts';
import type { Result } from '#lib/core/units/result.ts';
import type { Size, View } from './view.ts';

/** A picture as a file, and how large it is. */
export interface JpegPicture {
	readonly file: Blob;
	readonly widthPx: number;
	readonly heightPx: number;
}

export interface JpegWish {
	readonly quality: number;
	/** Where the corners of a photographed sheet are, in shares of the picture. */
	readonly corners?: Corners | undefined;
}

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
	/** The same as a file. */
	drawJpeg(page: number, view: View, size: Size, wish: JpegWish): Promise<Result<JpegPicture>>;
	close(): void;
}
