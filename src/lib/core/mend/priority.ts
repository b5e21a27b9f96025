/** How soon a repair is wanted, for whoever plans work orders. */
export const PRIORITIES = ['first', 'high', 'normal', 'low'] as const;
export type Priority = (typeof PRIORITIES)[number];

interface Worth {
	readonly leakId: string;
	readonly done: boolean;
	readonly pinnedFirst: boolean;
	readonly costMinorPerYear?: number;
}

/** Shares of the yearly cost of all open repairs. METHOD P9. */
const HIGH_UP_TO = 0.5;
const LOW_FROM = 0.9;

/**
 * Sorts repairs into four priorities: what must come first whatever it costs; then, dearest first, those
 * that make up the first half of the yearly cost are high and those of its last tenth are low; all else, and what
 * is done or has no price, is normal. METHOD P9.
 * @param jobs the list of work; costs in minor units a year
 * @returns priority by leak
 * @source our starting value
 */
export function priorities(jobs: readonly Worth[]): ReadonlyMap<string, Priority> {
	const open = jobs
		.filter(({ done, pinnedFirst }) => !done && !pinnedFirst)
		.flatMap(({ leakId, costMinorPerYear: cost }) => (cost === undefined ? [] : [{ leakId, cost }]))
		.sort((a, b) => b.cost - a.cost || (a.leakId < b.leakId ? -1 : 1));
	const total = open.reduce((sum, { cost }) => sum + cost, 0);
	const found = new Map<string, Priority>(
		jobs.map(({ leakId, done, pinnedFirst }) => [leakId, pinnedFirst && !done ? 'first' : 'normal'])
	);
	let before = 0;
	for (const { leakId, cost } of open) {
		if (total > 0 && before < HIGH_UP_TO * total) found.set(leakId, 'high');
		else if (total > 0 && before >= LOW_FROM * total) found.set(leakId, 'low');
		before += cost;
	}
	return found;
}
