import type { PlanPoint } from '#lib/core/survey/schema.ts';

export type { PlanArea, PlanFlow, PlanMark } from '#lib/core/survey/plan-shapes.ts';

/** What is being drawn: its corners so far, closed or not. */
export interface PlanStroke {
	readonly points: readonly PlanPoint[];
	readonly closed: boolean;
}
