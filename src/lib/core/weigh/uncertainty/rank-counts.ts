/** Up to so many ranks are told apart; above it, neighbours share a count. */
const MOST_BINS = 1024;

/** Where a leak stands among the others, 1 for the one that wastes most. */
export interface RankSpread {
	/** The middle 90 % of its ranks. */
	readonly low: number;
	readonly median: number;
	readonly high: number;
	/** How often it is among the first `topN`. */
	readonly chanceOfTop: number;
}

/**
 * Counts, draw by draw, which rank each leak takes. METHOD W9.
 *
 * A draw is ordered by dropping the leaks into as many drawers as there are leaks, by value, and
 * then passing once over what is almost in order.
 */
export class RankCounts {
	readonly #leaks: number;
	readonly #topN: number;
	readonly #binWidth: number;
	readonly #bins: number;
	/** Counts stay below 2¹⁶ because draws do. */
	readonly #counts: Uint16Array;
	readonly #inTop: Uint32Array;
	readonly #drawer: Uint32Array;
	readonly #starts: Uint32Array;
	readonly #order: Uint32Array;
	readonly #sorted: Float64Array;
	#draws = 0;

	constructor(leaks: number, topN: number) {
		this.#leaks = leaks;
		this.#topN = topN;
		this.#binWidth = Math.max(1, Math.ceil(leaks / MOST_BINS));
		this.#bins = Math.ceil(leaks / this.#binWidth);
		this.#counts = new Uint16Array(leaks * this.#bins);
		this.#inTop = new Uint32Array(leaks);
		this.#drawer = new Uint32Array(leaks);
		this.#starts = new Uint32Array(leaks + 1);
		this.#order = new Uint32Array(leaks);
		this.#sorted = new Float64Array(leaks);
	}

	/** @param keys one per leak, finite; the highest takes rank 1, of equal ones the first */
	add(keys: Float64Array): void {
		this.#sort(keys);
		const order = this.#order;
		const counts = this.#counts;
		const bins = this.#bins;
		const width = this.#binWidth;
		const n = this.#leaks;
		if (width === 1) for (let rank = 0; rank < n; rank++) counts[order[rank]! * bins + rank]!++;
		else
			for (let rank = 0; rank < n; rank++)
				counts[order[rank]! * bins + Math.floor(rank / width)]!++;
		const top = Math.min(this.#topN, n);
		for (let rank = 0; rank < top; rank++) this.#inTop[order[rank]!]!++;
		this.#draws++;
	}

	#sort(keys: Float64Array): void {
		const n = this.#leaks;
		const drawer = this.#drawer;
		const starts = this.#starts;
		const order = this.#order;
		const sorted = this.#sorted;
		let least = Infinity;
		let most = -Infinity;
		for (let i = 0; i < n; i++) {
			const key = keys[i]!;
			if (key < least) least = key;
			if (key > most) most = key;
		}
		const scale = most > least ? (n - 1) / (most - least) : 0;
		starts.fill(0);
		for (let i = 0; i < n; i++) {
			const at = ((most - keys[i]!) * scale) | 0;
			drawer[i] = at;
			starts[at + 1]!++;
		}
		for (let at = 1; at <= n; at++) starts[at]! += starts[at - 1]!;
		for (let i = 0; i < n; i++) {
			const place = starts[drawer[i]!]!++;
			order[place] = i;
			sorted[place] = keys[i]!;
		}
		for (let place = 1; place < n; place++) {
			const key = sorted[place]!;
			if (sorted[place - 1]! >= key) continue;
			const leak = order[place]!;
			let to = place;
			while (to > 0 && sorted[to - 1]! < key) {
				sorted[to] = sorted[to - 1]!;
				order[to] = order[to - 1]!;
				to--;
			}
			sorted[to] = key;
			order[to] = leak;
		}
	}

	/** Where neighbours share a count, the interval reaches to their outer ends. */
	spreadOf(leak: number): RankSpread {
		const row = this.#counts.subarray(leak * this.#bins, (leak + 1) * this.#bins);
		const binAt = (share: number): number => {
			const wanted = share * this.#draws;
			let seen = 0;
			for (let bin = 0; bin < row.length; bin++) {
				seen += row[bin]!;
				if (seen >= wanted) return bin;
			}
			return row.length - 1;
		};
		const first = (bin: number) => bin * this.#binWidth + 1;
		const last = (bin: number) => Math.min((bin + 1) * this.#binWidth, this.#leaks);
		const middle = binAt(0.5);
		return {
			low: first(binAt(0.05)),
			median: Math.floor((first(middle) + last(middle)) / 2),
			high: last(binAt(0.95)),
			chanceOfTop: this.#draws > 0 ? this.#inTop[leak]! / this.#draws : 0
		};
	}
}
