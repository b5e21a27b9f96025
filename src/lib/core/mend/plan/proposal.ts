import { find } from '../../survey/ids.ts';
import type { MendPlan, Survey } from '../../survey/schema.ts';
import { Filling } from './filling.ts';
import type { AskedPlan, NotAsked } from './plan-problem.ts';
import { partsMinor, spending, type Spending } from './planned-parts.ts';
import type { Assignment } from './problem.ts';
import { stopsOfWindow, type SectionStops } from './stops.ts';

/** Why a leak is in no window of a plan. */
export type LeftWhy = NotAsked | 'no-gain' | 'budget' | 'minutes';

/** What a solver gives back: plain data. */
export interface FoundPlan {
	readonly windowOf: Assignment;
	readonly foundBy: 'exact' | 'greedy';
	readonly worthMinor: number;
	readonly greedyWorthMinor: number;
	/** No plan is worth more than this; absent where none was proved. */
	readonly boundMinor?: number;
	/** What one more hour would buy, by window; absent where it was not tried. */
	readonly hourBuysMinor?: readonly (number | null)[];
	/** What more money for parts would buy; absent where it was not tried or not proved. */
	readonly budgetBuys?: BudgetBuys;
}

/** So much more for parts would save so much more until the horizon, minor units. METHOD P7. */
export interface BudgetBuys {
	readonly moreMinor: number;
	readonly worthMinor: number;
}

export interface ProposedWindow {
	readonly windowId: string;
	readonly stops: readonly SectionStops[];
	/** Of all people together, isolating, venting and restoring included. */
	readonly usedMinutes: number;
	readonly personMinutes: number;
	/** Of its repairs until the horizon, minor units; the window's own cost is not taken off. */
	readonly worthMinor: number;
	readonly costMinor: number;
	readonly partsMinor: number;
	readonly hourBuysMinor?: number;
}

export interface Proposal {
	readonly windows: readonly ProposedWindow[];
	readonly left: readonly { readonly leakId: string; readonly why: LeftWhy }[];
	/** Wanted always or first, and no room was found for them. */
	readonly noRoom: readonly string[];
	readonly worthMinor: number;
	readonly greedyWorthMinor: number;
	/** Of all its windows. */
	readonly parts: Spending;
	readonly budgetBuys?: BudgetBuys;
	/** At most this share of the best is missed; absent where nothing was proved. */
	readonly gap?: number;
	readonly foundBy: 'exact' | 'greedy';
	/** As it is written into the survey when it is taken. */
	readonly assignment: NonNullable<MendPlan['windows']>;
}

/** Puts a found plan into words' reach: per window what is opened, mended and saved, and what is left. METHOD P6. */
export function proposal(survey: Survey, asked: AskedPlan, found: FoundPlan): Proposal {
	const { problem } = asked;
	const filling = new Filling(problem, found.windowOf);
	const membersOf = (window: number) =>
		problem.jobs.filter((_, job) => found.windowOf[job] === window);
	const windows = problem.windows.map(({ id, personMinutes, costMinor }, window) => {
		const members = membersOf(window);
		const buys = found.hourBuysMinor?.[window];
		return {
			windowId: id,
			stops: stopsOfWindow(
				survey,
				members.map(({ leakId }) => leakId)
			),
			usedMinutes: filling.usedMinutes[window] ?? 0,
			personMinutes,
			worthMinor: members.reduce((sum, job) => sum + (job.worthMinor[window] ?? 0), 0),
			costMinor: members.length > 0 ? costMinor : 0,
			partsMinor: members.reduce((sum, { leakId }) => {
				const leak = find(survey.leaks, leakId);
				return leak ? sum + partsMinor(leak, survey) : sum;
			}, 0),
			...(buys !== undefined && buys !== null && { hourBuysMinor: buys })
		};
	});
	const { boundMinor } = found;
	return {
		windows,
		left: [
			...problem.jobs.flatMap(({ leakId }, job) =>
				found.windowOf[job] === -1 ? [{ leakId, why: whyLeft(filling, job) }] : []
			),
			...asked.notAsked
		],
		noRoom: asked.noRoom,
		worthMinor: found.worthMinor,
		greedyWorthMinor: found.greedyWorthMinor,
		parts: spending(
			survey,
			windows.reduce((sum, window) => sum + window.partsMinor, 0)
		),
		...(found.budgetBuys && { budgetBuys: found.budgetBuys }),
		...(boundMinor !== undefined && { gap: gapOf(found.worthMinor, boundMinor) }),
		foundBy: found.foundBy,
		assignment: Object.fromEntries(
			problem.jobs.flatMap(({ leakId }, job) => {
				const id = problem.windows[found.windowOf[job] ?? -1]?.id;
				return id === undefined ? [] : [[leakId, id]];
			})
		)
	};
}

/** The share of the bound that a plan may be short of it. METHOD P7. */
export function gapOf(worthMinor: number, boundMinor: number): number {
	const short = boundMinor - worthMinor;
	return short <= 0 ? 0 : short / Math.max(Math.abs(boundMinor), Number.MIN_VALUE);
}

function whyLeft(filling: Filling, job: number): LeftWhy {
	const about = filling.problem.jobs[job];
	const worth = about?.worthMinor.filter((_, window) => about.allowed[window]) ?? [];
	if (!worth.some((each) => each > 0)) return 'no-gain';
	return filling.withinBudget(job) ? 'minutes' : 'budget';
}
