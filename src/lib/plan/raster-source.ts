import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { PlanSource } from './plan-source.ts';
import type { RasterAnswer, RasterRequest } from './raster.worker.ts';
import type { Size, View } from './view.ts';

/**
 * A photograph or scan, decoded and drawn in a worker, so that even a hundred megapixels do not hold
 * up the page; the worker, and the memory with it, ends when the source is closed.
 *
 * @param signal gives it up
 * @returns refusal `image-not-decoded`
 */
export async function openRaster(
	bytes: Uint8Array<ArrayBuffer>,
	mediaType: string,
	signal?: AbortSignal
): Promise<Result<PlanSource>> {
	const worker = new Worker(new URL('./raster.worker.ts', import.meta.url), { type: 'module' });
	const waiting = new Map<number, (answer: RasterAnswer) => void>();
	let last = 0;
	const fail = () => {
		for (const answer of waiting.values()) answer({ id: 0 });
		waiting.clear();
	};
	worker.onmessage = ({ data }: MessageEvent<RasterAnswer>) => {
		waiting.get(data.id)?.(data);
		waiting.delete(data.id);
	};
	worker.onerror = fail;
	const ask = (request: Omit<RasterRequest, 'id'>): Promise<RasterAnswer> =>
		new Promise((answer) => {
			last += 1;
			waiting.set(last, answer);
			worker.postMessage({ ...request, id: last } satisfies RasterRequest);
		});
	const close = () => {
		worker.terminate();
		fail();
	};

	// Decoding cannot be stopped, but the worker that does it can.
	signal?.addEventListener('abort', close);
	const { size } = await ask({ open: new Blob([bytes], { type: mediaType }) });
	if (!size) {
		close();
		return refuse('image-not-decoded');
	}
	return ok({
		bytes,
		mediaType,
		pageCount: 1,
		vector: false,
		pageSize: () => Promise.resolve(ok(size)),
		async draw(_page: number, view: View, wanted: Size) {
			const { picture } = await ask({ draw: { view, size: wanted } });
			return picture ? ok(picture) : refuse('image-not-decoded');
		},
		async drawJpeg(_page, view, wanted, wish) {
			const { jpeg, code } = await ask({ draw: { view, size: wanted, wish } });
			return jpeg ? ok(jpeg) : refuse(code ?? 'image-not-decoded');
		},
		close
	});
}
