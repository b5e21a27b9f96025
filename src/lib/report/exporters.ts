import { fixListCsv } from './csv.ts';
import type { ReportModel } from './model.ts';
import type { PlanImage } from './pdf/plan-page.ts';
import type { PaperName, PdfFonts } from './pdf/sheet.ts';

export interface ExportSettings {
	/** BCP 47: the decimal mark and delimiter of tables; the reader's own when absent. */
	readonly locale?: string | undefined;
	readonly paper: PaperName;
	/** Pictures of plans by SHA-256, as the model names them. */
	readonly planImages: ReadonlyMap<string, PlanImage>;
	/** Fetched only by what prints: `loadPdfFonts` in the browser, `readPdfFonts` in Node. */
	readonly fonts: () => PdfFonts | Promise<PdfFonts>;
}

/** One way to hand the fix list over. */
export interface Exporter {
	readonly fileEnding: string;
	readonly mediaType: string;
	build(model: ReportModel, settings: ExportSettings): Promise<Uint8Array<ArrayBuffer>>;
}

/**
 * Every way to hand the fix list over, heavy parts loaded when used. Screens and the command line
 * come through here; a test takes each of them and looks for the cautions of every job.
 */
export const FIX_LIST_EXPORTERS = {
	pdf: {
		fileEnding: 'pdf',
		mediaType: 'application/pdf',
		async build(model, { fonts, paper, planImages }) {
			const [{ buildFixListPdf }, faces] = await Promise.all([
				import('./pdf/fix-list-pdf.ts'),
				fonts()
			]);
			return buildFixListPdf(model, { fonts: faces, paper, planImages });
		}
	},
	csv: {
		fileEnding: 'csv',
		mediaType: 'text/csv;charset=utf-8',
		build: (model, { locale }) =>
			Promise.resolve(new TextEncoder().encode(fixListCsv(model, { locale })))
	}
} as const satisfies Record<string, Exporter>;
