import type { PlanPoint } from '#lib/core/survey/schema.ts';

/** An outline on a plan: where a section lies, or what was walked and found tight. */
export interface PlanArea {
	readonly id: string;
	readonly kind: 'section' | 'walked';
	readonly outline: readonly PlanPoint[];
	/** Written in its middle; a section without one is not told from the next. */
	readonly name?: string | undefined;
}

/** A small thing on a plan with its word beside it. */
export interface PlanMark {
	readonly id: string;
	readonly kind: 'valve' | 'point';
	readonly at: PlanPoint;
	readonly text: string;
}

/** What is being drawn: its corners so far, closed or not. */
export interface PlanStroke {
	readonly points: readonly PlanPoint[];
	readonly closed: boolean;
}
