import { mendingIn, sightingIn } from '../survey/leak-state.ts';
import type { Leak, Sighting } from '../survey/schema.ts';

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

/**
 * What became of a leak between two rounds: `held`: mended and tight since; `claimed`: said to be
 * mended, not soaped; `still`: leaking, as before or otherwise; `not-reached`: nobody looked;
 * `again`: proved tight in between and leaking again; `new`: not known before.
 */
export type Fate = 'held' | 'claimed' | 'still' | 'not-reached' | 'again' | 'new';

export interface FateOfLeak {
	readonly fate: Fate;
	/** The reading that counts before, and the round it is from. */
	readonly before?: Reading;
	readonly after?: Reading;
	/** Said to be mended in between, and found leaking. */
	readonly claimFailed: boolean;
}

export interface Reading {
	readonly seen: Sighting;
	readonly seenIn: string;
}

/**
 * What became of a leak from one round to a later one, both as their walks found it; nothing when
 * there was nothing to find in either. METHOD V1.
 * @param rounds of `standings`
 */
export function fateOf(
	rounds: readonly RoundStanding[],
	beforeId: string,
	afterId: string
): FateOfLeak | undefined {
	const from = rounds.findIndex(({ roundId }) => roundId === beforeId);
	const to = rounds.findIndex(({ roundId }) => roundId === afterId);
	const [first, last] = [rounds[from], rounds[to]];
	if (!first || !last || from >= to) return undefined;
	const between = rounds.slice(from, to);
	const before = readingOf(first.found);
	const after = readingOf(last.found);
	const sides = { ...(before && { before }), ...(after && { after }) };
	const claimFailed =
		last.found.state === 'leaking' &&
		!last.found.carried &&
		between.at(-1)?.end.state === 'claimed';
	if (!after) return before && { fate: 'held', ...sides, claimFailed };
	const proved = between.some(({ found, end }) => found.state === 'tight' || end.state === 'tight');
	if (proved) return { fate: 'again', ...sides, claimFailed };
	if (!before) return { fate: 'new', ...sides, claimFailed };
	if (last.found.state === 'claimed') return { fate: 'claimed', ...sides, claimFailed };
	const looked = last.found.state === 'leaking' && !last.found.carried;
	return { fate: looked ? 'still' : 'not-reached', ...sides, claimFailed };
}

function readingOf(standing: Standing): Reading | undefined {
	return standing.state === 'leaking' || standing.state === 'claimed'
		? { seen: standing.seen, seenIn: standing.seenIn }
		: undefined;
}
