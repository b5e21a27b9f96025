import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const proof: Catalogue['proof'] = {
	fates: {
		held: 'Behoben und dicht',
		claimed: 'Als behoben gemeldet, nicht abgeseift',
		still: 'Weiterhin undicht',
		'not-reached': 'Nicht erreicht, wie zuvor angesetzt',
		again: 'Wieder undicht',
		new: 'Neu'
	},
	routines: {
		site: 'Luft am Standort',
		pressure: 'Druck',
		hours: 'Stunden unter Druck',
		supply: 'Drucklufterzeugung',
		demand: 'Bedarf',
		tariff: 'Preise'
	},
	standingsWithin: {
		leaking: 'undicht',
		claimed: 'als behoben gemeldet',
		tight: 'dicht, abgeseift',
		unknown: 'noch nicht bekannt'
	},
	agreements: {
		agree: 'Beide stimmen innerhalb ihrer Bereiche überein.',
		'soap-more':
			'Die Begehung ergibt eine größere Einsparung, als die Systemprüfung zeigt. Vielleicht sind neue Leckagen noch nicht gefunden, die Größen zu hoch geschätzt, oder bei der späteren Prüfung war etwas anderes offen.',
		'test-more':
			'Die Systemprüfung zeigt eine größere Einsparung, als die Begehung ergibt. Vielleicht wurden Leckagen behoben, die niemand markiert hatte, die Größen sind zu niedrig geschätzt, oder bei der früheren Prüfung war etwas offen.'
	},
	strengthsRule: 'Drei Nachweisstufen derselben Einsparung. Sie werden nie zusammengezählt.',
	strengths: {
		claimed: 'Gemeldet',
		proved: 'Durch Abseifen belegt',
		measured: 'Durch Systemprüfung gemessen'
	},
	claimedNote: (count, shown) =>
		many(count, {
			one: '1 Leckage als behoben gemeldet, seither nicht abgeseift',
			other: `${shown} Leckagen als behoben gemeldet, seither nicht abgeseift`
		}),
	provedNote: (count, shown) =>
		many(count, {
			one: '1 Leckage, zuletzt als dicht gesehen',
			other: `${shown} Leckagen, zuletzt als dicht gesehen`
		}),
	notMeasured: (why) => `Nicht gemessen. ${why}`,
	strengthsNote: 'Im Jahr, unter jeder Zahl ihr 90-%-Bereich.',
	range: (low, high) => `${low} bis ${high}`,
	bridge: {
		before: 'Vorher',
		mended: 'Behoben',
		again: 'Wieder',
		new: 'Neu',
		changed: 'Neu bemessen',
		after: 'Nachher'
	},
	bridgeSummary: (steps) => `Von vorher nach nachher, im Jahr: ${steps}`,
	step: 'Schritt',
	aYear: 'Im Jahr',

	pageTitle: (site) => `Belegen: ${site}`,
	roundOfSite: (round, number) => `${round}, Rundgang ${number} an diesem Standort`,
	startTitle: 'Nächsten Rundgang beginnen',
	startAbout:
		'Ein neuer Rundgang behält, was der letzte gefunden hat, und die Preise, die dabei galten. Jede bekannte Leckage wird zu einer Stelle, die erneut abzuseifen ist.',
	roundName: 'Name des Rundgangs',
	roundNumber: (number) => `Rundgang ${number}`,
	roundNameHint: (number) => `Rundgang ${number}, bis Sie ihn benennen.`,
	show: 'Anzeigen',
	showStops: 'Erneut abseifen',
	showSaved: 'Was eingespart wurde',

	stopsTitle: 'Stellen dieses Rundgangs',
	lookedAt: (looked, stops) => `${looked} von ${stops} angesehen,`,
	otherStops: (notReached, left, newLeaks) =>
		`${notReached} nicht erreicht, ${left} noch offen, ${newLeaks} neu.`,
	stopsAnswered: 'Beantwortete Stellen',
	onlyLeft: 'Nur die noch offenen',
	pinNew: 'Neue Leckage unter „Begehen“ markieren',
	allAnswered: 'Jede Stelle hat ihre Antwort.',
	seeSaved: 'Ansehen, was eingespart wurde',
	empty: 'Noch nichts zu belegen',
	emptyAbout:
		'Belegen heißt noch einmal hinsehen: Leckagen unter „Begehen“ markieren, beheben lassen und hier den nächsten Rundgang beginnen.',
	goToWalk: 'Zu „Begehen“',
	noneKnown: 'Bei Beginn dieses Rundgangs war keine Leckage bekannt.',
	showMore: (shown) => `${shown} weitere zeigen`,
	outcomes: { tight: 'Dicht', leaking: 'Undicht', 'not-reached': 'Nicht erreicht' },
	noPlace: 'Ort nicht notiert',
	beforeRound: (standing) => `Vor diesem Rundgang: ${standing}.`,
	leaksAgain: 'Sie ist wieder undicht.',
	leakNow: (tag) => `Leckage ${tag} jetzt`,
	sizeAgain: (tag) => `Leckage ${tag} neu bemessen`,
	historyOf: (tag) => `Verlauf der Leckage ${tag}`,
	history: {
		notReached: (day) => `${day}: nicht erreicht`,
		seen: (day, standing) => `${day}: ${standing}`,
		seenBy: (day, standing, evidence) => `${day}: ${standing}; bemessen nach: ${evidence}`,
		couldNot: (why) => `Ließ sich nicht beheben: ${why}`,
		mended: (day) => `${day}: behoben`,
		mendedBy: (day, who) => `${day}: behoben von ${who}`,
		soapedTight: 'Nach dem Beheben abgeseift: dicht',
		soapedLeaking: 'Nach dem Beheben abgeseift: weiterhin undicht',
		notLookedAt: (standing) => `Nicht angesehen; zuvor ${standing}`
	},

	compareWith: 'Vergleichen mit',
	fromTo: (before, after) => `Von ${before} bis ${after}`,
	lessWasted: (sum) => `Weniger verschwendet als zuvor: ${sum} im Jahr.`,
	lessWastedBetween: (sum, range) => `Weniger verschwendet als zuvor: ${sum} im Jahr, ${range}.`,
	countedAsLeaking: (count, shown) =>
		many(count, {
			one: 'Was niemand erneut angesehen hat, zählt weiterhin als undicht: 1 Leckage.',
			other: `Was niemand erneut angesehen hat, zählt weiterhin als undicht: ${shown} Leckagen.`
		}),
	mendedHolds: (proved, cameBack) =>
		`„Behoben“ sind die ${proved}, die durch Abseifen belegt sind, und die ${cameBack}, die die wieder undichten Leckagen vorher kosteten.`,
	leftOut: (tags, count) =>
		many(count, {
			one: `In beiden Rundgängen ausgelassen, weil sie sich nicht bewerten ließ: Leckage ${tags}.`,
			other: `In beiden Rundgängen ausgelassen, weil sie sich nicht bewerten ließen: Leckagen ${tags}.`
		}),
	onPlan: 'Auf dem Plan',
	sameTitle: 'Auf gleiche Bedingungen gebracht',
	rateTitle: 'Wie schnell es wiederkommt',
	reportLink: 'Einsparbericht zum Lesen und Drucken',
	asFound: 'Wie bei der Begehung gefunden',
	pin: (tag, standing) => `Leckage ${tag}, ${standing}`,
	pictureNotHere: (plan) => `Das Bild von ${plan} ist nicht auf diesem Gerät.`,
	noPlan: 'Es gibt noch keinen Plan.',
	pinShapes:
		'Runde Pins sind dicht, spitze undicht, gestrichelte wurden in diesem Rundgang nicht angesehen.',

	adjust: {
		about: (round) =>
			`Beide Rundgänge sind auf die Bedingungen von ${round} gebracht. Routinemäßige Änderungen werden nacheinander bewertet; jeder Betrag kommt zum früheren Rundgang hinzu.`,
		change: 'Änderung',
		energy: 'Energie im Jahr',
		money: 'Geld im Jahr',
		takeBack: 'Zurücknehmen',
		remove: 'Entfernen',
		removeThat: (what) => `Entfernen: ${what}`,
		nothing: 'Nichts hat sich geändert, was diese Leckagen berührt.',
		notKept: (round) =>
			`Die Bedingungen von ${round} wurden beim Abschluss nicht festgehalten; daher lässt sich von dort aus nichts anpassen.`,
		byHand: 'Änderung von Hand hinzufügen',
		what: 'Was sich geändert hat',
		whatHint: 'Eine Maschine entfernt, eine Leitung hinzugefügt.',
		reason: 'Begründung',
		size: 'Energie im Jahr, die zum Ausgangswert hinzukommt',
		sizeHint: 'Unter null, wenn der Standort weniger aufnimmt.',
		lacking: 'Bitte füllen Sie alle drei Felder aus.',
		add: 'Änderung hinzufügen'
	},

	rates: {
		moreAYear: (value, low, high) => `${value} im Jahr mehr (${low} bis ${high})`,
		growth: (more) =>
			`Was wiederkam und was neu undicht wurde, würde mit jedem weiteren Jahr ${more} kosten. Etwa so viel ist ein jährlicher Rundgang wert.`,
		nextBy: (day) => `Nächster Rundgang bis ${day}`,
		next: (by, between) =>
			`${by} (${between}): Bis dahin ist ein Viertel der erreichten Einsparung wieder verloren.`,
		caption:
			'Verbindungen, die als dicht belegt waren und wieder undicht sind, je Verbindung und Jahr',
		kind: 'Bauteil und Maßnahme',
		back: 'Wieder undicht',
		each: 'Im Jahr (90 %)',
		ofWatched: (returned, watched) => `${returned} von ${watched}`,
		perYear: (rate, low, high) => `${rate} (${low} bis ${high})`,
		all: 'Alle',
		none: 'Noch wurde keine Verbindung als dicht belegt und später erneut angesehen.',
		noRate: (months) =>
			`In ${months} kam nichts wieder und wurde nichts neu undicht: Es gibt noch keine Rate.`,
		grounds: (leaks, shown, months) =>
			many(leaks, {
				one: `Das beruht auf 1 Leckage, die in ${months} wiederkam oder neu auftrat.`,
				other: `Das beruht auf ${shown} Leckagen, die in ${months} wiederkamen oder neu auftraten.`
			}),
		few: 'Das sind wenige: Der Bereich ist breit, und jeder Rundgang macht ihn schmaler.'
	},

	payback: {
		unknown:
			'Was die Reparaturen gekostet haben, wurde nicht notiert; daher gibt es noch keine Amortisationszeit.',
		write: 'Was die Reparaturen gekostet haben',
		writeAbout:
			'Rechnungen kommen nach der Reparatur: was jede gekostet hat, Teile und Arbeit zusammen. Leer heißt nicht bekannt; 0 heißt kostenlos.',
		repair: (tag, part) => `Leckage ${tag}: ${part}`,
		missing: (missing, shown, repairs) =>
			many(missing, {
				one: `Für 1 von ${repairs} Reparaturen sind keine Kosten notiert; es dauert also länger.`,
				other: `Für ${shown} von ${repairs} Reparaturen sind keine Kosten notiert; es dauert also länger.`
			}),
		nothingProved: (spent) =>
			`Die Reparaturen kosteten ${spent}; noch ist nichts belegt, was sie wieder einbringt.`,
		paysIn: (spent, time, low, high) =>
			`Die Reparaturen kosteten ${spent}. Was durch Abseifen belegt ist, bringt das in ${time} wieder ein (90 %: ${low} bis ${high}).`,
		never: 'nie',
		days: 'weniger als drei Tage',
		inDays: 'weniger als drei Tagen',
		months: (count, shown) => many(count, { one: `${shown} Monat`, other: `${shown} Monate` }),
		years: (count, shown) => many(count, { one: `${shown} Jahr`, other: `${shown} Jahre` }),
		inMonths: (count, shown) => many(count, { one: `${shown} Monat`, other: `${shown} Monaten` }),
		inYears: (count, shown) => many(count, { one: `${shown} Jahr`, other: `${shown} Jahren` })
	}
};
