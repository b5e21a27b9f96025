import type { SystemTest } from '#lib/core/survey/system-test-schema.ts';

type Named = 'id' | 'doneAt' | 'roundId' | 'removed';
type NewOf<T> = T extends SystemTest ? Omit<T, Named> : never;
/** A test as it was entered; its name in the log, the round and, without one, the time come with the command. */
export type NewTest = NewOf<SystemTest> & { readonly doneAt?: string };

export const TEST_WORDS: Readonly<Record<SystemTest['kind'], string>> = {
	'load-time': 'Load time',
	'bleed-down': 'Bleed-down',
	'pump-up': 'Pump-up'
};

/** A field that is empty is left out, so that missing is never zero. */
export function present<T extends object>(fields: T): { [K in keyof T]?: NonNullable<T[K]> } {
	return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
		[K in keyof T]?: NonNullable<T[K]>;
	};
}
