import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { currentLanguage } from '#lib/words/language.ts';
import { readerLocale } from '#lib/words/locale.ts';
import type { PrintingReply, PrintingRequest, Reader } from './printing.worker.ts';

export interface Printed {
	readonly bytes: Uint8Array<ArrayBuffer>;
	/** Characters that the print's font lacks. */
	readonly missingGlyphs: readonly string[];
}

/**
 * Makes pages beside the screen, which stays free meanwhile.
 * @param tell how far it is, 0 to 1
 * @param stop ends the work at once
 * @returns nothing when it was stopped
 */
export function printBeside(
	request: PrintingRequest,
	tell: (done: number) => void,
	stop: AbortSignal
): Promise<Result<Printed> | undefined> {
	return new Promise((settle) => {
		if (stop.aborted) return settle(undefined);
		const worker = new Worker(new URL('./printing.worker.ts', import.meta.url), {
			type: 'module'
		});
		const finish = (outcome: Result<Printed> | undefined) => {
			worker.terminate();
			settle(outcome);
		};
		stop.addEventListener('abort', () => finish(undefined), { once: true });
		worker.onerror = () => finish(refuse('printing-worker-failed'));
		worker.onmessage = ({ data }: MessageEvent<PrintingReply>) => {
			if (data.kind === 'progress') tell(data.done);
			else if (data.kind === 'refused') finish({ ok: false, error: data.refusal });
			else finish(ok({ bytes: data.bytes, missingGlyphs: data.missingGlyphs }));
		};
		const reader: Reader = { language: currentLanguage(), locale: readerLocale() };
		worker.postMessage({ request, reader });
	});
}
