import { expect, test } from 'vitest';
import { apply } from '#lib/core/survey/apply.ts';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Leak, Survey } from '#lib/core/survey/schema.ts';
import { bulkCommands, chosenLeaks, commonFields, type BulkChange } from './bulk-edit.ts';

const ROUND = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };
const leak = (tag: number, more: Partial<Leak> = {}): Leak => ({
	id: `leak-${tag}`,
	tag,
	part: 'hose',
	hazards: [],
	sightings: {
		[ROUND.id]: { state: 'leaking', seenAt: ROUND.startedAt, pressureBarGauge: tag }
	},
	mendings: {},
	...more
});
const survey: Survey = {
	...newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, ROUND),
	sections: { 'section-a': { id: 'section-a', name: 'Hall' } },
	leaks: {
		'leak-1': leak(1, { sectionId: 'section-a', hazards: ['at-height'] }),
		'leak-2': leak(2, { part: 'valve' }),
		'leak-3': leak(3, { removed: true })
	}
};
const leaks = chosenLeaks(survey, ['leak-1', 'leak-2', 'leak-3', 'leak-9']);

function after(change: BulkChange): Survey {
	let changed = survey;
	for (const body of bulkCommands(survey, ROUND.id, leaks, change)) {
		const next = apply(changed, body);
		if (!next.ok) throw new Error(next.error.code);
		changed = next.value;
	}
	return changed;
}

test('what is removed or not there takes no part', () => {
	expect(leaks.map(({ tag }) => tag)).toEqual([1, 2]);
});

test('what they have in common is told from what differs', () => {
	const common = commonFields(survey, ROUND.id, leaks);
	expect(common.section).toEqual({ mixed: true });
	expect(common.part).toEqual({ mixed: true });
	expect(common.pressure).toEqual({ mixed: true });
	expect(common.hazard('at-height')).toBe('some');
	expect(common.hazard('live-electrics')).toBe('none');
	expect(commonFields(survey, ROUND.id, leaks.slice(0, 1)).section).toEqual({
		mixed: false,
		value: 'section-a'
	});
});

test.each<[BulkChange, number]>([
	[{ of: 'section', sectionId: 'section-a' }, 1],
	[{ of: 'section', sectionId: null }, 1],
	[{ of: 'part', part: 'valve' }, 1],
	[{ of: 'action', action: 'nip-up' }, 2],
	[{ of: 'hazard', hazard: 'at-height', there: true }, 1],
	[{ of: 'hazard', hazard: 'at-height', there: false }, 1],
	[{ of: 'pressure', barGauge: 6.5 }, 2],
	[{ of: 'pressure', barGauge: null }, 2]
])('after %o all have it in common, and asking again changes nothing', (change, count) => {
	expect(bulkCommands(survey, ROUND.id, leaks, change)).toHaveLength(count);
	const changed = after(change);
	const now = chosenLeaks(changed, ['leak-1', 'leak-2']);
	expect(bulkCommands(changed, ROUND.id, now, change)).toEqual([]);
	const common = commonFields(changed, ROUND.id, now);
	if (change.of === 'hazard')
		expect(common.hazard(change.hazard)).toBe(change.there ? 'all' : 'none');
	else expect(common[change.of].mixed).toBe(false);
	expect(changed.leaks['leak-3']).toBe(survey.leaks['leak-3']);
});
