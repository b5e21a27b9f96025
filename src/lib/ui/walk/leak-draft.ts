import type { Evidence } from '#lib/core/survey/evidence-schema.ts';
import type { Part } from '#lib/core/survey/parts.ts';
import type { Leak, PlanPoint } from '#lib/core/survey/schema.ts';

/** A leak on its way in: what is carried from the last one is marked until it is confirmed. */
export interface LeakDraft {
	readonly planId?: string | undefined;
	readonly at?: PlanPoint | undefined;
	readonly part: Part;
	readonly sectionId?: string | undefined;
	readonly pressureBarGauge?: number | undefined;
	readonly evidence?: Evidence | undefined;
	/** The leak that part, section and pressure were carried from. */
	readonly carriedFrom?: number | undefined;
}

/** What a leak starts with where nothing is carried. */
export const EMPTY_DRAFT = { part: 'threaded-joint' } as const satisfies LeakDraft;

/**
 * A draft at a place, with the part, section and pressure of the last leak; a section that is drawn
 * where the place lies goes before the last one. Size, photo and note are
 * never carried: each leak is looked at for itself.
 */
export function draftAfter(
	last: Leak | undefined,
	roundId: string,
	place: Pick<LeakDraft, 'planId' | 'at' | 'sectionId'>
): LeakDraft {
	if (!last) return { ...place, ...EMPTY_DRAFT };
	const sectionId = place.sectionId ?? last.sectionId;
	return {
		...place,
		part: last.part,
		sectionId,
		// Behind another valve the gauge may show something else.
		...(sectionId === last.sectionId && {
			pressureBarGauge: last.sightings[roundId]?.pressureBarGauge
		}),
		carriedFrom: last.tag
	};
}

/** The leak that a confirmed draft becomes. */
export function leakOf(
	draft: LeakDraft,
	made: { readonly id: string; readonly tag: number; readonly roundId: string; readonly at: string }
): Leak {
	return {
		id: made.id,
		tag: made.tag,
		part: draft.part,
		hazards: [],
		...(draft.planId !== undefined && draft.at && { planId: draft.planId, at: draft.at }),
		...(draft.sectionId !== undefined && { sectionId: draft.sectionId }),
		sightings: {
			[made.roundId]: {
				state: 'leaking',
				seenAt: made.at,
				...(draft.evidence && { evidence: draft.evidence }),
				...(draft.pressureBarGauge !== undefined && {
					pressureBarGauge: draft.pressureBarGauge
				})
			}
		},
		mendings: {}
	};
}
