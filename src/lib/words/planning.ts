import type { Skill } from '#lib/core/mend/jobs.ts';
import type { LeftWhy } from '#lib/core/mend/plan/proposal.ts';

/** Who does a job, in words. */
export const SKILL_WORDS: Readonly<Record<Skill, string>> = {
	fitter: 'fitter',
	'competent-person': 'competent person',
	'service-engineer': 'service engineer'
};

/** Why a leak is in no window, in words. */
export const LEFT_WORDS: Readonly<Record<LeftWhy, string>> = {
	'left-out': 'Left out, as you wished',
	'not-priced': 'Not priced yet',
	'too-long': 'Too long for every window',
	cure: 'Compound cannot cure: no window leaves the air off long enough',
	'no-gain': 'Saves less than its parts cost before the horizon',
	budget: 'Past the budget',
	minutes: 'Others save more in the minutes there are'
};
