/** A window as the planner sees it. */
export interface PlanWindow {
	readonly id: string;
	/** On the clock, from its start to its end. */
	readonly minutes: number;
	/** For all people together. */
	readonly personMinutes: number;
	/** What using it at all costs, minor units. */
	readonly costMinor: number;
}

/** What is shut as one. */
export interface PlanSection {
	readonly id: string;
	/** To isolate, vent and restore it, once in each window that opens it. */
	readonly minutes: number;
}

export interface PlanJob {
	readonly leakId: string;
	/** Place in `sections`; absent for what needs no section shut. */
	readonly section?: number;
	readonly minutes: number;
	/** What it takes from the budget; nothing, where the budget has no say. */
	readonly budgetMinor: number;
	/** What mending it in each window is worth until the horizon, minor units; it may be negative. */
	readonly worthMinor: readonly number[];
	/** Whether each window is long enough for it, cure included. */
	readonly allowed: readonly boolean[];
	/** Mended in one of its windows whatever it is worth. */
	readonly must: boolean;
}

/**
 * Which repairs into which windows: the most worth, within the minutes of each window and the budget,
 * where opening a section in a window costs its minutes once. METHOD P6.
 */
export interface PlanProblem {
	readonly windows: readonly PlanWindow[];
	readonly sections: readonly PlanSection[];
	readonly jobs: readonly PlanJob[];
	/** Absent: any sum. */
	readonly budgetMinor?: number;
	/** A window for each job that must be mended, -1 for the others: together they fit. */
	readonly start: readonly number[];
}

/** Window by job, -1 for what is left. */
export type Assignment = readonly number[];

/**
 * The problem with one window an hour longer, for each person in it and at its hourly cost. METHOD P7.
 * Jobs that no window was long enough for stay left.
 */
export function withHourMore(problem: PlanProblem, window: number): PlanProblem {
	return {
		...problem,
		windows: problem.windows.map((each, index) => {
			if (index !== window || !(each.minutes > 0)) return each;
			const longer = (each.minutes + 60) / each.minutes;
			return {
				...each,
				minutes: each.minutes + 60,
				personMinutes: each.personMinutes * longer,
				costMinor: Math.round(each.costMinor * longer)
			};
		})
	};
}

/**
 * By how much a budget is raised to see what more of it would buy, minor units: half as much again.
 * Absent where there is no limit, or nothing is left of it for what competes. METHOD P7.
 */
export function budgetStepMinor({ budgetMinor = 0 }: PlanProblem): number | undefined {
	return budgetMinor > 0 ? Math.ceil(budgetMinor / 2) : undefined;
}
