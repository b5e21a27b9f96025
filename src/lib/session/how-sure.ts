import type { Survey } from '#lib/core/survey/schema.ts';
import type { UncertaintyTotals } from '#lib/core/weigh/uncertainty/result.ts';
import type { UncertaintyReply, UncertaintyRequest } from './uncertainty.worker.ts';

/**
 * How sure the totals of a round are, worked out beside the page with the draws that Weigh shows.
 * @param stop ends the work at once
 * @returns nothing when it was stopped, or where there is nothing to be sure of
 */
export function howSure(
	survey: Survey,
	roundId: string,
	stop: AbortSignal
): Promise<UncertaintyTotals | undefined> {
	return new Promise((settle) => {
		if (stop.aborted) return settle(undefined);
		const worker = new Worker(new URL('./uncertainty.worker.ts', import.meta.url), {
			type: 'module'
		});
		const finish = (totals: UncertaintyTotals | undefined) => {
			worker.terminate();
			settle(totals);
		};
		stop.addEventListener('abort', () => finish(undefined), { once: true });
		worker.onerror = () => finish(undefined);
		worker.onmessage = ({ data }: MessageEvent<UncertaintyReply>) => {
			if (data.kind === 'totals') finish(data.totals);
			else if (data.kind === 'refused') finish(undefined);
		};
		worker.postMessage({
			survey,
			roundId,
			errors: {},
			options: {},
			totalsOnly: true
		} satisfies UncertaintyRequest);
	});
}
