import type { Catalogue } from '../catalogue.ts';

export const supply: Catalogue['supply'] = {
	setPressure: 'Solldruck',
	setPressureHint:
		'An den Kompressoren. Ein Abschnitt ohne eigenen Druck steht unter diesem Druck.',
	usedForSums: 'Damit wird gerechnet',
	startingValue: 'Startwert',
	isStarting: (about) => `${about} Startwert.`,
	remove: 'Entfernen',
	removeNamed: (name) => `${name} entfernen`,
	name: 'Name',
	notNow: 'Jetzt nicht',

	quick: {
		title: 'Kurzverfahren: eine Zahl für die gesamte Druckluft',
		about:
			'Leistung ist spezifische Leistung mal Volumenstrom. Das sagt, was die Erzeugung im Mittel kostet; eine Maschine im Leerlauf oder mit Drosselregelung gibt weniger zurück, wenn eine Leckage behoben ist.',
		specificPower: 'Spezifische Leistung',
		unit: 'kW je m³/min',
		hint: 'Leistungsaufnahme des gesamten Aggregats geteilt durch die Liefermenge: beides steht im Datenblatt.',
		source: 'Woher die Zahl stammt',
		byHand: 'von Hand eingetragen',
		use: (figure) => `${figure} kW je m³/min verwenden`
	},

	station: {
		title: 'Station: die Maschinen und ihre Woche',
		about:
			'Die Maschinen werden in dieser Reihenfolge gestartet; eine von ihnen übernimmt den schwankenden Teil des Bedarfs.',
		aboutNew:
			'Sagt, was die Erzeugung wirklich weniger braucht, wenn eine Leckage weg ist: Teillast, Behälter, Nächte und Wochenenden. Es beginnt mit einer Maschine; alles andere ist mit Startwerten gefüllt, die Sie sehen und ändern können.',
		describe: 'Station beschreiben',
		remove: 'Station entfernen',
		trim: 'Den schwankenden Teil übernimmt',
		lastStarted: 'Die zuletzt gestartete Maschine',
		none: 'Es gibt noch keinen Kompressor, daher lässt sich keine Energie angeben. Fügen Sie einen hinzu.',
		numbered: (place) => `Kompressor ${place}`,
		add: 'Kompressor hinzufügen',
		store: 'Gespeicherte Luft',
		storeAbout:
			'Was zwischen den Kompressoren und dem ersten Ventil liegt. Ist es wenig, werden Maschinen mit Last-Leerlauf-Regelung teuer.',
		receivers: 'Druckluftbehälter',
		pipes: 'Rohrleitungen'
	},

	machine: {
		capacity: 'Liefermenge',
		capacityHint: 'Gelieferte Luft im Ansaugzustand, laut Datenblatt.',
		power: 'Leistungsaufnahme bei Volllast',
		powerHint: 'Des gesamten Aggregats, nicht vom Typenschild des Motors.',
		ratedPressure: 'Nenndruck',
		ratedPressureHint: 'Bei dem beides angegeben ist.',
		usePower: (figure) => `Leistungsaufnahme nicht bekannt: ${figure} kW verwenden`,
		leastEfficiency:
			'einer Maschine, die den Mindestwirkungsgrad nach 10 CFR 431.345 gerade erreicht',
		stillNeeded: (list) => `Noch nötig: ${list}.`,
		needs: {
			capacity: 'ihre Liefermenge',
			power: 'ihre Leistungsaufnahme',
			pressure: 'ihr Druck',
			control: 'wie sie dem Bedarf folgt'
		},
		add: 'Diesen Kompressor hinzufügen',
		toCheck: 'Zahlen prüfen',
		earlier: 'Früher',
		later: 'Später',
		startEarlier: (name) => `${name} früher starten`,
		startLater: (name) => `${name} später starten`,
		build: 'Bauart',
		buildHint: 'Nur eine Bezeichnung: Das Verhalten bestimmt die Regelung.',
		builds: {
			screw: 'Schraube',
			piston: 'Kolben',
			vane: 'Drehschieber',
			centrifugal: 'Turbo'
		},
		follows: 'Wie sie dem Bedarf folgt',
		controls: {
			'load-unload': {
				text: 'Last-Leerlauf-Regelung',
				about: 'Der Motor dreht weiter; die Maschine wird leise, wenn der Druck erreicht ist.'
			},
			'start-stop': {
				text: 'Start-Stopp-Regelung',
				about:
					'Der Motor hält an, wenn der Druck erreicht ist. Üblich bei kleinen Kolbenkompressoren.'
			},
			throttled: {
				text: 'Drosselregelung',
				about: 'Ein Ventil an der Ansaugung schließt stufenlos; die Leistungsaufnahme sinkt kaum.'
			},
			'variable-speed': {
				text: 'Drehzahlregelung',
				about: 'Mit Frequenzumrichter: Die Tonhöhe folgt dem Bedarf.'
			},
			curve: {
				text: 'Punkte aus dem Datenblatt',
				about: 'Leistung bei mehreren Volumenströmen, vom Hersteller oder gemessen.'
			}
		}
	},

	control: {
		slope: 'Leistungsminderung ohne Förderung',
		slopeHint: 'Wenn sie ganz zudrosseln würde.',
		unloadsBelow: 'Leerlauf unterhalb von',
		unloadsBelowHint: 'Ihrer Liefermenge.',
		leastFlow: 'Kleinste Förderung',
		leastFlowHint: 'Bei kleinster Drehzahl.',
		leastPower: 'Leistung bei kleinster Förderung',
		leastPowerHint: 'Von ihrer Leistung bei Volllast.',
		band: 'Schaltdifferenz',
		bandHint: 'Zwischen Ein- und Ausschaltdruck.',
		unloaded: 'Leistung im Leerlauf',
		unloadedHint: 'Nach der Entlastung, noch drehend.',
		unloadStart: 'Leistung zu Beginn des Leerlaufs',
		unloadStartHint: 'Bevor die Entlastung beginnt.',
		blowDown: 'Entlastungszeit',
		blowDownHint: 'Von der einen Leistung zur anderen.',
		stopsLater: 'Hält nach einiger Zeit im Leerlauf an',
		keepsTurning: 'Sie dreht weiter.',
		stopsAfter: 'Hält an nach',
		stopsAfterHint: 'Die Nachlaufzeit ihres Motors.',
		curveAbout:
			'Anteile der Liefermenge und der Leistung bei Volllast, von keiner Förderung bis zur vollen. Bis Sie sie ändern, liegen die Punkte auf einer Geraden ab 25 % der Leistung: unser Startwert.',
		flow: 'Förderung',
		power: 'Leistung',
		removePoint: (place) => `Punkt ${place} entfernen`,
		addPoint: 'Punkt hinzufügen'
	},

	week: {
		title: 'Die Woche',
		about:
			'Wann das Netz unter Druck steht, wie viel gebraucht wird und bei welchem Druck. Nächte und Wochenenden zählen: Leckagen haben keinen Feierabend.',
		drawn: 'Die Woche als Bild; die Zeiträume darunter sagen dasselbe in Worten',
		on: 'an',
		off: 'aus',
		notSaid: 'nicht angegeben: zählt als aus',
		unassigned: (hours) => `${hours} im Jahr gehören zu keinem Zeitraum. Sie zählen als aus.`,
		demandIs: 'Der Bedarf eines Zeitraums ist',
		demands: {
			delivered: {
				text: 'Alles, was geliefert wird',
				about:
					'Wie ein Durchflussmesser hinter den Kompressoren es zeigt, Leckagen und Spülluft eingeschlossen.'
			},
			process: {
				text: 'Nur die Produktion',
				about: 'Was die Verbraucher benötigen; die Leckagen kommen hinzu.'
			}
		},
		numbered: (place) => `Zeitraum ${place}`,
		startingDemand: (share) => `Startwert: ${share} der Liefermenge.`,
		add: 'Zeitraum hinzufügen',
		rest: 'Der Rest des Jahres',
		restAbout: 'Ferien und Stillstände: Wochen, die nicht dem Bild oben folgen.',
		weeks: 'Solche Wochen im Jahr',
		remain: (hours) => `${hours} im Jahr bleiben übrig.`,
		meanwhile: 'In dieser Zeit ist die Luft',
		days: ['Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa', 'So'],
		dayNames: ['Montag', 'Dienstag', 'Mittwoch', 'Donnerstag', 'Freitag', 'Samstag', 'Sonntag'],
		everyDay: 'Täglich',
		span: (from, to) => `${from} bis ${to}`
	},

	period: {
		noDay: 'kein Tag gewählt',
		airOff: 'Luft aus',
		asked: (flow, pressure) => `${flow} bei ${pressure}`,
		tooMuch: 'mehr, als die Maschinen liefern',
		beginsOn: 'Beginnt am',
		from: 'Von',
		to: 'Bis',
		midnight: 'Mitternacht am Ende des Tages.',
		nextDay: 'Am nächsten Tag.',
		airIs: 'Die Luft ist',
		on: 'An',
		off: 'Aus',
		demand: 'Bedarf',
		price: 'Preis',
		usualPrice: 'Der übliche'
	},

	purge: {
		title: 'Spülluft des Trockners',
		about:
			'Luft, mit der ein Adsorptionstrockner sein Trockenmittel trocknet und die er dann abbläst.',
		how: 'Wie er spült',
		kinds: {
			none: { text: 'Keine Spülluft', about: 'Ein Kältetrockner oder keiner.' },
			'share-of-capacity': {
				text: 'Immer gleich viel',
				about: 'Ein Anteil des Nennvolumenstroms des Trockners, gleich wie viel fließt.'
			},
			'share-of-flow': {
				text: 'Folgt dem Volumenstrom',
				about: 'Ein Anteil dessen, was in den Trockner strömt.'
			}
		},
		share: 'Spülluft',
		rated: 'Nennvolumenstrom',
		ratedStarting: 'Startwert: die Liefermenge aller Kompressoren.'
	},

	heat: {
		title: 'Wärmerückgewinnung',
		about:
			'Abwärme der Kompressoren, die gekaufte Wärme ersetzt. Sind Leckagen behoben, fällt weniger davon an; das mindert die Einsparung.',
		remove: 'Wärmerückgewinnung entfernen',
		caught: 'Als Wärme gewonnen',
		caughtHint: 'Von der Leistung, die die Kompressoren aufnehmen.',
		used: 'Davon genutzt',
		usedHint: 'Über das Jahr: Im Sommer wird nicht geheizt.',
		fuel: 'Brennstoffpreis',
		boiler: 'Kesselwirkungsgrad',
		incomplete: 'Sie zählt, sobald alle vier Zahlen eingetragen sind.',
		begin: 'Hier wird Wärme zurückgewonnen'
	}
};
