/** An instant as a box for date and time takes it, on the clock of this place: `2026-05-09T06:00`. */
export function boxTime(instant: string): string {
	const date = new Date(instant);
	const local = new Date(date.getTime() - date.getTimezoneOffset() * 60_000);
	return local.toISOString().slice(0, 16);
}
