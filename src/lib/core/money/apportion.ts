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
	let sum = 0;
	for (const weight of weights) sum += weight / largest;
	const total = Math.abs(totalMinor);
	const count = weights.length;
	const quotas = new Float64Array(count);
	const shares = Array.from<number>({ length: count });
	let left = total;
	for (let i = 0; i < count; i++) {
		quotas[i] = total * (weights[i]! / largest / sum);
		shares[i] = Math.floor(quotas[i]!);
		left -= shares[i]!;
	}
	spread(left, quotas, shares);
	return ok(totalMinor < 0 ? shares.map((share) => (share === 0 ? 0 : -share)) : shares);
}

/** Adds what is left over to the largest remainders, one unit each; changes `shares`. */
function spread(left: number, quotas: Float64Array, shares: number[]): void {
	const remainder = (index: number): number => quotas[index]! - shares[index]!;
	let count = 0;
	const places = new Int32Array(quotas.length);
	for (let i = 0; i < quotas.length; i++) if (quotas[i]! > 0) places[count++] = i;
	const sharing = places.subarray(0, count);
	if (count === 0) return;
	// Totals near 2⁵³ can leave a little more or less than one unit per share.
	while (left >= count) {
		for (const index of sharing) shares[index]! += 1;
		left -= count;
	}
	if (left > 0) {
		const remainders = new Float64Array(count);
		for (let k = 0; k < count; k++) remainders[k] = remainder(sharing[k]!);
		const least = nthLargest(remainders.slice(), left);
		// Of equal remainders the earlier goes first: how many at the limit get a unit is counted out.
		let atLimit = left;
		for (const here of remainders) if (here > least) atLimit--;
		for (let k = 0; k < count; k++) {
			const here = remainders[k]!;
			if (here > least || (here === least && atLimit-- > 0)) shares[sharing[k]!]! += 1;
		}
	}
	const smallestFirst =
		left < 0 ? sharing.slice().sort((a, b) => remainder(a) - remainder(b)) : sharing;
	for (let turn = 0; left < 0; turn++) {
		const index = smallestFirst[turn % count]!;
		if (shares[index] === 0) continue;
		shares[index]! -= 1;
		left++;
	}
}

/** The n-th largest of some values, by partitioning them, not by sorting; changes their order. */
function nthLargest(values: Float64Array, n: number): number {
	const target = n - 1;
	let first = 0;
	let last = values.length - 1;
	while (first < last) {
		const pivot = values[(first + last) >>> 1]!;
		let low = first;
		let high = last;
		while (low <= high) {
			while (values[low]! > pivot) low++;
			while (values[high]! < pivot) high--;
			if (low > high) break;
			const taken = values[low]!;
			values[low++] = values[high]!;
			values[high--] = taken;
		}
		if (target <= high) last = high;
		else if (target >= low) first = low;
		else break;
	}
	return values[target] ?? 0;
}
