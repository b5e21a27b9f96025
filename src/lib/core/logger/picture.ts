import type { Series } from './series.ts';

/** A recording drawn small: the lowest and the highest reading of each stretch of time. */
export interface Picture {
	readonly from: number;
	readonly to: number;
	readonly stretches: readonly {
		readonly time: number;
		readonly low: number;
		readonly high: number;
	}[];
}

/** Draws a part of a recording in at most `most` stretches; a stretch without readings is left out. */
export function pictureOf(
	{ times, values }: Series,
	from: number,
	to: number,
	most: number
): Picture {
	const stretches: { time: number; low: number; high: number }[] = [];
	const width = (to - from) / most;
	let stretch = -1;
	for (let i = firstFrom(times, from); i < times.length && times[i]! <= to; i++) {
		const at = Math.min(most - 1, Math.floor((times[i]! - from) / width));
		const value = values[i]!;
		const last = stretches.at(-1);
		if (at === stretch && last) {
			last.low = Math.min(last.low, value);
			last.high = Math.max(last.high, value);
		} else {
			stretch = at;
			stretches.push({ time: times[i]!, low: value, high: value });
		}
	}
	return { from, to, stretches };
}

function firstFrom(times: Float64Array, from: number): number {
	let low = 0;
	let high = times.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (times[middle]! < from) low = middle + 1;
		else high = middle;
	}
	return low;
}
