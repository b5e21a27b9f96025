import type { Survey } from '#lib/core/survey/schema.ts';
import { refuse } from '#lib/core/units/result.ts';
import type { Asked, TrialReply, TrialRequest } from './trials.worker.ts';

/** The newest answers, by kind of question. */
type Answers = { readonly [Reply in TrialReply as Reply['kind']]?: Reply['answer'] };

interface Question {
	readonly survey: Survey;
	readonly roundId: string;
	readonly asked: Asked;
}

/**
 * Works out beside the page what a change would come to. While one question is answered only the
 * newest of each kind waits, so a slider that is dragged is followed and never queued up.
 */
export class Trials {
	/** Each answer stays until the next of its kind is there. */
	answers = $state.raw<Answers>({});
	/** Whether something that was asked is not answered yet. */
	working = $state(false);

	#worker: Worker | undefined;
	#busy = false;
	#sent: Survey | undefined;
	/** Never read by the page. */
	readonly #waiting: Partial<Record<Asked['kind'], Question>> = {};

	/** @param survey plain data, as `OpenSurvey` holds it: not a state proxy, which cannot be posted */
	ask(survey: Survey, roundId: string, asked: Asked): void {
		this.#waiting[asked.kind] = { survey, roundId, asked };
		this.working = true;
		this.#next();
	}

	/** Lets the worker go, when the survey is closed. */
	close(): void {
		this.#worker?.terminate();
		this.#worker = undefined;
		this.#sent = undefined;
		this.#busy = false;
		this.working = false;
	}

	#next(): void {
		const [question] = Object.values(this.#waiting);
		if (this.#busy || !question) return;
		const { survey, roundId, asked } = question;
		delete this.#waiting[asked.kind];
		this.#busy = true;
		const worker = (this.#worker ??= this.#start());
		const news = survey === this.#sent ? undefined : survey;
		worker.postMessage({ survey: news, roundId, asked } satisfies TrialRequest);
		this.#sent = survey;
	}

	#start(): Worker {
		const worker = new Worker(
			// eslint-disable-next-line svelte/prefer-svelte-reactivity -- an address that never changes; Vite finds the worker by this form
			new URL('./trials.worker.ts', import.meta.url),
			{ type: 'module' }
		);
		worker.onmessage = ({ data }: MessageEvent<TrialReply>) => {
			// What a worker said before it was let go may still be on its way.
			if (this.#worker !== worker) return;
			this.answers = { ...this.answers, [data.kind]: data.answer };
			this.#busy = false;
			this.working = Object.keys(this.#waiting).length > 0;
			this.#next();
		};
		worker.onerror = () => {
			this.close();
			this.answers = { 'what-if': refuse('trial-worker-failed') };
		};
		return worker;
	}
}
