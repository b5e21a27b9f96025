import { NINETY_PERCENT } from './spread.ts';

/**
 * Covariance of two results that share inputs: Σᵢ Σⱼ aᵢ·bⱼ·r(i, j).
 * @param a contributions cᵢ·u(xᵢ) of each input to the one result, in its unit
 * @param b to the other
 * @param correlation of inputs i and j, 1 where they are the same; left out, inputs are independent
 * @returns covariance, product of the two units
 * @validity near enough to linear over the uncertainties
 * @source JCGM 100:2008, 5.1.2, 5.2.2 and H.2.3; METHOD W8
 */
export function combinedCovariance(
	a: ArrayLike<number>,
	b: ArrayLike<number>,
	correlation?: (i: number, j: number) => number
): number {
	let sum = 0;
	for (let i = 0; i < a.length; i++) {
		sum += a[i]! * b[i]!;
		if (!correlation) continue;
		for (let j = 0; j < b.length; j++) if (j !== i) sum += a[i]! * b[j]! * correlation(i, j);
	}
	return sum;
}

/**
 * Combined standard uncertainty: u² = Σ (cᵢ·uᵢ)² + 2·Σ cᵢ·cⱼ·uᵢ·uⱼ·r(i, j).
 * @param contributions cᵢ·u(xᵢ), in the unit of the result
 * @param correlation as `combinedCovariance`
 * @returns standard uncertainty
 * @validity as `combinedCovariance`
 * @source JCGM 100:2008, equations 10 and 16; METHOD W8
 */
export function combinedUncertainty(
	contributions: ArrayLike<number>,
	correlation?: (i: number, j: number) => number
): number {
	return Math.sqrt(Math.max(0, combinedCovariance(contributions, contributions, correlation)));
}

/** A part of an uncertainty and how many independent readings stand behind it, less one. */
export interface UncertaintyPart {
	readonly uncertainty: number;
	/** Infinity where the uncertainty is taken as known. */
	readonly freedom: number;
}

/**
 * Effective degrees of freedom by Welch and Satterthwaite: ν = u⁴ / Σ (uᵢ⁴/νᵢ).
 * @param parts all in the unit of the result
 * @returns ν, Infinity where every part is known
 * @validity independent parts
 * @source JCGM 100:2008, G.4.1; METHOD W8
 */
export function effectiveFreedom(parts: readonly UncertaintyPart[]): number {
	const whole = combinedUncertainty(parts.map(({ uncertainty }) => uncertainty));
	const sum = parts.reduce((total, part) => total + part.uncertainty ** 4 / part.freedom, 0);
	return sum > 0 ? whole ** 4 / sum : Infinity;
}

/**
 * How many standard uncertainties reach the ends of a 90 % interval: the 95 % point of Student's t.
 * @param freedom degrees of freedom, 1 or more; cut to the whole number below (JCGM 100, G.4.1)
 * @returns coverage factor
 * @validity within 0.2 % of the tables from ν = 3 on; exact for 1 and 2
 * @source JCGM 100:2008, table G.2, by the Cornish–Fisher series of t (Abramowitz and Stegun 26.7.5,
 * from memory); METHOD W8
 */
export function coverageFactor90(freedom: number): number {
	const v = Math.max(1, Math.floor(freedom));
	if (v === 1) return Math.tan(0.45 * Math.PI);
	if (v === 2) return 0.9 * Math.sqrt(2 / (1 - 0.81));
	const z = NINETY_PERCENT;
	return (
		z +
		(z ** 3 + z) / (4 * v) +
		(5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * v ** 2) +
		(3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * v ** 3)
	);
}
