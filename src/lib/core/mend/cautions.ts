import type { Leak, Section } from '../survey/schema.ts';
import { STARTING_ACTION } from '../survey/parts.ts';
import {
	CAUTION_RULES,
	type CautionOrigin,
	type CautionPlace,
	type CautionRule,
	type Condition
} from './caution-rules.ts';

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
	{ actions, parts, hazards, valveUnknown }: Condition,
	leak: LeakAtWork | undefined,
	section: SectionAtWork | undefined
): boolean {
	if (valveUnknown && valveKnown(section)) return false;
	if (leak === undefined) return !actions && !parts && !hazards;
	if (actions && !actions.includes(leak.action ?? STARTING_ACTION[leak.part])) return false;
	if (parts && !parts.includes(leak.part)) return false;
	return !hazards || hazards.some((hazard) => leak.hazards.includes(hazard));
}

function shown({ id, key, text, origin }: CautionRule): Caution {
	return { id, key, text, origin };
}
