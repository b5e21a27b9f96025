import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

export const setUp = {
	heading: 'Set up',
	pageTitle: (site: string) => `Set up: ${site}`,
	onThisPage: 'On this page',
	remove: 'Remove',
	removeNamed: (name: string) => `Remove ${name}`,
	name: 'Name',
	parts: {
		site: { title: 'Site', about: 'What every figure of this survey depends on.' },
		plans: { title: 'Floor plans', about: 'The pictures that pins are dropped on.' },
		sections: {
			title: 'Sections',
			about:
				'A section is what one isolating valve shuts. It has one pressure and one number of hours under pressure.'
		},
		supply: {
			title: 'Supply',
			about:
				'How the air is made, and which of two methods turns flow into power. Quick needs one figure; Station needs one machine to begin with.'
		},
		prices: {
			title: 'Prices',
			about: 'What is empty is left out of the sums and said so; it is never taken as zero.'
		},
		startingValues: {
			title: 'Starting values',
			about:
				'What we assume where nothing was measured. Change them where you know better; reports print them.'
		},
		kept: {
			title: 'Kept on this device',
			about: 'A survey file holds all of this and opens on any device. It is the backup.'
		},
		language: {
			title: 'Language',
			about:
				'For this device, with the way that numbers and dates are written. What is recorded does not change.'
		}
	},
	standing: {
		altitudeMissing: 'altitude missing',
		noneYet: 'none yet',
		station: (count: number, shown: string) =>
			many(count, { one: 'station, 1 compressor', other: `station, ${shown} compressors` }),
		quick: 'quick',
		missing: 'missing',
		electricityMissing: 'electricity missing',
		perKwh: (price: string, currency: string) => `${price} ${currency} per kWh`,
		allOurs: 'all ours',
		changed: (shown: string) => `${shown} changed`
	},
	checks: { needed: 'Needed for an answer', doubtful: 'Worth a look', goThere: 'Go there' },

	site: {
		name: 'Name of the site',
		currency: 'Currency',
		note: 'Note',
		noteHint: 'Who to ask for, gates, permits: whatever the next visit needs.',
		air: 'The air here',
		airAbout:
			'Air is thinner high up, and gauge pressure counts from the air outside. A barometer reading goes before the altitude.',
		altitude: 'Altitude',
		altitudeUnused: 'Not used: there is a barometer reading.',
		barometer: 'Barometer',
		barometerHint: '1 kPa is 10 mbar. Not the value reduced to sea level.',
		temperature: 'Air temperature',
		reference: 'Free air is stated at',
		references: {
			'iso-1217': {
				text: 'ISO 1217',
				about: '20 °C, 100 kPa, dry. Compressors are rated in it.'
			},
			anr: {
				text: 'ANR',
				about: 'ISO 8778: 20 °C, 100 kPa, 65 % humidity. Valves and cylinders are rated in it.'
			},
			normal: {
				text: 'Normal',
				about: '0 °C, 101.325 kPa, dry. Many flow meters show it; about 9 % fewer cubic metres.'
			},
			site: {
				text: 'As it is here',
				about: 'The air that the compressor breathes: this altitude, this temperature.'
			}
		},
		units: 'Units',
		unitsAbout:
			'For reading and typing. What is stored does not change, so they can be changed at any time.',
		pressure: 'Pressure',
		flow: 'Flow',
		length: 'Sizes of holes',
		millimetres: 'Millimetres',
		inches: 'Inches'
	},

	plans: {
		notHere: 'The picture of this plan is not on this device.',
		name: 'Name of the plan',
		desk: 'Scale, sections, newer drawing',
		deskOf: (plan: string) => `Scale, sections, newer drawing of ${plan}`,
		pins: (count: number, shown: string) =>
			count === 0 ? 'No pins yet' : many(count, { one: '1 pin', other: `${shown} pins` }),
		none: 'No plan yet. A fire-escape plan, a drawing or a photo of one will do; pins are dropped on it, and the fix list prints it.',
		opening: (file: string) => `Opening ${file}`,
		add: 'Add a floor plan',
		addAnother: 'Add another plan',
		kinds: 'PDF, PNG, JPEG, WebP or SVG',
		title: (plan: string | undefined, site: string) => `${plan ?? 'Plan'} – ${site} – Airtally`,
		back: 'Back to Set up',
		noSuch: 'No such plan'
	},

	sections: {
		numbered: (place: number) => `Section ${place}`,
		noValve: 'no valve named',
		setPressure: (pressure: string) => `set pressure, ${pressure}`,
		noPressure: 'no pressure',
		hoursOfWeek: 'hours of the week',
		noHours: 'no hours',
		add: 'Add a section',
		addAnother: 'Add another section',
		none: 'No section yet. Without them the hours that a leak leaks are not known, and the fix list cannot say which valve to close.',
		valve: 'Isolating valve',
		valveHint: 'Its number, and where to find it.',
		pressure: 'Pressure',
		pressureEmpty: (pressure: string) => `Empty: the set pressure, ${pressure}.`,
		pressureHint: 'At the gauge of this section.',
		hours: 'Hours a year',
		hoursHint: 'Under pressure: a leak leaks at night too.',
		volume: 'Volume',
		volumeHint: 'Pipes and tanks behind the valve.',
		always: (hours: string) => `Always under pressure: ${hours}`
	},

	prices: {
		energy: 'Energy',
		electricity: 'Electricity',
		electricityHint: 'What one more kWh costs: fixed fees left out.',
		perKwh: (currency: string) => `${currency} per kWh`,
		perKw: (currency: string) => `${currency} per kW`,
		perM3: (currency: string) => `${currency} per m³`,
		demandCharge: 'Demand charge',
		demandChargeHint: 'Paid on the highest power drawn.',
		demandChargePer: 'Demand charge is paid per',
		month: 'Month',
		year: 'Year',
		period: 'Period price',
		numbered: (place: number) => `Price ${place}`,
		removePrice: (name: string) => `Remove the price ${name}`,
		addPeriod: 'Add a price for some hours, such as nights',
		air: 'Air',
		water: 'Water and service',
		waterHint: 'Per cubic metre of free air (ISO 1217), on top of the energy.',
		carbon: 'Carbon',
		carbonAbout: 'Printed wherever a CO₂e figure is, with its year and source.',
		factor: 'Factor',
		factorUnit: 'kg CO₂e per kWh',
		ofYear: 'Of the year',
		source: 'Source',
		sourceHint: 'Who published it.',
		carbonIncomplete: 'It counts once factor, year and source are there.',
		ahead: 'Looking ahead',
		aheadAbout: 'For what a repair is worth today. Payback does not need them.',
		rate: 'Discount rate',
		rateHint: 'A year.',
		horizon: 'Horizon',
		years: 'years'
	},

	soap: {
		title: 'What the soap says',
		about:
			'The round holes that each response of the soap solution or leak-test fluid may stand for; nine leaks in ten lie between. No published source turns a film’s looks into a flow: these bands are ours, and a system test may tell you to move them.',
		changed: 'Changed here',
		resetOf: (response: string) => `Reset: ${response}`,
		reset: (low: string, high: string) => `Reset to ${low} – ${high}`,
		ours: 'Our starting value',
		from: 'From',
		to: 'To',
		unusable:
			'The first figure must be above zero and the second above the first. Leaks with this response cannot be weighed until then.'
	},

	kept: {
		merged: 'Left by files that were taken in',
		mergedAbout:
			'Nothing was overwritten. What is named here may want another look; it stays until you have dealt with it.',
		settled: 'It is dealt with',
		changes: (count: number, shown: string) =>
			many(count, {
				one: '1 change since the site was started.',
				other: `${shown} changes since the site was started.`
			}),
		inNoFile: 'Not yet saved to a file.',
		lastFile: (when: string, count: number, shown: string) =>
			many(count, {
				one: `Last saved to a file ${when}; 1 change since.`,
				other: `Last saved to a file ${when}; ${shown} changes since.`
			}),
		allInFile: (when: string) => `All of it was saved to a file ${when}.`,
		pictures: (count: number, shown: string, size: string) =>
			many(count, { one: `1 picture, ${size}.`, other: `${shown} pictures, ${size}.` }),
		makeRoom: (size: string) => `Make room: delete ${size} here`,
		makeRoomAbout:
			'Pictures that are no longer shown can be deleted from this device. They stay in the survey file that you saved; opening it brings them back.',
		makeRoomAfter: 'Save to a file, and they can be deleted from this device to make room.',
		unused: (size: string) => `Of these ${size} are no longer shown, and kept for undo.`,
		missing: (count: number, shown: string) =>
			many(count, {
				one: '1 picture is missing on this device; a survey file that holds it brings it back.',
				other: `${shown} pictures are missing on this device; a survey file that holds them brings them back.`
			}),
		save: 'Save the survey to a file',
		setAside: 'Set aside',
		setAsideAbout:
			'These changes no longer fitted when copies met, or could not be read. They are not lost: every survey file carries them on.',
		more: (shown: string) => `${shown} more.`,
		change: (kind: string, when: string) => `${kind.replaceAll('-', ' ')}, ${when}:`,
		notReadable: (reason: string) => `not readable (${reason})`
	}
};
