import { describe, expect, it } from 'vitest';
import { newSurvey } from '../../survey/new-survey.ts';
import type { Survey } from '../../survey/schema.ts';
import type { SystemTest } from '../../survey/system-test-schema.ts';
import { surveyAtTest } from './survey-at-test.ts';
import { latestLeakTest, reckonSystemTest, testsOfRound, workingOfTest } from './reckon.ts';

const base = { name: 'T', doneAt: '2026-01-06T08:00:00Z' };
const plain = newSurvey(
	{ id: 'site-a', name: 'A', currency: 'EUR' },
	{ id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' }
);
/** ISO 1217's own state outside, so that inlet air and the reference are the same. */
const survey: Survey = {
	...plain,
	site: { ...plain.site, barometerKPa: 100, airTemperatureC: 20, reference: 'site' },
	supply: { setPressureBarGauge: 7 }
};
const loadTime: SystemTest = {
	...base,
	id: 'test-load',
	kind: 'load-time',
	capacityM3PerMin: 35,
	cycles: [{ loadedS: 90, unloadedS: 630 }]
};

function outcome(test: SystemTest, of: Survey = survey) {
	const found = reckonSystemTest(of, test);
	if (!found.ok) throw new Error(found.error.code);
	return found.value;
}

describe('[T13] system tests of a survey', () => {
	it('[T1] 1.5 min loaded, 10.5 min unloaded at 35 m³/min leaks 4.375 (BEE guidebook 3, from memory)', () => {
		expect(outcome(loadTime).freeAirM3PerS * 60).toBeCloseTo(4.375, 9);
	});

	it('[T13] takes 5 % for a capacity that nobody qualified, 1 s for the clock (derived)', () => {
		const { relativeStandardUncertainty: u } = outcome(loadTime);
		const clock = (Math.hypot(90, 630) / 720 ** 2 / 0.125) * Math.sqrt(1 / 12);
		expect(u).toBeCloseTo(Math.hypot(0.05, clock), 9);
	});

	it('[T13] states a capacity at the air that the machine takes in', () => {
		const { freeAirM3PerS } = outcome(loadTime, {
			...survey,
			site: { ...survey.site, reference: 'normal', barometerKPa: 90 }
		});
		// 90 kPa and 20 °C into 101.325 kPa and 0 °C: derived.
		expect(freeAirM3PerS * 60).toBeCloseTo(4.375 * (90 / 101.325) * (273.15 / 293.15), 1);
	});

	it('[T4] shows the handbook’s figure beside two readings (V·Δp/(t·p)·1.25, derived)', () => {
		const found = outcome({
			...base,
			id: 'test-bleed',
			kind: 'bleed-down',
			volumeM3: 3,
			readings: [
				{ seconds: 0, barGauge: 7 },
				{ seconds: 300, barGauge: 3.5 }
			]
		});
		if (found.kind !== 'bleed-down') throw new Error(found.kind);
		expect(found.handbook.freeAirM3PerS).toBeCloseTo(((3 * 3.5) / (300 * 1)) * 1.25, 9);
		expect(found.freeAirM3PerS).toBeCloseTo(
			(found.handbook.freeAirM3PerS / 1.25) * (found.handbook.physicsFactor ?? 0),
			6
		);
		expect(found.law).toBeUndefined();
	});

	it('[T6] fits a law from three readings on', () => {
		const found = outcome({
			...base,
			id: 'test-bleed',
			kind: 'bleed-down',
			volumeM3: 3,
			readings: [0, 1, 2, 3, 4].map((at) => ({ seconds: at * 60, barGauge: 8 * 0.9 ** at - 1 }))
		});
		if (found.kind !== 'bleed-down') throw new Error(found.kind);
		expect(found.law).toBe('orifice');
	});

	it('[T13] refuses what says nothing', () => {
		const none = reckonSystemTest({ ...survey, supply: {} }, loadTime);
		expect(none.ok ? '' : none.error.code).toBe('test-set-pressure-missing');
		const one = reckonSystemTest(survey, {
			...base,
			id: 'test-bleed',
			kind: 'bleed-down',
			volumeM3: 3,
			readings: [{ seconds: 0, barGauge: 7 }]
		});
		expect(one.ok ? '' : one.error.code).toBe('series-too-short');
	});

	it('[T13] compares by the newest test of the round that measures a leak', () => {
		const pumpUp: SystemTest = {
			...base,
			id: 'test-pump',
			doneAt: '2026-01-08T08:00:00Z',
			kind: 'pump-up',
			volumeM3: 1,
			fromBarGauge: 0,
			toBarGauge: 7,
			seconds: 60
		};
		const with3: Survey = {
			...survey,
			systemTests: {
				a: loadTime,
				b: { ...loadTime, id: 'b', doneAt: '2026-01-07T08:00:00Z', roundId: 'round-1' },
				c: { ...loadTime, id: 'c', doneAt: '2026-01-09T08:00:00Z', roundId: 'round-2' },
				d: { ...loadTime, id: 'd', doneAt: '2026-01-10T08:00:00Z', removed: true },
				e: pumpUp
			}
		};
		expect(testsOfRound(with3, 'round-1').map(({ id }) => id)).toEqual([
			'test-pump',
			'b',
			'test-load'
		]);
		expect(latestLeakTest(with3, 'round-1')?.test.id).toBe('b');
	});

	it('[T13] gives each outcome its working', () => {
		const working = workingOfTest(survey, loadTime);
		expect(working.ok && working.value.value).toBe(outcome(loadTime).freeAirM3PerS);
	});

	it('[W11] counts what was mended after the test, and not what was mended before', () => {
		const seenAt = '2026-01-05T09:00:00Z';
		const leak = (id: string, mendedAt: string) => ({
			id,
			tag: id === 'a' ? 1 : 2,
			part: 'hose' as const,
			hazards: [],
			sightings: { 'round-1': { state: 'leaking' as const, seenAt } },
			mendings: { 'round-1': { mendedAt } }
		});
		const mended: Survey = {
			...survey,
			leaks: {
				// An hour later by the offset, though the text sorts before.
				a: leak('a', '2026-01-06T07:30:00-02:00'),
				b: leak('b', '2026-01-06T08:30:00+02:00')
			}
		};
		const then = surveyAtTest(mended, 'round-1', loadTime);
		expect(then.leaks['a']?.mendings).toEqual({});
		expect(then.leaks['b']).toBe(mended.leaks['b']);
		expect(surveyAtTest(survey, 'round-1', loadTime)).toBe(survey);
	});
});
