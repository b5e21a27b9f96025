import { fixList, type FixJob } from '#lib/core/mend/fix-list.ts';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import { assess } from '#lib/core/weigh/assess.ts';

/** A hose to be replaced behind a named valve, as the list of work has it: for tests of the screen. */
export function aJob(): FixJob {
	const round = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };
	const survey = {
		...newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, round),
		sections: { 'section-a': { id: 'section-a', name: 'Hall', valve: 'V1' } },
		leaks: {
			'leak-7': {
				id: 'leak-7',
				tag: 7,
				sectionId: 'section-a',
				part: 'hose' as const,
				hazards: [],
				sightings: { 'round-1': { state: 'leaking' as const, seenAt: round.startedAt } },
				mendings: {}
			}
		}
	};
	const job = fixList(survey, assess(survey, round.id)).groups[0]?.jobs[0];
	if (!job) throw new Error('a leak without a job');
	return job;
}
