import { checkReadings, type Check } from '#lib/core/survey/checks.ts';
import type { CommandBody } from '#lib/core/survey/command.ts';
import type { Evidence } from '#lib/core/survey/evidence-schema.ts';
import type { Part } from '#lib/core/survey/parts.ts';
import type { Leak, PlanPoint } from '#lib/core/survey/schema.ts';

/** A leak on its way in: what is carried from the last one is marked until it is confirmed. */
export interface LeakDraft {
	readonly planId?: string | undefined;
	readonly at?: PlanPoint | undefined;
	readonly part: Part;
	readonly sectionId?: string | undefined;
	/** The section is the one that is drawn where the pin lies. */
	readonly sectionDrawn?: boolean | undefined;
	readonly pressureBarGauge?: number | undefined;
	readonly evidence?: Evidence | undefined;
	/** The leak that the part was carried from; section and pressure too, where nothing says otherwise. */
	readonly carriedFrom?: number | undefined;
	/** Another section than that leak's: its pressure was not carried. */
	readonly elsewhere?: boolean | undefined;
}

/** A place on a plan, and the section that is drawn there. */
export type DraftPlace = Pick<LeakDraft, 'planId' | 'at' | 'sectionId'>;

/** What a leak starts with where nothing is carried. */
const EMPTY_DRAFT = { part: 'threaded-joint' } as const satisfies LeakDraft;

/**
 * A draft at a place, with the part, section and pressure of the last leak; a section that is drawn
 * where the place lies goes before the last one. Size, photo and note are
 * never carried: each leak is looked at for itself.
 */
export function draftAfter(last: Leak | undefined, roundId: string, place: DraftPlace): LeakDraft {
	const sectionDrawn = place.sectionId !== undefined;
	if (!last) return { ...place, ...EMPTY_DRAFT, sectionDrawn };
	const sectionId = place.sectionId ?? last.sectionId;
	// Behind another valve the gauge may show something else.
	const elsewhere = sectionId !== last.sectionId;
	return {
		...place,
		part: last.part,
		sectionId,
		sectionDrawn,
		...(!elsewhere && { pressureBarGauge: last.sightings[roundId]?.pressureBarGauge }),
		carriedFrom: last.tag,
		elsewhere
	};
}

/** The draft at another place: a section that is drawn there is taken, one drawn where it was is left. */
export function draftAt(draft: LeakDraft, place: DraftPlace): LeakDraft {
	const { planId, at } = place;
	if (place.sectionId !== undefined) {
		return { ...inSection(draft, place.sectionId), planId, at, sectionDrawn: true };
	}
	return { ...(draft.sectionDrawn ? inSection(draft, undefined) : draft), planId, at };
}

/** The draft in another section: a pressure that was carried stays with the leak it came from. */
export function inSection(draft: LeakDraft, sectionId: string | undefined): LeakDraft {
	const moved = { ...draft, sectionId, sectionDrawn: false };
	if (draft.carriedFrom === undefined || sectionId === draft.sectionId) return moved;
	return { ...moved, pressureBarGauge: undefined, elsewhere: true };
}

/** The draft without what was carried: what the plan says and what was seen stays. */
export function withoutCarried(draft: LeakDraft): LeakDraft {
	const { planId, at, sectionId, sectionDrawn, evidence } = draft;
	return { ...EMPTY_DRAFT, planId, at, evidence, ...(sectionDrawn && { sectionId, sectionDrawn }) };
}

/** What looks like a slip in a draft, to be asked before it is pinned. */
export function draftDoubts(draft: LeakDraft, tag: number): Check[] {
	const roundId = 'this';
	const leak = leakOf(draft, { id: 'leak-draft', tag, roundId, at: '' });
	return checkReadings(leak, roundId);
}

/** The draft with what was probably meant. */
export function asMeant(draft: LeakDraft, fix: CommandBody): LeakDraft {
	if (fix.kind !== 'record-sighting' || !fix.sighting) return draft;
	const { evidence, pressureBarGauge } = fix.sighting;
	return { ...draft, evidence, pressureBarGauge };
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
