import { STARTING_ACTION, type Action } from '../survey/parts.ts';
import type { Survey } from '../survey/schema.ts';

export interface LoggedMinutes {
	readonly median: number;
	/** Of so many repairs. */
	readonly count: number;
}

/**
 * What repairs of each kind took at this site: the middle of the minutes that were written down, in any
 * round. METHOD P10.
 * @returns median minutes of one repair by action; an action that nobody timed is absent
 * @source derived: the median, which one job that went wrong does not move
 */
export function loggedMinutes(survey: Survey): ReadonlyMap<Action, LoggedMinutes> {
	const byAction = new Map<Action, number[]>();
	for (const leak of Object.values(survey.leaks)) {
		if (leak.removed) continue;
		const action = leak.action ?? STARTING_ACTION[leak.part];
		for (const { minutes, mendedAt } of Object.values(leak.mendings))
			if (minutes !== undefined && mendedAt !== undefined)
				byAction.set(action, [...(byAction.get(action) ?? []), minutes]);
	}
	return new Map(
		[...byAction].map(([action, minutes]) => [
			action,
			{ median: medianOf(minutes), count: minutes.length }
		])
	);
}

/** The middle of some values; of an even number, the mean of the two in the middle. */
function medianOf(values: readonly number[]): number {
	const sorted = values.toSorted((a, b) => a - b);
	const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
	const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? upper;
	return lower + (upper - lower) / 2;
}
