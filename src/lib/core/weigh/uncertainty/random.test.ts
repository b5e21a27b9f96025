import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../../../../tests/arbitrary/uncertainty-model.ts';
import { Random, randomFrom } from './random.ts';
import { closingError } from './ziggurat.ts';

function normals(count: number, seed = 7): Float64Array {
	const out = new Float64Array(count);
	randomFrom(seed).fillNormals(out, count);
	return out;
}

describe('[W7] random numbers', () => {
	it('published: xoshiro128** from state 1, 2, 3, 4 (authors’ reference code; verified, read in the tests of several independent ports)', () => {
		const random = new Random([1, 2, 3, 4]);
		const outputs = Array.from({ length: 10 }, () => random.nextUint32());
		expect(outputs).toEqual([
			11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
			4258142804
		]);
	});

	it('the same seed gives the same stream, another seed another', () => {
		expect(normals(500, 1)).toEqual(normals(500, 1));
		expect(normals(500, 1)).not.toEqual(normals(500, 2));
		// However the stream is cut into runs.
		const random = randomFrom(1);
		const cut = new Float64Array(500);
		for (let from = 0; from < 500; from += 50) random.fillNormals(cut.subarray(from), 50);
		expect(cut).toEqual(normals(500, 1));
	});

	it('law: uniforms lie between 0 and 1 and never reach them', () => {
		fc.assert(
			fc.property(fc.integer(), (seed) => {
				const u = randomFrom(seed).nextUniform();
				return u > 0 && u < 1;
			})
		);
		expect(() => new Random([0, 0, 0, 0])).toThrow(RangeError);
	});

	it('derived: the layers of the ziggurat close at the top of the curve', () => {
		expect(Math.abs(closingError())).toBeLessThan(1e-12);
	});

	it('derived: moments of a million normals', () => {
		const n = 1_000_000;
		const z = normals(n);
		const moment = (power: number) => z.reduce((sum, x) => sum + x ** power, 0) / n;
		// Standard errors of the moments of a normal: 1, √2, √15, √96 over √n; four of them.
		expect(Math.abs(moment(1))).toBeLessThan(4e-3);
		expect(Math.abs(moment(2) - 1)).toBeLessThan(4 * Math.SQRT2 * 1e-3);
		expect(Math.abs(moment(3))).toBeLessThan(4 * Math.sqrt(15) * 1e-3);
		expect(Math.abs(moment(4) - 3)).toBeLessThan(4 * Math.sqrt(96) * 1e-3);
	});

	it('derived: shape and tails follow Φ, bin by bin', () => {
		const n = 1_000_000;
		const z = normals(n, 11);
		const edges = Array.from({ length: 91 }, (_, i) => -4.5 + i / 10);
		const counts = new Array<number>(92).fill(0);
		for (const x of z) {
			const bin = x < -4.5 ? 0 : x >= 4.5 ? 91 : Math.floor((x + 4.5) * 10) + 1;
			counts[bin]!++;
		}
		const cdf = [0, ...edges.map(normalCdf), 1];
		let chiSquare = 0;
		for (let bin = 0; bin < 92; bin++) {
			const expected = n * (cdf[bin + 1]! - cdf[bin]!);
			chiSquare += (counts[bin]! - expected) ** 2 / expected;
		}
		// χ² of 91 degrees of freedom: mean 91, standard deviation 13.5.
		expect(chiSquare).toBeLessThan(91 + 4 * 13.5);
		const beyond = z.filter((x) => Math.abs(x) > 3.654).length;
		const wanted = 2 * n * (1 - normalCdf(3.654));
		expect(Math.abs(beyond - wanted)).toBeLessThan(4 * Math.sqrt(wanted));
	});

	it('derived: neighbours, and those 12 apart, do not know of each other', () => {
		const n = 400_000;
		const z = normals(n, 5);
		for (const lag of [1, 2, 12]) {
			let sum = 0;
			for (let i = lag; i < n; i++) sum += z[i]! * z[i - lag]!;
			expect(Math.abs(sum / n)).toBeLessThan(4 / Math.sqrt(n));
		}
	});
});
