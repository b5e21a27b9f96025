import { describe, expect, it } from 'vitest';
import {
	AFTER,
	BEFORE,
	leakOfTwo,
	mended,
	sighting,
	siteOfTwo
} from '../../../../tests/arbitrary/two-rounds.ts';
import { apply } from '../survey/apply.ts';
import type { Survey } from '../survey/schema.ts';
import { compareRounds } from './compare.ts';
import { comparisonSpread } from './intervals.ts';
import { payback, repairsBetween } from './payback.ts';
import { sensitivity } from './sensitivity.ts';

const meter = (flowLPerS: number) => ({ kind: 'meter', flowLPerS, reference: 'iso-1217' }) as const;
const leaking = (flow: number) => sighting(BEFORE, 'leaking', meter(flow));

/** A metered litre a second, 0.06 m³/min, at 6.5 kW for each, 8,000 hours and 0.25 EUR: 780 EUR. */
const LITRE = 78_000;

const held = (tag: number, flow: number, cost?: number) =>
	leakOfTwo(tag, [leaking(flow), sighting(AFTER, 'tight')], {
		...mended('tight'),
		...(cost !== undefined && { cost })
	});

function found(survey: Survey) {
	const comparison = compareRounds(survey, BEFORE, AFTER);
	if (!comparison.ok) throw new Error(comparison.error.code);
	const spread = comparisonSpread(survey, comparison.value);
	if (!spread.ok) throw new Error(spread.error.code);
	return { comparison: comparison.value, spread: spread.value };
}

function paid(survey: Survey) {
	const { comparison, spread } = found(survey);
	return payback(survey, comparison, spread);
}

describe('[V9] payback', () => {
	// Expected: 60 + 18 EUR against 2 L/s of 780 EUR each: 78 / 1,560 of a year (derived).
	it('[V9] sets all that was spent against what is proved alone', () => {
		const survey = siteOfTwo([
			held(1, 2, 60),
			leakOfTwo(2, [leaking(3), sighting(AFTER, 'leaking', meter(3))], { ...mended(), cost: 18 }),
			held(3, 1e-9)
		]);
		expect(paid(survey)?.spent).toEqual({ minor: 7800, repairs: 3, priced: 2 });
		expect(paid(survey)?.years).toBeCloseTo(78 / 1560, 6);
	});

	it('[V9] its ends are the money over the ends of what is proved', () => {
		const survey = siteOfTwo([held(1, 2, 60)]);
		const { low, high } = found(survey).spread.terms.held.costMinorPerYear ?? {
			low: NaN,
			high: NaN
		};
		expect(paid(survey)?.low).toBeCloseTo(6000 / high, 12);
		expect(paid(survey)?.high).toBeCloseTo(6000 / low, 12);
		expect(low).toBeLessThan(2 * LITRE);
	});

	it('[V9] is not known where nothing was written down, and never where nothing is proved', () => {
		expect(paid(siteOfTwo([held(1, 2)]))).toBeUndefined();
		const claim = leakOfTwo(1, [leaking(2)], { ...mended(), cost: 40 });
		expect(paid(siteOfTwo([claim]))).toEqual({ spent: { minor: 4000, repairs: 1, priced: 1 } });
	});

	it('[V9] money of the round after is not in it', () => {
		const leak = held(1, 2, 60);
		const later = { ...leak, mendings: { ...leak.mendings, [AFTER]: { cost: 500 } } };
		expect(paid(siteOfTwo([later]))?.spent.minor).toBe(6000);
	});
});

describe('[V9] what the repairs cost is written down when the bill comes', () => {
	it('[V9] for each joint that is said to be mended or was found tight, and for no other', () => {
		const survey = siteOfTwo([
			held(1, 2, 60),
			leakOfTwo(2, [leaking(3)], mended()),
			leakOfTwo(3, [leaking(1), sighting(AFTER, 'tight')]),
			leakOfTwo(4, [leaking(1), sighting(AFTER, 'leaking')])
		]);
		const { comparison } = found(survey);
		expect(
			repairsBetween(survey, comparison).map(({ leak, roundId, cost }) => [leak.tag, roundId, cost])
		).toEqual([
			[1, BEFORE, 60],
			[2, BEFORE, undefined],
			[3, BEFORE, undefined]
		]);
	});

	it('[V9] and counts although the round after has begun', () => {
		const survey = siteOfTwo([held(1, 2)]);
		const [repair] = repairsBetween(survey, found(survey).comparison);
		if (!repair) throw new Error('no repair');
		const later = apply(survey, {
			kind: 'log-mending',
			leakId: repair.leak.id,
			roundId: repair.roundId,
			changes: { cost: 60 }
		});
		if (!later.ok) throw new Error(later.error.code);
		expect(paid(later.value)?.spent).toEqual({ minor: 6000, repairs: 1, priced: 1 });
	});
});

describe('[V10] what would change the answer', () => {
	// Expected: by hand from 780 EUR for each L/s (derived).
	it('[V10] sees one thing at a time otherwise', () => {
		const survey = siteOfTwo([
			held(1, 4),
			held(2, 2),
			leakOfTwo(3, [leaking(1)], mended()),
			leakOfTwo(4, [leaking(0.5), sighting(AFTER, 'not-reached')]),
			leakOfTwo(5, [undefined, sighting(AFTER, 'leaking', meter(0.3))])
		]);
		const { comparison } = found(survey);
		expect(comparison.avoided.costMinorPerYear).toBe(Math.round(5.7 * LITRE));
		const litres = Object.fromEntries(
			sensitivity(comparison).map(({ what, avoided }) => [
				what,
				(avoided.costMinorPerYear ?? NaN) / LITRE
			])
		);
		expect(litres['claims-hold']).toBeCloseTo(6.7, 6);
		expect(litres['not-reached-tight']).toBeCloseTo(6.2, 6);
		expect(litres['largest-smaller']).toBeCloseTo(3.7, 6);
		expect(litres['method-smaller']).toBeCloseTo((5.7 * 2) / 3, 6);
	});

	it('[V10] names only what there is', () => {
		expect(sensitivity(found(siteOfTwo([])).comparison)).toEqual([]);
		expect(sensitivity(found(siteOfTwo([held(1, 1)])).comparison).map(({ what }) => what)).toEqual([
			'largest-smaller',
			'method-smaller'
		]);
	});
});
