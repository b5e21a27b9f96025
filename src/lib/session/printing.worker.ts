import type { Refusal } from '#lib/core/units/result.ts';
import { FIX_LIST_EXPORTERS, type Exporter, type ExportSettings } from '#lib/report/exporters.ts';
import { missingInReport } from '#lib/report/missing-in-report.ts';
import type { ReportModel } from '#lib/report/model.ts';
import type { PdfFonts } from '#lib/report/pdf/sheet.ts';

/** What is asked of the worker: plain data and bytes. */
export interface PrintingRequest {
	readonly what: 'pdf' | 'tags';
	readonly model: ReportModel;
	readonly settings: Pick<ExportSettings, 'paper' | 'planImages' | 'photos'>;
	readonly fonts: PdfFonts;
}

export type PrintingReply =
	| { readonly kind: 'progress'; readonly done: number }
	| {
			readonly kind: 'done';
			readonly bytes: Uint8Array<ArrayBuffer>;
			readonly missingGlyphs: readonly string[];
	  }
	| { readonly kind: 'refused'; readonly refusal: Refusal };

async function answer({ what, model, settings, fonts }: PrintingRequest): Promise<PrintingReply> {
	const exporter: Exporter = FIX_LIST_EXPORTERS[what];
	const built = await exporter.build(model, {
		...settings,
		fonts: () => fonts,
		tell: (done) => postMessage({ kind: 'progress', done } satisfies PrintingReply)
	});
	if (!built.ok) return { kind: 'refused', refusal: built.error };
	return { kind: 'done', bytes: built.value, missingGlyphs: missingInReport(model, fonts) };
}

addEventListener('message', (event: MessageEvent<PrintingRequest>) => {
	answer(event.data).then(
		(reply) => postMessage(reply, { transfer: reply.kind === 'done' ? [reply.bytes.buffer] : [] }),
		() =>
			postMessage({
				kind: 'refused',
				refusal: { code: 'printing-worker-failed' }
			} satisfies PrintingReply)
	);
});
