import { toMinor } from '../../money/currency.ts';
import { find } from '../../survey/ids.ts';
import type { Leak, Survey } from '../../survey/schema.ts';
import { jobWork } from '../jobs.ts';
import { plannedWindows, windowsInOrder } from './windows.ts';

/** What parts cost, against what was given for them; minor units. */
export interface Spending {
	readonly partsMinor: number;
	/** Absent: no sum was named. */
	readonly budgetMinor?: number;
}

export interface WindowParts {
	readonly windowId: string;
	readonly jobCount: number;
	readonly partsMinor: number;
}

/** The parts of a plan, window by window in the order of their start, and in all. */
export interface PlannedParts extends Spending {
	readonly windows: readonly WindowParts[];
}

/** What the repairs planned into the windows of a survey take in parts. METHOD P11. */
export function plannedParts(survey: Survey): PlannedParts {
	const planned = [...plannedWindows(survey)];
	const windows = windowsInOrder(survey).map(({ id }) => {
		const leaks = planned.flatMap(([leakId, windowId]) =>
			windowId === id ? (find(survey.leaks, leakId) ?? []) : []
		);
		return {
			windowId: id,
			jobCount: leaks.length,
			partsMinor: leaks.reduce((sum, leak) => sum + partsMinor(leak, survey), 0)
		};
	});
	return {
		windows,
		...spending(
			survey,
			windows.reduce((sum, window) => sum + window.partsMinor, 0)
		)
	};
}

/** A sum of parts beside the budget of the survey. METHOD P11. */
export function spending(survey: Survey, parts: number): Spending {
	const budget = survey.mendPlan?.budget;
	const minor = budget === undefined ? undefined : toMinor(budget, survey.site.currency);
	return { partsMinor: parts, ...(minor?.ok && { budgetMinor: minor.value }) };
}

/** What the parts of one repair are reckoned to cost, minor units. METHOD P4. */
export function partsMinor(leak: Leak, survey: Survey): number {
	const minor = toMinor(jobWork(leak, survey).partsCost, survey.site.currency);
	return minor.ok ? minor.value : 0;
}
