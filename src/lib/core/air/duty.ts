import type { Result } from '../units/result.ts';
import { ok, refuse } from '../units/result.ts';

/** An opening that is not open all the time, such as a timed drain. */
export interface Duty {
	readonly openSeconds: number;
	readonly everySeconds: number;
}

/**
 * The share of the time that an intermittent leak is open: open seconds / interval.
 * @param duty seconds open in every so many seconds; left out, open all the time
 * @returns 0 < factor ≤ 1, or `duty-unreadable`
 * @validity a steady rhythm; the flow while open is the evidence's
 * @source definition of the mean; METHOD A13
 */
export function dutyFactor(duty: Duty | undefined): Result<number> {
	if (duty === undefined) return ok(1);
	const { openSeconds, everySeconds } = duty;
	const factor = openSeconds / everySeconds;
	if (openSeconds > 0 && factor > 0 && factor <= 1) return ok(factor);
	return refuse('duty-unreadable', {
		openSeconds: String(openSeconds),
		everySeconds: String(everySeconds)
	});
}
