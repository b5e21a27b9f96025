import type { Leak, RoomCheck, Section } from '../survey/schema.ts';
import { STARTING_ACTION } from '../survey/parts.ts';
import type { CautionOrigin, CautionPlace, CautionRule, Condition } from './caution-rule.ts';
import { CAUTION_RULES } from './caution-rules.ts';

/** One caution as it is shown or printed, whole. */
export interface Caution {
	/** METHOD id, e.g. `C1`. */
	readonly id: string;
	readonly key: string;
	readonly text: string;
	readonly origin: CautionOrigin;
}

/** What about a leak decides its cautions. */
export type LeakAtWork = Pick<Leak, 'part' | 'hazards'> & { readonly action?: Leak['action'] };

/** What about a section decides its cautions: whether anybody has named its valve. */
export type SectionAtWork = Pick<Section, 'valve'>;

/** True when somebody has written down which valve shuts the section. */
export function valveKnown(section: SectionAtWork | undefined): section is { valve: string } {
	return (section?.valve ?? '').trim() !== '';
}

/** The cautions that stand before all jobs, the depressurise-first one leading. METHOD C1, C2. */
export function headlineCautions(): Caution[] {
	return select('headline', undefined, undefined);
}

/** The cautions that go with shutting, venting and restoring a section. METHOD C6 to C8, C27, C28. */
export function sectionCautions(section: SectionAtWork | undefined): Caution[] {
	return select('section', undefined, section);
}

/**
 * The cautions that one leak's job line carries; never empty, because C1 goes with every job.
 * @param leak its part, action and hazards; without an action the part's starting one is meant
 * @param section the section that isolates it; without one, finding the valve comes first (C6)
 */
export function cautionsForJob(leak: LeakAtWork, section?: SectionAtWork): Caution[] {
	return select('job', leak, section);
}

/** What about a point of the compressor room decides its cautions. */
export type RoomAtWork = Pick<RoomCheck, 'point' | 'rotaryScrew'>;

/**
 * The cautions that go with a point of the compressor room, while it is looked at and while it is put
 * right; never empty, because C1 goes with every job. METHOD C5, C10 to C12, C29 to C35.
 */
export function cautionsForRoom({ point, rotaryScrew }: RoomAtWork): Caution[] {
	return CAUTION_RULES.filter(
		({ where, when }) =>
			where.includes('job') &&
			(when === 'always' ||
				when.some(
					({ room, hazards }) =>
						room?.includes(point) ?? (rotaryScrew && hazards?.includes('rotary-screw'))
				))
	).map(shown);
}

/** The cautions of the compressor room as a whole: those of any section, its valve apart. */
export function roomCautions(): Caution[] {
	return CAUTION_RULES.filter(
		({ where, when }) => where.includes('section') && when === 'always'
	).map(shown);
}

/** C1 alone, whole: for the band at the head of a page or screen. */
export function depressuriseFirst(): Caution {
	return only('depressurise-first');
}

/** C2 alone, whole: what everything printed defers to. */
export function localRulesFirst(): Caution {
	return only('local-rules-first');
}

function only(key: string): Caution {
	const rule = CAUTION_RULES.find((candidate) => candidate.key === key);
	if (rule === undefined) throw new RangeError(`no caution ${key}`);
	return shown(rule);
}

function select(
	place: CautionPlace,
	leak: LeakAtWork | undefined,
	section: SectionAtWork | undefined
): Caution[] {
	return CAUTION_RULES.filter(
		(rule) =>
			rule.where.includes(place) &&
			(rule.when === 'always' || rule.when.some((condition) => fits(condition, leak, section)))
	).map(shown);
}

function fits(
	{ actions, parts, hazards, room, valveUnknown }: Condition,
	leak: LeakAtWork | undefined,
	section: SectionAtWork | undefined
): boolean {
	if (room) return false;
	if (valveUnknown && valveKnown(section)) return false;
	if (leak === undefined) return !actions && !parts && !hazards;
	if (actions && !actions.includes(leak.action ?? STARTING_ACTION[leak.part])) return false;
	if (parts && !parts.includes(leak.part)) return false;
	return !hazards || hazards.some((hazard) => leak.hazards.includes(hazard));
}

function shown({ id, key, text, origin }: CautionRule): Caution {
	return { id, key, text, origin };
}
