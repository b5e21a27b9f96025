import { describe, expect, test } from 'vitest';
import type { FixJob } from '#lib/core/mend/fix-list.ts';
import { aJob } from './a-job.ts';
import { sectionCautions } from '#lib/core/mend/cautions.ts';
import { commonCautions, jobsOfStep, stepsNotTicked, stepState } from './job-steps.ts';
import { StandingOrder } from './standing-order.ts';
import { mendPlan } from '#lib/words/mend-plan.ts';
import { mend } from '#lib/words/mend.ts';

function job(tag: number, done: boolean, ticks: FixJob['ticks']): FixJob {
	return { ...aJob(), leakId: `leak-${tag}`, tag, done, ticks };
}

describe('the steps that make a section safe', () => {
	const open = job(1, false, { isolated: true, vented: true });
	const other = job(2, false, { isolated: true });
	const mended = job(3, true, { mendedAt: '2026-05-01T10:00:00Z' });

	test('are for the jobs still to do, and for all once none is left', () => {
		expect(jobsOfStep({ jobs: [open, other, mended] })).toEqual([open, other]);
		expect(jobsOfStep({ jobs: [mended] })).toEqual([mended]);
	});

	test('are ticked for all, for some or for none', () => {
		const group = { jobs: [open, other, mended] };
		expect(stepState(group, 'isolated')).toBe('all');
		expect(stepState(group, 'vented')).toBe('some');
		expect(stepState(group, 'zeroProved')).toBe('none');
	});

	test('that nobody ticked are named, so that the caution can say which', () => {
		expect(stepsNotTicked(open)).toEqual(['zeroProved']);
		expect(stepsNotTicked(mended)).toEqual(['isolated', 'vented', 'zeroProved']);
	});
});

describe('the cautions over the jobs of a section', () => {
	const section = sectionCautions({ valve: 'V1' });
	const ids = (jobs: FixJob[]) => commonCautions({ jobs, cautions: section }).map(({ id }) => id);
	const hose = job(1, false, {});
	const [c1, c9] = hose.cautions;
	const other = { ...hose, cautions: [c1, c9].flatMap((caution) => caution ?? []) };

	test('[C1] are those that each job carries, and the section’s own, once each', () => {
		expect(ids([hose, other])).toEqual(['C1', 'C9', ...section.map(({ id }) => id)]);
		expect(new Set(ids([hose, hose])).size).toBe(ids([hose, hose]).length);
		expect(ids([hose, hose])).toEqual(expect.arrayContaining(hose.cautions.map(({ id }) => id)));
	});

	test('[C1] over a single job: the first one, and the section’s own', () => {
		expect(ids([hose])).toEqual(['C1', ...section.map(({ id }) => id)]);
	});
});

describe('the standing order of what is on the screen', () => {
	test('keeps a thing where it was first seen and puts new things last', () => {
		const order = new StandingOrder();
		const own = (text: string) => text;
		expect(order.arrange(['b', 'a', 'c'], own)).toEqual(['b', 'a', 'c']);
		expect(order.arrange(['d', 'c', 'b'], own)).toEqual(['b', 'c', 'd']);
	});
});

describe('words that count', () => {
	test('speak of one job, one tag and one time as one', () => {
		const { allMended, room, took } = mend;
		expect([allMended(1, '1'), allMended(3, '3')]).toEqual(['mended', 'all 3 mended']);
		expect([room.allRight(1, '1'), room.allRight(2, '2')]).toEqual([
			'put right',
			'all 2 put right'
		]);
		expect(took.plannedAndTook('60', '18', 1, '1')).toMatch(/18 min, the only time so far\.$/);
		expect(mendPlan.leftOut('Past the budget', '4', 1)).toBe('Past the budget: tag 4');
		expect(mendPlan.leftOut('Past the budget', '4, 7', 2)).toBe('Past the budget: tags 4, 7');
	});
});
