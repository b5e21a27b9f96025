import { REFERENCES, type ReferenceId } from '#lib/core/air/reference-air.ts';
import type { SupplyMethod } from '#lib/core/weigh/assessment.ts';
import type { QuantityId } from '#lib/core/weigh/working/tree.ts';

/** What the sums are called, where they came from and what must be read beside them. */
export const sums = {
	methods: {
		quick: 'quick method: one specific power for all flow',
		supply: 'supply model: the station at part load, hour by hour of the week',
		none: 'air only: the survey does not say yet what the air takes to make'
	} satisfies Record<SupplyMethod, string>,
	quantities: {
		'cost-per-year': 'Cost a year',
		'cost-before-rounding': 'Cost before rounding',
		'quick-cost': 'Cost a year, quick method',
		'energy-cost': 'Energy at its price',
		'energy-cost-in-part': 'Energy at its price',
		'energy-price': 'Price of a kilowatt-hour',
		'air-cost': 'Paid by the cubic metre',
		'air-price': 'Price of a cubic metre',
		'shared-cost': 'Part of what is paid for the whole station',
		'share-of-energy': 'Its share of the energy of all leaks',
		'energy-of-all': 'Energy of all leaks a year',
		'demand-charge-fall': 'Fall of the demand charge',
		'demand-price': 'Price of a kilowatt of peak',
		'charges-per-year': 'Times charged a year',
		'peak-power-with-leaks': 'Highest power today',
		'peak-power-without-leaks': 'Highest power without the leaks',
		'lost-heat-worth': 'Worth of the recovered heat that is lost',
		'lost-heat': 'Recovered heat that is lost',
		'recovered-share': 'Share of the power caught as heat',
		'useful-share': 'Share of that heat put to use',
		'fuel-price': 'Price of the fuel',
		'boiler-efficiency': 'Efficiency of the boiler',
		'carbon-per-year': 'CO₂e a year',
		'carbon-factor': 'CO₂e of a kilowatt-hour',

		'energy-per-year': 'Energy a year',
		'quick-energy': 'Energy a year, quick method',
		'quick-power': 'Power by the quick method',
		'specific-power': 'Specific power',
		'hours-per-year': 'Hours a year under pressure',
		'saving-in-part': 'Saved energy',
		'saving-per-flow': 'Energy saved by each m³/min',
		'saving-of-all-in-part': 'Saved when all leaks go',
		'hours-in-part': 'Hours a year',
		'leaks-in-part': 'All leaks together, inlet air',
		'power-with-leaks': 'Power of the station today',
		'power-without-leaks': 'Power of the station without the leaks',
		'delivered-with-leaks': 'Delivered today',
		'delivered-without-leaks': 'Delivered without the leaks',
		demand: 'Demand',
		'set-pressure': 'Set pressure',
		'machine-power': 'Power',
		'machine-flow': 'Flow asked of it',
		'machine-capacity': 'Capacity',
		'machine-full-power': 'Power at full load',
		'work-factor': 'Work at the set pressure over work at the rated one',
		'rated-pressure': 'Rated pressure',
		'inlet-flow': 'Flow, inlet air',
		'share-of-hours': 'Share of the station’s hours under pressure',
		'station-hours': 'Hours a year the station holds pressure',

		'air-per-year': 'Free air a year',
		'air-in-part': 'Free air',
		'free-air-flow': 'Free air',
		'mass-flow': 'Mass flow',
		'reference-density': 'Density of the air it is stated in',
		'mass-flux': 'Mass flow through each square metre',
		'line-pressure': 'Pressure in the line',
		'gauge-pressure': 'Gauge pressure',
		'site-pressure': 'Pressure of the site’s air',
		altitude: 'Height above the sea',
		'air-temperature': 'Temperature of the air',
		'duty-factor': 'Share of the time it is open',
		'open-time': 'Open for',
		interval: 'In every',

		'effective-area': 'Effective area',
		'test-scaling': 'Scaling of the estimates to the system test',
		uncertainty: 'Its relative standard uncertainty',
		'discharge-coefficient': 'Discharge coefficient',
		'opening-area': 'Area of the opening',
		'hole-diameter': 'Diameter of the hole',
		'slit-length': 'Length of the slit',
		'slit-width': 'Width of the slit',
		'thread-diameter': 'Diameter of the thread',
		'thread-gap': 'Gap',
		'caught-mass-flow': 'Mass flow that was caught or metered',
		'caught-volume': 'Air caught',
		'caught-time': 'In',
		'bubble-diameter': 'Diameter of the bubble',
		'meter-flow': 'Reading of the meter',
		'equivalent-hole': 'Ideal hole that the soap response stands for',
		'band-low': 'Low end of the band',
		'band-high': 'High end of the band',
		'sonic-conductance': 'Sonic conductance C',
		'critical-ratio': 'Critical pressure ratio b',

		'system-leak': 'Leak of the whole system at the set pressure',
		'system-leak-mass-flow': 'Mass flow of the whole system’s leak',
		'load-share': 'Share of the time loaded',
		'loaded-time': 'Loaded, all cycles',
		'unloaded-time': 'Unloaded or off, all cycles',
		capacity: 'Capacity of the machine',
		'capacity-mass-flow': 'Mass flow of the machine',
		'flux-ratio': 'From the pressure of the test to the set pressure',
		'flux-at-test': 'Mass flow through each square metre, at the test',
		'flux-at-set': 'Mass flow through each square metre, at the set pressure',
		'test-pressure': 'Mean pressure of the test',
		'system-volume': 'Volume of receivers and pipes',
		'test-time': 'Time it took',
		'bleed-integral': 'Fall of pressure over the flow it drives',
		'start-pressure': 'Pressure at the start',
		'end-pressure': 'Pressure at the end',
		'end-reading': 'Pressure read at the end',
		'end-temperature': 'Temperature at the end',
		'handbook-leak': 'Leak by the handbook',
		'handbook-factor': 'Factor of the handbook',
		'line-slope': 'Slope of the fitted line',
		'line-intercept': 'Fitted line at zero gauge',
		'delivered-capacity': 'Capacity really delivered',
		'delivered-mass-flow': 'Mass flow really delivered',
		'stored-mass-flow': 'Stored in the receiver',
		'leaked-mass-flow': 'Leaked while it filled',
		'tank-temperature': 'Temperature of the air in the tank'
	} satisfies Record<QuantityId, string>,
	ofWhat: (quantity: string, subject: string) => `${quantity}: ${subject}`,
	tag: (tag: number) => `tag ${tag}`,
	closed: 'closed',
	origins: {
		reading: 'as read or judged on the walk or in the test',
		section: 'from the section',
		sectionNamed: (name: string) => `from the section “${name}”`,
		supply: 'from Set up, the supply',
		schedule: 'from Set up, the week',
		station: 'from Set up, the machines',
		site: 'from Set up, the site',
		prices: 'from Set up, the prices',
		cited: (source: string) => `source: ${source}`
	},
	/** The states that free air is stated at. */
	references: {
		'iso-1217': REFERENCES['iso-1217'].label,
		anr: REFERENCES.anr.label,
		normal: REFERENCES.normal.label,
		site: REFERENCES.site.label
	} satisfies Record<ReferenceId, string>,
	absolute: (pressure: string) => `${pressure} absolute`,
	per: (amount: string, unit: string) => `${amount} per ${unit}`,
	/** How sure a figure is: what counts, and the range. */
	byAllErrors: (range: string) => `nine in ten, by all errors: ${range}`,
	byAllErrorsWithMiddle: (range: string, middle: string) =>
		`nine in ten, by all errors: ${range}, its middle ${middle}`,
	byReading: (range: string) => `nine in ten, by its reading alone: ${range}`,
	range: (low: string, high: string) => `${low} to ${high}`,

	workings: {
		rule: (id: string) => `rule ${id}`,
		byRule: (rule: string) => `by ${rule}`,
		more: (next: string, all: string) => `Show ${next} more of ${all}`,
		beside: 'Beside it, by another method'
	},

	found: {
		keepWalking: (share: string, range: string) =>
			`You have found about ${share} of what the system loses (${range}). Keep walking.`,
		keepWalkingRough: (share: string, range: string) =>
			`You have found about ${share} of what the system loses, but the sizes are rough: anything from ${range}. Keep walking, and measure the largest ones.`,
		most: (share: string, range: string) =>
			`You have found most of it: about ${share} of what the system loses (${range}).`,
		mostRough: (share: string, range: string) =>
			`What you have found fits what the system loses: about ${share}, but anything from ${range} is possible. Measuring the largest ones would tell.`,
		tooHigh: (share: string, range: string) =>
			`Your estimates add up to about ${share} of what the system loses (${range}), which cannot be. Check the largest ones, or scale the estimates to the test.`
	},

	warnings: {
		shortage: (part: string, demand: string, capacity: string) =>
			`In “${part}” the demand is ${demand}, and the machines give at most ${capacity}: the pressure would fall. Check both.`,
		leaksExceedDemand: (part: string, leaks: string, available: string) =>
			`In “${part}” the leaks add up to ${leaks}, more than the ${available} that is delivered; only that much is counted. Check the sizes or the demand.`,
		savingNegative: (part: string, energy: string) =>
			`In “${part}” the station would draw more without the leaks (${energy} a year): its machines leave a gap in what they can deliver. Check their order.`,
		shortCycling: (part: string, times: string) =>
			`In “${part}” a machine loads ${times} times a minute. Check the receiver volume and the pressure band.`,
		unassignedTime: (hours: string) =>
			`${hours} a year belong to no period of the week and count as off. Add a period for them if there is pressure then.`
	}
};
