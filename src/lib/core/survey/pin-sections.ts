import { isInside, sectionAt } from './plan-geometry.ts';
import type { Leak, Survey } from './schema.ts';

/** Leaks pinned where a section is drawn that stand on none yet: drawn later than they were pinned. */
export function leaksWithout(survey: Survey, planId: string, sectionId: string): Leak[] {
	return Object.values(survey.leaks).filter((leak) => {
		if (leak.removed || leak.planId !== planId || !leak.at) return false;
		const stands = leak.sectionId !== undefined && survey.sections[leak.sectionId];
		if (stands && !stands.removed) return false;
		return sectionAt(survey, planId, leak.at) === sectionId;
	});
}

/** Whether a leak is pinned outside all that is drawn of its section on that plan. */
export function isPinnedOutside(survey: Survey, { planId, at, sectionId }: Leak): boolean {
	if (planId === undefined || !at || sectionId === undefined) return false;
	const drawn = Object.values(survey.areas ?? {}).filter(
		(area) =>
			!area.removed &&
			area.planId === planId &&
			area.use.kind === 'section' &&
			area.use.sectionId === sectionId
	);
	return drawn.length > 0 && !drawn.some(({ outline }) => isInside(at, outline));
}
