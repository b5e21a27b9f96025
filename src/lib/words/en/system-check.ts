import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** With which bands it was compared, in the middle of a sentence. */
const YEARLY = {
	cost: 'the yearly cost',
	energy: 'the yearly energy',
	air: 'the free air lost in a year'
};

const leaks = (count: number, shown: string) =>
	many(count, { one: `${shown} leak`, other: `${shown} leaks` });

/** The system check on Weigh: tests of the whole system, a logger's file, and the soap re-fitted. */
export const systemCheck = {
	heading: 'System check',
	comparing: 'Comparing what was found with the test …',
	about:
		'With production stopped, the whole system is a flow meter: a test of it says how much of the leaking has been found, and whether to keep walking.',
	scaledToNone: (factor: string) =>
		`The estimates are scaled by ${factor}, to a test that is no longer here.`,
	scaled: (factor: string) =>
		`The estimates are scaled by ${factor}, to a system test. Every figure on every page is worked out so; what was metered is as it was.`,
	scalingOff: 'Take the scaling off',
	addSystemTest: 'Add a system test',
	addTest: 'Add a test',
	kinds: {
		'load-time': 'Load time',
		'bleed-down': 'Bleed-down',
		'pump-up': 'Pump-up'
	},
	loggerFile: 'A logger’s file',
	addThis: 'Add this test',
	leaveIt: 'Leave it',
	name: 'Name',
	nameHint: 'Such as the day and what was open',
	remove: 'Remove',
	removeNamed: (name: string) => `Remove ${name}`,
	knownToHint: (share: string) => `One standard deviation; ${share} when empty`,
	whenEmpty: (value: string) => `${value} when empty`,
	gaugeStep: 'Smallest step of the gauge',
	clockStep: 'Smallest step of the clock',
	volume: 'Volume',
	volumeKnownTo: 'Volume known to',
	delivers: 'The machine delivers',

	loadTime: {
		about:
			'With production stopped, one machine loads and unloads against the leaks alone. Time a few of its cycles.',
		capacityMissing: 'What the machine delivers is missing.',
		noCycle: 'No cycle is whole yet: give its loaded and its unloaded time.',
		cycles: 'Cycles',
		cycle: (place: number) => `Cycle ${place}`,
		removeCycle: (place: number) => `Remove cycle ${place}`,
		addCycle: 'Add a cycle',
		loaded: 'Loaded',
		unloaded: 'Unloaded',
		stopped: 'Stopped',
		deliversHint: 'When loaded, as free air at its inlet',
		knownTo: 'Known to',
		meanPressure: 'Mean pressure',
		meanPressureHint: 'Between load and unload; the set pressure when empty'
	},
	bleedDown: {
		about:
			'With the supply shut off and no production, the leaks empty the system. Read the gauge and the clock: two readings will do, more show which law the leaks follow.',
		volumeMissing: 'The volume of receivers and pipes is missing.',
		twoNeeded: 'Two readings are needed at least: when, and what the gauge said.',
		readings: 'Readings',
		reading: (place: number) => `Reading ${place}`,
		removeReading: (place: number) => `Remove reading ${place}`,
		addReading: 'Add a reading',
		after: 'After',
		gauge: 'Gauge',
		volumeHint: 'Of receivers and pipes that bled down'
	},
	pumpUp: {
		about:
			'One machine fills a receiver that is shut off from the system: what it really delivers. It says nothing of the leaks, but a load time rests on it.',
		volumeMissing: 'The volume of the receiver is missing.',
		endsMissing: 'Give the pressure at the start and at the end, and the time between.',
		volumeHint: 'Of the receiver and the pipe to it',
		startPressure: 'Pressure at the start',
		endPressure: 'Pressure at the end',
		time: 'Time it took',
		temperature: 'Air in the receiver at the end',
		temperatureHint: 'When it was read'
	},

	tests: {
		kindAndDay: (kind: string, day: string) => `${kind}, ${day}`,
		/** After the figure that it explains. */
		delivers: 'is what the machine delivers',
		loses: 'is what the system loses at the set pressure',
		loaded: (share: string, count: number, cycles: string) =>
			many(count, {
				one: `Loaded ${share} of the time over ${cycles} cycle.`,
				other: `Loaded ${share} of the time over ${cycles} cycles.`
			}),
		oneCycle: 'One cycle says nothing of its scatter: time several to rely on it.',
		handbook: (flow: string, factor: string) =>
			`By the handbook ${flow} at the site’s pressure, with its factor of ${factor}.`,
		handbookOwn: (flow: string, factor: string, own: string) =>
			`By the handbook ${flow} at the site’s pressure, with its factor of ${factor}; for this fall the factor would be ${own}.`,
		laws: {
			line: 'The leaks follow a straight line in pressure: some close as it falls.',
			orifice: 'The leaks behave as fixed openings.',
			undecided: 'Too few readings to say which law the leaks follow; taken as fixed openings.'
		},
		extrapolated: 'The set pressure lies outside the readings: the figure is extrapolated.',
		noTemperature: 'Without the temperature of the air in the receiver it is some percent high.'
	},

	compared: {
		found: 'Found on the walk',
		measured: 'Measured by the test',
		notLocated: 'Not located',
		energy: 'Its energy',
		cost: 'Its cost',
		about: 'What was found against what the test measured, with 90 % intervals',
		freeAir: 'Of free air',
		likely: 'Most likely',
		from: 'Anything from',
		aYear: (value: string) => `${value} a year`,
		named: (name: string, range: string) => `${name}: ${range}`,
		with: (test: string) =>
			`Compared with “${test}” and what was leaking then. What is below zero is no saving: there the estimates are more than the test.`,
		offer: (factor: string, low: string, high: string) =>
			`Scaled by ${factor} (${low} to ${high}), the estimates would add up to the test.`,
		tooHigh: 'They are too high for certain.',
		maybeUnfound: 'What is missing may as well be leaks that nobody has found yet.',
		maybeRight: 'They may be right as they are.',
		scale: 'Scale the estimates'
	},

	logger: {
		heading: 'From a logger’s file',
		about:
			'A recording of pressure, power, current or a load signal over a time without production; longer ones are searched for their quiet hours. Any file of columns will do: CSV or text. It is read on this device and goes nowhere.',
		choose: 'Choose a file',
		chooseAnother: 'Choose another file',
		refused: (file: string, why: string) => `${file}: ${why}`,
		firstRows: (file: string) => `The first rows of ${file}`,
		time: 'Time',
		/** Read out after the name of a column. */
		chosen: ', chosen',
		unnamed: (place: string) => `Column ${place}`,
		column: 'Column to read',
		holds: 'What it holds',
		kinds: {
			pressure: 'Pressure',
			power: 'Power',
			current: 'Current',
			'load-signal': 'Load signal'
		},
		unit: 'Its unit',
		unitHint: 'As a gauge shows it, not absolute',
		days: 'How days are written',
		daysUncertain: 'The first rows do not tell day from month: check it',
		orders: {
			dmy: 'Day, month, year',
			mdy: 'Month, day, year',
			ymd: 'Year, month, day'
		},
		readAgain: 'Read it again',
		findCycles: 'Find the cycles',
		looking: (file: string) => `Looking at ${file}`,
		reading: (file: string, rows: string) => `Reading ${file}: ${rows} rows`,
		stop: 'Stop reading',

		wholeCycles: (count: number, shown: string) =>
			many(count, { one: `${shown} whole cycle`, other: `${shown} whole cycles` }),
		take: 'Cycles to take',
		quiet: 'The quiet hours',
		all: 'All of it',
		cyclesLoaded: (count: number, shown: string, share: string) =>
			many(count, {
				one: `${shown} cycle, loaded ${share} of the time`,
				other: `${shown} cycles, loaded ${share} of the time`
			}),
		loaded: 'Loaded',
		ofTheTime: (share: string) => `${share} of the time`,
		bySlopes: 'The same by the slopes of the pressure',
		fall: 'Fall while unloaded',
		aMinute: (fall: string) => `${fall} a minute`,
		meanPressure: 'Mean pressure',
		rows: 'Rows',
		rowsEvery: (rows: string, seconds: string) => `${rows}, one every ${seconds} s`,
		leftOut: (what: string) => `Left out: ${what}.`,
		withGap: (count: number, shown: string) =>
			many(count, { one: `${shown} cycle with a gap`, other: `${shown} cycles with a gap` }),
		stayedOff: (count: number, shown: string) =>
			many(count, { one: `${shown} long stop`, other: `${shown} long stops` }),
		irregular: (count: number, shown: string) =>
			many(count, {
				one: `${shown} swing of another size`,
				other: `${shown} swings of another size`
			}),
		empty: (count: number, shown: string) =>
			many(count, {
				one: `${shown} row without a reading`,
				other: `${shown} rows without a reading`
			}),
		unreadable: (count: number, shown: string) =>
			many(count, {
				one: `${shown} row that cannot be read`,
				other: `${shown} rows that cannot be read`
			}),
		outOfOrder: (count: number, shown: string) =>
			many(count, { one: `${shown} row out of order`, other: `${shown} rows out of order` }),
		asTable: 'The cycles as a table',
		begins: 'Begins',
		loadedS: 'Loaded, s',
		unloadedS: 'Unloaded, s',
		offS: 'Off, s',
		from: 'From',
		to: 'To',
		deliversHint: 'When loaded, as free air at its inlet; a pump-up test would tell',
		takeAsTest: 'Take this as a system test',
		deliversMissing: 'Say what the machine delivers, then it becomes a leak.',

		recording: (summary: string) => `The recording, ${summary}`,
		stretch: (from: string, to: string, count: number, shown: string) =>
			many(count, {
				one: `${from} to ${to}: ${shown} load marked`,
				other: `${from} to ${to}: ${shown} loads marked`
			}),
		belowLine: (summary: string) => `${summary} below the line.`,
		onlyCloser: (summary: string) => `${summary} only closer up.`,
		pressureIn: (unit: string) => `Pressure in ${unit}.`,
		closer: 'Closer',
		wider: 'Wider',
		earlier: 'Earlier',
		later: 'Later'
	},

	soap: {
		heading: 'What the soap says here',
		about: (rule: string) =>
			`Each soap response stands for a band of hole sizes, and those we start with are rough. Leaks whose soap was looked at and whose flow was measured too show what it stands for on this site (${rule}). Pick them without looking at their size, or the bands follow the choice.`,
		tableAbout: 'Hole sizes that each soap response stands for, today and re-fitted',
		response: 'The soap',
		measured: 'Measured',
		bandToday: 'Band today',
		refitted: 'Re-fitted',
		drawn: 'Drawn',
		today: 'Today',
		band: (low: string, high: string) => `${low} to ${high}`,
		leaks,
		moreNeeded: (shown: string) => `${shown} more needed`,
		mark: (response: string, today: string) => `${response}: today ${today}`,
		markRefitted: (response: string, today: string, refitted: string) =>
			`${response}: today ${today}, re-fitted ${refitted}`,
		noneYet: 'No leak has both yet.',
		tooFew: (count: number, shown: string) =>
			`${leaks(count, shown)} so far, too few of one response.`,
		from: (least: string) => `A band is re-fitted from ${least} leaks of one response on.`,
		how: (walk: string) =>
			`On ${walk}, choose what the soap does, then size the same leak by a bag, a meter or a timed bubble: both are kept.`,
		walk: 'Walk',
		goesFrom: (measure: keyof typeof YEARLY, today: string, then: string) =>
			`With the re-fitted bands ${YEARLY[measure]} of all leaks at face value goes from ${today} to ${then}.`,
		use: 'Use the re-fitted bands',
		inUse: (count: number, shown: string, which: string) =>
			many(count, {
				one: `The re-fitted bands are in use for ${shown} response: ${which}.`,
				other: `The re-fitted bands are in use for ${shown} responses: ${which}.`
			}),
		was: (response: string, band: string, leaks: string) =>
			`“${response}” was ${band}, by ${leaks}`,
		takeBack: 'Take the re-fit back'
	}
};
