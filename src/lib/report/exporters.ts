import { ok, type Result } from '../core/units/result.ts';
import { fixListCsv } from './csv.ts';
import type { ReportModel } from './model.ts';
import type { PlanImage } from './pdf/plan-page.ts';
import type { PaperName, PdfFonts } from './pdf/sheet.ts';
import type { WorkOrderStyle } from './work-orders.ts';

export interface ExportSettings {
	/** BCP 47: the decimal mark and delimiter of tables; the reader's own when absent. */
	readonly locale?: string | undefined;
	readonly paper: PaperName;
	/** Pictures of plans by the keys of their sheets. */
	readonly planImages: ReadonlyMap<string, PlanImage>;
	/** Small pictures of jobs: photographs by SHA-256, cuts of plans by the key of the spot. */
	readonly photos?: ReadonlyMap<string, PlanImage> | undefined;
	/** Photos as they were kept, by SHA-256: for what packs them. */
	readonly originals?: ((sha256: string) => Promise<Uint8Array | undefined>) | undefined;
	/** Fetched only by what prints: `loadPdfFonts` in the browser, `readPdfFonts` in Node. */
	readonly fonts: () => PdfFonts | Promise<PdfFonts>;
	/** How the site's own system wants its work orders. */
	readonly workOrders?: WorkOrderStyle | undefined;
	/** Told how far it is, 0 to 1, by what takes long. */
	readonly tell?: ((done: number) => void) | undefined;
}

/** One way to hand the fix list over. */
export interface Exporter {
	/** Put between the name of the site and the ending. */
	readonly fileName: string;
	readonly fileEnding: string;
	readonly mediaType: string;
	/** Refused where it could not be handed over whole. */
	build(model: ReportModel, settings: ExportSettings): Promise<Result<Uint8Array<ArrayBuffer>>>;
}

const utf8 = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

/**
 * Every way to hand the fix list over, heavy parts loaded when used. Screens and the command line
 * come through here; a test takes each of them and looks for the cautions of every job.
 */
export const FIX_LIST_EXPORTERS = {
	pdf: {
		fileName: 'fix-list',
		fileEnding: 'pdf',
		mediaType: 'application/pdf',
		async build(model, { fonts, paper, planImages, photos, tell }) {
			const [{ buildFixListPdf }, faces] = await Promise.all([
				import('./pdf/fix-list-pdf.ts'),
				fonts()
			]);
			const assets = { fonts: faces, paper, planImages, tell };
			return ok(buildFixListPdf(model, { ...assets, ...(photos && { photos }) }));
		}
	},
	tags: {
		fileName: 'tags',
		fileEnding: 'pdf',
		mediaType: 'application/pdf',
		async build(model, { fonts, paper, tell }) {
			const [{ buildTagsPdf }, faces] = await Promise.all([import('./pdf/tags-pdf.ts'), fonts()]);
			return ok(buildTagsPdf(model, { fonts: faces, paper, tell }));
		}
	},
	xlsx: {
		fileName: 'fix-list',
		fileEnding: 'xlsx',
		mediaType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
		async build(model) {
			const { fixListXlsx } = await import('./xlsx.ts');
			return ok(await fixListXlsx(model));
		}
	},
	csv: {
		fileName: 'fix-list',
		fileEnding: 'csv',
		mediaType: 'text/csv;charset=utf-8',
		build: (model, { locale }) => Promise.resolve(ok(utf8(fixListCsv(model, { locale }))))
	},
	workOrders: {
		fileName: 'work-orders',
		fileEnding: 'csv',
		mediaType: 'text/csv;charset=utf-8',
		async build(model, { workOrders }) {
			const { workOrderCsv } = await import('./work-orders.ts');
			const text = workOrderCsv(model, workOrders);
			return text.ok ? ok(utf8(text.value)) : text;
		}
	},
	workOrderPack: {
		fileName: 'work-orders',
		fileEnding: 'zip',
		mediaType: 'application/zip',
		async build(model, { workOrders, originals = () => Promise.resolve(undefined) }) {
			const { workOrderPack } = await import('./work-order-pack.ts');
			return workOrderPack(model, workOrders, originals);
		}
	},
	calendar: {
		fileName: 'windows',
		fileEnding: 'ics',
		mediaType: 'text/calendar;charset=utf-8',
		async build(model) {
			const { windowsCalendar } = await import('./calendar.ts');
			return ok(utf8(windowsCalendar(model)));
		}
	}
} as const satisfies Record<string, Exporter>;
export type ExportKind = keyof typeof FIX_LIST_EXPORTERS;
