import { ok, refuse, type Result } from '../units/result.ts';

/**
 * Shares a whole number of minor units out by weight so that the shares add up exactly.
 *
 * Each share is rounded down, and the units left over go to the largest remainders; of equal
 * remainders the earlier goes first. A negative total is shared as its opposite.
 * @param totalMinor what is shared, an integer in minor units
 * @param weights one per share, e.g. yearly cost of each leak
 * @returns the shares, integers in minor units, in the order of the weights
 * @validity total a safe integer; weights finite and ≥ 0, not all zero unless the total is zero
 * @source largest-remainder method, common practice; METHOD M2
 */
export function apportionMinor(
	totalMinor: number,
	weights: readonly number[]
): Result<readonly number[]> {
	if (!Number.isSafeInteger(totalMinor)) return refuse('amount-out-of-range', { totalMinor });
	let largest = 0;
	for (const weight of weights) {
		if (!(weight >= 0 && weight < Infinity)) return refuse('weight-out-of-range', { weight });
		largest = Math.max(largest, weight);
	}
	if (largest === 0) {
		if (totalMinor !== 0) return refuse('weights-add-up-to-nothing', { totalMinor });
		return ok(weights.map(() => 0));
	}
	// Divided by the largest first, so that neither sum nor product can overflow.
	const sum = weights.reduce((total, weight) => total + weight / largest, 0);
	const total = Math.abs(totalMinor);
	const quotas = weights.map((weight) => total * (weight / largest / sum));
	const shares = quotas.map(Math.floor);
	spread(total - shares.reduce((a, b) => a + b, 0), quotas, shares);
	return ok(totalMinor < 0 ? shares.map((share) => (share === 0 ? 0 : -share)) : shares);
}

/** Adds what is left over to the largest remainders, one unit each; changes `shares`. */
function spread(left: number, quotas: readonly number[], shares: number[]): void {
	const remainder = (index: number): number => (quotas[index] ?? 0) - (shares[index] ?? 0);
	const sharing = Array.from(shares.keys()).filter((index) => (quotas[index] ?? 0) > 0);
	if (sharing.length === 0) return;
	// Totals near 2⁵³ can leave a little more or less than one unit per share.
	while (left >= sharing.length) {
		for (const index of sharing) shares[index] = (shares[index] ?? 0) + 1;
		left -= sharing.length;
	}
	if (left > 0) {
		const sorted = Float64Array.from(sharing, remainder).sort();
		const least = sorted[sorted.length - left] ?? 0;
		// Of equal remainders the earlier goes first: how many at the limit get a unit is counted out.
		let atLimit = left;
		for (const index of sharing) if (remainder(index) > least) atLimit--;
		for (const index of sharing) {
			const here = remainder(index);
			if (here > least || (here === least && atLimit-- > 0))
				shares[index] = (shares[index] ?? 0) + 1;
		}
	}
	const smallestFirst = left < 0 ? sharing.toSorted((a, b) => remainder(a) - remainder(b)) : [];
	for (let turn = 0; left < 0; turn++) {
		const index = smallestFirst[turn % smallestFirst.length];
		if (index === undefined || (shares[index] ?? 0) === 0) continue;
		shares[index] = (shares[index] ?? 0) - 1;
		left++;
	}
}
