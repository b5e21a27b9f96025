/** What leaks are ranked by, a column each: the dearer first; ties by energy, by air, by tag. */
export interface RankColumns {
	/** Place in the survey's table, rising. */
	readonly rows: Float64Array;
	/** Absent where money is not known. */
	readonly cost: ArrayLike<number> | undefined;
	readonly energy: Float64Array;
	readonly air: Float64Array;
	readonly tag: Float64Array;
}

/**
 * Puts leaks in order, worst first: by money where it is known, else by energy, else by air a year;
 * ties by tag, and leaks of one tag by their place in the table. METHOD W3.
 *
 * @param before rows in the order of an earlier ranking: what still stands in order is not sorted
 * again. The result does not depend on it.
 * @returns indices of the columns
 */
export function rankedOrder(columns: RankColumns, before: Float64Array): Int32Array {
	const { rows, cost, energy, air, tag } = columns;
	const compare = (a: number, b: number): number =>
		(cost ? cost[b]! - cost[a]! : 0) ||
		energy[b]! - energy[a]! ||
		air[b]! - air[a]! ||
		tag[a]! - tag[b]! ||
		a - b;
	const { kept, loose } = stillInOrder(indicesInOrder(rows, before), compare);
	return merged(kept, loose.sort(compare), compare);
}

/** The columns' indices in the order of the rows before; those that are new come last. */
function indicesInOrder(rows: Float64Array, before: Float64Array): Int32Array {
	const indexOf = new Int32Array((rows.at(-1) ?? -1) + 1).fill(-1);
	for (let index = 0; index < rows.length; index++) indexOf[rows[index]!] = index;
	const order = new Int32Array(rows.length);
	let count = 0;
	for (const row of before) {
		const index = indexOf[row] ?? -1;
		if (index < 0) continue;
		order[count++] = index;
		indexOf[row] = -1;
	}
	for (const row of rows) {
		const index = indexOf[row]!;
		if (index >= 0) order[count++] = index;
	}
	return order;
}

/** Takes out both of every two that stand the wrong way round. */
function stillInOrder(
	order: Int32Array,
	compare: (a: number, b: number) => number
): { readonly kept: Int32Array; readonly loose: Int32Array } {
	const kept = new Int32Array(order.length);
	const loose = new Int32Array(order.length);
	let keptCount = 0;
	let looseCount = 0;
	for (const index of order) {
		if (keptCount > 0 && compare(kept[keptCount - 1]!, index) > 0) {
			loose[looseCount++] = kept[--keptCount]!;
			loose[looseCount++] = index;
		} else kept[keptCount++] = index;
	}
	return { kept: kept.subarray(0, keptCount), loose: loose.subarray(0, looseCount) };
}

function merged(
	kept: Int32Array,
	loose: Int32Array,
	compare: (a: number, b: number) => number
): Int32Array {
	const all = new Int32Array(kept.length + loose.length);
	let next = 0;
	let at = 0;
	for (const index of kept) {
		while (next < loose.length && compare(loose[next]!, index) < 0) all[at++] = loose[next++]!;
		all[at++] = index;
	}
	all.set(loose.subarray(next), at);
	return all;
}
