import { HIGH_SHARE, LOW_SHARE, type Spread } from './spread.ts';

const BINS = 256;
/** How many standard deviations the bins reach to either side. */
const REACH = 6;
/** And beyond that, e-folds: what the station's own bend can add. */
const MARGIN = 1;

/**
 * Counts, for each leak, how far the logarithm of a figure of it lay from its nominal value, in
 * bins of a twentieth of its spread: enough for its interval without keeping the draws. METHOD W7.
 */
export class LeakCounts {
	readonly #nominal: Float64Array;
	readonly #reach: Float64Array;
	/** Counts stay below 2¹⁶ because draws do. */
	readonly #counts: Uint16Array;
	readonly #sums: Float64Array;
	#draws = 0;

	/**
	 * @param nominal the figure without errors, one per leak
	 * @param spreads standard deviation of the logarithm, one per leak
	 */
	constructor(nominal: Float64Array, spreads: Float64Array) {
		this.#nominal = nominal;
		this.#reach = spreads.map((spread) => REACH * spread + MARGIN);
		this.#counts = new Uint16Array(nominal.length * BINS);
		this.#sums = new Float64Array(nominal.length);
	}

	/** @param logRatios ln(figure / nominal) of each leak in one draw; −∞ where it is worth nothing */
	add(logRatios: Float64Array, ratios: Float64Array): void {
		const reach = this.#reach;
		const counts = this.#counts;
		const sums = this.#sums;
		for (let i = 0; i < reach.length; i++) {
			const at = (logRatios[i]! / reach[i]! + 1) * (BINS / 2);
			counts[i * BINS + (at < 0 ? 0 : at >= BINS ? BINS - 1 : at | 0)]!++;
			sums[i]! += ratios[i]!;
		}
		this.#draws++;
	}

	spreadOf(leak: number): Spread {
		const nominal = this.#nominal[leak]!;
		const row = this.#counts.subarray(leak * BINS, (leak + 1) * BINS);
		const at = (share: number): number => {
			const wanted = share * this.#draws;
			let seen = 0;
			for (let bin = 0; bin < BINS; bin++) {
				const here = row[bin]!;
				if (seen + here >= wanted && here > 0) {
					const place = bin + (wanted - seen) / here;
					return bin === 0 ? 0 : Math.exp((place / (BINS / 2) - 1) * this.#reach[leak]!);
				}
				seen += here;
			}
			return 0;
		};
		return {
			low: nominal * at(LOW_SHARE),
			median: nominal * at(0.5),
			high: nominal * at(HIGH_SHARE),
			mean: this.#draws > 0 ? (nominal * this.#sums[leak]!) / this.#draws : nominal
		};
	}
}
