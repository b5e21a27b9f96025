/** A recording: times in seconds, rising, and a reading for each. */
export interface Series {
	readonly times: Float64Array;
	readonly values: Float64Array;
}

const FIRST_ROOM = 1 << 14;

/** Rows as they come in, in flat memory that grows by half. */
export class SeriesBuilder {
	#times = new Float64Array(FIRST_ROOM);
	#values = new Float64Array(FIRST_ROOM);
	#length = 0;

	get length(): number {
		return this.#length;
	}

	/** Makes room for so many rows at once: what grows step by step is copied at every step. */
	reserve(rows: number): void {
		if (rows <= this.#times.length) return;
		this.#times = grown(this.#times, rows);
		this.#values = grown(this.#values, rows);
	}

	add(time: number, value: number): void {
		if (this.#length === this.#times.length) this.reserve(Math.ceil(this.#length * 1.5));
		this.#times[this.#length] = time;
		this.#values[this.#length] = value;
		this.#length += 1;
	}

	/**
	 * The rows in the order of time: a file that has its newest row first is turned round, and a row
	 * that is not later than the one before it is left out, as when a clock was set back.
	 */
	finish(): { readonly series: Series; readonly outOfOrder: number } {
		const n = this.#length;
		const times = this.#times.subarray(0, n);
		const values = this.#values.subarray(0, n);
		let falling = 0;
		for (let i = 1; i < n; i++) if (times[i]! < times[i - 1]!) falling += 1;
		if (falling > n / 2) {
			times.reverse();
			values.reverse();
		}
		let kept = 0;
		for (let i = 0; i < n; i++) {
			if (kept > 0 && !(times[i]! > times[kept - 1]!)) continue;
			times[kept] = times[i]!;
			values[kept] = values[i]!;
			kept += 1;
		}
		return {
			series: { times: times.subarray(0, kept), values: values.subarray(0, kept) },
			outOfOrder: n - kept
		};
	}
}

function grown(from: Float64Array, room: number): Float64Array<ArrayBuffer> {
	const made = new Float64Array(room);
	made.set(from);
	return made;
}

/** Values of an evenly taken sample of a recording, rising. */
export function sortedSample(values: Float64Array, most = 100_000): Float64Array {
	const step = Math.max(1, Math.ceil(values.length / most));
	const sample = new Float64Array(Math.ceil(values.length / step));
	for (let i = 0; i < sample.length; i++) sample[i] = values[i * step]!;
	return sample.sort();
}

/** A quantile of rising values. */
export function quantile(sorted: ArrayLike<number>, share: number): number {
	const at = share * (sorted.length - 1);
	const below = Math.floor(at);
	const low = sorted[below] ?? Number.NaN;
	return low + (at - below) * ((sorted[below + 1] ?? low) - low);
}

export function median(values: readonly number[]): number {
	return quantile(
		[...values].sort((a, b) => a - b),
		0.5
	);
}
