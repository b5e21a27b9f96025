import { find } from './ids.ts';
import type { PlanPoint, Survey } from './schema.ts';

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

/** The way of the air into a section: an arrow. */
export interface PlanFlow {
	readonly id: string;
	readonly sectionId: string;
	readonly from: PlanPoint;
	readonly to: PlanPoint;
}

/** The sections that are drawn on a plan, and what was walked on it in a round. */
export function areasOn(survey: Survey, planId: string, roundId?: string): PlanArea[] {
	return Object.values(survey.areas ?? {}).flatMap((area): PlanArea[] => {
		const { id, removed, use, outline, name } = area;
		if (removed || area.planId !== planId) return [];
		if (use.kind === 'walked-tight')
			return use.roundId === roundId
				? [{ id, kind: 'walked', outline, name: name ?? 'Tight' }]
				: [];
		const section = find(survey.sections, use.sectionId);
		if (!section || section.removed) return [];
		return [{ id, kind: 'section', outline, name: name ?? section.name }];
	});
}

/** The isolating valves that have their place on a plan. */
export function valvesOn(survey: Survey, planId: string): PlanMark[] {
	return Object.values(survey.sections).flatMap(({ id, name, valve, valveAt, removed }) =>
		removed || valveAt?.planId !== planId
			? []
			: {
					id: `valve-${id}`,
					kind: 'valve',
					at: valveAt.at,
					text: (valve ?? name).split(',', 1).join()
				}
	);
}

/** The ways of the air into sections that are drawn on a plan. */
export function flowsOn(survey: Survey, planId: string): PlanFlow[] {
	return Object.values(survey.sections).flatMap(({ id, feedAt, removed }) =>
		removed || feedAt?.planId !== planId
			? []
			: { id: `feed-${id}`, sectionId: id, from: feedAt.from, to: feedAt.to }
	);
}
