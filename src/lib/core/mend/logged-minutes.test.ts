import { expect, it } from 'vitest';
import { newSurvey } from '../survey/new-survey.ts';
import type { Leak, Mending } from '../survey/schema.ts';
import { loggedMinutes } from './logged-minutes.ts';

const AT = '2026-01-05T08:00:00Z';

function survey(...jobs: readonly (readonly [Leak['part'], Mending, Partial<Leak>?])[]) {
	const round = { id: 'round-1', name: 'First', startedAt: AT };
	return {
		...newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, round),
		leaks: Object.fromEntries(
			jobs.map(([part, mending, more], index): [string, Leak] => {
				const id = `leak-${String(index + 1)}`;
				const mendings = { 'round-1': mending };
				return [id, { id, tag: index + 1, part, hazards: [], sightings: {}, mendings, ...more }];
			})
		)
	};
}

it('[P10] the median of what was written down for mended repairs, by action (derived)', () => {
	const found = loggedMinutes(
		survey(
			['hose', { mendedAt: AT, minutes: 12 }],
			['hose', { mendedAt: AT, minutes: 90 }],
			['hose', { mendedAt: AT, minutes: 20 }],
			['gauge', { mendedAt: AT, minutes: 10 }],
			['gauge', { mendedAt: AT, minutes: 15 }],
			['gauge', { mendedAt: AT, minutes: 40 }, { action: 'close-off' }]
		)
	);
	expect(found.get('replace-hose')).toEqual({ median: 20, count: 3 });
	expect(found.get('replace-gauge')).toEqual({ median: 12.5, count: 2 });
	expect(found.get('close-off')).toEqual({ median: 40, count: 1 });
});

it('[P10] what was not mended, not timed or taken away does not count', () => {
	const found = loggedMinutes(
		survey(
			['hose', { minutes: 12, couldNot: 'No spare' }],
			['hose', { mendedAt: AT }],
			['hose', { mendedAt: AT, minutes: 8 }, { removed: true }]
		)
	);
	expect(found.size).toBe(0);
});
