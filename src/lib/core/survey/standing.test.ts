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
import { fixList } from '../mend/fix-list.ts';
import { compareRounds } from '../prove/compare.ts';
import { assess, MENDED, WASTING } from '../weigh/assess.ts';
import { leakState } from './leak-state.ts';
import { knownLeak, roundsUntil } from './standing.ts';

const hole = { kind: 'hole', diameterMm: 1, edge: 'sharp' } as const;
const leaking = sighting(BEFORE, 'leaking', hole);
const inSecond = (...leak: Parameters<typeof leakOfTwo>) =>
	knownLeak(leakOfTwo(...leak), [BEFORE, AFTER]);

describe('[W1] what is known of a leak in a later round', () => {
	it.each([
		['proved tight, not looked at', mended('tight'), undefined, 'tight', undefined],
		[
			'proved tight, not reached',
			mended('tight'),
			sighting(AFTER, 'not-reached'),
			'tight',
			undefined
		],
		['said to be mended', mended(), undefined, 'mended', leaking],
		['soaped still leaking', mended('still-leaking'), undefined, 'leaking', leaking],
		['never mended', undefined, undefined, 'leaking', leaking],
		['never mended, not reached', undefined, sighting(AFTER, 'not-reached'), 'leaking', leaking],
		['found tight now', undefined, sighting(AFTER, 'tight'), 'tight', undefined]
	] as const)('[W1] %s', (_, mending, now, state, reading) => {
		expect(inSecond(1, [leaking, now], mending)).toEqual({ state, ...(reading && { reading }) });
	});

	it('[W1] leaking again goes by its new reading', () => {
		const now = sighting(AFTER, 'leaking', hole);
		expect(inSecond(1, [leaking, now], mended('tight'))).toEqual({
			state: 'leaking',
			reading: now
		});
	});

	it('[W1] mended in this round although nobody looked first: its last reading is what was saved', () => {
		const leak = leakOfTwo(1, [leaking]);
		const soaped = { ...leak, mendings: { [AFTER]: mended('tight') } };
		expect(knownLeak(soaped, [BEFORE, AFTER])).toEqual({ state: 'tight', reading: leaking });
	});

	it('[W1] in the first round it is what that round saw', () => {
		fc.assert(
			fc.property(leaksOfTwo, (leaks) => {
				for (const leak of leaks)
					expect(knownLeak(leak, [BEFORE]).state).toBe(leakState(leak, BEFORE));
			}),
			{ numRuns: 40 }
		);
	});

	it('[W1] a round that is not there has nothing before it', () => {
		expect(roundsUntil(siteOfTwo([]), AFTER)).toEqual([BEFORE, AFTER]);
		expect(roundsUntil(siteOfTwo([]), BEFORE)).toEqual([BEFORE]);
		expect(roundsUntil(siteOfTwo([]), 'round-none')).toEqual(['round-none']);
	});

	it('[W1] the list of work has what leaks or may leak open, and what held done', () => {
		const survey = siteOfTwo([
			leakOfTwo(1, [leaking], mended('tight')),
			leakOfTwo(2, [leaking]),
			leakOfTwo(3, [leaking], mended())
		]);
		const { groups } = fixList(survey, assess(survey, AFTER));
		const jobs = groups.flatMap((group) => group.jobs);
		expect(jobs.map(({ tag, done }) => [tag, done]).sort()).toEqual([
			[1, true],
			[2, false],
			[3, true]
		]);
		expect(jobs.find(({ tag }) => tag === 2)?.costMinorPerYear).toBeGreaterThan(0);
	});

	// Expected: before anything is mended in it, what a round weighs with its claims is what the comparison has after.
	it('[W1][V2] a round weighs what the comparison says leaks after', () => {
		fc.assert(
			fc.property(leaksOfTwo, (leaks) => {
				const survey = siteOfTwo(leaks);
				const compared = compareRounds(survey, BEFORE, AFTER);
				if (!compared.ok) throw new Error(compared.error.code);
				const left = new Set(compared.value.notCompared.map(({ leakId }) => leakId));
				const weighed = assess(survey, AFTER, [...WASTING, ...MENDED]).leaks;
				const kgPerS = weighed
					.filter(({ leakId }) => !left.has(leakId))
					.reduce((sum, { massFlowKgPerS }) => sum + massFlowKgPerS, 0);
				expect(kgPerS).toBeCloseTo(compared.value.terms.after.massFlowKgPerS, 12);
			}),
			{ numRuns: 80 }
		);
	});
});
