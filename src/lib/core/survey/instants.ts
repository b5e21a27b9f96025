const PARTS = /^(\d+)-(\d+)-(\d+)T(\d+):(\d+)(?::(\d+(?:\.\d+)?))?(?:Z|([+-])(\d+):?(\d+))$/;

/**
 * The hours between two instants, by the calendar alone; the core has no clock.
 * @param from an instant, ISO 8601 with its offset or Z
 * @param to another one
 * @returns hours from the first to the second, negative where the second is earlier
 */
export function hoursBetween(from: string, to: string): number {
	return (secondsOf(to) - secondsOf(from)) / 3600;
}

/** Which of two instants comes first, whatever the zones they were written in: for sorting. */
export function compareInstants(a: string, b: string): number {
	return secondsOf(a) - secondsOf(b);
}

/** The instant itself, or one a moment after another where that one is not before it. */
export function afterInstant(instant: string, other: string): string {
	return compareInstants(instant, other) > 0 ? instant : aMomentAfter(other);
}

/** One more digit of its seconds: less than a millisecond, and still an instant of the same day. */
function aMomentAfter(instant: string): string {
	return instant.replace(
		/^([^T]+T\d+:\d+)(?::(\d+)(\.\d+)?)?/,
		(_, minute: string, second = '00', fraction = '.000') =>
			`${minute}:${String(second)}${String(fraction)}1`
	);
}

function secondsOf(instant: string): number {
	const parts = PARTS.exec(instant);
	if (!parts) throw new RangeError(`not an instant: ${instant}`);
	const [year, month, day, hour, minute, second] = parts.slice(1, 7).map((part) => Number(part));
	const [sign, offsetHours, offsetMinutes] = parts.slice(7);
	const offset =
		(sign === '-' ? -60 : 60) * (60 * Number(offsetHours ?? 0) + Number(offsetMinutes ?? 0));
	const days = dayNumber(year ?? 0, month ?? 1, day ?? 1);
	const clock = (hour ?? 0) * 3600 + (minute ?? 0) * 60;
	// Seconds may be left out.
	return days * 86_400 + clock + (Number.isNaN(second) ? 0 : (second ?? 0)) - offset;
}

/** Days since 1 March of the year 0 of the Gregorian calendar: the leap day ends the year. */
function dayNumber(year: number, month: number, day: number): number {
	const y = month <= 2 ? year - 1 : year;
	const m = (month + 9) % 12;
	return (
		365 * y +
		Math.floor(y / 4) -
		Math.floor(y / 100) +
		Math.floor(y / 400) +
		Math.floor((153 * m + 2) / 5) +
		day -
		1
	);
}
