import type { Photos } from './pdf/savings-evidence-pages.ts';
import type { PaperName, PdfFonts } from './pdf/sheet.ts';
import type { SavingsModel } from './savings-model.ts';

export interface SavingsSettings {
	readonly paper: PaperName;
	readonly fonts: () => PdfFonts | Promise<PdfFonts>;
	/** Small pictures of the evidence by SHA-256, as the model names them. */
	readonly photos: Photos;
	/** Told how far it is, 0 to 1. */
	readonly tell?: ((done: number) => void) | undefined;
}

interface SavingsExporter {
	readonly fileName: string;
	readonly fileEnding: string;
	readonly mediaType: string;
	build(model: SavingsModel, settings: SavingsSettings): Promise<Uint8Array<ArrayBuffer>>;
}

/** Every way to hand the savings report over, heavy parts loaded when used. */
export const SAVINGS_EXPORTERS = {
	pdf: {
		fileName: 'savings-report',
		fileEnding: 'pdf',
		mediaType: 'application/pdf',
		async build(model, { paper, fonts, photos, tell }) {
			const [{ buildSavingsPdf }, faces] = await Promise.all([
				import('./pdf/savings-pdf.ts'),
				fonts()
			]);
			return buildSavingsPdf(model, { fonts: faces, paper, photos, tell });
		}
	}
} as const satisfies Record<string, SavingsExporter>;
