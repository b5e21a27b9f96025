import type { LeakState } from '#lib/core/survey/leak-state.ts';

export interface LeakRow {
	readonly id: string;
	readonly tag: number;
	readonly state: LeakState;
	readonly title: string;
	readonly about: string;
	readonly waste: string;
	/** It leaks, and nobody has said how much. */
	readonly toSize: boolean;
	/** Something about it looks doubtful. */
	readonly doubtful: boolean;
}
