import { describe, expect, it } from 'vitest';
import { newSurvey } from '../survey/new-survey.ts';
import { ACTIONS } from '../survey/parts.ts';
import { comesFirst, jobWork, sectionMinutes, STARTING_JOBS } from './jobs.ts';

const survey = newSurvey(
	{ id: 'site-a', name: 'A', currency: 'EUR' },
	{ id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' }
);

describe('what a repair takes', () => {
	// Expected: the table of METHOD P4 (our starting values); that compound cures overnight is common practice.
	it('[P4] starts from the action of the part', () => {
		expect(jobWork({ part: 'threaded-joint' }, survey)).toEqual({
			minutes: 25,
			partsCost: 2,
			cureHours: 12,
			ventFirst: true,
			skill: 'fitter'
		});
		expect(jobWork({ part: 'pump-joint', action: 'service-engineer' }, survey)).toMatchObject({
			minutes: 120,
			skill: 'service-engineer'
		});
	});

	it("[P4] takes the site's value before ours, and the leak's own before both", () => {
		const own = {
			...survey,
			startingValues: {
				...survey.startingValues,
				jobs: { 'remake-thread': { minutes: 40, partsCost: 3, cureHours: 0 } }
			}
		};
		expect(jobWork({ part: 'threaded-joint' }, own)).toMatchObject({ minutes: 40, cureHours: 0 });
		expect(
			jobWork(
				{ part: 'threaded-joint', job: { minutes: 0, ventFirst: false, wish: 'always' } },
				own
			)
		).toMatchObject({ minutes: 0, partsCost: 3, ventFirst: false, wish: 'always' });
	});

	it('[P4] has minutes for every action, and air off overnight for sealing compound alone', () => {
		for (const action of ACTIONS) expect(STARTING_JOBS[action].minutes).toBeGreaterThan(0);
		expect(ACTIONS.filter((action) => STARTING_JOBS[action].cureHours > 0)).toEqual([
			'remake-thread'
		]);
	});

	it('[P4] opens a section in 25 minutes when it does not say', () => {
		expect(sectionMinutes(undefined)).toBe(25);
		expect(sectionMinutes({ id: 'section-a', name: 'A', isolateMinutes: 30, ventMinutes: 0 })).toBe(
			40
		);
	});

	it('[P3] a vessel, or what goes out of service, comes first', () => {
		expect(comesFirst({ part: 'pressure-vessel', action: 'nip-up' })).toBe(true);
		expect(comesFirst({ part: 'hose', action: 'out-of-service' })).toBe(true);
		expect(comesFirst({ part: 'hose' })).toBe(false);
	});
});
