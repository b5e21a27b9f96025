import { firstOrder, type FirstOrderTotals } from '#lib/core/weigh/uncertainty/first-order.ts';
import { uncertaintyModel } from '#lib/core/weigh/uncertainty/model.ts';
import {
	totalSpreads,
	uncertaintyResult,
	type UncertaintyResult,
	type UncertaintyTotals
} from '#lib/core/weigh/uncertainty/result.ts';
import { startRun, type RunOptions } from '#lib/core/weigh/uncertainty/run.ts';
import type { SharedErrors } from '#lib/core/weigh/uncertainty/shared-errors.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import type { Refusal } from '#lib/core/units/result.ts';

/** What is asked of the worker: one round of a survey. All of it is plain data. */
export interface UncertaintyRequest {
	readonly survey: Survey;
	readonly roundId: string;
	readonly errors: SharedErrors;
	readonly options: RunOptions;
	/** The totals are all that is wanted: leaks are not put in order, which takes half the time. */
	readonly totalsOnly?: boolean;
}

export type UncertaintyReply =
	| { readonly kind: 'progress'; readonly share: number }
	| {
			readonly kind: 'done';
			readonly result: UncertaintyResult;
			readonly firstOrder: FirstOrderTotals;
	  }
	| { readonly kind: 'totals'; readonly totals: UncertaintyTotals }
	| { readonly kind: 'refused'; readonly refusal: Refusal };

/** Leak-draws between two words of progress: some 10 ms. */
const SLICE = 200_000;

/** Answers a request, telling how far it has come. */
function answer(request: UncertaintyRequest, tell: (reply: UncertaintyReply) => void): void {
	const model = uncertaintyModel(request.survey, request.roundId, request.errors);
	if (!model.ok) return tell({ kind: 'refused', refusal: model.error });
	const started = startRun(model.value, { ...request.options, ranked: !request.totalsOnly });
	if (!started.ok) return tell({ kind: 'refused', refusal: started.error });
	const run = started.value;
	const draws = Math.ceil(SLICE / Math.max(1, model.value.leakIds.length));
	while (!run.finished) {
		run.step(Math.min(draws, 1000));
		tell({ kind: 'progress', share: run.progress });
	}
	if (request.totalsOnly) return tell({ kind: 'totals', totals: totalSpreads(run) });
	tell({ kind: 'done', result: uncertaintyResult(run), firstOrder: firstOrder(model.value) });
}

addEventListener('message', (event: MessageEvent<UncertaintyRequest>) => {
	answer(event.data, (reply) => postMessage(reply));
});
