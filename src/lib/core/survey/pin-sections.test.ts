import { expect, test } from 'vitest';
import { checkSurvey } from './checks.ts';
import { newSurvey } from './new-survey.ts';
import { isPinnedOutside, leaksWithout } from './pin-sections.ts';
import type { Area, Leak, PlanPoint, Survey } from './schema.ts';

const rectangle = (left: number, right: number): PlanPoint[] => [
	{ x: left, y: 0 },
	{ x: right, y: 0 },
	{ x: right, y: 1 },
	{ x: left, y: 1 }
];
const drawn = (sectionId: string, left: number, right: number): Area => ({
	id: `area-${sectionId}`,
	planId: 'plan-1',
	outline: rectangle(left, right),
	use: { kind: 'section', sectionId }
});

function pinned(tag: number, x: number, sectionId?: string): Leak {
	return {
		id: `leak-${String(tag)}`,
		tag,
		planId: 'plan-1',
		at: { x, y: 0.5 },
		...(sectionId !== undefined && { sectionId }),
		part: 'hose',
		hazards: [],
		sightings: { 'round-1': { state: 'leaking', seenAt: '2026-03-01T09:00:00Z' } },
		mendings: {}
	};
}

/** The hall is drawn on the left half, the kiln on the right quarter, the press not at all. */
function surveyOf(...leaks: Leak[]): Survey {
	const round = { id: 'round-1', name: 'First', startedAt: '2026-03-01T08:00:00Z' };
	return {
		...newSurvey({ id: 'site-1', name: 'Works', currency: 'EUR' }, round),
		sections: {
			'section-hall': { id: 'section-hall', name: 'Hall' },
			'section-kiln': { id: 'section-kiln', name: 'Kiln' },
			'section-press': { id: 'section-press', name: 'Press' },
			'section-gone': { id: 'section-gone', name: 'Gone', removed: true }
		},
		areas: {
			'area-hall': drawn('section-hall', 0, 0.5),
			'area-kiln': drawn('section-kiln', 0.75, 1)
		},
		leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
	};
}

test('the leaks that were pinned before their section was drawn are found, and no others', () => {
	const survey = surveyOf(
		pinned(1, 0.2),
		pinned(2, 0.6),
		pinned(3, 0.2, 'section-press'),
		pinned(4, 0.2, 'section-gone'),
		{ ...pinned(5, 0.2), removed: true },
		{ ...pinned(6, 0.2), planId: 'plan-2' }
	);
	const tags = leaksWithout(survey, 'plan-1', 'section-hall').map(({ tag }) => tag);
	expect(tags).toEqual([1, 4]);
	expect(leaksWithout(survey, 'plan-1', 'section-press')).toEqual([]);
});

test.each([
	['within its outline', pinned(1, 0.2, 'section-hall'), false],
	['beside it', pinned(1, 0.6, 'section-hall'), true],
	['in another', pinned(1, 0.8, 'section-hall'), true],
	['on another plan', { ...pinned(1, 0.6, 'section-hall'), planId: 'plan-2' }, false],
	['on a section that is not drawn', pinned(1, 0.2, 'section-press'), false],
	['on no section', pinned(1, 0.2), false]
])('a pin %s is asked about only where the drawing says otherwise', (_, leak, outside) => {
	const survey = surveyOf(leak);
	expect(isPinnedOutside(survey, leak)).toBe(outside);
	const asked = checkSurvey(survey, 'round-1').filter(({ id }) => id === 'leak-outside-section');
	expect(asked).toHaveLength(outside ? 1 : 0);
});

test('a pin in another section is offered that one', () => {
	const [asked] = checkSurvey(surveyOf(pinned(1, 0.8, 'section-hall')), 'round-1').filter(
		({ id }) => id === 'leak-outside-section'
	);
	expect(asked).toMatchObject({
		severity: 'doubt',
		detail: { tag: 1, name: 'Hall', here: 'Kiln' },
		fixes: [{ kind: 'set-leak', leakId: 'leak-1', changes: { sectionId: 'section-kiln' } }]
	});
});
