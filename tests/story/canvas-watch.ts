import type { BrowserContext, Page } from 'playwright-core';

/** What a page and the worker that decodes for it had in their hands at once. */
export interface Seen {
	/** The largest canvas of either, px. */
	readonly largestCanvas: number;
	/** The longest task of the page's own thread, ms. */
	readonly longestTaskMs: number;
	/** Decoded pictures that nobody has closed yet. */
	readonly openPictures: number;
	/** Pixels in canvases that still hold some. */
	readonly heldPixels: number;
}

interface Watched extends Window {
	seen: { largest: number; longest: number; open: number; canvases: Set<WeakRef<AnyCanvas>> };
}
type AnyCanvas = HTMLCanvasElement | OffscreenCanvas;

/** Wraps how canvases and pictures are made; the worker gets the same words before its own. */
export async function watchCanvases(context: BrowserContext): Promise<void> {
	await context.addInitScript(inPage);
	await context.route(/raster\.worker[^/]*\.js$/u, async (route) => {
		const response = await route.fetch();
		await route.fulfill({ response, body: `(${inWorker.toString()})();${await response.text()}` });
	});
}

export function seen(page: Page): Promise<Seen> {
	return page.evaluate(() => {
		const { largest, longest, open, canvases } = (window as unknown as Watched).seen;
		const held = [...canvases].reduce((sum, canvas) => {
			const { width = 0, height = 0 } = canvas.deref() ?? {};
			return sum + width * height;
		}, 0);
		return {
			largestCanvas: largest,
			longestTaskMs: longest,
			openPictures: open,
			heldPixels: held
		};
	});
}

/** Forgets the largest and the longest so far. */
export function lookAnew(page: Page): Promise<void> {
	return page.evaluate(() => {
		const { seen } = window as unknown as Watched;
		seen.largest = seen.longest = 0;
	});
}

function inWorker(): void {
	const told = new BroadcastChannel('canvas-watch');
	const Whole = OffscreenCanvas;
	globalThis.OffscreenCanvas = class extends Whole {
		constructor(width: number, height: number) {
			super(width, height);
			told.postMessage(width * height);
		}
	};
}

function inPage(): void {
	const seen = { largest: 0, longest: 0, open: 0, canvases: new Set<WeakRef<AnyCanvas>>() };
	Object.assign(window, { seen });
	const known = new WeakSet<AnyCanvas>();
	const size = (canvas: AnyCanvas): void => {
		seen.largest = Math.max(seen.largest, canvas.width * canvas.height);
		if (known.has(canvas)) return;
		known.add(canvas);
		seen.canvases.add(new WeakRef(canvas));
	};
	new BroadcastChannel('canvas-watch').onmessage = ({ data }: MessageEvent<number>) => {
		seen.largest = Math.max(seen.largest, data);
	};
	for (const side of ['width', 'height']) {
		const own = Object.getOwnPropertyDescriptor(HTMLCanvasElement.prototype, side);
		Object.defineProperty(HTMLCanvasElement.prototype, side, {
			...own,
			set(this: HTMLCanvasElement, value: number) {
				own?.set?.call(this, value);
				size(this);
			}
		});
	}
	const Whole = OffscreenCanvas;
	window.OffscreenCanvas = class extends Whole {
		constructor(width: number, height: number) {
			super(width, height);
			size(this);
		}
	};
	const make = window.createImageBitmap.bind(window) as (
		...given: unknown[]
	) => Promise<ImageBitmap>;
	Object.assign(window, {
		async createImageBitmap(...given: unknown[]) {
			const picture = await make(...given);
			seen.open += 1;
			return picture;
		}
	});
	// Pictures that come from the worker are open too.
	const Maker = Worker;
	window.Worker = class extends Maker {
		constructor(address: string | URL, options?: WorkerOptions) {
			super(address, options);
			this.addEventListener('message', ({ data }: MessageEvent<{ picture?: unknown } | null>) => {
				if (data?.picture instanceof ImageBitmap) seen.open += 1;
			});
		}
	};
	const close = Object.getOwnPropertyDescriptor(ImageBitmap.prototype, 'close')
		?.value as () => void;
	ImageBitmap.prototype.close = function () {
		if (this.width > 0) seen.open -= 1;
		close.call(this);
	};
	new PerformanceObserver((list) => {
		for (const { duration } of list.getEntries()) seen.longest = Math.max(seen.longest, duration);
	}).observe({ type: 'longtask' });
}
