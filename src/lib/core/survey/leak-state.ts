import { find } from './ids.ts';
import { compareInstants } from './instants.ts';
import type { Leak, Mending, Round, Sighting, Survey } from './schema.ts';

/**
 * Where a leak stands in a round: `leaking`; `mended` (claimed, not re-soaped); `tight` (proved by
 * soap, after mending or on the walk); `not-reached`; `unseen` (no sighting in this round yet).
 */
export type LeakState = 'leaking' | 'mended' | 'tight' | 'not-reached' | 'unseen';

/** The rounds of a survey, oldest first. */
export function roundsInOrder(survey: Survey): Round[] {
	return Object.values(survey.rounds)
		.filter((round) => !round.removed)
		.sort((a, b) => compareInstants(a.startedAt, b.startedAt) || (a.id < b.id ? -1 : 1));
}

/** The newest round; every survey starts with one. */
export function latestRound(survey: Survey): Round | undefined {
	return roundsInOrder(survey).at(-1);
}

/** Leaks that are not removed, by tag. */
export function leaksInOrder(survey: Survey): Leak[] {
	return Object.values(survey.leaks)
		.filter((leak) => !leak.removed)
		.sort((a, b) => a.tag - b.tag || (a.id < b.id ? -1 : 1));
}

export function sightingIn(leak: Leak, roundId: string): Sighting | undefined {
	return find(leak.sightings, roundId);
}

export function mendingIn(leak: Leak, roundId: string): Mending | undefined {
	return find(leak.mendings, roundId);
}

export function leakState(leak: Leak, roundId: string): LeakState {
	const mending = mendingIn(leak, roundId);
	if (mending?.reSoaped === 'tight') return 'tight';
	if (mending?.reSoaped === 'still-leaking') return 'leaking';
	if (mending?.mendedAt !== undefined) return 'mended';
	return sightingIn(leak, roundId)?.state ?? 'unseen';
}

/** The next free tag number: one more than the highest ever used, removed leaks included. */
export function nextTag(survey: Survey): number {
	return Object.values(survey.leaks).reduce((highest, leak) => Math.max(highest, leak.tag), 0) + 1;
}
