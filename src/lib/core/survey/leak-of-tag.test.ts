import { expect, test } from 'vitest';
import { leakOfTag } from './leak-of-tag.ts';
import { newSurvey } from './new-survey.ts';
import type { Leak } from './schema.ts';

const leak = (id: string, tag: number, removed?: boolean): Leak => ({
	id,
	tag,
	part: 'hose',
	hazards: [],
	sightings: {},
	mendings: {},
	...(removed && { removed })
});
const survey = {
	...newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' }
	),
	leaks: {
		'leak-7f3a': leak('leak-7f3a', 12),
		'leak-gone': leak('leak-gone', 13, true)
	}
};

test.each(['12', ' 12 ', '012', '#12', 'leak-7f3a'])('%j leads to its leak', (text) => {
	expect(leakOfTag(survey, text)?.id).toBe('leak-7f3a');
});

test.each(['13', 'leak-gone', '99', '', 'twelve', 'constructor', 'https://example.invalid/12'])(
	'%j leads nowhere',
	(text) => {
		expect(leakOfTag(survey, text)).toBeUndefined();
	}
);
