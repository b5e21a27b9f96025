import type { RoundStanding, Standing } from '../survey/standing.ts';
import type { Sighting } from '../survey/schema.ts';

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
