import { leaksInOrder, sightingIn } from './leak-state.ts';
import { isInside } from './plan-geometry.ts';
import type { Area, Leak, Survey } from './schema.ts';

/**
 * The leaks of a round that leak and are pinned within an area: of an area walked and found tight, what
 * is not. In the order of their tags.
 * @param roundId the round whose sightings count
 */
export function leaksWithin(survey: Survey, roundId: string, area: Area): Leak[] {
	return leaksInOrder(survey).filter(
		(leak) =>
			leak.planId === area.planId &&
			leak.at !== undefined &&
			sightingIn(leak, roundId)?.state === 'leaking' &&
			isInside(leak.at, area.outline)
	);
}
