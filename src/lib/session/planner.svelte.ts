import solverUrl from 'highs/runtime?url';
import type { PlanProblem } from '#lib/core/mend/plan/problem.ts';
import type { FoundPlan } from '#lib/core/mend/plan/proposal.ts';
import { quickPlan, type SolveLimits } from './plan-solver.ts';
import type { PlannerReply, PlannerRequest } from './planner.worker.ts';

/** A plan as good as proved to a hundredth of a percent is looked for, but not for longer than this. */
const LIMITS: SolveLimits = { gap: 1e-4, seconds: 20 };

/**
 * What the planner is doing: `first` before there is any plan, `proving` while the best one is looked for,
 * `hour-more` while it is asked what more time would buy.
 */
export type PlannerPhase = 'idle' | 'first' | 'proving' | 'hour-more' | 'done';

/** Plans the mending beside the page. Whatever fails, a quick plan is there. */
export class Planner {
	phase = $state<PlannerPhase>('idle');
	/** Share of the worth that may still be missed, while proving. */
	gap = $state<number>();
	/** The best plan so far. */
	found = $state.raw<FoundPlan>();
	/** The solver did not run: the plan is the quick one. */
	withoutSolver = $state(false);

	#worker: Worker | undefined;

	get busy(): boolean {
		return this.phase === 'first' || this.phase === 'proving' || this.phase === 'hour-more';
	}

	/** @param problem plain data, not a state proxy, which cannot be posted */
	start(problem: PlanProblem, limits = LIMITS, solver = solverUrl): void {
		this.#stop();
		this.found = undefined;
		this.gap = undefined;
		this.withoutSolver = false;
		this.phase = 'first';
		let worker: Worker;
		try {
			worker = this.#worker = new Worker(
				// eslint-disable-next-line svelte/prefer-svelte-reactivity -- an address that never changes; Vite finds the worker by this form
				new URL('./planner.worker.ts', import.meta.url),
				{ type: 'module' }
			);
		} catch {
			this.#planHere(problem);
			return;
		}
		worker.onmessage = (event: MessageEvent<PlannerReply>) => {
			// What a worker said before it was ended may still be on its way.
			if (this.#worker === worker) this.#take(event.data);
		};
		worker.onerror = () => {
			if (this.#worker === worker) this.#planHere(problem);
		};
		worker.postMessage({ problem, solverUrl: solver, limits } satisfies PlannerRequest);
	}

	/** Stops at once; the best plan so far stays. */
	cancel(): void {
		if (!this.busy) return;
		this.#stop();
		this.phase = this.found ? 'done' : 'idle';
	}

	/** Lets go of the plan too, when it was taken or the survey is closed. */
	close(): void {
		this.#stop();
		this.phase = 'idle';
		this.found = undefined;
	}

	#take(reply: PlannerReply): void {
		switch (reply.kind) {
			case 'quick':
				this.found = reply.found;
				this.phase = 'proving';
				return;
			case 'proving':
				this.gap = reply.gap;
				return;
			case 'hour-more':
				this.found = reply.found;
				this.phase = 'hour-more';
				return;
			case 'done':
				this.found = reply.found;
				this.phase = 'done';
				this.#stop();
				return;
			case 'no-solver':
				this.#without();
		}
	}

	/** Without a worker the quick plan is made on the page: part of a second. */
	#planHere(problem: PlanProblem): void {
		this.found ??= quickPlan(problem);
		this.#without();
	}

	#without(): void {
		this.#stop();
		this.withoutSolver = true;
		this.phase = 'done';
	}

	#stop(): void {
		this.#worker?.terminate();
		this.#worker = undefined;
	}
}
