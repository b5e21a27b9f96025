/** A box in shares of a page's width and height. */
export interface Box {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}

export interface Size {
	readonly widthPx: number;
	readonly heightPx: number;
}

/** What is looked at of a page: turned upright first, then cut. */
export interface View {
	readonly quarterTurns: 0 | 1 | 2 | 3;
	/** In shares of the page once it is turned. */
	readonly crop: Box;
}

export const WHOLE: Box = { x: 0, y: 0, width: 1, height: 1 };

/** What one canvas may hold on the smallest devices, px. */
export const MOST_CANVAS_PIXELS = 16_700_000;
/** The longest side of a picture that plans are shown from, px. */
export const MOST_SIDE_PX = 4096;

function turnedSize({ widthPx, heightPx }: Size, quarterTurns: number): Size {
	return quarterTurns % 2 === 0 ? { widthPx, heightPx } : { widthPx: heightPx, heightPx: widthPx };
}

/** The size of what a view shows, at a page's own fineness. */
export function viewSize(page: Size, { quarterTurns, crop }: View): Size {
	const turned = turnedSize(page, quarterTurns);
	return {
		widthPx: Math.max(1, Math.round(turned.widthPx * crop.width)),
		heightPx: Math.max(1, Math.round(turned.heightPx * crop.height))
	};
}

/** The same shape, small enough for a canvas; never larger than it is. */
export function fitted(
	{ widthPx, heightPx }: Size,
	mostPixels = MOST_CANVAS_PIXELS,
	mostSide = MOST_SIDE_PX
): Size {
	const scale = Math.min(
		1,
		mostSide / Math.max(widthPx, heightPx),
		Math.sqrt(mostPixels / (widthPx * heightPx))
	);
	return {
		widthPx: Math.max(1, Math.floor(widthPx * scale)),
		heightPx: Math.max(1, Math.floor(heightPx * scale))
	};
}

/** A part of a view, as a view of the page: `part` is in shares of what the view shows. */
export function within({ quarterTurns, crop }: View, part: Box): View {
	return {
		quarterTurns,
		crop: {
			x: crop.x + part.x * crop.width,
			y: crop.y + part.y * crop.height,
			width: part.width * crop.width,
			height: part.height * crop.height
		}
	};
}

type Context = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** Paints a page so that the view fills the canvas. */
export function paintView(
	context: Context,
	page: CanvasImageSource,
	{ quarterTurns, crop }: View,
	size: Size
): void {
	const width = size.widthPx / crop.width;
	const height = size.heightPx / crop.height;
	context.imageSmoothingQuality = 'high';
	context.translate(-crop.x * width, -crop.y * height);
	// The page's own corner goes to where the turn brings it.
	if (quarterTurns === 1) context.translate(width, 0);
	if (quarterTurns === 2) context.translate(width, height);
	if (quarterTurns === 3) context.translate(0, height);
	context.rotate((quarterTurns * Math.PI) / 2);
	const [across, down] = quarterTurns % 2 === 0 ? [width, height] : [height, width];
	context.drawImage(page, 0, 0, across, down);
}
