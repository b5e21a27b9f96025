import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const mendPlan: Catalogue['mendPlan'] = {
	minutes: (minutes) => `${minutes} min`,
	noWindow: 'In keinem Abschaltfenster',
	noName: 'Abschaltfenster ohne Namen',
	noSection: 'Noch kein Abschnitt',

	windows: {
		none: 'Noch kein Abschaltfenster. Fügen Sie die Zeiten hinzu, in denen die Luft aus sein kann; der Plan sagt dann, was in welchem behoben wird.',
		people: (count, shown) => many(count, { one: '1 Person', other: `${shown} Personen` }),
		overnight: 'Luft über Nacht aus',
		name: 'Name',
		starts: 'Beginn',
		length: 'Dauer',
		crew: 'Personen',
		standstill: 'Stillstand kostet',
		anHour: (currency) => `${currency} je Stunde`,
		standstillHint: 'Leer: Die Produktion steht ohnehin still.',
		mayStayOff: 'Luft darf bis zum nächsten Morgen aus bleiben',
		remove: 'Entfernen',
		removeThat: (name) => `Entfernen: ${name}`,
		add: 'Abschaltfenster hinzufügen',
		addAnother: 'Weiteres Abschaltfenster hinzufügen',
		numbered: (number) => `Abschaltfenster ${number}`
	},

	terms: {
		budget: 'Budget für Teile',
		budgetHint: 'Leer: ohne Grenze.',
		horizon: 'Einsparungen zählen für',
		years: 'Jahre',
		horizonHint: (years) => `Ab dem ersten Abschaltfenster. Leer: ${years}, unser Startwert.`,
		lessParts: 'Teile von der Einsparung abziehen',
		doubt: 'Unsicherheit jeder Schätzung einrechnen'
	},

	work: {
		byAction: 'Aufwand der Reparaturen hier, je Maßnahme',
		ours: 'unsere Startwerte',
		oursAgain: 'Wieder unsere Startwerte',
		oursAgainFor: (action) => `Wieder unsere Startwerte: ${action}`,
		time: 'Arbeit',
		parts: 'Teile',
		cure: 'Aushärten, Luft aus',
		takes: (facts) => `Aufwand: ${facts}`,
		partsOf: (price) => `Teile ${price}`,
		cures: (hours) => `härtet ${hours} aus`,
		ofAction: 'Leer: der Wert der Maßnahme.',
		byWhom: 'Wer',
		byWhomHint: (skill) => `Leer: ${skill}.`,
		wish: 'Im Plan',
		wishes: { worth: 'Wenn es sich lohnt', always: 'Immer im Plan', never: 'Nie im Plan' },
		window: 'Abschaltfenster',
		ventFirst: 'Der Abschnitt wird dafür abgesperrt und entlüftet'
	},

	make: 'Plan erstellen',
	makeAgain: 'Plan neu erstellen',
	stop: 'Hier anhalten',
	phases: {
		first: 'Ein erster Plan entsteht',
		proving: 'Der beste Plan wird gesucht',
		'hour-more': 'Was mehr Zeit und Geld brächten, wird ermittelt'
	},
	atMost: (doing, share) => `${doing}: höchstens ${share} besser`,
	proposed: 'Vorgeschlagener Plan',
	stale: 'Die Erfassung hat sich seither geändert. Erstellen Sie den Plan neu.',
	take: 'Diesen Plan übernehmen',
	leave: 'Nicht übernehmen',
	saves: (worth, years, shown) =>
		many(years, {
			one: `Der Plan spart ${worth} in ${shown} Jahr.`,
			other: `Der Plan spart ${worth} in ${shown} Jahren.`
		}),
	savesMore: (worth, years, shown, better) =>
		many(years, {
			one: `Der Plan spart ${worth} in ${shown} Jahr, ${better} mehr, als wenn der Reihe nach die Arbeit mit der größten Einsparung je Minute genommen würde.`,
			other: `Der Plan spart ${worth} in ${shown} Jahren, ${better} mehr, als wenn der Reihe nach die Arbeit mit der größten Einsparung je Minute genommen würde.`
		}),
	moreForParts: (more, saved) =>
		saved === undefined
			? `${more} mehr für Teile würden nichts weiter einsparen.`
			: `${more} mehr für Teile würden weitere ${saved} einsparen.`,
	stillLooking: 'Ein besserer wird noch gesucht.',
	notProved: 'Wie viel besser ein Plan sein könnte, wurde nicht bewiesen.',
	proved: 'Bewiesen: Kein Plan spart mehr.',
	provedWithin: (share) => `Bewiesen: Kein Plan spart über ${share} mehr.`,
	noSolver:
		'Die Optimierung konnte hier nicht laufen, daher ist dies ein schnell erstellter Plan. Er hält alle Grenzen ein.',
	noRoom: (tags) =>
		`Nicht alles, was behoben werden muss, passt hinein: Anhänger ${tags}. Geben Sie mehr Minuten oder ein weiteres Abschaltfenster an.`,
	leftOut: (why, tags) => `${why}: Anhänger ${tags}`,

	used: (used, all) => `${used} von ${all} belegt`,
	savesHere: 'Spart',
	parts: 'Teile',
	standstill: 'Stillstand',
	hourMore: 'Eine Stunde mehr',
	buysNothing: 'bringt nichts',
	buys: (worth) => `bringt ${worth}`,
	nothingPays: 'Hier lohnt sich nichts.',
	opening: (minutes) => `${minutes} zum Absperren, Entlüften und Wiederaufgeben der Luft`
};
