/** A value as JSON gave it: nothing about its shape is known. */
export type Json = unknown;

/**
 * One step from a schema version to the next. It does one thing, its name says which, and it uses
 * none of the current types: it must go on working when they change.
 */
export interface Migration {
	/** The schema version that this step leads to. */
	readonly to: number;
	readonly name: string;
	readonly survey: (survey: Json) => Json;
	readonly command: (command: Json) => Json;
}

/** The steps in order. Schema version 1 is the first and the newest, so there are none yet. */
export const MIGRATIONS: readonly Migration[] = [];
