/** How the air is made, on Set up: the quick method, the station, its machines and their week. */
export const supply = {
	setPressure: 'Set pressure',
	setPressureHint:
		'At the compressors. A section without a pressure of its own stands at this one.',
	usedForSums: 'Used for the sums',
	startingValue: 'Starting value',
	/** After what a figure is, where it is the one that we filled in. */
	isStarting: (about: string) => `${about} Starting value.`,
	remove: 'Remove',
	removeNamed: (name: string) => `Remove ${name}`,
	name: 'Name',
	notNow: 'Not now',

	quick: {
		title: 'Quick: one figure for all air',
		about:
			'Power is specific power times flow. It says what making air costs on average; a machine that idles or throttles gives back less when a leak is mended.',
		specificPower: 'Specific power',
		unit: 'kW per m³/min',
		hint: 'Package power over free air delivered: both on the data sheet.',
		source: 'Where the figure comes from',
		byHand: 'entered by hand',
		use: (figure: string) => `Use ${figure} kW per m³/min`
	},

	station: {
		title: 'Station: the machines and their week',
		about:
			'Machines are started in this order; one of them takes the part of the demand that varies.',
		aboutNew:
			'Says what the supply really stops using when a leak is gone: part load, receivers, nights and weekends. It starts with one machine; everything else is filled in with starting values that you can see and change.',
		describe: 'Describe the station',
		remove: 'Remove the station',
		trim: 'The varying part is taken by',
		lastStarted: 'Whichever was started last',
		none: 'There is no compressor, so there is no energy yet. Add one.',
		numbered: (place: number) => `Compressor ${place}`,
		add: 'Add a compressor',
		store: 'Air in store',
		storeAbout:
			'What lies between the compressors and the first valve. Little of it makes load/unload machines expensive.',
		receivers: 'Receivers',
		pipes: 'Pipes'
	},

	machine: {
		capacity: 'Capacity',
		capacityHint: 'Free air delivered, on the data sheet.',
		power: 'Power at full load',
		powerHint: 'Of the whole package, not the motor plate.',
		ratedPressure: 'Rated pressure',
		ratedPressureHint: 'At which both are stated.',
		usePower: (figure: string) => `Power not known: use ${figure} kW`,
		leastEfficiency: 'of a machine that just meets the least efficiency of 10 CFR 431.345',
		stillNeeded: (list: string) => `Still needed: ${list}.`,
		needs: {
			capacity: 'its capacity',
			power: 'its power',
			pressure: 'its pressure',
			control: 'how it follows demand'
		},
		add: 'Add this compressor',
		toCheck: 'figures to check',
		earlier: 'Earlier',
		later: 'Later',
		startEarlier: (name: string) => `Start ${name} earlier`,
		startLater: (name: string) => `Start ${name} later`,
		build: 'Build',
		buildHint: 'A label only: how it behaves comes from its control.',
		builds: { screw: 'Screw', piston: 'Piston', vane: 'Vane', centrifugal: 'Centrifugal' },
		follows: 'How it follows demand',
		controls: {
			'load-unload': {
				text: 'Loads and unloads',
				about: 'The motor keeps turning; the machine goes quiet when the pressure is reached.'
			},
			'start-stop': {
				text: 'Starts and stops',
				about: 'The motor stops when the pressure is reached. Usual for small piston machines.'
			},
			throttled: {
				text: 'Throttles its inlet',
				about: 'A valve at the inlet closes by degrees; the power hardly falls.'
			},
			'variable-speed': {
				text: 'Changes its speed',
				about: 'An inverter drive: the pitch of the sound follows the demand.'
			},
			curve: {
				text: 'Points of its data sheet',
				about: 'Power at several flows, as the maker or a measurement gives them.'
			}
		}
	},

	control: {
		slope: 'Power saved at no flow',
		slopeHint: 'If it throttled all the way.',
		unloadsBelow: 'Unloads below',
		unloadsBelowHint: 'Of its flow.',
		leastFlow: 'Least flow',
		leastFlowHint: 'At its lowest speed.',
		leastPower: 'Power at least flow',
		leastPowerHint: 'Of its power at full load.',
		band: 'Cut-in to cut-out',
		bandHint: 'The band between loading and unloading.',
		unloaded: 'Power unloaded',
		unloadedHint: 'Once blown down, still turning.',
		unloadStart: 'Power as it unloads',
		unloadStartHint: 'Before the blow-down begins.',
		blowDown: 'Blow-down',
		blowDownHint: 'From the one power to the other.',
		stopsLater: 'Stops after a while unloaded',
		keepsTurning: 'It keeps turning.',
		stopsAfter: 'Stops after',
		stopsAfterHint: 'The run-on of its motor.',
		curveAbout:
			'Shares of its capacity and of its power at full load, from no flow to full flow. Until you change them the points are a straight line from 25 % of the power: our starting value.',
		flow: 'Flow',
		power: 'Power',
		removePoint: (place: number) => `Remove point ${place}`,
		addPoint: 'Add a point'
	},

	week: {
		title: 'The week',
		about:
			'When the air is on, what is asked for and at what pressure. Nights and weekends count: leaks do not go home.',
		drawn: 'The week, drawn; the periods below say the same in words',
		on: 'on',
		off: 'off',
		notSaid: 'not said: counted as off',
		unassigned: (hours: string) => `${hours} a year are in no period. They are counted as off.`,
		demandIs: 'The demand of a period is',
		demands: {
			delivered: {
				text: 'All that is delivered',
				about: 'As a flow meter behind the compressors shows it, leaks and purge included.'
			},
			process: {
				text: 'Production alone',
				about: 'What the machines need; the leaks come on top.'
			}
		},
		numbered: (place: number) => `Period ${place}`,
		startingDemand: (share: string) => `Starting value: ${share} of the capacity.`,
		add: 'Add a period',
		rest: 'The rest of the year',
		restAbout: 'Holidays and shutdowns: weeks that do not follow the picture above.',
		weeks: 'Weeks a year like this',
		remain: (hours: string) => `${hours} a year remain.`,
		meanwhile: 'Meanwhile the air is',
		days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
		dayNames: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'],
		everyDay: 'Every day',
		span: (from: string, to: string) => `${from} to ${to}`
	},

	period: {
		noDay: 'no day chosen',
		airOff: 'air off',
		asked: (flow: string, pressure: string) => `${flow} at ${pressure}`,
		tooMuch: 'more than the machines give',
		beginsOn: 'Begins on',
		from: 'From',
		to: 'To',
		midnight: 'Midnight at the end of the day.',
		nextDay: 'On the next day.',
		airIs: 'The air is',
		on: 'On',
		off: 'Off',
		demand: 'Demand',
		price: 'Price',
		usualPrice: 'The usual one'
	},

	purge: {
		title: 'Dryer purge',
		about: 'Air that a desiccant dryer blows away to dry its own bed.',
		how: 'How it purges',
		kinds: {
			none: { text: 'No purge', about: 'A refrigerant dryer, or none.' },
			'share-of-capacity': {
				text: 'The same all the time',
				about: 'A share of what the dryer is rated for, whatever flows.'
			},
			'share-of-flow': {
				text: 'Follows the flow',
				about: 'A share of what enters the dryer.'
			}
		},
		share: 'Purge',
		rated: 'Rated flow',
		ratedStarting: 'Starting value: the capacity of all compressors.'
	},

	heat: {
		title: 'Heat recovery',
		about:
			'Heat of the compressors that replaces bought heat. Mending leaks makes less of it, so it counts against the saving.',
		remove: 'Remove heat recovery',
		caught: 'Caught as heat',
		caughtHint: 'Of the power that the compressors draw.',
		used: 'Of it, used',
		usedHint: 'Over the year: heating is not needed in summer.',
		fuel: 'Price of fuel',
		boiler: 'Boiler efficiency',
		incomplete: 'It counts once all four figures are there.',
		begin: 'Heat is recovered here'
	}
};
