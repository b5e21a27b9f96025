import { textsOf } from './model.ts';
import type { PdfFonts } from './pdf/sheet.ts';
import { charactersOf, missingGlyphs } from './true-type.ts';

/** Characters of a report that either face lacks; they would print as an empty box. */
export function missingInReport(model: object, fonts: PdfFonts): string[] {
	const text = textsOf(model).join(' ');
	const faces = [fonts.regular, fonts.bold].map(charactersOf);
	return [...new Set(faces.flatMap((face) => missingGlyphs(text, face)))];
}
