import { getDocument, OPS, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPdf {
	/** The text of each page in the order of drawing, spaces collapsed. */
	readonly pages: readonly string[];
	readonly title: string;
	readonly language: string | undefined;
	readonly outline: readonly string[];
	/** Width and height of each page, mm. */
	readonly sizes: readonly (readonly [number, number])[];
}

/** Reads a PDF back with another library than the one that wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
	const task = getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false });
	const document: PDFDocumentProxy = await task.promise;
	const pages: string[] = [];
	const sizes: (readonly [number, number])[] = [];
	for (let number = 1; number <= document.numPages; number++) {
		const page = await document.getPage(number);
		const { items } = await page.getTextContent();
		pages.push(plain(items.map((item) => ('str' in item ? item.str : '')).join(' ')));
		const [, , width = 0, height = 0] = page.view;
		sizes.push([(width * 25.4) / 72, (height * 25.4) / 72]);
	}
	const { info } = await document.getMetadata();
	const { Title: title, Language: language } = info as { Title?: string; Language?: string };
	const outline = ((await document.getOutline()) ?? []).map((entry) => entry.title);
	await task.destroy();
	return { pages, sizes, title: title ?? '', language, outline };
}

export function plain(text: string): string {
	return text.replace(/\s+/g, ' ').trim();
}

/** A picture as it stands in a file, unpacked. */
export interface PdfPicture {
	readonly width: number;
	readonly height: number;
	/** Red, green and blue of a place, in shares of its width and height. */
	colourAt(x: number, y: number): readonly [number, number, number];
}

/** The pictures that the pages of a PDF show, in the order of drawing. */
export async function picturesOf(bytes: Uint8Array): Promise<PdfPicture[]> {
	const task = getDocument({
		data: bytes.slice(),
		verbosity: 0,
		isOffscreenCanvasSupported: false
	});
	const document = await task.promise;
	const found: PdfPicture[] = [];
	for (let number = 1; number <= document.numPages; number++) {
		const page = await document.getPage(number);
		const { fnArray, argsArray } = await page.getOperatorList();
		for (const [index, operator] of fnArray.entries()) {
			if (operator !== OPS.paintImageXObject) continue;
			const [name] = argsArray[index] as [string];
			const objects = name.startsWith('g_') ? page.commonObjs : page.objs;
			const { width, height, data } = await new Promise<Unpacked>((settle) => {
				objects.get(name, settle);
			});
			const channels = data.length / (width * height);
			found.push({
				width,
				height,
				colourAt(x, y) {
					const at = channels * (Math.floor(y * height) * width + Math.floor(x * width));
					return [data[at] ?? NaN, data[at + 1] ?? NaN, data[at + 2] ?? NaN];
				}
			});
		}
	}
	await task.destroy();
	return found;
}

interface Unpacked {
	readonly width: number;
	readonly height: number;
	readonly data: Uint8ClampedArray;
}
