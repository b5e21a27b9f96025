import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** Which job goes into which window: what is asked for, and the plan that comes of it. */
export const mendPlan = {
	minutes: (minutes: string) => `${minutes} min`,
	noWindow: 'In no window',
	noName: 'Window without a name',
	noSection: 'No section yet',

	/** The times when air can be off. */
	windows: {
		none: 'No window yet. Add the times when air can be off; the plan then says what to mend in which.',
		people: (count: number, shown: string) =>
			many(count, { one: '1 person', other: `${shown} people` }),
		overnight: 'air off overnight',
		name: 'Name',
		starts: 'Starts',
		length: 'Length',
		crew: 'People',
		standstill: 'Standstill costs',
		anHour: (currency: string) => `${currency} an hour`,
		standstillHint: 'Empty: production stands still anyway.',
		mayStayOff: 'Air may stay off until the next morning',
		remove: 'Remove',
		removeThat: (name: string) => `Remove ${name}`,
		add: 'Add a window',
		addAnother: 'Add another window',
		numbered: (number: string) => `Window ${number}`
	},

	/** What the plan keeps to. */
	terms: {
		budget: 'Budget for parts',
		budgetHint: 'Empty: whatever it takes.',
		horizon: 'Savings count for',
		years: 'years',
		horizonHint: (years: string) =>
			`From the first window on. Empty: ${years}, our starting value.`,
		lessParts: 'Take parts off the saving',
		doubt: 'Count the doubt in each estimate'
	},

	/** What repairs take. */
	work: {
		byAction: 'What repairs take here, by action',
		ours: 'our starting values',
		oursAgain: 'Our starting values again',
		oursAgainFor: (action: string) => `Our starting values again: ${action}`,
		time: 'Work',
		parts: 'Parts',
		cure: 'Cure, air off',
		takes: (facts: string) => `What it takes: ${facts}`,
		partsOf: (price: string) => `parts ${price}`,
		cures: (hours: string) => `cures ${hours}`,
		ofAction: 'Empty: the value of the action.',
		byWhom: 'By whom',
		byWhomHint: (skill: string) => `Empty: ${skill}.`,
		wish: 'In the plan',
		wishes: { worth: 'If it pays', always: 'Always in the plan', never: 'Never in the plan' },
		window: 'Window',
		ventFirst: 'Its section is shut and vented for it'
	},

	/** The plan that was made. */
	make: 'Make the plan',
	makeAgain: 'Make the plan again',
	stop: 'Stop here',
	phases: {
		first: 'Making a first plan',
		proving: 'Looking for the best plan',
		'hour-more': 'Asking what more time and money would buy'
	},
	atMost: (doing: string, share: string) => `${doing}: at most ${share} better`,
	proposed: 'Proposed plan',
	stale: 'The survey has changed since. Make the plan again.',
	take: 'Take this plan',
	leave: 'Leave it',
	saves: (worth: string, years: number, shown: string) =>
		many(years, {
			one: `The plan saves ${worth} in ${shown} year.`,
			other: `The plan saves ${worth} in ${shown} years.`
		}),
	savesMore: (worth: string, years: number, shown: string, better: string) =>
		many(years, {
			one: `The plan saves ${worth} in ${shown} year, ${better} better than taking the best job for its minutes one by one.`,
			other: `The plan saves ${worth} in ${shown} years, ${better} better than taking the best job for its minutes one by one.`
		}),
	/** What more for parts would do; nothing, where other things are short. */
	moreForParts: (more: string, saved: string | undefined) =>
		saved === undefined
			? `${more} more for parts would save nothing more.`
			: `${more} more for parts would save ${saved} more.`,
	stillLooking: 'Still looking for a better one.',
	notProved: 'How much better a plan could be was not proved.',
	proved: 'Proved: no plan saves more.',
	provedWithin: (share: string) => `Proved: no plan saves over ${share} more.`,
	noSolver: 'The solver could not run here, so this is the quick plan. It keeps to all limits.',
	noRoom: (tags: string, count: number) =>
		many(count, {
			one: `No room for all that must be mended: tag ${tags}. Add minutes or a window.`,
			other: `No room for all that must be mended: tags ${tags}. Add minutes or a window.`
		}),
	leftOut: (why: string, tags: string, count: number) =>
		many(count, { one: `${why}: tag ${tags}`, other: `${why}: tags ${tags}` }),

	/** A window of that plan. */
	used: (used: string, all: string) => `${used} of ${all} used`,
	savesHere: 'Saves',
	parts: 'Parts',
	standstill: 'Standstill',
	hourMore: 'One more hour',
	buysNothing: 'buys nothing',
	buys: (worth: string) => `buys ${worth}`,
	nothingPays: 'Nothing pays here.',
	opening: (minutes: string) => `${minutes} to shut, vent and restore`
};
