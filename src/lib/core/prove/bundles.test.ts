import { describe, expect, it } from 'vitest';
import {
	AFTER,
	BEFORE,
	leakOfTwo,
	mended,
	sighting,
	siteOfTwo
} from '../../../../tests/arbitrary/two-rounds.ts';
import type { Evidence } from '../survey/evidence-schema.ts';
import type { Survey } from '../survey/schema.ts';
import { randomFrom } from '../weigh/uncertainty/random.ts';
import { TERMS } from './bridge.ts';
import { compareRounds } from './compare.ts';
import { comparisonSpread, type SpreadOptions } from './intervals.ts';

const LEAKS = 1500;

/** Many leaks of all fates and of sizes far apart, from a fixed seed. */
function manyLeaks(): Survey {
	const normals = new Float64Array(2 * LEAKS);
	randomFrom(11).fillNormals(normals, normals.length);
	const size = (at: number): Evidence => {
		const times = Math.exp(0.7 * normals[at]!);
		if (at % 3 === 0) return { kind: 'hole', diameterMm: Math.min(20, times), edge: 'unknown' };
		if (at % 3 === 1) return { kind: 'meter', flowLPerS: times, reference: 'iso-1217' };
		return { kind: 'soap-response', response: at % 2 === 0 ? 'foam-spits' : 'now-and-then' };
	};
	return siteOfTwo(
		Array.from({ length: LEAKS }, (_, i) => {
			const seen = sighting(BEFORE, 'leaking', size(i));
			const later = [
				sighting(AFTER, 'tight'),
				{ ...seen, seenAt: '2026-10-01T08:00:00Z' },
				sighting(AFTER, 'leaking', size(LEAKS + i)),
				undefined
			][i % 4];
			const before = i % 7 === 3 ? undefined : seen;
			return leakOfTwo(i + 1, [before, later], i % 5 === 0 ? mended('tight') : undefined);
		})
	);
}

describe('[V6] many leaks in bundles', () => {
	// Expected: every leak drawn by itself, from other random numbers. An end of 4,000 draws has a
	// standard error of about 3 % of the interval's half-width (derived, order statistics).
	it('[V6] give the intervals that every leak drawn by itself gives', { timeout: 30_000 }, () => {
		const survey = manyLeaks();
		const comparison = compareRounds(survey, BEFORE, AFTER);
		if (!comparison.ok) throw new Error(comparison.error.code);
		const spreadOf = (options: SpreadOptions) => {
			const spread = comparisonSpread(survey, comparison.value, { draws: 4000, ...options });
			if (!spread.ok) throw new Error(spread.error.code);
			return spread.value.terms;
		};
		const [bundles, singly] = [spreadOf({}), spreadOf({ seed: 2, singlyUpTo: Infinity })];
		let seen = 0;
		for (const term of TERMS)
			for (const quantity of ['massFlowKgPerS', 'costMinorPerYear'] as const) {
				const [one, other] = [bundles[term][quantity]!, singly[term][quantity]!];
				const half = (other.high - other.low) / 2;
				if (half === 0) {
					expect(one.high - one.low).toBe(0);
					continue;
				}
				seen++;
				for (const end of ['low', 'median', 'high'] as const)
					expect(Math.abs(one[end] - other[end]) / half).toBeLessThan(0.15);
			}
		expect(seen).toBeGreaterThan(12);
	});
});
