import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** What leaks are compared by, in the middle of a sentence. */
const YEARLY = {
	cost: 'the yearly cost',
	energy: 'the yearly energy',
	air: 'the free air lost in a year'
};
type Measure = keyof typeof YEARLY;
const MEASURES: Record<Measure, string> = {
	cost: 'Cost a year',
	energy: 'Energy a year',
	air: 'Free air a year'
};

/** Weigh: the figures, the charts, the table of leaks, and what is tried. */
export const weigh = {
	heading: 'Weigh',
	pageTitle: (site: string) => `Weigh: ${site}`,
	begun: (round: string, day: string) => `${round}, begun ${day}`,
	goToSetUp: 'Go to Set up',
	goToWalk: 'Go to Walk',
	empty: 'No leaks to weigh yet',
	emptyAbout:
		'Pin the leaks on Walk. As soon as one has a size, this page shows what it wastes and which to mend first.',
	mendFirst: 'What to mend first',
	whereAirGoes: 'Where the air goes',
	moneyBuys: 'What the money buys',
	whatIf: 'What if',
	notWeighed: 'Not weighed yet',
	notWeighedAbout:
		'These leak too, and are in none of the sums above until what is missing is there.',
	everyLeak: 'Every leak',
	tag: (tag: number) => `Tag ${tag}`,
	specificPower: (power: string) => `${power} kW per m³/min`,
	sourced: (figure: string, source: string) => `${figure} (${source})`,
	/** The weeks in which the station stands still. */
	closed: 'Closed',
	closedWeeks: 'Closed weeks',
	noSection: 'No section yet',
	measures: MEASURES,

	headline: {
		cost: 'These leaks cost a year',
		energy: 'Energy a year',
		air: 'Free air lost',
		carbon: 'CO₂e a year',
		unknown: 'Not known yet',
		range: (name: string, value: string, range: string) =>
			`${name}: ${value}, with 90 % probability ${range}, on a scale from zero`,
		/** Before a figure. */
		faceValue: 'At face value',
		weighed: 'Leaks weighed',
		notWeighed: (shown: string) => `${shown} more not weighed yet`,
		working: (share: string) => `Working out how sure this is: ${share}.`,
		howSure: 'How sure:',
		howSureAbout: (rule: string) =>
			`the large figures are as likely too low as too high; the bars hold nine chances in ten (${rule}). The list below and the fix list take each reading at face value, the dashed line, so that their parts add up.`,
		rough: 'The ends of the bars are still a little rough.',
		method: 'Method:',
		methodIs: (method: string, basis: string) =>
			basis === '' ? `${method}.` : `${method}: ${basis}.`,
		beside: 'Beside it:',
		besideQuick: (figures: readonly string[]) =>
			`the quick method, one specific power for all flow, gives ${figures.join(' and ')}.`,
		station: 'The station today:',
		stationTakes: (energy: string) => `${energy} a year, leaks included.`
	},

	split: {
		by: 'Split by',
		section: 'Section',
		part: 'Part',
		time: 'Day and night',
		timeOfWeek: 'Part of the week',
		about: (measure: Measure) => `${MEASURES[measure]}, with every reading at face value.`,
		bar: 'Bar',
		leaks: 'Leaks',
		leakCount: (count: number, shown: string) =>
			many(count, { one: `${shown} leak`, other: `${shown} leaks` }),
		share: 'Share'
	},

	charts: {
		/** What the first so many leaks come to. */
		first: (
			count: number,
			first: string,
			all: string,
			is: {
				readonly share: string;
				readonly measure: Measure;
				readonly running: string;
				readonly total: string;
			}
		) =>
			many(count, {
				one: `The first leak of ${all} is ${is.share} of ${YEARLY[is.measure]}: ${is.running} of ${is.total}.`,
				other: `The first ${first} leaks of ${all} are ${is.share} of ${YEARLY[is.measure]}: ${is.running} of ${is.total}.`
			}),
		ranked: (measure: Measure, summary: string) =>
			`Leaks in order of rank, and the share of ${YEARLY[measure]} they add up to. ${summary}`,
		worstFirst: 'leaks mended, worst first',
		mendFirst: (count: string) => `Mend the first ${count}`,
		rank: 'Rank',
		tag: 'Tag',
		together: 'Together',
		share: 'Share',
		spending: (money: string, count: string, all: string, saved: string) =>
			`${money} of parts, spent where it pays back soonest, mends ${count} of ${all} leaks and saves ${saved} a year.`,
		spendingTitle: (summary: string) => `Saving a year against money spent on parts. ${summary}`,
		spentOnParts: 'spent on parts',
		spend: (money: string) => `Spend ${money}`,
		spentSoFar: 'Spent so far',
		savedAYear: 'Saved a year'
	},

	table: {
		about: 'Leaks in order, with what each wastes in a year',
		chosen: 'Chosen',
		choose: (tag: number) => `Choose leak ${tag}`,
		columns: {
			rank: 'Rank',
			tag: 'Tag',
			place: 'Place',
			part: 'Part',
			section: 'Section',
			flow: 'Free air',
			energy: 'Energy a year',
			cost: 'Cost a year',
			payback: 'Paid back in',
			perMinute: 'Saved a minute',
			state: 'State'
		},
		amongFirst: (count: string) => `Among first ${count}`,
		/** Read out before the places that a leak may have. */
		between: ', with 90 % probability between ',
		likely: (range: string) => `With 90 % probability ${range}`,
		first: 'First: not safe to wait',
		aMinute: 'a minute',
		amongTheFirst: 'Among the first',
		days: (shown: string) => `${shown} d`,
		months: (shown: string) => `${shown} months`,
		years: (shown: string) => `${shown} years`,
		range: (low: string, high: string) => `${low} to ${high}`,
		kept: (all: number, kept: string, shown: string) =>
			many(all, { one: `${kept} of ${shown} leak`, other: `${kept} of ${shown} leaks` }),
		aYear: (money: string) => `${money} a year`,
		chooseAll: (count: string) => `Choose all ${count}`,
		chooseNone: 'Choose none',
		done: 'Done',
		changeSeveral: 'Change several',
		unsafeFirst: 'What is not safe to wait stands first, whatever it costs.',
		more: (count: string) => `Show ${count} more`,
		none: 'No leak here fits that choice.',
		showAll: 'Show all'
	},

	narrow: {
		facets: {
			section: { label: 'Section', all: 'All sections' },
			part: { label: 'Part', all: 'All parts' },
			state: { label: 'State', all: 'All of this round' }
		},
		orderBy: 'Order by',
		mendFirst: 'What to mend first',
		column: 'A column',
		wastesMost: 'What wastes most',
		paybackFirst: 'Soonest paid back',
		perMinuteFirst: 'Most saved a working minute',
		surest: (count: string) => `Surest among the first ${count}`,
		howMany: 'How many come first',
		narrowedTo: 'Narrowed to',
		only: 'Only',
		/** Read out after what the table is narrowed to. */
		several: (count: number) => `${count} chosen`,
		letGo: ', let go',
		clearAll: 'Clear all'
	},

	bulk: {
		appliesTo: (count: number, shown: string) =>
			many(count, { one: `Applies to ${shown} leak`, other: `Applies to ${shown} leaks` }),
		tick: 'Tick the leaks to change in the list below.',
		section: 'Section of all',
		noSection: 'No section',
		part: 'Part of all',
		action: 'Action for all',
		pressure: 'Pressure read at all',
		pressureEmpty: 'Empty takes the section’s',
		mixed: 'Mixed: they differ',
		partly: (hazard: string) => `${hazard} (mixed)`,
		oneStep: 'Each change is one step: “Undo” above takes it back for all of them.'
	},

	trial: {
		about: (rule: string) => `Tried on a copy: nothing here changes the survey (${rule}).`,
		setPressure: (pressure: string) => `Set pressure ${pressure}`,
		setPressureChanged: (pressure: string, today: string) =>
			`Set pressure ${pressure}, today ${today}`,
		mendFirst: (count: string) => `Mend the first ${count} by rank`,
		hours: (share: string) => `Hours under pressure ${share} of today’s`,
		price: 'Price of a kWh',
		machineOff: 'A machine off',
		none: 'None',
		standsStill: 'It stands still in',
		airOff: 'All air off in',
		back: 'Back to today',
		working: 'Working it out …',
		tableAbout: 'A year today and a year with what is tried',
		today: 'Today',
		then: 'Then',
		change: 'Change',
		unchanged: 'none',
		rows: {
			leaksCost: 'Leaks cost a year',
			leaksEnergy: 'Leaks take, energy',
			leaksCarbon: 'Leaks, CO₂e',
			leaksAir: 'Leaks, free air',
			stationCost: 'Station costs a year',
			stationEnergy: 'Station takes, energy',
			stationCarbon: 'Station, CO₂e'
		},
		pressureAlone: 'The pressure alone:',
		/** Each `less` says which way its share goes. */
		pressureDoes: (
			power: { readonly share: string; readonly less: boolean },
			air: { readonly share: string; readonly less: boolean },
			rule: string
		) =>
			`by physics the machines need ${power.share} ${power.less ? 'less' : 'more'} power for the same air, and open leaks take ${air.share} ${air.less ? 'less' : 'more'} air. The handbook’s rule, 1% for 2 psi, says ${rule}. Before it is turned down, see what pressure the machines served must have.`
	}
};
