import type { Skill } from '#lib/core/mend/jobs.ts';
import type { LeftWhy } from '#lib/core/mend/plan/proposal.ts';
import type { Priority } from '#lib/core/mend/priority.ts';

/** Planning the repairs and handing them over. */
export const mending = {
	skills: {
		fitter: 'fitter',
		'competent-person': 'competent person',
		'service-engineer': 'service engineer'
	} satisfies Record<Skill, string>,
	/** Beside a valve: what loses its air with it. */
	withoutAirToo: (sections: string) => `Also without air while it is shut: ${sections}`,
	left: {
		'left-out': 'Left out, as you wished',
		'not-priced': 'Not priced yet',
		'too-long': 'Too long for every window',
		cure: 'Compound cannot cure: no window leaves the air off long enough',
		'no-gain': 'Saves less than its parts cost before the horizon',
		budget: 'Past the budget',
		minutes: 'Others save more in the minutes there are'
	} satisfies Record<LeftWhy, string>,
	workOrderFields: {
		number: 'Number of the repair',
		title: 'Title, at most 100 characters',
		asset: 'Asset: the section',
		location: 'Location',
		type: 'Type of work',
		priority: 'Priority',
		status: 'Status',
		due: 'Due on, yyyy-mm-dd',
		cost: 'Cost of parts',
		currency: 'Currency',
		minutes: 'Minutes planned',
		saving: 'Cost of the leak a year',
		tag: 'Tag on the joint',
		valve: 'Valve to close',
		part: 'Part',
		action: 'Action',
		site: 'Site',
		photo: 'Photo: its file in the pack and in the survey file',
		description: 'Description, with the cautions'
	},
	doubtCounted:
		'Doubt is counted: each leak stands at its mean. An estimate can be far too low but hardly far too high, so the mean is more than the face value in the list below.',
	/** A way down the page. */
	toPlan: (terms: string) => `To the plan: ${terms}`,
	/** Headings of the columns that a site begins with. */
	workOrderHeadings: {
		number: 'Number',
		title: 'Title',
		asset: 'Asset',
		location: 'Location',
		type: 'Type',
		priority: 'Priority',
		status: 'Status',
		due: 'Due',
		cost: 'Cost',
		photo: 'Photo',
		description: 'Description'
	},
	priorities: {
		first: 'Do first',
		high: 'High',
		normal: 'Normal',
		low: 'Low'
	} satisfies Record<Priority, string>,
	/** What is planned into a window. */
	windowJobs: (jobs: number, parts: string) =>
		`${jobs} ${jobs === 1 ? 'job' : 'jobs'}, parts ${parts}`,
	spending: {
		within: (parts: string, budget: string, left: string) =>
			`Parts ${parts} of the ${budget} given for them: ${left} left`,
		beyond: (parts: string, budget: string, over: string) =>
			`Parts ${parts}: ${over} more than the ${budget} given for them`,
		open: (parts: string) => `Parts ${parts}; no budget was named`
	}
};
