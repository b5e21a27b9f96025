import type { SystemTest } from '#lib/core/survey/system-test-schema.ts';

type Named = 'id' | 'doneAt' | 'roundId' | 'removed';
type NewOf<T> = T extends SystemTest ? Omit<T, Named> : never;
/** A test as it was entered; its id, its round and its instant come with the command. */
export type NewTest = NewOf<SystemTest> & {
	/** On the clock of the place, where a recording says so: `2020-02-01T00:00:09`. */
	readonly localTime?: string;
};

/** A field that is empty is left out, so that missing is never zero. */
export function present<T extends object>(fields: T): { [K in keyof T]?: NonNullable<T[K]> } {
	return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
		[K in keyof T]?: NonNullable<T[K]>;
	};
}
