import type { Command } from '#lib/core/survey/command.ts';

/** This program is no older: a clock that says less is wrong. */
const EARLIEST = Date.parse('2025-01-01T00:00:00Z');
/** Clocks of two devices may differ by so much without a word. */
const LEEWAY_MS = 10 * 60_000;

/** Why the clock of this device cannot be right, as far as a survey tells. */
export type ClockDoubt = 'before-this-program' | 'before-last-change';

/**
 * Whether a clock can be right. Nothing is ordered by it, so nothing is lost by a wrong one; but
 * dates go onto reports.
 *
 * @param last the last change of the survey, in the order of the log
 */
export function clockDoubt(
	now: string,
	last: Pick<Command, 'at'> | undefined
): ClockDoubt | undefined {
	const time = Date.parse(now);
	if (time < EARLIEST) return 'before-this-program';
	if (last && time + LEEWAY_MS < Date.parse(last.at)) return 'before-last-change';
	return undefined;
}
