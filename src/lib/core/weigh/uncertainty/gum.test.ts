import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	combinedCovariance,
	combinedUncertainty,
	coverageFactor90,
	effectiveFreedom
} from './gum.ts';
import { randomFrom } from './random.ts';
import { quantileOf } from './spread.ts';

describe('[W8] law of propagation', () => {
	it('published: GUM H.1, end gauge: 32 nm (verified, as reproduced in a metrology library’s documentation)', () => {
		const u = combinedUncertainty([25, 16.599, 6.7, 5.8, 3.9, 2.887]);
		expect(Math.round(u)).toBe(32);
	});

	it('published: GUM H.2, resistance and reactance (verified, as above; 2 % because the inputs are rounded)', () => {
		const [V, I, phi] = [4.999, 0.019661, 1.04446];
		const u = [0.0032, 9.5e-6, 0.00075];
		const r = [
			[1, -0.36, 0.86],
			[-0.36, 1, -0.65],
			[0.86, -0.65, 1]
		];
		const correlation = (i: number, j: number) => r[i]![j]!;
		const [R, X, Z] = [(V / I) * Math.cos(phi), (V / I) * Math.sin(phi), V / I];
		const ofR = [(R / V) * u[0]!, (-R / I) * u[1]!, -X * u[2]!];
		const ofX = [(X / V) * u[0]!, (-X / I) * u[1]!, R * u[2]!];
		const ofZ = [(Z / V) * u[0]!, (-Z / I) * u[1]!, 0];
		const within = (value: number, expected: number, share: number) =>
			expect(Math.abs(value / expected - 1)).toBeLessThan(share);
		within(R, 127.732, 1e-5);
		within(X, 219.847, 1e-5);
		within(Z, 254.26, 1e-5);
		within(combinedUncertainty(ofR, correlation), 0.071, 0.02);
		within(combinedUncertainty(ofX, correlation), 0.295, 0.02);
		within(combinedUncertainty(ofZ, correlation), 0.236, 0.02);
		const between = (a: readonly number[], b: readonly number[]) =>
			combinedCovariance(a, b, correlation) /
			(combinedUncertainty(a, correlation) * combinedUncertainty(b, correlation));
		expect(between(ofR, ofX)).toBeCloseTo(-0.59, 2);
		expect(between(ofR, ofZ)).toBeCloseTo(-0.49, 2);
		expect(between(ofX, ofZ)).toBeCloseTo(0.99, 2);
	});

	it('published: NIST TN 1900 E13, thermal expansion, by the law and by draws (verified, read in a metrology test suite)', () => {
		const at = { L0: 1.4999, T0: 288.15, L1: 1.5021, T1: 373.1 };
		const u = { L0: 0.0001, T0: 0.02, L1: 0.0002, T1: 0.05 };
		const alpha = (x: typeof at) => (x.L1 - x.L0) / (x.L0 * (x.T1 - x.T0));
		const value = alpha(at);
		expect(value).toBeCloseTo(1.7266e-5, 9);
		const contributions = (Object.keys(at) as (keyof typeof at)[]).map((name) => {
			const step = u[name] / 100;
			const up = alpha({ ...at, [name]: at[name] + step });
			const down = alpha({ ...at, [name]: at[name] - step });
			return ((up - down) / (2 * step)) * u[name];
		});
		expect(combinedUncertainty(contributions)).toBeCloseTo(1.76e-6, 8);
		// By draws, 1.74e-6; the example’s own distributions are not all normal, hence 2 %.
		const n = 100_000;
		const z = new Float64Array(4 * n);
		randomFrom(3).fillNormals(z, z.length);
		let sum = 0;
		let squares = 0;
		for (let i = 0; i < n; i++) {
			const drawn = alpha({
				L0: at.L0 + u.L0 * z[4 * i]!,
				T0: at.T0 + u.T0 * z[4 * i + 1]!,
				L1: at.L1 + u.L1 * z[4 * i + 2]!,
				T1: at.T1 + u.T1 * z[4 * i + 3]!
			});
			sum += drawn - value;
			squares += (drawn - value) ** 2;
		}
		const spread = Math.sqrt(squares / n - (sum / n) ** 2);
		expect(Math.abs(spread / 1.74e-6 - 1)).toBeLessThan(0.02);
	});

	it('published: Welch–Satterthwaite, 12.8 (verified, a general metrology library’s documentation)', () => {
		const freedom = effectiveFreedom([
			{ uncertainty: 0.57, freedom: 9 },
			{ uncertainty: 0.25, freedom: Infinity }
		]);
		expect(freedom).toBeCloseTo(12.8, 1);
	});

	it('published: coverage factors of the 90 % interval (JCGM 100 table G.2, from memory)', () => {
		const table = { 1: 6.31, 2: 2.92, 3: 2.35, 5: 2.02, 10: 1.81, 20: 1.72, 50: 1.68 };
		for (const [freedom, factor] of Object.entries(table))
			expect(Math.abs(coverageFactor90(Number(freedom)) - factor)).toBeLessThan(0.006);
		expect(coverageFactor90(Infinity)).toBeCloseTo(1.645, 3);
	});

	it('law: errors that are the same add up, opposite ones cancel', () => {
		fc.assert(
			fc.property(fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true })), (parts) => {
				const added = parts.reduce((a, b) => a + b, 0);
				const size = parts.reduce((a, b) => a + Math.abs(b), 0);
				const square = combinedUncertainty(parts, () => 1) ** 2;
				expect(Math.abs(square - added ** 2)).toBeLessThanOrEqual(1e-12 * size ** 2);
			})
		);
	});
});

describe('[W7] published: JCGM 101, 9.2, sums of four', () => {
	/** 95 % interval and standard deviation of `count` draws. */
	function propagate(draw: () => number, count = 400_000) {
		const values = new Float64Array(count);
		for (let i = 0; i < count; i++) values[i] = draw();
		values.sort();
		const mean = values.reduce((a, b) => a + b, 0) / count;
		const u = Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / count);
		return { u, low: quantileOf(values, 0.025), high: quantileOf(values, 0.975) };
	}
	const random = randomFrom(9);
	const four = new Float64Array(4);
	/** Rectangular, mean 0, with this standard deviation. */
	const rectangular = (deviation: number) =>
		(2 * random.nextUniform() - 1) * Math.sqrt(3) * deviation;

	it('normal: u = 2.0, ±3.92 (verified, read in an open metrology test suite)', () => {
		const { u, low, high } = propagate(() => {
			random.fillNormals(four, 4);
			return four.reduce((a, b) => a + b, 0);
		});
		expect(u).toBeCloseTo(2, 1);
		expect(low).toBeCloseTo(-3.92, 1);
		expect(high).toBeCloseTo(3.92, 1);
		expect(Math.abs(high - 3.92)).toBeLessThan(0.035);
	});

	it('rectangular: u = 2.0, ±3.88 (verified, read in an open metrology test suite)', () => {
		const { u, low, high } = propagate(
			() => rectangular(1) + rectangular(1) + rectangular(1) + rectangular(1)
		);
		expect(u).toBeCloseTo(2, 1);
		expect(Math.abs(low + 3.88)).toBeLessThan(0.03);
		expect(Math.abs(high - 3.88)).toBeLessThan(0.03);
	});

	it('one of them ten times as wide: u = 10.1, ±17.0 (from memory)', () => {
		const { u, low, high } = propagate(
			() => rectangular(1) + rectangular(1) + rectangular(1) + rectangular(10)
		);
		// Printed 10.1; exactly √103 = 10.149, which draws may round either way.
		expect(Math.abs(u - Math.sqrt(103))).toBeLessThan(0.03);
		expect(Math.abs(low + 17)).toBeLessThan(0.1);
		expect(Math.abs(high - 17)).toBeLessThan(0.1);
	});
});
