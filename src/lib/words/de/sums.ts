import type { Catalogue } from '../catalogue.ts';

export const sums: Catalogue['sums'] = {
	methods: {
		quick: 'Kurzverfahren: eine spezifische Leistung für den ganzen Volumenstrom',
		supply: 'Stationsmodell: die Station bei Teillast, Stunde für Stunde der Woche',
		none: 'nur Luft: Die Erfassung sagt noch nicht, was die Erzeugung braucht'
	},
	quantities: {
		'cost-per-year': 'Kosten im Jahr',
		'cost-before-rounding': 'Kosten vor dem Runden',
		'quick-cost': 'Kosten im Jahr, Kurzverfahren',
		'energy-cost': 'Energie zu ihrem Preis',
		'energy-cost-in-part': 'Energie zu ihrem Preis',
		'energy-price': 'Preis einer Kilowattstunde',
		'air-cost': 'Je Kubikmeter bezahlt',
		'air-price': 'Preis eines Kubikmeters',
		'shared-cost': 'Anteil an dem, was für die ganze Station bezahlt wird',
		'share-of-energy': 'Anteil an der Energie aller Leckagen',
		'energy-of-all': 'Energie aller Leckagen im Jahr',
		'demand-charge-fall': 'Minderung der Leistungskosten',
		'demand-price': 'Preis eines Kilowatts Spitzenleistung',
		'charges-per-year': 'Abrechnungen im Jahr',
		'peak-power-with-leaks': 'Höchste Leistung heute',
		'peak-power-without-leaks': 'Höchste Leistung ohne die Leckagen',
		'lost-heat-worth': 'Wert der entgangenen Rückgewinnungswärme',
		'lost-heat': 'Entgangene Rückgewinnungswärme',
		'recovered-share': 'Als Wärme gewonnener Anteil der Leistung',
		'useful-share': 'Genutzter Anteil dieser Wärme',
		'fuel-price': 'Brennstoffpreis',
		'boiler-efficiency': 'Wirkungsgrad des Kessels',
		'carbon-per-year': 'CO₂e im Jahr',
		'carbon-factor': 'CO₂e einer Kilowattstunde',

		'energy-per-year': 'Energie im Jahr',
		'quick-energy': 'Energie im Jahr, Kurzverfahren',
		'quick-power': 'Leistung nach dem Kurzverfahren',
		'specific-power': 'Spezifische Leistung',
		'hours-per-year': 'Stunden im Jahr unter Druck',
		'saving-in-part': 'Eingesparte Energie',
		'saving-per-flow': 'Je m³/min eingesparte Energie',
		'saving-of-all-in-part': 'Eingespart, wenn alle Leckagen weg sind',
		'hours-in-part': 'Stunden im Jahr',
		'leaks-in-part': 'Alle Leckagen zusammen, Ansaugzustand',
		'power-with-leaks': 'Leistung der Station heute',
		'power-without-leaks': 'Leistung der Station ohne die Leckagen',
		'delivered-with-leaks': 'Heute geliefert',
		'delivered-without-leaks': 'Ohne die Leckagen geliefert',
		demand: 'Bedarf',
		'set-pressure': 'Solldruck',
		'machine-power': 'Leistung',
		'machine-flow': 'Geforderter Volumenstrom',
		'machine-capacity': 'Liefermenge',
		'machine-full-power': 'Leistungsaufnahme bei Volllast',
		'work-factor': 'Arbeit beim Solldruck geteilt durch Arbeit beim Nenndruck',
		'rated-pressure': 'Nenndruck',
		'inlet-flow': 'Volumenstrom, Ansaugzustand',
		'share-of-hours': 'Anteil an den Stunden der Station unter Druck',
		'station-hours': 'Stunden im Jahr, in denen die Station Druck hält',

		'air-per-year': 'Freie Luft im Jahr',
		'air-in-part': 'Freie Luft',
		'free-air-flow': 'Freie Luft',
		'mass-flow': 'Massenstrom',
		'reference-density': 'Dichte der Luft im Bezugszustand',
		'mass-flux': 'Massenstrom je Quadratmeter',
		'line-pressure': 'Druck in der Leitung',
		'gauge-pressure': 'Überdruck',
		'site-pressure': 'Luftdruck am Standort',
		altitude: 'Höhe über dem Meer',
		'air-temperature': 'Temperatur der Luft',
		'duty-factor': 'Anteil der Zeit, in der sie offen ist',
		'open-time': 'Offen für',
		interval: 'In jeweils',

		'effective-area': 'Wirksame Fläche',
		'test-scaling': 'Skalierung der Schätzungen auf die Systemprüfung',
		uncertainty: 'Ihre relative Standardunsicherheit',
		'discharge-coefficient': 'Durchflussbeiwert',
		'opening-area': 'Fläche der Öffnung',
		'hole-diameter': 'Durchmesser des Lochs',
		'slit-length': 'Länge des Schlitzes',
		'slit-width': 'Breite des Schlitzes',
		'thread-diameter': 'Durchmesser des Gewindes',
		'thread-gap': 'Spalt',
		'caught-mass-flow': 'Aufgefangener oder gemessener Massenstrom',
		'caught-volume': 'Aufgefangene Luft',
		'caught-time': 'In',
		'bubble-diameter': 'Durchmesser der Blase',
		'meter-flow': 'Anzeige des Durchflussmessers',
		'equivalent-hole': 'Ideales Loch, für das der Schaum steht',
		'band-low': 'Unteres Ende der Spanne',
		'band-high': 'Oberes Ende der Spanne',
		'sonic-conductance': 'Pneumatischer Leitwert C',
		'critical-ratio': 'Kritisches Druckverhältnis b',

		'system-leak': 'Leckage des ganzen Netzes beim Solldruck',
		'system-leak-mass-flow': 'Massenstrom der Leckage des ganzen Netzes',
		'load-share': 'Anteil der Zeit unter Last',
		'loaded-time': 'Unter Last, alle Zyklen',
		'unloaded-time': 'Leerlauf oder aus, alle Zyklen',
		capacity: 'Liefermenge der Maschine',
		'capacity-mass-flow': 'Massenstrom der Maschine',
		'flux-ratio': 'Vom Druck der Prüfung auf den Solldruck',
		'flux-at-test': 'Massenstrom je Quadratmeter, bei der Prüfung',
		'flux-at-set': 'Massenstrom je Quadratmeter, beim Solldruck',
		'test-pressure': 'Mittlerer Druck der Prüfung',
		'system-volume': 'Volumen von Behältern und Rohren',
		'test-time': 'Dauer',
		'bleed-integral': 'Druckabfall geteilt durch den Volumenstrom, den er treibt',
		'start-pressure': 'Druck am Anfang',
		'end-pressure': 'Druck am Ende',
		'end-reading': 'Am Ende abgelesener Druck',
		'end-temperature': 'Temperatur am Ende',
		'handbook-leak': 'Leckage nach dem Handbuch',
		'handbook-factor': 'Faktor des Handbuchs',
		'line-slope': 'Steigung der Ausgleichsgeraden',
		'line-intercept': 'Ausgleichsgerade bei Überdruck null',
		'delivered-capacity': 'Tatsächliche Liefermenge',
		'delivered-mass-flow': 'Tatsächlich gelieferter Massenstrom',
		'stored-mass-flow': 'Im Behälter gespeichert',
		'leaked-mass-flow': 'Beim Füllen durch Leckagen verloren',
		'tank-temperature': 'Temperatur der Luft im Behälter'
	},
	ofWhat: (quantity, subject) => `${quantity}: ${subject}`,
	tag: (tag) => `Anhänger ${tag}`,
	closed: 'geschlossen',
	origins: {
		reading: 'beim Begehen oder bei der Prüfung abgelesen oder beurteilt',
		section: 'aus dem Abschnitt',
		sectionNamed: (name) => `aus dem Abschnitt „${name}“`,
		supply: 'aus „Einrichten“, Drucklufterzeugung',
		schedule: 'aus „Einrichten“, Woche',
		station: 'aus „Einrichten“, Maschinen',
		site: 'aus „Einrichten“, Standort',
		prices: 'aus „Einrichten“, Preise',
		cited: (source) => `Quelle: ${source}`
	},
	references: {
		'iso-1217': 'ISO 1217 (20 °C, 100 kPa, trocken)',
		anr: 'ISO 8778 ANR (20 °C, 100 kPa, 65 % Feuchte)',
		normal: 'DIN 1343, Normzustand (0 °C, 101,325 kPa, trocken)',
		site: 'Ansaugzustand am Standort (Druck und Temperatur des Standorts, trocken)'
	},
	absolute: (pressure) => `${pressure} absolut`,
	per: (amount, unit) => `${amount} je ${unit}`,
	byAllErrors: (range) => `in neun von zehn Fällen, alle Fehler zusammen: ${range}`,
	byAllErrorsWithMiddle: (range, middle) =>
		`in neun von zehn Fällen, alle Fehler zusammen: ${range}, Mitte ${middle}`,
	byReading: (range) => `in neun von zehn Fällen, nur nach dieser Angabe: ${range}`,
	range: (low, high) => `${low} bis ${high}`,

	workings: {
		rule: (id) => `Regel ${id}`,
		byRule: (rule) => `nach ${rule}`,
		more: (next, all) => `${next} weitere von ${all} zeigen`,
		beside: 'Daneben, nach einem anderen Verfahren'
	},

	found: {
		keepWalking: (share, range) =>
			`Sie haben etwa ${share} dessen gefunden, was das Netz verliert (${range}). Suchen Sie weiter.`,
		keepWalkingRough: (share, range) =>
			`Sie haben etwa ${share} dessen gefunden, was das Netz verliert, doch die Größen sind grob: Möglich sind ${range}. Suchen Sie weiter und messen Sie die größten nach.`,
		most: (share, range) =>
			`Sie haben das meiste gefunden: etwa ${share} dessen, was das Netz verliert (${range}).`,
		mostRough: (share, range) =>
			`Was Sie gefunden haben, passt zu dem, was das Netz verliert: etwa ${share}, doch möglich sind ${range}. Die größten nachzumessen, brächte Klarheit.`,
		tooHigh: (share, range) =>
			`Ihre Schätzungen ergeben zusammen etwa ${share} dessen, was das Netz verliert (${range}); das kann nicht sein. Prüfen Sie die größten oder skalieren Sie die Schätzungen auf die Prüfung.`
	},

	warnings: {
		shortage: (part, demand, capacity) =>
			`In „${part}“ beträgt der Bedarf ${demand}, die Maschinen liefern höchstens ${capacity}: Der Druck würde fallen. Prüfen Sie beides.`,
		leaksExceedDemand: (part, leaks, available) =>
			`In „${part}“ ergeben die Leckagen zusammen ${leaks}, mehr als die gelieferten ${available}; nur so viel wird gezählt. Prüfen Sie die Größen oder den Bedarf.`,
		savingNegative: (part, energy) =>
			`In „${part}“ würde die Station ohne die Leckagen mehr aufnehmen (${energy} im Jahr): Ihre Maschinen lassen eine Lücke in dem, was sie liefern können. Prüfen Sie ihre Reihenfolge.`,
		shortCycling: (part, times) =>
			`In „${part}“ geht eine Maschine ${times} Mal je Minute in Last. Prüfen Sie Behältervolumen und Schaltdifferenz.`,
		unassignedTime: (hours) =>
			`${hours} im Jahr gehören zu keinem Zeitraum der Woche und zählen als aus. Fügen Sie einen Zeitraum hinzu, falls dann Druck ansteht.`
	}
};
