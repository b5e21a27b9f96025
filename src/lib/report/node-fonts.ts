import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { PdfFonts } from './pdf/sheet.ts';

/** The faces of printed reports, read from the installed packages; for Node, not for the browser. */
export function readPdfFonts(): PdfFonts {
	const { resolve } = createRequire(import.meta.url);
	const face = (name: string) =>
		new Uint8Array(readFileSync(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)));
	return { regular: face('DejaVuSansCondensed'), bold: face('DejaVuSansCondensed-Bold') };
}
