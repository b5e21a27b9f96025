import { leakState, mendingIn, roundsInOrder, sightingIn, type LeakState } from './leak-state.ts';
import type { Leak, Sighting, Survey } from './schema.ts';

/**
 * What is known of a leak at one moment: it leaks; somebody says that it was mended; soap has shown
 * it tight; or nobody has seen it yet. `seen` is the reading that stands for it, `carried` that it
 * comes from an earlier round.
 */
export type Standing =
	| {
			readonly state: 'leaking' | 'claimed';
			readonly seen: Sighting;
			readonly seenIn: string;
			readonly carried: boolean;
	  }
	| { readonly state: 'tight'; readonly carried: boolean }
	| { readonly state: 'unknown' };

/** A leak's standing through the rounds, oldest first: as the walk found it, and at the round's end. */
export interface RoundStanding {
	readonly roundId: string;
	readonly found: Standing;
	readonly end: Standing;
}

const UNKNOWN: Standing = { state: 'unknown' };

/**
 * Follows one leak through the rounds. Where a round did not look, what was known before it stands;
 * a mending is a claim until soap has shown the joint tight. METHOD V1.
 * @param roundIds oldest first
 */
export function standings(leak: Leak, roundIds: readonly string[]): RoundStanding[] {
	let before = UNKNOWN;
	return roundIds.map((roundId) => {
		const found = foundIn(leak, roundId, before);
		const end = endOf(leak, roundId, found);
		before = carried(end);
		return { roundId, found, end };
	});
}

function foundIn(leak: Leak, roundId: string, before: Standing): Standing {
	const seen = sightingIn(leak, roundId);
	if (seen?.state === 'leaking') return { state: 'leaking', seen, seenIn: roundId, carried: false };
	if (seen?.state === 'tight') return { state: 'tight', carried: false };
	return before;
}

function endOf(leak: Leak, roundId: string, found: Standing): Standing {
	const mending = mendingIn(leak, roundId);
	if (mending?.reSoaped === 'tight') return { state: 'tight', carried: false };
	if (mending?.mendedAt === undefined || mending.reSoaped === 'still-leaking') return found;
	return found.state === 'leaking' ? { ...found, state: 'claimed' } : found;
}

function carried(standing: Standing): Standing {
	return standing.state === 'unknown' ? standing : { ...standing, carried: true };
}

/** What is known of a leak in a round: where it stands, and the reading that stands for its size. */
export interface KnownLeak {
	readonly state: LeakState;
	/** Absent where soap showed it tight and nothing was found to mend, or nobody saw it leak. */
	readonly reading?: Sighting;
}

/** The rounds up to one of them, oldest first, by name; what `knownLeak` looks back through. */
export function roundsUntil(survey: Survey, roundId: string): readonly string[] {
	const ids = roundsInOrder(survey).map(({ id }) => id);
	const at = ids.indexOf(roundId);
	return at < 0 ? [roundId] : ids.slice(0, at + 1);
}

/**
 * Where a leak stands in the last of some rounds. What this round did not look at stands as it was known
 * before: leaking by its last reading, said to be mended, or tight. METHOD W1.
 * @param roundIds of `roundsUntil`
 */
export function knownLeak(leak: Leak, roundIds: readonly string[]): KnownLeak {
	const roundId = roundIds.at(-1) ?? '';
	const own = leakState(leak, roundId);
	const seen = sightingIn(leak, roundId);
	if (seen?.state === 'leaking') return { state: own, reading: seen };
	if (seen?.state === 'tight' || roundIds.length < 2) return { state: own };
	const before = standings(leak, roundIds.slice(0, -1)).at(-1)?.end ?? UNKNOWN;
	if (before.state === 'unknown') return { state: own };
	const notLooked = own === 'unseen' || own === 'not-reached';
	const state = notLooked ? (before.state === 'claimed' ? 'mended' : before.state) : own;
	return before.state === 'tight' ? { state } : { state, reading: before.seen };
}
