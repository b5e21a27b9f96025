import type { SoapBand, SoapBands } from '../../air/evidence/soap-response.ts';
import { STARTING_SOAP_BANDS } from '../../air/evidence/soap-response.ts';
import { NINETY_PERCENT } from './spread.ts';

/** A leak whose soap response was seen and whose flow was measured too. */
export interface SoapPair {
	readonly response: string;
	/** Effective area by the measurement. */
	readonly areaM2: number;
	/** u(ln A_e) of the measurement. */
	readonly relativeStandardUncertainty: number;
}

export interface RefittedBand extends SoapBand {
	readonly response: string;
	readonly pairs: number;
	/** The band before. */
	readonly before: SoapBand;
}

/** With fewer, a band stays as it is. Our starting value. */
export const LEAST_PAIRS = 3;
/** What the band's width counts for, in pairs. Our starting value. */
const WIDTH_COUNTS_AS = 4;
/** How far off a band's middle may be, ln of the area: the shared error of soap responses. METHOD W6. */
const STARTING_MIDDLE_SPREAD = 0.35;

/**
 * Moves a site's soap bands towards what was measured there. In x = ln(hole diameter):
 * middle = (x₀/τ² + n·x̄/v) / (1/τ² + n/v), v = s₀² + mean u²; width from
 * s² = (ν₀·s₀² + Σ(x − middle)² − Σu²) / (ν₀ + n), never narrower than half of s₀;
 * low, high = e^(middle ∓ 1.645·s).
 *
 * @param pairs leaks with both a soap response and a measured flow
 * @param ownBands the site's bands, by response
 * @param middleSpread how far off a band's middle may be, standard deviation of ln(area)
 * @returns the bands that have enough pairs, refitted; the others are left out
 * @validity pairs that were not chosen for their size
 * @source normal mean with a normal prior, any statistics text; the width's weight is our starting
 * value; METHOD W13
 */
export function refitSoapBands(
	pairs: readonly SoapPair[],
	ownBands: SoapBands,
	middleSpread = STARTING_MIDDLE_SPREAD
): readonly RefittedBand[] {
	const byResponse = new Map<string, SoapPair[]>();
	for (const pair of pairs) {
		if (!(pair.areaM2 > 0 && Number.isFinite(pair.areaM2))) continue;
		byResponse.set(pair.response, [...(byResponse.get(pair.response) ?? []), pair]);
	}
	const starting: SoapBands = STARTING_SOAP_BANDS;
	const bandOf = (response: string) =>
		Object.hasOwn(ownBands, response)
			? ownBands[response]
			: Object.hasOwn(starting, response)
				? starting[response]
				: undefined;
	return [...byResponse].flatMap(([response, of]) => {
		const before = bandOf(response);
		if (of.length < LEAST_PAIRS || !before) return [];
		const { lowMm, highMm } = before;
		return {
			response,
			pairs: of.length,
			before: { lowMm, highMm },
			...refit(before, of, middleSpread / 2)
		};
	});
}

const SQUARE_MILLIMETRES = 1e6;

/** @param middleSpread of ln(diameter), half that of the area */
function refit(band: SoapBand, pairs: readonly SoapPair[], middleSpread: number): SoapBand {
	const n = pairs.length;
	const logs = pairs.map(({ areaM2 }) =>
		Math.log(Math.sqrt((4 * areaM2 * SQUARE_MILLIMETRES) / Math.PI))
	);
	const measuredSquares = pairs.reduce(
		(sum, pair) => sum + (pair.relativeStandardUncertainty / 2) ** 2,
		0
	);
	const before = Math.log(band.lowMm * band.highMm) / 2;
	const width = Math.log(band.highMm / band.lowMm) / (2 * NINETY_PERCENT);
	const variance = width ** 2 + measuredSquares / n;
	const mean = logs.reduce((sum, x) => sum + x, 0) / n;
	const ofBand = 1 / middleSpread ** 2;
	const ofPairs = n / variance;
	const middle = (before * ofBand + mean * ofPairs) / (ofBand + ofPairs);
	const squares = logs.reduce((sum, x) => sum + (x - middle) ** 2, 0);
	const fitted = (WIDTH_COUNTS_AS * width ** 2 + squares - measuredSquares) / (WIDTH_COUNTS_AS + n);
	const spread = Math.sqrt(Math.max(fitted, (width / 2) ** 2));
	return {
		lowMm: Math.exp(middle - NINETY_PERCENT * spread),
		highMm: Math.exp(middle + NINETY_PERCENT * spread)
	};
}
