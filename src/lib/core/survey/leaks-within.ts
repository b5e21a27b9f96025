import { isInside } from './plan-geometry.ts';
import type { Area, Leak, Survey } from './schema.ts';

/**
 * The leaks of a round that leak and are pinned within an area: of an area walked and found tight, what
 * is not. In the order of their tags.
 * @param roundId the round whose sightings count
 */
export function leaksWithin(survey: Survey, roundId: string, area: Area): Leak[] {
	return Object.values(survey.leaks)
		.filter(
			({ removed, planId, at, sightings }) =>
				!removed &&
				planId === area.planId &&
				at !== undefined &&
				sightings[roundId]?.state === 'leaking' &&
				isInside(at, area.outline)
		)
		.toSorted((a, b) => a.tag - b.tag);
}
