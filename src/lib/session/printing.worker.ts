import { ok, type Refusal, type Result } from '#lib/core/units/result.ts';
import { FIX_LIST_EXPORTERS, type Exporter, type ExportSettings } from '#lib/report/exporters.ts';
import { missingInReport } from '#lib/report/missing-in-report.ts';
import type { ReportModel } from '#lib/report/model.ts';
import { SAVINGS_EXPORTERS, type SavingsSettings } from '#lib/report/savings-exporters.ts';
import type { SavingsModel } from '#lib/report/savings-model.ts';
import type { PdfFonts } from '#lib/report/pdf/sheet.ts';
import { speak, type Language } from '#lib/words/language.ts';

/** What is asked of the worker: plain data and bytes. */
export type PrintingRequest = FixListRequest | SavingsRequest;

interface FixListRequest {
	readonly what: 'pdf' | 'tags';
	readonly model: ReportModel;
	readonly settings: Pick<ExportSettings, 'paper' | 'planImages' | 'photos'>;
	readonly fonts: PdfFonts;
}

interface SavingsRequest {
	readonly what: 'savings';
	readonly model: SavingsModel;
	readonly settings: Pick<SavingsSettings, 'paper' | 'photos'>;
	readonly fonts: PdfFonts;
}

/** Whom the pages are for: a worker begins in English, whatever the screen speaks. */
export interface Reader {
	readonly language: Language;
	readonly locale: string | undefined;
}

export type PrintingReply =
	| { readonly kind: 'progress'; readonly done: number }
	| {
			readonly kind: 'done';
			readonly bytes: Uint8Array<ArrayBuffer>;
			readonly missingGlyphs: readonly string[];
	  }
	| { readonly kind: 'refused'; readonly refusal: Refusal };

async function answer(request: PrintingRequest, reader: Reader): Promise<PrintingReply> {
	await speak(reader.language, reader.locale);
	const { model, fonts } = request;
	const built = await build(request);
	if (!built.ok) return { kind: 'refused', refusal: built.error };
	return { kind: 'done', bytes: built.value, missingGlyphs: missingInReport(model, fonts) };
}

async function build(request: PrintingRequest): Promise<Result<Uint8Array<ArrayBuffer>>> {
	const more = {
		fonts: () => request.fonts,
		tell: (done: number) => postMessage({ kind: 'progress', done } satisfies PrintingReply)
	};
	if (request.what === 'savings')
		return ok(await SAVINGS_EXPORTERS.pdf.build(request.model, { ...request.settings, ...more }));
	const exporter: Exporter = FIX_LIST_EXPORTERS[request.what];
	return exporter.build(request.model, { ...request.settings, ...more });
}

type Message = { readonly request: PrintingRequest; readonly reader: Reader };

addEventListener('message', ({ data }: MessageEvent<Message>) => {
	answer(data.request, data.reader).then(
		(reply) => postMessage(reply, { transfer: reply.kind === 'done' ? [reply.bytes.buffer] : [] }),
		() =>
			postMessage({
				kind: 'refused',
				refusal: { code: 'printing-worker-failed' }
			} satisfies PrintingReply)
	);
});
