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
import { latestRound } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import { compareRounds } from './compare.ts';
import { startRound } from './new-round.ts';
import { answerStop, historyOf, progressOf, stopsOf } from './stops.ts';

const hole = { kind: 'hole', diameterMm: 1, edge: 'sharp' } as const;
const leaking = sighting(BEFORE, 'leaking', hole);
const NEXT = { id: 'round-three', name: 'Three', startedAt: '2027-04-01T06:00:00Z' };

function after(survey: Survey, ...bodies: readonly Parameters<typeof apply>[1][]): Survey {
	return bodies.reduce((before, body) => {
		const next = apply(before, body);
		if (!next.ok) throw new Error(next.error.code);
		return next.value;
	}, survey);
}

describe('[V1] a round', () => {
	const survey = siteOfTwo([
		leakOfTwo(1, [leaking], mended('tight')),
		leakOfTwo(2, [leaking], mended()),
		leakOfTwo(3, [leaking]),
		leakOfTwo(4, [sighting(BEFORE, 'tight')]),
		leakOfTwo(5, [])
	]);

	it('[V1] stops at every leak that was known when it began', () => {
		const stops = stopsOf(survey, AFTER);
		expect(stops.map(({ leak, known }) => [leak.tag, known.state])).toEqual([
			[1, 'tight'],
			[2, 'claimed'],
			[3, 'leaking'],
			[4, 'tight']
		]);
		expect(stopsOf(survey, BEFORE)).toEqual([]);
	});

	it('[V1] goes on to the nearest stop each time, from the compressor room', () => {
		const at = (tag: number, x: number, y: number) => ({
			...leakOfTwo(tag, [leaking]),
			planId: 'plan-a',
			at: { x, y }
		});
		const site = siteOfTwo([
			at(1, 0.9, 0.1),
			at(2, 0.2, 0.1),
			at(3, 0.5, 0.1),
			leakOfTwo(4, [leaking])
		]);
		const image = { sha256: 'a'.repeat(64), mediaType: 'image/png', widthPx: 100, heightPx: 100 };
		const planned: Survey = {
			...site,
			plans: { 'plan-a': { id: 'plan-a', name: 'A', image, compressorRoom: { x: 0.1, y: 0.1 } } }
		};
		expect(stopsOf(planned, AFTER).map(({ leak }) => leak.tag)).toEqual([2, 3, 1, 4]);
	});

	it('[V1] one answer is one command; leaking keeps the last reading', () => {
		const [first, second, third] = stopsOf(survey, AFTER).map(({ leak }) => leak);
		if (!first || !second || !third) throw new Error('no stops');
		const walked = after(
			survey,
			answerStop(survey, first, AFTER, 'leaking', '2026-10-01T09:00:00Z'),
			answerStop(survey, second, AFTER, 'tight', '2026-10-01T09:01:00Z'),
			answerStop(survey, third, AFTER, 'not-reached', '2026-10-01T09:02:00Z')
		);
		const stops = stopsOf(walked, AFTER);
		expect(stops.map(({ outcome, again }) => [outcome, again])).toEqual([
			['leaking', true],
			['tight', false],
			['not-reached', false],
			[undefined, false]
		]);
		expect(walked.leaks['leak-1']?.sightings[AFTER]?.evidence).toEqual(hole);
		expect(walked.leaks['leak-2']?.sightings[AFTER]?.evidence).toBeUndefined();
		expect(progressOf(walked, AFTER, stops)).toEqual({
			stops: 4,
			looked: 2,
			notReached: 1,
			left: 1,
			newLeaks: 0
		});
		const undone = after(walked, answerStop(walked, first, AFTER, undefined, ''));
		expect(undone.leaks['leak-1']?.sightings[AFTER]).toBeUndefined();
	});

	it('[V2] starting one keeps what the last one stood on, so that a later tariff cannot rewrite it', () => {
		const started = after(survey, ...startRound(survey, NEXT));
		expect(latestRound(started)?.id).toBe(NEXT.id);
		const dearer = after(started, { kind: 'set-prices', changes: { pricePerKwh: 0.5 } });
		expect(dearer.rounds[AFTER]?.conditions?.prices.pricePerKwh).toBe(0.25);
		const found = compareRounds(dearer, AFTER, NEXT.id);
		if (!found.ok) throw new Error(found.error.code);
		expect(found.value.routine.map(({ what }) => what)).toEqual(['tariff']);
	});

	it('[V1] a leak’s history is told round by round', () => {
		const leak = leakOfTwo(1, [leaking, sighting(AFTER, 'leaking', hole)], mended('tight'));
		const history = historyOf(siteOfTwo([leak]), leak);
		expect(history.map(({ roundId, found, end }) => [roundId, found.state, end.state])).toEqual([
			[BEFORE, 'leaking', 'tight'],
			[AFTER, 'leaking', 'leaking']
		]);
	});
});
