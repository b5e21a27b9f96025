import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

/** What leaks are compared by, as whose share something is. */
const OF_YEARLY = {
	cost: 'der jährlichen Kosten',
	energy: 'der jährlichen Energie',
	air: 'der im Jahr verlorenen freien Luft'
};
const MEASURES = {
	cost: 'Kosten im Jahr',
	energy: 'Energie im Jahr',
	air: 'Freie Luft im Jahr'
};

export const weigh: Catalogue['weigh'] = {
	heading: 'Bewerten',
	pageTitle: (site) => `Bewerten: ${site}`,
	begun: (round, day) => `${round}, begonnen am ${day}`,
	goToSetUp: 'Zu „Einrichten“',
	goToWalk: 'Zu „Begehen“',
	empty: 'Noch keine Leckage zu bewerten',
	emptyAbout:
		'Markieren Sie die Leckagen unter „Begehen“. Sobald eine eine Größe hat, zeigt diese Seite, was sie kostet und welche zuerst zu beheben ist.',
	mendFirst: 'Was zuerst zu beheben ist',
	whereAirGoes: 'Wohin die Luft geht',
	moneyBuys: 'Was das Geld bringt',
	whatIf: 'Was wäre, wenn',
	notWeighed: 'Noch nicht bewertet',
	notWeighedAbout:
		'Auch diese sind undicht; sie stecken in keiner der Summen oben, bis das Fehlende eingetragen ist.',
	everyLeak: 'Alle Leckagen',
	tag: (tag) => `Anhänger ${tag}`,
	specificPower: (power) => `${power} kW je m³/min`,
	sourced: (figure, source) => `${figure} (${source})`,
	closed: 'Stillstand',
	closedWeeks: 'Wochen mit Stillstand',
	noSection: 'Noch kein Abschnitt',
	measures: MEASURES,

	headline: {
		cost: 'Diese Leckagen kosten im Jahr',
		energy: 'Energie im Jahr',
		air: 'Verlorene freie Luft',
		carbon: 'CO₂e im Jahr',
		unknown: 'Noch nicht bekannt',
		range: (name, value, range) =>
			`${name}: ${value}, mit 90 % Wahrscheinlichkeit ${range}, auf einer Skala ab null`,
		faceValue: 'Wie abgelesen',
		weighed: 'Bewertete Leckagen',
		notWeighed: (shown) => `${shown} weitere noch nicht bewertet`,
		working: (share) => `Wie sicher das ist, wird gerade gerechnet: ${share}.`,
		howSure: 'Wie sicher:',
		howSureAbout: (rule) =>
			`Die großen Zahlen sind ebenso wahrscheinlich zu niedrig wie zu hoch; die Balken umfassen neun von zehn Fällen (${rule}). Die Liste unten und die Reparaturliste nehmen jede Ablesung, wie sie ist (gestrichelte Linie), damit ihre Teile die Summe ergeben.`,
		rough: 'Die Enden der Balken sind noch etwas ungenau.',
		method: 'Verfahren:',
		methodIs: (method, basis) => (basis === '' ? `${method}.` : `${method}: ${basis}.`),
		beside: 'Zum Vergleich:',
		besideQuick: (figures) =>
			`Das Kurzverfahren, eine spezifische Leistung für den ganzen Volumenstrom, ergibt ${figures.join(' und ')}.`,
		station: 'Die Station heute:',
		stationTakes: (energy) => `${energy} im Jahr, Leckagen eingeschlossen.`
	},

	split: {
		by: 'Aufgeteilt nach',
		section: 'Abschnitt',
		part: 'Bauteil',
		time: 'Tag und Nacht',
		timeOfWeek: 'Teil der Woche',
		about: (measure) => `${MEASURES[measure]}, Werte wie abgelesen.`,
		bar: 'Balken',
		leaks: 'Leckagen',
		leakCount: (count, shown) =>
			many(count, { one: `${shown} Leckage`, other: `${shown} Leckagen` }),
		share: 'Anteil'
	},

	charts: {
		first: (count, first, all, is) =>
			many(count, {
				one: `Die erste von ${all} Leckagen macht ${is.share} ${OF_YEARLY[is.measure]} aus: ${is.running} von ${is.total}.`,
				other: `Die ersten ${first} von ${all} Leckagen machen ${is.share} ${OF_YEARLY[is.measure]} aus: ${is.running} von ${is.total}.`
			}),
		ranked: (measure, summary) =>
			`Leckagen nach ihrem Rang, und welchen Anteil ${OF_YEARLY[measure]} sie zusammen ausmachen. ${summary}`,
		worstFirst: 'behobene Leckagen, die schlimmsten zuerst',
		mendFirst: (count) => `Die ersten ${count} beheben`,
		rank: 'Rang',
		tag: 'Anhänger',
		together: 'Zusammen',
		share: 'Anteil',
		spending: (money, count, all, saved) =>
			`${money} für Teile, ausgegeben, wo es sich am schnellsten lohnt, beheben ${count} von ${all} Leckagen und sparen ${saved} im Jahr.`,
		spendingTitle: (summary) =>
			`Jährliche Einsparung über dem Geld, das für Teile ausgegeben wird. ${summary}`,
		spentOnParts: 'für Teile ausgegeben',
		spend: (money) => `${money} ausgeben`,
		spentSoFar: 'Bis dahin ausgegeben',
		savedAYear: 'Im Jahr gespart'
	},

	table: {
		about: 'Leckagen der Reihe nach, mit dem, was jede im Jahr verliert',
		chosen: 'Ausgewählt',
		choose: (tag) => `Leckage ${tag} auswählen`,
		columns: {
			rank: 'Rang',
			tag: 'Anhänger',
			place: 'Ort',
			part: 'Bauteil',
			section: 'Abschnitt',
			flow: 'Freie Luft',
			energy: 'Energie im Jahr',
			cost: 'Kosten im Jahr',
			payback: 'Amortisation',
			perMinute: 'Gespart je Minute',
			state: 'Stand'
		},
		amongFirst: (count) => `Unter den ersten ${count}`,
		between: ', mit 90 % Wahrscheinlichkeit zwischen ',
		likely: (range) => `Mit 90 % Wahrscheinlichkeit ${range}`,
		first: 'Zuerst: Warten ist gefährlich',
		aMinute: 'je Minute',
		amongTheFirst: 'Unter den ersten',
		days: (shown) => `${shown} d`,
		months: (shown) => `${shown} Monate`,
		years: (shown) => `${shown} Jahre`,
		range: (low, high) => `${low} bis ${high}`,
		kept: (all, kept, shown) =>
			many(all, { one: `${kept} von ${shown} Leckage`, other: `${kept} von ${shown} Leckagen` }),
		aYear: (money) => `${money} im Jahr`,
		chooseAll: (count) => `Alle ${count} auswählen`,
		chooseNone: 'Keine auswählen',
		done: 'Fertig',
		changeSeveral: 'Mehrere ändern',
		unsafeFirst: 'Was nicht gefahrlos warten kann, steht vorn, was immer es kostet.',
		more: (count) => `${count} weitere zeigen`,
		none: 'Keine Leckage passt zu dieser Auswahl.',
		showAll: 'Alle zeigen'
	},

	narrow: {
		facets: {
			section: { label: 'Abschnitt', all: 'Alle Abschnitte' },
			part: { label: 'Bauteil', all: 'Alle Bauteile' },
			state: { label: 'Stand', all: 'Alle dieses Rundgangs' }
		},
		orderBy: 'Reihenfolge',
		mendFirst: 'Was zuerst zu beheben ist',
		column: 'Eine Spalte',
		wastesMost: 'Was am meisten verliert',
		paybackFirst: 'Kürzeste Amortisation',
		perMinuteFirst: 'Größte Einsparung je Arbeitsminute',
		surest: (count) => `Am sichersten unter den ersten ${count}`,
		howMany: 'Wie viele zuerst kommen',
		narrowedTo: 'Eingegrenzt auf',
		only: 'Nur',
		several: (count) => `${count} ausgewählt`,
		letGo: ', wegnehmen',
		clearAll: 'Alles wegnehmen'
	},

	bulk: {
		appliesTo: (count, shown) =>
			many(count, { one: `Gilt für ${shown} Leckage`, other: `Gilt für ${shown} Leckagen` }),
		tick: 'Haken Sie in der Liste unten die Leckagen an, die Sie ändern wollen.',
		section: 'Abschnitt für alle',
		noSection: 'Kein Abschnitt',
		part: 'Bauteil für alle',
		action: 'Maßnahme für alle',
		pressure: 'Abgelesener Druck für alle',
		pressureEmpty: 'Leer: der Druck des Abschnitts',
		mixed: 'Verschieden',
		partly: (hazard) => `${hazard} (teilweise)`,
		oneStep: 'Jede Änderung ist ein Schritt: „Rückgängig“ oben nimmt sie für alle zurück.'
	},

	trial: {
		about: (rule) => `An einer Kopie probiert: Nichts hier ändert die Erfassung (${rule}).`,
		setPressure: (pressure) => `Solldruck ${pressure}`,
		setPressureChanged: (pressure, today) => `Solldruck ${pressure}, heute ${today}`,
		mendFirst: (count) => `Die ersten ${count} nach Rang beheben`,
		hours: (share) => `Stunden unter Druck: ${share} der heutigen`,
		price: 'Preis einer kWh',
		machineOff: 'Eine Maschine aus',
		none: 'Keine',
		standsStill: 'Sie steht still während',
		airOff: 'Alle Luft aus während',
		back: 'Zurück zu heute',
		working: 'Wird gerechnet …',
		tableAbout: 'Ein Jahr heute und ein Jahr mit dem, was probiert wird',
		today: 'Heute',
		then: 'Dann',
		change: 'Änderung',
		unchanged: 'keine',
		rows: {
			leaksCost: 'Leckagen, Kosten im Jahr',
			leaksEnergy: 'Leckagen, Energie',
			leaksCarbon: 'Leckagen, CO₂e',
			leaksAir: 'Leckagen, freie Luft',
			stationCost: 'Station, Kosten im Jahr',
			stationEnergy: 'Station, Energie',
			stationCarbon: 'Station, CO₂e'
		},
		pressureAlone: 'Der Druck allein:',
		pressureDoes: (power, air, rule) =>
			`Nach der Physik brauchen die Maschinen ${power.share} ${power.less ? 'weniger' : 'mehr'} Leistung für dieselbe Luft, und aus offenen Leckagen strömt ${air.share} ${air.less ? 'weniger' : 'mehr'} Luft. Die Faustregel des Handbuchs, 1 % je 2 psi, sagt ${rule}. Bevor Sie den Druck senken, prüfen Sie, welchen Druck die versorgten Maschinen haben müssen.`
	}
};
