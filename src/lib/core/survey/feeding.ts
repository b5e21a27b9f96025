import { find } from './ids.ts';
import type { Section, Survey } from './schema.ts';

/**
 * The sections that lose their air too when one is isolated: all their ways to the station lead
 * through it. A section of which nobody said where its air comes from is taken to be fed for itself, so
 * that nothing is claimed of it.
 *
 * @returns in the order in which the sections were made; never the section itself
 */
export function withoutAirToo(survey: Survey, sectionId: string): Section[] {
	const before = fed(survey);
	const after = fed(survey, sectionId);
	return standing(survey).filter(({ id }) => id !== sectionId && before.has(id) && !after.has(id));
}

/** Whether all that is said to feed a section is fed by nothing: the sections feed each other in a circle. */
export function isFedInCircle(survey: Survey, sectionId: string): boolean {
	return !fed(survey).has(sectionId);
}

/** The sections that air reaches, one of them shut off. */
function fed(survey: Survey, shutId?: string): ReadonlySet<string> {
	const reached = new Set<string>();
	const waiting = standing(survey).filter(({ id }) => id !== shutId);
	for (let more = true; more;) {
		more = false;
		for (const section of waiting) {
			if (reached.has(section.id)) continue;
			const feeds = feedsOf(survey, section);
			const from = ({ sectionId }: { sectionId?: string }): boolean =>
				sectionId === undefined || reached.has(sectionId);
			if (feeds.length > 0 && !feeds.some(from)) continue;
			reached.add(section.id);
			more = true;
		}
	}
	return reached;
}

/** What feeds a section, without what is gone; a feed without a section is the station. */
function feedsOf(survey: Survey, { id, fedFrom = [] }: Section): { sectionId?: string }[] {
	return fedFrom.flatMap((feed) => {
		if (feed.kind === 'station') return [{}];
		const section = find(survey.sections, feed.sectionId);
		return section && !section.removed && section.id !== id ? [{ sectionId: section.id }] : [];
	});
}

function standing(survey: Survey): Section[] {
	return Object.values(survey.sections).filter(({ removed }) => !removed);
}
