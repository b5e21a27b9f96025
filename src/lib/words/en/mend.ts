import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** The list of work on the screen: what is done, and how the list is handed over. */
export const mend = {
	pageTitle: (site: string) => `Mend: ${site}`,
	begun: (round: string, day: string) => `${round}, begun ${day}`,
	toJobs: (open: string) => `To the jobs: ${open} to do`,
	beforeWork: 'Before any work',
	moreForAll: (count: string) => `${count} more for all work`,
	nothing: 'Nothing to mend yet',
	nothingAbout:
		'Each leak pinned on Walk becomes a job here, behind the valve that shuts its section.',
	toWalk: 'Go to Walk',
	saves: 'What it saves',
	/** Of the figures above it, once there is more than one round. */
	ofRound: (round: string) => `Counted here: what “${round}” found and mended.`,
	ofEarlier: 'What earlier rounds saved',
	mendedCount: (done: string, all: string) => `${done} of ${all} mended`,
	takeAlong: 'Take it along',
	plan: 'Plan the mending',
	byWindowTitle: 'Windows, in walking order',
	bySectionTitle: 'Sections, unsafe first, then by cost',
	layOut: 'Lay the list out',
	byWindow: 'By window',
	bySection: 'By section',
	noWindow: 'In no window',
	windows: (count: number, shown: string) =>
		many(count, { one: '1 window', other: `${shown} windows` }),
	noBudget: 'no budget named',
	forParts: (budget: string) => `${budget} for parts`,

	/** What it saves, by how sure that is. */
	columns: {
		leaking: 'Still leaking',
		mended: 'Claimed',
		tight: 'Proved'
	},
	about: {
		leaking: (count: number, shown: string) =>
			many(count, {
				one: '1 leak, wasted until mended',
				other: `${shown} leaks, wasted until mended`
			}),
		mended: (count: number, shown: string) =>
			many(count, {
				one: '1 leak, mended, not re-soaped yet',
				other: `${shown} leaks, mended, not re-soaped yet`
			}),
		tight: (count: number, shown: string) =>
			many(count, {
				one: '1 leak, mended, re-soaped and tight',
				other: `${shown} leaks, mended, re-soaped and tight`
			})
	},
	notWeighed: (about: string, count: string) => `${about}; ${count} not weighed`,
	aYear: 'a year',

	/** A section and its jobs. */
	noSection: 'No section yet',
	allMended: (count: number, shown: string) =>
		many(count, { one: 'mended', other: `all ${shown} mended` }),
	toDo: (open: string, all: string) => `${open} of ${all} to do`,
	toDoAt: (open: string, all: string, cost: string) => `${open} of ${all} to do, ${cost} a year`,
	hasFirst: 'Has a job to do first',
	close: 'Close',
	noValve: 'Valve not known.',
	nameValve: 'Name it on Set up',
	stored: (energy: string) => `${energy} kJ stored in the air behind it`,
	beforeLoosened: 'Before anything is loosened, for all jobs here',
	steps: { isolated: 'Isolated', vented: 'Vented', zeroProved: 'Zero proved' },
	showMore: (count: string) => `Show ${count} more`,

	/** A job. */
	tag: (tag: number) => `Tag ${tag}`,
	costAYear: (cost: string) => `${cost} a year`,
	minutes: (minutes: string) => `${minutes} min`,
	first: 'Do this first',
	firstWhy: {
		lead: 'Do this first,',
		whole:
			'Do this first, whatever it costs: a vessel under pressure that leaks, or a thing to take out of service, is a danger before it is a loss.'
	},
	couldNot: 'Could not:',
	cautions: 'Cautions: ',
	costs: (cost: string, waiting: string) => `Costs ${cost} a year; each day of waiting ${waiting}`,
	cost: (cost: string) => `Cost ${cost} a year while it leaked`,
	notWeighedWhy: (why: string) => `Not weighed: ${why}`,
	under: (sum: string) => `under ${sum}`,
	leakOnWalk: (tag: number) => `Leak ${tag} on Walk`,

	/** What was done about it. */
	mended: 'Mended',
	notTicked: (steps: string) => `Not ticked: ${steps.toLowerCase()}.`,
	soapAsked: 'Air back on: what did the soap say?',
	soapSaid: { tight: 'Tight', 'still-leaking': 'Still leaking', 'not-yet': 'Not re-soaped yet' },
	airIsBack: {
		lead: 'The air is back on.',
		whole:
			'The air is back on. Isolate, vent and prove zero again before this joint is touched again.'
	},
	took: {
		title: 'What it took',
		minutes: 'Minutes',
		planned: (minutes: string) => `Planned: ${minutes} min.`,
		plannedAndTook: (planned: string, median: string, count: number, shown: string) =>
			many(count, {
				one: `Planned: ${planned} min. Here it took ${median} min, the only time so far.`,
				other: `Planned: ${planned} min. Here it took ${median} min, the middle of ${shown}.`
			}),
		cost: 'What it cost',
		costHint: 'Parts and work together. Prove sets it against what was saved.',
		part: 'Part used',
		partHint: 'For example: elbow 1/2 in, from the store.'
	},
	notDone: {
		title: 'Could not be done',
		why: 'Why not',
		hint: 'For example: spare not on site, no permit, no way up.'
	},

	/** The compressor room. */
	room: {
		title: 'Compressor room',
		allRight: (count: number, shown: string) =>
			many(count, { one: 'put right', other: `all ${shown} put right` }),
		lookedAt: 'What was looked at, on Walk',
		where: (machine: string, point: string) => `${machine}, ${point.toLowerCase()}`,
		putRight: 'Put right',
		toBePutRight: 'To be put right',
		note: 'Note',
		noteHint: 'What was done, what was used.',
		couldNot: 'Could not be done: why not',
		couldNotHint: 'For example: spare not on site, engineer called for Tuesday.'
	},

	/** The list on its way out. */
	hand: {
		paper: 'Paper',
		letter: 'Letter',
		make: { pdf: 'Print the fix list (PDF)', tags: 'Print tags to hang (PDF)' },
		save: { pdf: 'Save the PDF', tags: 'Save the tags' },
		share: { pdf: 'Share the PDF', tags: 'Share the tags' },
		noGlyphs: (characters: string) =>
			`The print cannot show ${characters}: empty boxes would stand there. Change those names first, or save it as it is.`,
		noGlyphsAndMore: (characters: string, more: number) =>
			`The print cannot show ${characters} and ${more} more: empty boxes would stand there. Change those names first, or save it as it is.`,
		noPlans: (plans: string) =>
			`The picture of ${plans} could not be drawn; its page has the pins without it.`,
		noPhotos: (tags: string, count: number) =>
			many(count, {
				one: `The picture of tag ${tags} could not be drawn; its job is there without it.`,
				other: `The pictures of tags ${tags} could not be drawn; the jobs are there without them.`
			}),
		ready: {
			pdf: 'The PDF is ready, with the cautions on every page.',
			tags: 'The tags are ready. Print them at full size, without scaling.'
		},
		asPage: 'As a page to print or read aloud',
		others: 'For a spreadsheet or another system',
		xlsx: 'As a workbook (XLSX)',
		xlsxAbout: 'Numbers and days as such, in any language.',
		csv: 'As a table (CSV)',
		csvAbout: 'Plain text, with the marks of this language.',
		orders: 'As work orders (CSV)',
		ordersAbout: 'One row per open repair.',
		nameColumns: 'Name its columns',
		pack: 'Work orders with photos (ZIP)',
		packAbout: 'The same table, and each photo under the name that its row has.',
		calendar: 'Windows for a calendar (ICS)',
		calendarAbout: 'Taking it in again moves the entries, and makes no second ones.',
		noWindow: 'There is no window yet.'
	},

	/** How the site's own system wants its work orders. */
	orders: {
		title: 'Work orders',
		pageTitle: (site: string) => `Work orders: ${site}`,
		back: 'Back to Mend',
		columns: 'Columns',
		columnsAbout:
			'One row for each open repair. Write each heading as your system for work orders wants it, and choose what stands below it.',
		heading: (number: number) => `Heading ${number}`,
		holds: 'Holds',
		column: (number: number) => `Column ${number}`,
		takeOut: 'Take out',
		takeOutThat: (number: number) => `Take out column ${number}`,
		stays: 'Stays: the cautions go with each repair.',
		add: 'Add a column',
		priorities: 'Priorities',
		prioritiesAbout:
			'Most systems take only the words of their own list. A priority without a word is refused, not guessed.'
	},

	/**
	 * What each caution is about, in few words: for the folded row of a job, where the whole caution is one tap
	 * away. They stand beside the cautions and never in their place: prints and tables carry the whole text.
	 */
	inShort: {
		C1: 'Isolate, lock, vent, prove zero',
		C2: 'Local rules first',
		C3: 'Vessel out of service',
		C4: 'Safety valve: hands off',
		C5: 'Service engineer only',
		C6: 'Find the valve first',
		C7: 'Stored air',
		C8: 'See the gauge fall',
		C9: 'Eye protection',
		C10: 'Mains locked off',
		C11: 'Starts by itself',
		C12: 'Tank empty first',
		C13: 'Bowl can burst',
		C14: 'Regulator holds pressure',
		C15: 'Machine can move',
		C16: 'Hose whips',
		C17: 'Tool can start',
		C18: 'Blow gun',
		C19: 'Blowing out: mask',
		C20: 'Nip up vented only',
		C21: 'Compound sets overnight',
		C22: 'Live electrics: no soap',
		C23: 'Hot surface',
		C24: 'At height',
		C25: 'Confined space',
		C26: 'Agree the job first',
		C27: 'No ammonia on brass',
		C28: 'Air back slowly',
		C29: 'Drain opened empty only',
		C30: 'Oily condensate',
		C31: 'Timed drain can open',
		C32: 'Filter: machine stopped',
		C33: 'Oil: machine stopped',
		C34: 'Belt guard on',
		C35: 'Maker’s torque'
	}
};
