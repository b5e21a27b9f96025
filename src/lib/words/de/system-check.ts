import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

/** What goes from one figure to another, with its verb. */
const YEARLY_GOES = {
	cost: 'ändern sich die jährlichen Kosten',
	energy: 'ändert sich die jährliche Energie',
	air: 'ändert sich die im Jahr verlorene freie Luft'
};

const leaks = (count: number, shown: string) =>
	many(count, { one: `${shown} Leckage`, other: `${shown} Leckagen` });

export const systemCheck: Catalogue['systemCheck'] = {
	heading: 'Systemprüfung',
	comparing: 'Das Gefundene wird mit der Prüfung verglichen …',
	about:
		'Bei stehender Produktion ist das ganze Netz ein Durchflussmesser: Eine Prüfung sagt, wie viel der Leckage gefunden ist und ob weiter zu suchen ist.',
	scaledToNone: (factor) =>
		`Die Schätzungen sind mit ${factor} skaliert, nach einer Prüfung, die es nicht mehr gibt.`,
	scaled: (factor) =>
		`Die Schätzungen sind mit ${factor} nach einer Systemprüfung skaliert. Jede Zahl auf jeder Seite ist so gerechnet; was gemessen wurde, bleibt, wie es war.`,
	scalingOff: 'Skalierung aufheben',
	addSystemTest: 'Systemprüfung hinzufügen',
	addTest: 'Prüfung hinzufügen',
	kinds: {
		'load-time': 'Lastzeiten',
		'bleed-down': 'Druckabfall',
		'pump-up': 'Füllzeit'
	},
	loggerFile: 'Datei eines Datenloggers',
	addThis: 'Diese Prüfung hinzufügen',
	leaveIt: 'Verwerfen',
	name: 'Name',
	nameHint: 'Etwa der Tag und was offen war',
	remove: 'Entfernen',
	removeNamed: (name) => `${name} entfernen`,
	knownToHint: (share) => `Eine Standardabweichung; leer: ${share}`,
	whenEmpty: (value) => `Leer: ${value}`,
	gaugeStep: 'Kleinster Skalenschritt des Manometers',
	clockStep: 'Kleinster Schritt der Uhr',
	volume: 'Volumen',
	volumeKnownTo: 'Volumen bekannt auf',
	delivers: 'Die Maschine liefert',

	loadTime: {
		about:
			'Bei stehender Produktion läuft eine Maschine nur gegen die Leckagen unter Last und im Leerlauf. Stoppen Sie die Zeiten einiger Zyklen.',
		capacityMissing: 'Es fehlt, was die Maschine liefert.',
		noCycle: 'Noch ist kein Zyklus vollständig: Tragen Sie seine Lastzeit und Leerlaufzeit ein.',
		cycles: 'Zyklen',
		cycle: (place) => `Zyklus ${place}`,
		removeCycle: (place) => `Zyklus ${place} entfernen`,
		addCycle: 'Zyklus hinzufügen',
		loaded: 'Unter Last',
		unloaded: 'Im Leerlauf',
		stopped: 'Steht still',
		deliversHint: 'Unter Last, als freie Luft im Ansaugzustand',
		knownTo: 'Bekannt auf',
		meanPressure: 'Mittlerer Druck',
		meanPressureHint: 'Zwischen Ein- und Ausschaltdruck; leer: der Solldruck'
	},
	bleedDown: {
		about:
			'Bei abgesperrter Erzeugung und ohne Produktion leeren die Leckagen das Netz. Lesen Sie Manometer und Uhr ab: Zwei Ablesungen genügen, mehr zeigen, welchem Gesetz die Leckagen folgen.',
		volumeMissing: 'Es fehlt das Volumen der Behälter und Rohre.',
		twoNeeded: 'Es braucht mindestens zwei Ablesungen: wann, und was das Manometer zeigte.',
		readings: 'Ablesungen',
		reading: (place) => `Ablesung ${place}`,
		removeReading: (place) => `Ablesung ${place} entfernen`,
		addReading: 'Ablesung hinzufügen',
		after: 'Nach',
		gauge: 'Manometer',
		volumeHint: 'Der Behälter und Rohre, in denen der Druck fiel'
	},
	pumpUp: {
		about:
			'Eine Maschine füllt einen Behälter, der vom Netz abgesperrt ist: So zeigt sich, was sie wirklich liefert. Über die Leckagen sagt das nichts, doch die Lastzeiten stützen sich darauf.',
		volumeMissing: 'Es fehlt das Volumen des Behälters.',
		endsMissing: 'Tragen Sie den Druck am Anfang und am Ende ein und die Zeit dazwischen.',
		volumeHint: 'Des Behälters und der Leitung zu ihm',
		startPressure: 'Druck am Anfang',
		endPressure: 'Druck am Ende',
		time: 'Dauer',
		temperature: 'Luft im Behälter am Ende',
		temperatureHint: 'Als abgelesen wurde'
	},

	tests: {
		kindAndDay: (kind, day) => `${kind}, ${day}`,
		delivers: 'liefert die Maschine',
		loses: 'verliert das Netz beim Solldruck',
		loaded: (share, count, cycles) =>
			many(count, {
				one: `${share} der Zeit unter Last, über ${cycles} Zyklus.`,
				other: `${share} der Zeit unter Last, über ${cycles} Zyklen.`
			}),
		oneCycle:
			'Ein Zyklus sagt nichts über die Streuung: Stoppen Sie die Zeiten mehrerer Zyklen, bevor Sie sich darauf verlassen.',
		handbook: (flow, factor) =>
			`Nach dem Handbuch ${flow} beim Luftdruck des Standorts, mit seinem Faktor ${factor}.`,
		handbookOwn: (flow, factor, own) =>
			`Nach dem Handbuch ${flow} beim Luftdruck des Standorts, mit seinem Faktor ${factor}; bei diesem Druckabfall wäre der Faktor ${own}.`,
		laws: {
			line: 'Die Leckagen folgen einer Geraden über dem Druck: Einige schließen sich, wenn er fällt.',
			orifice: 'Die Leckagen verhalten sich wie feste Öffnungen.',
			undecided:
				'Zu wenige Ablesungen, um zu sagen, welchem Gesetz die Leckagen folgen; als feste Öffnungen gerechnet.'
		},
		extrapolated: 'Der Solldruck liegt außerhalb der Ablesungen: Die Zahl ist extrapoliert.',
		noTemperature: 'Ohne die Temperatur der Luft im Behälter liegt sie einige Prozent zu hoch.'
	},

	compared: {
		found: 'Beim Begehen gefunden',
		measured: 'Von der Prüfung gemessen',
		notLocated: 'Nicht geortet',
		energy: 'Dessen Energie',
		cost: 'Dessen Kosten',
		about: 'Das Gefundene gegen das von der Prüfung Gemessene, mit 90-%-Bereichen',
		freeAir: 'Freie Luft',
		likely: 'Am wahrscheinlichsten',
		from: 'Möglich',
		aYear: (value) => `${value} im Jahr`,
		named: (name, range) => `${name}: ${range}`,
		with: (test) =>
			`Verglichen mit „${test}“ und dem, was damals undicht war. Was unter null liegt, ist keine Einsparung: Dort sind die Schätzungen höher als das Ergebnis der Prüfung.`,
		offer: (factor, low, high) =>
			`Mit ${factor} skaliert (${low} bis ${high}), ergäben die Schätzungen zusammen das Ergebnis der Prüfung.`,
		tooHigh: 'Sie sind mit Sicherheit zu hoch.',
		maybeUnfound: 'Was fehlt, können ebenso gut Leckagen sein, die noch niemand gefunden hat.',
		maybeRight: 'Vielleicht stimmen sie, wie sie sind.',
		scale: 'Schätzungen skalieren'
	},

	logger: {
		heading: 'Aus der Datei eines Datenloggers',
		about:
			'Eine Aufzeichnung von Druck, Leistung, Strom oder Lastsignal über eine Zeit ohne Produktion; in längeren werden die ruhigen Stunden gesucht. Jede Datei mit Spalten geht: CSV oder Text. Sie wird auf diesem Gerät gelesen und nirgendwohin übertragen.',
		choose: 'Datei wählen',
		chooseAnother: 'Andere Datei wählen',
		refused: (file, why) => `${file}: ${why}`,
		firstRows: (file) => `Die ersten Zeilen von ${file}`,
		time: 'Zeit',
		chosen: ', gewählt',
		unnamed: (place) => `Spalte ${place}`,
		column: 'Zu lesende Spalte',
		holds: 'Was sie enthält',
		kinds: {
			pressure: 'Druck',
			power: 'Leistung',
			current: 'Strom',
			'load-signal': 'Lastsignal'
		},
		unit: 'Ihre Einheit',
		unitHint: 'Wie ein Manometer ihn zeigt, nicht absolut',
		days: 'Schreibweise des Datums',
		daysUncertain: 'Aus den ersten Zeilen gehen Tag und Monat nicht hervor: bitte prüfen',
		orders: {
			dmy: 'Tag, Monat, Jahr',
			mdy: 'Monat, Tag, Jahr',
			ymd: 'Jahr, Monat, Tag'
		},
		readAgain: 'Noch einmal lesen',
		findCycles: 'Zyklen suchen',
		looking: (file) => `${file} wird angesehen`,
		reading: (file, rows) => `${file} wird gelesen: ${rows} Zeilen`,
		stop: 'Lesen abbrechen',

		wholeCycles: (count, shown) =>
			many(count, { one: `${shown} ganzer Zyklus`, other: `${shown} ganze Zyklen` }),
		take: 'Welche Zyklen gelten',
		quiet: 'Die ruhigen Stunden',
		all: 'Alles',
		cyclesLoaded: (count, shown, share) =>
			many(count, {
				one: `${shown} Zyklus, ${share} der Zeit unter Last`,
				other: `${shown} Zyklen, ${share} der Zeit unter Last`
			}),
		loaded: 'Unter Last',
		ofTheTime: (share) => `${share} der Zeit`,
		bySlopes: 'Dasselbe aus den Steigungen des Drucks',
		fall: 'Druckabfall im Leerlauf',
		aMinute: (fall) => `${fall} je Minute`,
		meanPressure: 'Mittlerer Druck',
		rows: 'Zeilen',
		rowsEvery: (rows, seconds) => `${rows}, eine alle ${seconds} s`,
		leftOut: (what) => `Weggelassen: ${what}.`,
		withGap: (count, shown) =>
			many(count, { one: `${shown} Zyklus mit Lücke`, other: `${shown} Zyklen mit Lücke` }),
		stayedOff: (count, shown) =>
			many(count, { one: `${shown} langer Stillstand`, other: `${shown} lange Stillstände` }),
		irregular: (count, shown) =>
			many(count, {
				one: `${shown} Schwankung anderer Größe`,
				other: `${shown} Schwankungen anderer Größe`
			}),
		empty: (count, shown) =>
			many(count, { one: `${shown} Zeile ohne Messwert`, other: `${shown} Zeilen ohne Messwert` }),
		unreadable: (count, shown) =>
			many(count, { one: `${shown} unlesbare Zeile`, other: `${shown} unlesbare Zeilen` }),
		outOfOrder: (count, shown) =>
			many(count, {
				one: `${shown} Zeile außer der Reihe`,
				other: `${shown} Zeilen außer der Reihe`
			}),
		asTable: 'Die Zyklen als Tabelle',
		begins: 'Beginn',
		loadedS: 'Unter Last, s',
		unloadedS: 'Im Leerlauf, s',
		offS: 'Aus, s',
		from: 'Von',
		to: 'Bis',
		deliversHint:
			'Unter Last, als freie Luft im Ansaugzustand; eine Prüfung der Füllzeit würde es zeigen',
		takeAsTest: 'Als Systemprüfung übernehmen',
		deliversMissing:
			'Tragen Sie ein, was die Maschine liefert; dann lässt sich daraus die Leckage berechnen.',

		recording: (summary) => `Die Aufzeichnung, ${summary}`,
		stretch: (from, to, count, shown) =>
			many(count, {
				one: `${from} bis ${to}: ${shown} Lastphase markiert`,
				other: `${from} bis ${to}: ${shown} Lastphasen markiert`
			}),
		belowLine: (summary) => `${summary}, unter der Linie.`,
		onlyCloser: (summary) => `${summary}, erst vergrößert zu sehen.`,
		pressureIn: (unit) => `Druck in ${unit}.`,
		closer: 'Vergrößern',
		wider: 'Verkleinern',
		earlier: 'Früher',
		later: 'Später'
	},

	soap: {
		heading: 'Was der Schaum hier besagt',
		about: (rule) =>
			`Jedes Verhalten des Schaums steht für eine Spanne von Lochgrößen, und die, mit denen wir beginnen, sind grob. Leckagen, deren Schaum angesehen und deren Volumenstrom auch gemessen wurde, zeigen, wofür er an diesem Standort steht (${rule}). Wählen Sie sie aus, ohne auf ihre Größe zu sehen, sonst folgen die Spannen der Auswahl.`,
		tableAbout: 'Lochgrößen, für die jedes Verhalten des Schaums steht, heute und angepasst',
		response: 'Der Schaum',
		measured: 'Gemessen',
		bandToday: 'Spanne heute',
		refitted: 'Angepasst',
		drawn: 'Gezeichnet',
		today: 'Heute',
		band: (low, high) => `${low} bis ${high}`,
		leaks,
		moreNeeded: (shown) => `noch ${shown} nötig`,
		mark: (response, today) => `${response}: heute ${today}`,
		markRefitted: (response, today, refitted) =>
			`${response}: heute ${today}, angepasst ${refitted}`,
		noneYet: 'Noch hat keine Leckage beides.',
		tooFew: (count, shown) => `Bisher ${leaks(count, shown)}, zu wenige mit demselben Verhalten.`,
		from: (least) => `Angepasst wird eine Spanne ab ${least} Leckagen mit demselben Verhalten.`,
		how: (walk) =>
			`Wählen Sie unter „${walk}“, was der Schaum macht, und bemessen Sie dieselbe Leckage dann mit Beutel, Durchflussmesser oder einer Blase mit Stoppuhr: Beides bleibt erhalten.`,
		walk: 'Begehen',
		goesFrom: (measure, today, then) =>
			`Mit den angepassten Spannen ${YEARLY_GOES[measure]} aller Leckagen, wie abgelesen, von ${today} auf ${then}.`,
		use: 'Angepasste Spannen verwenden',
		inUse: (count, shown, which) =>
			many(count, {
				one: `Die angepasste Spanne gilt für ${shown} Verhalten: ${which}.`,
				other: `Die angepassten Spannen gelten für ${shown} Verhalten: ${which}.`
			}),
		was: (response, band, leaks) => `„${response}“ war ${band}, aus ${leaks}`,
		takeBack: 'Anpassung zurücknehmen'
	}
};
