import type { Survey } from '#lib/core/survey/schema.ts';
import type { Refusal } from '#lib/core/units/result.ts';
import type { FirstOrderTotals } from '#lib/core/weigh/uncertainty/first-order.ts';
import type { UncertaintyResult } from '#lib/core/weigh/uncertainty/result.ts';
import type { RunOptions } from '#lib/core/weigh/uncertainty/run.ts';
import type { SharedErrors } from '#lib/core/weigh/uncertainty/shared-errors.ts';
import type { UncertaintyReply, UncertaintyRequest } from './uncertainty.worker.ts';

/** What the figures on screen were worked out from. */
export interface UncertaintyOutcome {
	readonly survey: Survey;
	readonly result: UncertaintyResult;
	readonly firstOrder: FirstOrderTotals;
}

/**
 * How sure the figures of a round are, worked out beside the page. A new start replaces one that is
 * running; the last outcome stays until the next is there, and says which survey it belongs to.
 */
export class Uncertainty {
	state = $state<'idle' | 'running' | 'done' | 'refused'>('idle');
	/** Share of the draws done, 0 to 1. */
	progress = $state(0);
	outcome = $state.raw<UncertaintyOutcome>();
	refusal = $state.raw<Refusal>();

	#worker: Worker | undefined;

	/** @param survey plain data, as `OpenSurvey` holds it: not a state proxy, which cannot be posted */
	start(
		survey: Survey,
		roundId: string,
		settings: { readonly errors?: SharedErrors; readonly options?: RunOptions } = {}
	): void {
		if (this.state === 'running') this.#stop();
		const worker = (this.#worker ??= new Worker(
			// eslint-disable-next-line svelte/prefer-svelte-reactivity -- an address that never changes; Vite finds the worker by this form
			new URL('./uncertainty.worker.ts', import.meta.url),
			{ type: 'module' }
		));
		this.state = 'running';
		this.progress = 0;
		this.refusal = undefined;
		worker.onmessage = (event: MessageEvent<UncertaintyReply>) => {
			// What a worker said before it was ended may still be on its way.
			if (this.#worker === worker) this.#take(event.data, survey);
		};
		worker.onerror = () => this.#refuse({ code: 'uncertainty-worker-failed' });
		const { errors = {}, options = {} } = settings;
		worker.postMessage({ survey, roundId, errors, options } satisfies UncertaintyRequest);
	}

	/** Stops at once; what was worked out before stays. */
	cancel(): void {
		if (this.state !== 'running') return;
		this.#stop();
		this.state = this.outcome ? 'done' : 'idle';
		this.progress = 0;
	}

	/** Lets the worker go, when the survey is closed. */
	close(): void {
		this.cancel();
		this.#stop();
	}

	#take(reply: UncertaintyReply, survey: Survey): void {
		switch (reply.kind) {
			case 'progress':
				this.progress = reply.share;
				return;
			case 'done':
				this.outcome = { survey, result: reply.result, firstOrder: reply.firstOrder };
				this.progress = 1;
				this.state = 'done';
				return;
			case 'refused':
				this.#refuse(reply.refusal);
				return;
			case 'totals':
				throw new RangeError('totals alone were not asked for');
		}
	}

	#refuse(refusal: Refusal): void {
		this.#stop();
		this.refusal = refusal;
		this.state = 'refused';
	}

	/** A worker in the middle of its draws hears nothing, so it is ended; the next start makes another. */
	#stop(): void {
		this.#worker?.terminate();
		this.#worker = undefined;
	}
}
