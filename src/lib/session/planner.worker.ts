import loadHighs from 'highs';
import type { PlanProblem } from '#lib/core/mend/plan/problem.ts';
import type { FoundPlan } from '#lib/core/mend/plan/proposal.ts';
import {
	exactPlan,
	moreForParts,
	oneHourMore,
	quickPlan,
	type SolveLimits
} from './plan-solver.ts';

/** What is asked of the worker. All of it is plain data. */
export interface PlannerRequest {
	readonly problem: PlanProblem;
	/** Where the solver's code lies: known to the page, which keeps it for use without a network. */
	readonly solverUrl: string;
	readonly limits: SolveLimits;
}

export type PlannerReply =
	/** A plan that can be shown already, while the best one is looked for. */
	| { readonly kind: 'quick'; readonly found: FoundPlan }
	| { readonly kind: 'proving'; readonly gap: number }
	| { readonly kind: 'hour-more'; readonly found: FoundPlan }
	| { readonly kind: 'done'; readonly found: FoundPlan }
	| { readonly kind: 'no-solver' };

async function answer(
	{ problem, solverUrl, limits }: PlannerRequest,
	tell: (reply: PlannerReply) => void
): Promise<void> {
	const quick = quickPlan(problem);
	tell({ kind: 'quick', found: quick });
	try {
		const highs = await loadHighs({ locateFile: () => solverUrl });
		const found = exactPlan(highs, problem, quick, limits, (gap) => {
			tell({ kind: 'proving', gap });
		});
		tell({ kind: 'hour-more', found });
		const hourBuysMinor = oneHourMore(highs, problem, found, limits);
		const budgetBuys = moreForParts(highs, problem, found, limits);
		tell({ kind: 'done', found: { ...found, hourBuysMinor, ...(budgetBuys && { budgetBuys }) } });
	} catch {
		tell({ kind: 'no-solver' });
	}
}

addEventListener('message', (event: MessageEvent<PlannerRequest>) => {
	void answer(event.data, (reply) => postMessage(reply));
});
