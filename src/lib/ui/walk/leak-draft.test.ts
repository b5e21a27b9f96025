import { describe, expect, test } from 'vitest';
import type { Leak } from '#lib/core/survey/schema.ts';
import { walk } from '#lib/words/walk.ts';
import {
	asMeant,
	draftAfter,
	draftAt,
	draftDoubts,
	inSection,
	leakOf,
	withoutCarried,
	type LeakDraft
} from './leak-draft.ts';

const last: Leak = {
	id: 'leak-7',
	tag: 7,
	part: 'hose',
	hazards: ['at-height'],
	place: 'Press 4, left',
	note: 'hisses on start',
	sectionId: 'section-press',
	sightings: {
		'round-1': {
			state: 'leaking',
			seenAt: '2026-11-02T08:00:00Z',
			evidence: { kind: 'soap-response', response: 'foam-spits' },
			pressureBarGauge: 6.2
		}
	},
	mendings: {}
};
const at = { x: 0.4, y: 0.6 };
const here = { planId: 'plan-1', at };
const drawn = { ...here, sectionId: 'section-glaze' };

const carriedWords = (draft: ReturnType<typeof draftAfter>) =>
	draft.carriedFrom === undefined ? undefined : walk.capture.carried(draft.carriedFrom, draft);

describe('a leak after another', () => {
	test('has its part, section and pressure, and neither its size, hazards, place nor note', () => {
		const draft = draftAfter(last, 'round-1', here);
		expect(draft).toMatchObject({
			part: 'hose',
			sectionId: 'section-press',
			pressureBarGauge: 6.2,
			carriedFrom: 7
		});
		expect(carriedWords(draft)).toBe('Part, section and pressure are those of leak 7.');
		const leak = leakOf(draft, {
			id: 'leak-8',
			tag: 8,
			roundId: 'round-1',
			at: '2026-11-02T08:01:00Z'
		});
		expect(leak.sightings['round-1']).not.toHaveProperty('evidence');
		expect(leak).toMatchObject({ hazards: [], tag: 8 });
		expect(leak).not.toHaveProperty('note');
		expect(leak).not.toHaveProperty('place');
		expect(leak).not.toHaveProperty('photos');
	});

	test('where another section is drawn has that one, and not the pressure behind the other valve', () => {
		const draft = draftAfter(last, 'round-1', drawn);
		expect(draft).toMatchObject({ sectionId: 'section-glaze', sectionDrawn: true });
		expect(draft.pressureBarGauge).toBeUndefined();
		expect(carriedWords(draft)).toBe(
			'The part is that of leak 7; the section is the one drawn here.'
		);
	});

	test('where the same section is drawn keeps the pressure, and says where the section is from', () => {
		const draft = draftAfter(last, 'round-1', { ...here, sectionId: 'section-press' });
		expect(draft.pressureBarGauge).toBe(6.2);
		expect(carriedWords(draft)).toBe(
			'Part and pressure are those of leak 7; the section is the one drawn here.'
		);
	});

	test('put elsewhere takes the section that is drawn there, and leaves one that was drawn where it was', () => {
		const moved = draftAt(draftAfter(last, 'round-1', here), drawn);
		expect(moved).toMatchObject({
			sectionId: 'section-glaze',
			sectionDrawn: true,
			elsewhere: true
		});
		expect(moved.pressureBarGauge).toBeUndefined();
		const outside = draftAt(moved, { planId: 'plan-1', at: { x: 0.9, y: 0.9 } });
		expect(outside.sectionId).toBeUndefined();
		expect(outside.at).toEqual({ x: 0.9, y: 0.9 });
		expect(carriedWords(outside)).toBe('The part is that of leak 7.');
		const unmoved = draftAt(draftAfter(last, 'round-1', here), here);
		expect(unmoved).toMatchObject({ sectionId: 'section-press', pressureBarGauge: 6.2 });
	});

	test('in a section that was chosen by hand drops the pressure that was carried, not one that was read', () => {
		const carried = inSection(draftAfter(last, 'round-1', here), 'section-kiln');
		expect(carried).toMatchObject({ sectionId: 'section-kiln', sectionDrawn: false });
		expect(carried.pressureBarGauge).toBeUndefined();
		const read = { ...draftAfter(undefined, 'round-1', here), pressureBarGauge: 5 };
		expect(inSection(read, 'section-kiln').pressureBarGauge).toBe(5);
	});

	test('cleared keeps its place, what was seen, and the section that is drawn there', () => {
		const evidence = { kind: 'soap-response', response: 'film-tears' } as const;
		const cleared = withoutCarried({ ...draftAfter(last, 'round-1', drawn), evidence });
		expect(cleared).toMatchObject({ ...here, evidence, sectionId: 'section-glaze' });
		expect(cleared.carriedFrom).toBeUndefined();
		expect(cleared.part).toBe('threaded-joint');
		expect(withoutCarried(draftAfter(last, 'round-1', here)).sectionId).toBeUndefined();
	});
});

test('the first leak carries nothing', () => {
	expect(draftAfter(undefined, 'round-1', here).carriedFrom).toBeUndefined();
});

test('a slip is asked about before the leak is pinned, and what was meant settles it', () => {
	const evidence = { kind: 'hole', diameterMm: 20, edge: 'unknown' } as const;
	let draft: LeakDraft = {
		...draftAfter(last, 'round-1', here),
		pressureBarGauge: 90,
		evidence
	};
	expect(draftDoubts(draftAfter(last, 'round-1', here), 8)).toEqual([]);
	expect(draftDoubts(draft, 8).map(({ id, detail }) => [id, detail['tag']])).toEqual([
		['leak-pressure-implausible', 8],
		['leak-size-implausible', 8]
	]);
	for (let left = 2; left > 0; left--) {
		const meant = draftDoubts(draft, 8)[0]?.fixes[0];
		if (!meant) throw new Error('nothing is offered');
		draft = asMeant(draft, meant);
		// What the other asks about is not touched.
		expect(draftDoubts(draft, 8)).toHaveLength(left - 1);
	}
	expect(draft).toMatchObject({ pressureBarGauge: 9, evidence: { diameterMm: 2 }, part: 'hose' });
	expect(draftDoubts(draft, 8)).toEqual([]);
});
