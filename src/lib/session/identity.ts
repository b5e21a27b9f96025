/** Where names and times come from; the core takes them as they are given. */
export interface Identity {
	/** This device's name in logs. */
	readonly device: string;
	readonly newId: (kind: string) => string;
	/** The clock on the wall, ISO 8601 with the offset of this place. */
	readonly now: () => string;
}

/** A new name that no other device will make: `leak-7f3a…`. */
export function newId(kind: string): string {
	return `${kind}-${crypto.randomUUID()}`;
}

/** The time on this device's clock, ISO 8601 with its offset: the local day can be read off it. */
export function now(): string {
	return withOffset(new Date());
}

export function withOffset(date: Date): string {
	const minutes = -date.getTimezoneOffset();
	const local = new Date(date.getTime() + minutes * 60_000).toISOString().slice(0, -1);
	const ahead = Math.abs(minutes);
	const two = (part: number): string => String(part).padStart(2, '0');
	return `${local}${minutes < 0 ? '-' : '+'}${two(Math.floor(ahead / 60))}:${two(ahead % 60)}`;
}
