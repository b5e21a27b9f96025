import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	AFTER,
	BEFORE,
	leakOfTwo,
	leaksOfTwo,
	mended,
	sighting,
	siteOfTwo
} from '../../../../tests/arbitrary/two-rounds.ts';
import type { Survey } from '../survey/schema.ts';
import { TERMS } from './bridge.ts';
import { compareRounds } from './compare.ts';
import { comparisonSpread, type SpreadOptions } from './intervals.ts';
import { measuredSaving } from './measured.ts';
import { returnRates } from './rate.ts';
import { regrowth } from './regrowth.ts';

const meter = (flowLPerS: number, relativeUncertainty?: number) =>
	({
		kind: 'meter',
		flowLPerS,
		reference: 'iso-1217',
		...(relativeUncertainty !== undefined && { relativeUncertainty })
	}) as const;

function spreadOf(survey: Survey, options: SpreadOptions = {}) {
	const comparison = compareRounds(survey, BEFORE, AFTER);
	if (!comparison.ok) throw new Error(comparison.error.code);
	const spread = comparisonSpread(survey, comparison.value, options);
	if (!spread.ok) throw new Error(spread.error.code);
	return { comparison: comparison.value, spread: spread.value };
}

const widthOf = (spread: { low: number; high: number } | undefined) =>
	spread ? spread.high - spread.low : NaN;

describe('[V6] intervals of a saving', () => {
	it('[V6] a leak that nobody sized again adds nothing to the interval of what was avoided', () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 20 }), (count) => {
				const survey = siteOfTwo(
					Array.from({ length: count }, (_, i) => {
						const same = sighting(BEFORE, 'leaking', meter(1 + i));
						return leakOfTwo(i + 1, [same, { ...same, seenAt: '2026-10-01T08:00:00Z' }]);
					})
				);
				const { spread } = spreadOf(survey, { draws: 200 });
				expect(widthOf(spread.terms.avoided.costMinorPerYear)).toBe(0);
				expect(widthOf(spread.terms.after.costMinorPerYear)).toBeGreaterThan(0);
			}),
			{ numRuns: 10 }
		);
	});

	// Expected: of the difference of two lognormals with one shared error only, x·(e^{sz}), the ends are
	// (a − b)·e^{±1.645·s} (derived).
	it('[V6] what a method gets wrong in both rounds cancels in the difference', () => {
		const survey = siteOfTwo([
			leakOfTwo(1, [
				sighting(BEFORE, 'leaking', meter(5, 1e-9)),
				sighting(AFTER, 'leaking', meter(4, 1e-9))
			])
		]);
		const { spread } = spreadOf(survey, { draws: 4000, shared: { methods: { meter: 0.5 } } });
		// Its own uncertainty caps the method's, so nothing is left here.
		expect(widthOf(spread.terms.avoided.massFlowKgPerS)).toBeLessThan(1e-9);
		const rough = siteOfTwo([
			leakOfTwo(1, [
				sighting(BEFORE, 'leaking', meter(5, 0.2)),
				sighting(AFTER, 'leaking', meter(4, 0.2))
			])
		]);
		const apart = widthOf(
			spreadOf(rough, { shared: { methods: { meter: 0 } } }).spread.terms.avoided.massFlowKgPerS
		);
		const both = widthOf(
			spreadOf(rough, { shared: { methods: { meter: 0.2 } } }).spread.terms.avoided.massFlowKgPerS
		);
		const alone = widthOf(
			spreadOf(rough, { shared: { methods: { meter: 0.2 } } }).spread.terms.before.massFlowKgPerS
		);
		// Independent, the method's 0.2 would widen the difference by √2; shared, by some percent.
		expect(both / apart).toBeLessThan(1.1);
		expect(alone).toBeGreaterThan(0);
	});

	it('[V6] the same seed gives the same interval, and the nominal lies in it', () => {
		fc.assert(
			fc.property(leaksOfTwo, (leaks) => {
				const survey = siteOfTwo(leaks);
				const { comparison, spread } = spreadOf(survey, { draws: 400 });
				expect(spreadOf(survey, { draws: 400 }).spread).toEqual(spread);
				for (const term of TERMS) {
					const { low, median, high } = spread.terms[term].massFlowKgPerS;
					expect(low).toBeLessThanOrEqual(median);
					expect(median).toBeLessThanOrEqual(high);
				}
				const { low, high } = spread.terms.before.massFlowKgPerS;
				expect(low).toBeLessThanOrEqual(comparison.terms.before.massFlowKgPerS * 1.001);
				expect(high).toBeGreaterThanOrEqual(comparison.terms.before.massFlowKgPerS * 0.8);
			}),
			{ numRuns: 25 }
		);
	});
});

describe('measured by system test', () => {
	const cycles = (loadedS: number) =>
		Array.from({ length: 6 }, () => ({ loadedS, unloadedS: 100 }));
	const withTests = (survey: Survey, before: number, after: number): Survey => ({
		...survey,
		systemTests: {
			'test-one': {
				kind: 'load-time',
				id: 'test-one',
				name: 'One',
				doneAt: '2026-04-01T08:00:00Z',
				roundId: BEFORE,
				capacityM3PerMin: 6,
				cycles: cycles(before)
			},
			'test-two': {
				kind: 'load-time',
				id: 'test-two',
				name: 'Two',
				doneAt: '2026-10-01T08:00:00Z',
				roundId: AFTER,
				capacityM3PerMin: 6,
				cycles: cycles(after)
			}
		}
	});
	const proved = siteOfTwo([
		leakOfTwo(
			1,
			[sighting(BEFORE, 'leaking', meter(20)), sighting(AFTER, 'tight')],
			mended('tight')
		)
	]);
	const saving = (survey: Survey) => {
		const { comparison, spread } = spreadOf(survey);
		return measuredSaving(survey, comparison, spread);
	};

	// Expected: loaded 100 of 200 s and 50 of 150 s at 6 m³/min leave 3 − 2 = 1 m³/min (derived).
	it('[V7] the saving is the fall from one test to the other', () => {
		const found = saving(withTests(proved, 100, 50));
		if (!found.ok) throw new Error(found.error.code);
		const density = 100_000 / (287.05 * 293.15);
		expect(found.value.nominalKgPerS).toBeCloseTo((1 / 60) * density, 9);
		expect(found.value.sharedRelativeUncertainty).toBe(0.05);
		expect(found.value.massFlowKgPerS.low).toBeLessThan(found.value.nominalKgPerS);
		expect(found.value.massFlowKgPerS.high).toBeGreaterThan(found.value.nominalKgPerS);
	});

	// 20 L/s is 1.2 m³/min: falls of 1.2, 0.3 and 2.6 m³/min agree, are less and are more (derived).
	it.each([
		['agree', 100, 42.86],
		['soap-more', 100, 81.82],
		['test-more', 100, 7.14]
	] as const)('[V7] says that they %s', (agreement, before, after) => {
		const found = saving(withTests(proved, before, after));
		expect(found.ok ? found.value.agreement : found.error.code).toBe(agreement);
	});

	it('[V7] a round without a test is refused by its name', () => {
		const { 'test-one': one } = withTests(proved, 100, 50).systemTests;
		const found = saving({ ...proved, systemTests: one ? { 'test-one': one } : {} });
		expect(found.ok ? undefined : found.error).toEqual({
			code: 'system-tests-missing',
			detail: { round: 'Two' }
		});
	});
});

describe('[V8] how fast it comes back', () => {
	const held = (tag: number) =>
		leakOfTwo(
			tag,
			[sighting(BEFORE, 'leaking', meter(1)), sighting(AFTER, 'tight')],
			mended('tight')
		);
	const back = (tag: number) =>
		leakOfTwo(
			tag,
			[sighting(BEFORE, 'leaking', meter(1)), sighting(AFTER, 'leaking', meter(1))],
			mended('tight')
		);

	// Expected: 10 April to 1 October is 174 days; 4 joints, 1 of them back (derived).
	it('[V8] counts joints, years under watch and returns', () => {
		const { all, kinds } = returnRates(siteOfTwo([held(1), held(2), held(3), back(4)]));
		expect(all).toMatchObject({ watched: 4, returned: 1 });
		expect(all?.years).toBeCloseTo((4 * 174) / 365.25, 9);
		expect(all?.perYear).toBeCloseTo(365.25 / (4 * 174), 9);
		expect(kinds).toHaveLength(1);
		expect(kinds[0]).toMatchObject({ part: 'hose', action: 'replace-hose' });
	});

	// Expected: 5 % and 95 % points of χ² with 2n + 1 degrees of freedom, halved: for n = 4 that is
	// 3.325 and 16.919 (any table of χ², from memory), to 1 %; for n = 0 the upper 3.841.
	it('[V8] its interval is that of a table', () => {
		const many = returnRates(siteOfTwo([1, 2, 3, 4].map(back))).all;
		expect((many?.low ?? NaN) * (many?.years ?? NaN)).toBeCloseTo(3.325 / 2, 1);
		expect(((many?.high ?? NaN) * (many?.years ?? NaN)) / (16.919 / 2)).toBeCloseTo(1, 2);
		const none = returnRates(siteOfTwo([held(1)])).all;
		expect(none?.low).toBe(0);
		expect(((none?.high ?? NaN) * (none?.years ?? NaN)) / (3.841 / 2)).toBeCloseTo(1, 1);
	});

	// Expected: held 3, back 1 of one size over half a year of 183 days: g = 1·365.25/183 of them a
	// year; a quarter of 3 is lost after 0.75/g years (derived).
	it('[V8] the next round is due when a quarter of what is held is lost', () => {
		const { comparison, spread } = spreadOf(siteOfTwo([held(1), held(2), held(3), back(4)]));
		const { nextRoundInDays, costMinorPerYearPerYear, years, leaks } = regrowth(comparison, spread);
		expect(leaks).toBe(1);
		expect(years).toBeCloseTo(183 / 365.25, 9);
		expect(nextRoundInDays?.value).toBeCloseTo(0.75 * 183, 6);
		expect(costMinorPerYearPerYear?.value).toBeCloseTo(
			((comparison.terms.again.costMinorPerYear ?? NaN) * 365.25) / 183,
			6
		);
	});

	// Expected: four of one size, well metered: u is all but ½, so the ends are g·e^(∓1.645/2) (derived).
	it('[V8] few leaks make the rate rough, however well they are measured', () => {
		const exact = (tag: number) =>
			leakOfTwo(
				tag,
				[sighting(BEFORE, 'leaking', meter(1)), sighting(AFTER, 'leaking', meter(1, 1e-9))],
				mended('tight')
			);
		const survey = siteOfTwo([1, 2, 3, 4].map(exact));
		const { comparison, spread } = spreadOf(survey, { shared: { methods: { meter: 0 } } });
		const { value, low, high } = regrowth(comparison, spread).costMinorPerYearPerYear ?? {
			value: NaN,
			low: NaN,
			high: NaN
		};
		expect(Math.log(high / value)).toBeCloseTo(1.645 / 2, 3);
		expect(Math.log(value / low)).toBeCloseTo(1.645 / 2, 3);
	});

	it('[V8] a quick rate makes an early day, and no return makes no rate', () => {
		const { comparison, spread } = spreadOf(siteOfTwo([held(1), held(2), back(3), back(4)]));
		const next = regrowth(comparison, spread).nextRoundInDays;
		expect(next?.low).toBeLessThan(next?.value ?? NaN);
		expect(next?.high).toBeGreaterThan(next?.value ?? NaN);
		const calm = spreadOf(siteOfTwo([held(1)]));
		expect(regrowth(calm.comparison, calm.spread)).toEqual({
			years: expect.closeTo(183 / 365.25, 9) as number,
			leaks: 0
		});
	});

	it('[V8] a leak that was tight without any mending is under no watch', () => {
		const found = returnRates(
			siteOfTwo([leakOfTwo(1, [sighting(BEFORE, 'tight'), sighting(AFTER, 'leaking', meter(1))])])
		);
		expect(found.all).toBeUndefined();
	});
});
