import type { PaperName, PdfFonts } from './pdf/sheet.ts';
import type { SavingsModel } from './savings-model.ts';

interface SavingsExporter {
	readonly fileName: string;
	readonly fileEnding: string;
	readonly mediaType: string;
	build(
		model: SavingsModel,
		settings: { readonly paper: PaperName; readonly fonts: () => PdfFonts | Promise<PdfFonts> }
	): Promise<Uint8Array<ArrayBuffer>>;
}

/** Every way to hand the savings report over, heavy parts loaded when used. */
export const SAVINGS_EXPORTERS = {
	pdf: {
		fileName: 'savings-report',
		fileEnding: 'pdf',
		mediaType: 'application/pdf',
		async build(model, { paper, fonts }) {
			const [{ buildSavingsPdf }, faces] = await Promise.all([
				import('./pdf/savings-pdf.ts'),
				fonts()
			]);
			return buildSavingsPdf(model, { fonts: faces, paper });
		}
	}
} as const satisfies Record<string, SavingsExporter>;
