import type { Fate } from './fate.ts';

/** The steps from what leaked before to what leaks after, and the savings that lie in them. */
export const TERMS = [
	'before',
	'mended',
	'again',
	'new',
	'changed',
	'after',
	'held',
	'claimed',
	'notReached',
	'regrown',
	'avoided'
] as const;
export type Term = (typeof TERMS)[number];

/** What leaks of one fate take on either side. */
export interface FateSum {
	before: number;
	after: number;
}
export type FateSums = Readonly<Record<Fate, FateSum>>;

export const FATES = [
	'held',
	'claimed',
	'still',
	'not-reached',
	'again',
	'new'
] as const satisfies readonly Fate[];

export function emptySums(): FateSums {
	return Object.fromEntries(FATES.map((fate) => [fate, { before: 0, after: 0 }])) as Record<
		Fate,
		FateSum
	>;
}

/**
 * The bridge: before − mended + again + new + changed = after. Mended is all that soap showed tight
 * after the round before, again is what leaks of it now; changed is what the same leak takes more or
 * less by a new reading, 0 where none was taken. METHOD V3.
 *
 * Of the savings, `held` is proved by soap: tight when last looked at. `claimed` is what was said to be
 * mended and nobody has soaped; it is still counted in `after`. METHOD V4.
 */
export function bridgeTerms(sums: FateSums): Record<Term, number> {
	let before = 0;
	let after = 0;
	for (const fate of FATES) {
		before += sums[fate].before;
		after += sums[fate].after;
	}
	const changeOf = (fate: Fate) => sums[fate].after - sums[fate].before;
	return {
		before,
		mended: sums.held.before + sums.again.before,
		again: sums.again.after,
		new: sums.new.after,
		changed: changeOf('still') + changeOf('not-reached') + changeOf('claimed'),
		after,
		held: sums.held.before,
		claimed: sums.claimed.after,
		notReached: sums['not-reached'].after,
		regrown: sums.again.after + sums.new.after,
		avoided: before - after
	};
}

/** One bar of the bridge chart: where it begins and ends. */
export interface BridgeBar {
	readonly term: 'before' | 'mended' | 'again' | 'new' | 'changed' | 'after';
	readonly from: number;
	readonly to: number;
}

/** The bars of the bridge in their order; each step begins where the one before it ends. METHOD V3. */
export function bridgeBars(values: Readonly<Record<BridgeBar['term'], number>>): BridgeBar[] {
	const { before, mended, again, changed, after } = values;
	const tops = [before - mended, before - mended + again, before - mended + again + values.new];
	const [low = 0, back = 0, open = 0] = tops;
	return [
		{ term: 'before', from: 0, to: before },
		{ term: 'mended', from: before, to: low },
		{ term: 'again', from: low, to: back },
		{ term: 'new', from: back, to: open },
		...(changed === 0 ? [] : [{ term: 'changed' as const, from: open, to: after }]),
		{ term: 'after', from: 0, to: after }
	];
}
