import * as pdfjs from 'pdfjs-dist';
import workerAddress from 'pdfjs-dist/build/pdf.worker.min.mjs?url';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { paintJpeg } from './paint-jpeg.ts';
import type { JpegPicture, JpegWish, PlanSource } from './plan-source.ts';
import { fitted, type Size, type View } from './view.ts';

pdfjs.GlobalWorkerOptions.workerSrc = workerAddress;

/** What a PDF may leave out: the faces that every reader has, and decoders of scanned pages. */
const ADDRESSES = import.meta.glob<string>(
	[
		'/node_modules/pdfjs-dist/standard_fonts/*.{pfb,ttf}',
		'/node_modules/pdfjs-dist/wasm/{jbig2,openjpeg}.wasm'
	],
	{ query: '?url', import: 'default', eager: true }
);

/** Gives pdf.js its data files under the names that the build gave them, so that they are kept offline. */
class KeptFiles {
	async fetch({ filename }: { filename: string }): Promise<Uint8Array> {
		const found = Object.entries(ADDRESSES).find(([path]) => path.endsWith(`/${filename}`));
		if (!found) throw new Error(`no file ${filename}`);
		return new Uint8Array(await (await fetch(found[1])).arrayBuffer());
	}
}

/** Without an end within this many last bytes a PDF was cut short. */
const TAIL_BYTES = 2048;
/** Pictures inside a page that are larger than this are left out, px. */
const MOST_PICTURE_PIXELS = 120e6;

/**
 * @param signal gives it up
 * @returns refusal `pdf-locked` or `pdf-unreadable`
 */
export async function openPdf(
	bytes: Uint8Array<ArrayBuffer>,
	signal?: AbortSignal
): Promise<Result<PlanSource>> {
	const tail = String.fromCharCode(...bytes.subarray(-TAIL_BYTES));
	if (!tail.includes('%%EOF')) return refuse('pdf-unreadable');
	const loading = pdfjs.getDocument({
		data: bytes.slice(), // pdf.js takes the buffer for itself.
		BinaryDataFactory: KeptFiles,
		useWorkerFetch: false,
		// The same letters on every device.
		useSystemFonts: false,
		disableWorkerRendering: true,
		maxImageSize: MOST_PICTURE_PIXELS,
		verbosity: 0
	});
	signal?.addEventListener('abort', () => void loading.destroy());
	try {
		return ok(new PdfSource(bytes, loading, await loading.promise));
	} catch (error) {
		void loading.destroy();
		const locked = error instanceof Error && error.name === 'PasswordException';
		return refuse(locked ? 'pdf-locked' : 'pdf-unreadable');
	}
}

class PdfSource implements PlanSource {
	readonly mediaType = 'application/pdf';
	readonly vector = true;
	readonly bytes: Uint8Array<ArrayBuffer>;
	readonly #loading: pdfjs.PDFDocumentLoadingTask;
	readonly #document: pdfjs.PDFDocumentProxy;
	/** Pages are drawn one after the other: two at once need twice the memory. */
	#queue: Promise<unknown> = Promise.resolve();

	constructor(
		bytes: Uint8Array<ArrayBuffer>,
		loading: pdfjs.PDFDocumentLoadingTask,
		document: pdfjs.PDFDocumentProxy
	) {
		this.bytes = bytes;
		this.#loading = loading;
		this.#document = document;
	}

	get pageCount(): number {
		return this.#document.numPages;
	}

	/** Points have no pixels: the size that fills what one canvas may hold. */
	async pageSize(page: number): Promise<Result<Size>> {
		try {
			const { width, height } = (await this.#document.getPage(page)).getViewport({ scale: 1 });
			if (!(width > 0 && height > 0)) return refuse('pdf-page-not-drawn', { page });
			const large = 1e6 / Math.max(width, height);
			return ok(fitted({ widthPx: width * large, heightPx: height * large }));
		} catch {
			return refuse('pdf-page-not-drawn', { page });
		}
	}

	draw(page: number, view: View, size: Size): Promise<Result<ImageBitmap>> {
		const drawn = this.#queue.then(() => this.#draw(page, view, size));
		this.#queue = drawn;
		return drawn;
	}

	async drawJpeg(
		page: number,
		view: View,
		size: Size,
		wish: JpegWish
	): Promise<Result<JpegPicture>> {
		const drawn = await this.draw(page, view, size);
		return drawn.ok ? paintJpeg(drawn.value, wish) : drawn;
	}

	close(): void {
		void this.#loading.destroy();
	}

	async #draw(
		number: number,
		{ quarterTurns, crop }: View,
		{ widthPx, heightPx }: Size
	): Promise<Result<ImageBitmap>> {
		const canvas = document.createElement('canvas');
		try {
			const page = await this.#document.getPage(number);
			const rotation = (page.rotate + 90 * quarterTurns) % 360;
			const plain = page.getViewport({ scale: 1, rotation });
			const scale = widthPx / (crop.width * plain.width);
			canvas.width = widthPx;
			canvas.height = heightPx;
			const viewport = page.getViewport({
				scale,
				rotation,
				offsetX: -crop.x * plain.width * scale,
				offsetY: -crop.y * plain.height * scale
			});
			await page.render({ canvas, viewport, background: 'white' }).promise;
			page.cleanup();
			return ok(await createImageBitmap(canvas));
		} catch {
			return refuse('pdf-page-not-drawn', { page: number });
		} finally {
			// Some browsers keep a canvas's memory until it is made empty.
			canvas.width = canvas.height = 0;
		}
	}
}
