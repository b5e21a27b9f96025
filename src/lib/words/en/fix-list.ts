/** The fix list on paper, as a page, as tables and in a calendar. */
export const fixList = {
	title: 'Fix list',
	titleOf: (title: string, site: string) => `${title}: ${site}`,
	printed: (day: string) => `printed ${day}`,
	page: (page: string, pages: string) => `Page ${page} of ${pages}`,
	band: 'Air off before hands on',
	continued: (heading: string) => `${heading}, continued`,

	/** What it comes to. */
	figures: {
		toDo: 'Jobs to do',
		done: (count: string) => `${count} done`,
		air: 'Air lost while it leaks',
		freeAir: (reference: string) => `free air, ${reference}`,
		notWeighed: (reference: string, count: string) =>
			`free air, ${reference}; ${count} more not weighed`,
		energy: 'Energy a year',
		carbon: (amount: string) => `${amount} CO₂e`,
		money: 'Money a year',
		notKnown: 'not known yet',
		interval: (range: string) => `90 % interval ${range}`,
		intervalAnd: (range: string, note: string) => `90 % interval ${range}; ${note}`
	},
	method: (method: string) => `How it was worked out: ${method}.`,
	methodQuick: (method: string, power: string, source: string) =>
		`How it was worked out: ${method}, ${power} kW per m³/min (${source}).`,
	walkedTitle: 'What was walked',
	beforeAnyJob: 'Before any job',
	beforeAnyWork: 'Before any work',
	inFigures: 'In figures',
	nothing: 'Nothing to mend yet.',
	roomUnchecked: 'Compressor room: no check recorded in this round.',
	roomChecked: (inOrder: string, found: string, notDone: string) =>
		`Compressor room: ${inOrder} in order, ${found} found, ${notDone} not done.`,

	/** Sections, and the order of the work in them. */
	sectionsTitle: 'Sections, in the order to work',
	noSection: 'No section yet',
	findValve: 'Find the isolating valve first',
	valve: (valve: string) => `Valve to close: ${valve}`,
	close: 'Close:',
	closeValve: (valve: string) => `Close: ${valve}`,
	withoutAirToo: (sections: string) => `Also without air while it is shut: ${sections}.`,
	partsTitle: 'Windows and their parts',
	pressure: (pressure: string) => `Pressure ${pressure}`,
	stored: (energy: string, volume: string) => `Stored energy ${energy} kJ in ${volume} L`,
	steps: {
		isolated: 'Isolated',
		locked: 'Locked',
		vented: 'Vented',
		zeroProved: 'Zero proved',
		restored: 'Restored',
		mainsLocked: 'Mains locked off',
		lockedOff: 'Locked off',
		cooled: 'Cooled',
		mended: 'Mended',
		reSoaped: 'Re-soaped',
		putRight: 'Put right'
	},
	toBePutRight: 'To be put right',
	initials: 'Initials',
	/** Read out after what a box is called. */
	ticked: (ticked: boolean): string => (ticked ? ': yes' : ': not yet'),
	window: (name: string, starts: string, minutes: string) => `${name}, ${starts}, ${minutes} min`,
	unnamed: (starts: string, minutes: string) => `${starts}, ${minutes} min`,
	noWindow: 'In no window',
	toDo: (open: string, all: string) => `${open} of ${all} to do`,
	toDoFirst: (open: string, all: string, first: string) =>
		`${open} of ${all} to do, ${first} first`,
	aYear: (sum: string) => `${sum} a year`,
	noSum: 'no cost worked out',
	room: 'Compressor room',
	roomPart: (point: string, found: string) => `${point}: ${found.toLowerCase()}`,

	/** A job. */
	done: 'Done',
	first: 'Do this first',
	flag: (flag: string) => `${flag}.`,
	noPlace: 'Place not given',
	work: (part: string, action: string) => `${part}: ${action}`,
	mind: (hazards: string) => `Mind: ${hazards}`,
	note: (text: string) => `Note: ${text}`,
	couldNot: (why: string) => `Could not: ${why}`,
	notOnPlan: 'Not on a plan',
	notWeighed: (why: string) => `Not weighed. ${why}`,
	noCost: 'No cost worked out.',
	perYear: 'a year',
	waiting: (sum: string) => `waiting: ${sum} a day`,
	under: (sum: string) => `under ${sum}`,
	cautionsHere: 'Cautions here',
	jobsOf: (group: string) => `Jobs: ${group}`,
	tag: 'Tag',
	whatAndWhere: 'What and where',
	cost: 'Cost a year',
	spot: (tag: string, plan: string) => `Where tag ${tag} is on the plan ${plan}`,
	/** What a job takes. */
	takes: {
		minutes: (minutes: string) => `${minutes} min`,
		parts: (sum: string) => `parts ${sum}`,
		cure: (hours: string) => `cures ${hours}, air off`
	},
	/** Of a job that was taken for done once. */
	mendedBefore: (day: string) => `Mended ${day}, and it still leaks`,
	photoOfTag: (tag: string) => `Photo of tag ${tag}`,
	drawingPhotos: 'Drawing the photos',
	thisPage: 'This page',
	back: 'Back to Mend',
	printPage: 'Print this page',

	/** Plans. */
	plan: (title: string) => `Plan: ${title}`,
	planSheets: (plan: string) => `${plan}: its sheets`,
	planSheet: (plan: string, sheet: string) => `${plan}, sheet ${sheet}`,
	key: { open: 'to do', first: 'do this first', done: 'done' },
	tagsOnPlan: 'The number is the tag on the joint.',
	noPicture: 'The picture of this plan is not in the survey.',
	noScale: 'No scale is set for this plan.',
	north: 'North',
	wayOfAir: 'way of the air',
	isolatingValve: 'isolating valve',
	areas: { section: 'section', walked: 'walked and tight' },

	/** Tags to hang on the joints. */
	tags: 'Tags',
	noTags: 'There is no leak left to hang a tag on.',
	leaveOn: 'Leave on until re-soaped',

	/** Tables: a heading may change with the reader, the columns of the CSV never do. */
	sheets: { jobs: 'Jobs', sections: 'Sections', cautions: 'Cautions' },
	columns: {
		tag: 'Tag',
		section: 'Section',
		valve: 'Valve to close',
		place: 'Place',
		part: 'Part',
		action: 'Action',
		cautions: 'Cautions',
		sectionCautions: 'Cautions of the section',
		first: 'First',
		state: 'State',
		hazards: 'Hazards',
		cost: 'Cost a year',
		waiting: 'Cost of waiting a day',
		energy: 'Energy, kWh a year',
		air: 'Free air, L/s',
		notWeighed: 'Not weighed because',
		minutesPlanned: 'Minutes planned',
		minutesTaken: 'Minutes taken',
		parts: 'Parts',
		window: 'Window',
		mended: 'Mended',
		reSoaped: 'Re-soaped',
		couldNot: 'Could not',
		note: 'Note',
		plan: 'Plan',
		jobs: 'Jobs',
		toDo: 'To do',
		facts: 'Facts',
		number: 'Number',
		caution: 'Caution'
	},
	soaped: { tight: 'tight', 'still-leaking': 'still leaking' },

	/** Work orders. */
	orderTitle: (tag: string, action: string, where: string) => `Tag ${tag}: ${action}, ${where}`,
	repair: 'Repair',
	open: 'Open',
	onHold: 'On hold',
	leaveTag: 'Leave the tag on until the joint is re-soaped and tight',

	/** The calendar of windows. */
	calendar: (site: string) => `Mending, ${site}`,
	airOff: (window: string, site: string) => `Air off: ${window}, ${site}`,
	unnamedWindow: 'mending',
	windowSize: (minutes: string, people: string) => `${minutes} min, people: ${people}`,
	overnight: 'The air may stay off overnight, so that compound cures.',
	job: (tag: string, action: string, part: string, place: string) =>
		`Tag ${tag}: ${action}, ${part}${place === '' ? '' : `, ${place}`}`,
	noneInWindow: 'No job is planned into this window yet.',

	/** While it is made. */
	doing: {
		gathering: 'Gathering the jobs',
		plan: (name: string) => `Drawing the plan ${name}`,
		drawing: 'Drawing the pictures',
		fetching: 'Fetching the letters',
		laying: 'Laying out the pages'
	}
};
