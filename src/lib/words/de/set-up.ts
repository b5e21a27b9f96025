import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const setUp: Catalogue['setUp'] = {
	heading: 'Einrichten',
	pageTitle: (site) => `Einrichten: ${site}`,
	onThisPage: 'Auf dieser Seite',
	remove: 'Entfernen',
	removeNamed: (name) => `${name} entfernen`,
	name: 'Name',
	parts: {
		site: { title: 'Standort', about: 'Davon hängt jede Zahl dieser Erfassung ab.' },
		plans: { title: 'Pläne', about: 'Die Bilder, auf denen die Pins sitzen.' },
		sections: {
			title: 'Abschnitte',
			about:
				'Ein Abschnitt ist, was ein Absperrventil absperrt. Er hat einen Druck und eine Zahl von Stunden im Jahr, die er unter Druck steht.'
		},
		supply: {
			title: 'Drucklufterzeugung',
			about:
				'Wie die Druckluft erzeugt wird und mit welchem von zwei Verfahren aus dem Volumenstrom die Leistung berechnet wird. Das Kurzverfahren braucht eine Zahl, die Station zunächst eine Maschine.'
		},
		prices: {
			title: 'Preise',
			about:
				'Was leer bleibt, fehlt in der Rechnung und wird als fehlend genannt; es gilt nie als null.'
		},
		startingValues: {
			title: 'Startwerte',
			about:
				'Was wir annehmen, wo nichts gemessen wurde. Ändern Sie sie, wo Sie es besser wissen; Berichte nennen sie.'
		},
		kept: {
			title: 'Auf diesem Gerät abgelegt',
			about:
				'Eine Erfassungsdatei enthält das alles und lässt sich auf jedem Gerät öffnen. Sie ist die Sicherung.'
		},
		language: {
			title: 'Sprache',
			about:
				'Für dieses Gerät, samt der Schreibweise von Zahlen und Daten. Was erfasst ist, ändert sich nicht.'
		}
	},
	standing: {
		altitudeMissing: 'Höhe fehlt',
		noneYet: 'noch keine',
		station: (count, shown) =>
			many(count, { one: 'Station, 1 Kompressor', other: `Station, ${shown} Kompressoren` }),
		quick: 'Kurzverfahren',
		missing: 'fehlt',
		electricityMissing: 'Strompreis fehlt',
		perKwh: (price, currency) => `${price} ${currency} je kWh`,
		allOurs: 'alle von uns',
		changed: (shown) => `${shown} geändert`
	},
	checks: {
		needed: 'Für ein Ergebnis nötig',
		doubtful: 'Bitte ansehen',
		goThere: 'Dorthin'
	},

	site: {
		name: 'Name des Standorts',
		currency: 'Währung',
		note: 'Notiz',
		noteHint: 'Ansprechpartner, Tore, Freigaben: was der nächste Besuch braucht.',
		air: 'Die Luft am Standort',
		airAbout:
			'In der Höhe ist die Luft dünner, und der Überdruck zählt ab dem Luftdruck der Umgebung. Ein abgelesener Luftdruck geht der Höhe vor.',
		altitude: 'Höhe über dem Meer',
		altitudeUnused: 'Nicht verwendet: Es gibt einen abgelesenen Luftdruck.',
		barometer: 'Luftdruck',
		barometerHint: '1 kPa sind 10 mbar. Nicht der auf Meereshöhe umgerechnete Wert.',
		temperature: 'Lufttemperatur',
		reference: 'Bezugszustand für Luftmengen',
		references: {
			'iso-1217': {
				text: 'ISO 1217',
				about: '20 °C, 100 kPa, trocken. So wird die Liefermenge von Kompressoren angegeben.'
			},
			anr: {
				text: 'ANR',
				about:
					'ISO 8778: 20 °C, 100 kPa, 65 % relative Feuchte. So werden Ventile und Zylinder angegeben.'
			},
			normal: {
				text: 'Normzustand',
				about:
					'0 °C, 101,325 kPa, trocken. Viele Durchflussmesser zeigen ihn; etwa 9 % weniger Kubikmeter.'
			},
			site: {
				text: 'Wie am Standort',
				about: 'Die Luft, die der Kompressor ansaugt: diese Höhe, diese Temperatur.'
			}
		},
		units: 'Einheiten',
		unitsAbout:
			'Zum Lesen und Eingeben. Was gespeichert ist, ändert sich nicht; Sie können sie jederzeit wechseln.',
		pressure: 'Druck',
		flow: 'Volumenstrom',
		length: 'Lochgrößen',
		millimetres: 'Millimeter',
		inches: 'Zoll'
	},

	plans: {
		notHere: 'Das Bild dieses Plans ist nicht auf diesem Gerät.',
		name: 'Name des Plans',
		desk: 'Maßstab, Abschnitte, neuere Zeichnung',
		deskOf: (plan) => `Maßstab, Abschnitte, neuere Zeichnung von ${plan}`,
		pins: (count, shown) =>
			count === 0 ? 'Noch keine Pins' : many(count, { one: '1 Pin', other: `${shown} Pins` }),
		none: 'Noch kein Plan. Ein Fluchtwegplan, eine Zeichnung oder ein Foto davon genügt; darauf sitzen die Pins, und die Reparaturliste druckt ihn.',
		opening: (file) => `${file} wird geöffnet`,
		add: 'Plan hinzufügen',
		addAnother: 'Weiteren Plan hinzufügen',
		kinds: 'PDF, PNG, JPEG, WebP oder SVG',
		title: (plan, site) => `${plan ?? 'Plan'} – ${site} – Airtally`,
		back: 'Zurück zu „Einrichten“',
		noSuch: 'Diesen Plan gibt es nicht'
	},

	sections: {
		numbered: (place) => `Abschnitt ${place}`,
		noValve: 'kein Ventil benannt',
		setPressure: (pressure) => `Solldruck, ${pressure}`,
		noPressure: 'kein Druck',
		hoursOfWeek: 'Stunden der Woche',
		noHours: 'keine Stunden',
		add: 'Abschnitt hinzufügen',
		addAnother: 'Weiteren Abschnitt hinzufügen',
		none: 'Noch kein Abschnitt. Ohne ihn ist nicht bekannt, wie viele Stunden eine Leckage bläst, und die Reparaturliste kann nicht sagen, welches Ventil zu schließen ist.',
		valve: 'Absperrventil',
		valveHint: 'Seine Nummer und wo es zu finden ist.',
		pressure: 'Druck',
		pressureEmpty: (pressure) => `Leer: der Solldruck, ${pressure}.`,
		pressureHint: 'Am Manometer dieses Abschnitts.',
		hours: 'Stunden im Jahr',
		hoursHint: 'Unter Druck: Eine Leckage bläst auch nachts.',
		volume: 'Volumen',
		volumeHint: 'Rohre und Behälter hinter dem Ventil.',
		always: (hours) => `Immer unter Druck: ${hours}`
	},

	prices: {
		energy: 'Energie',
		electricity: 'Strom',
		electricityHint: 'Was eine weitere kWh kostet, ohne feste Gebühren.',
		perKwh: (currency) => `${currency} je kWh`,
		perKw: (currency) => `${currency} je kW`,
		perM3: (currency) => `${currency} je m³`,
		demandCharge: 'Leistungspreis',
		demandChargeHint: 'Bezahlt für die höchste bezogene Leistung.',
		demandChargePer: 'Leistungspreis gilt je',
		month: 'Monat',
		year: 'Jahr',
		period: 'Preis für bestimmte Zeiten',
		numbered: (place) => `Preis ${place}`,
		removePrice: (name) => `Preis ${name} entfernen`,
		addPeriod: 'Preis für bestimmte Stunden hinzufügen, etwa nachts',
		air: 'Luft',
		water: 'Wasser und Wartung',
		waterHint: 'Je Kubikmeter freier Luft (ISO 1217), zusätzlich zur Energie.',
		carbon: 'CO₂',
		carbonAbout: 'Steht mit Jahr und Quelle bei jeder CO₂e-Angabe.',
		factor: 'Faktor',
		factorUnit: 'kg CO₂e je kWh',
		ofYear: 'Für das Jahr',
		source: 'Quelle',
		sourceHint: 'Wer ihn veröffentlicht hat.',
		carbonIncomplete: 'Er zählt, sobald Faktor, Jahr und Quelle eingetragen sind.',
		ahead: 'Vorausschau',
		aheadAbout:
			'Für den heutigen Wert (Barwert) einer Reparatur. Die Amortisation braucht sie nicht.',
		rate: 'Kalkulationszinssatz',
		rateHint: 'Je Jahr.',
		horizon: 'Zeitraum',
		years: 'Jahre'
	},

	soap: {
		title: 'Was der Schaum besagt',
		about:
			'Für welche runden Löcher jedes Verhalten von Seifenlösung oder Lecksuchmittel stehen kann; neun von zehn Leckagen liegen dazwischen. Keine veröffentlichte Quelle macht aus dem Bild des Schaums einen Volumenstrom: Diese Spannen sind unsere eigenen, und eine Systemprüfung kann Anlass geben, sie zu verschieben.',
		changed: 'Hier geändert',
		resetOf: (response) => `Zurücksetzen: ${response}`,
		reset: (low, high) => `Zurücksetzen auf ${low} – ${high}`,
		ours: 'Unser Startwert',
		from: 'Von',
		to: 'Bis',
		unusable:
			'Die erste Zahl muss über null liegen und die zweite über der ersten. Bis dahin lassen sich Leckagen mit diesem Verhalten nicht bewerten.'
	},

	kept: {
		merged: 'Nach dem Übernehmen von Dateien noch offen',
		mergedAbout:
			'Nichts wurde überschrieben. Was hier steht, sollten Sie sich noch einmal ansehen; es bleibt stehen, bis Sie es erledigt haben.',
		settled: 'Das ist erledigt',
		changes: (count, shown) =>
			many(count, {
				one: '1 Änderung, seit der Standort angelegt wurde.',
				other: `${shown} Änderungen, seit der Standort angelegt wurde.`
			}),
		inNoFile: 'Noch in keine Datei gesichert.',
		lastFile: (when, count, shown) =>
			many(count, {
				one: `Zuletzt in eine Datei gesichert ${when}; seither 1 Änderung.`,
				other: `Zuletzt in eine Datei gesichert ${when}; seither ${shown} Änderungen.`
			}),
		allInFile: (when) => `Alles wurde in eine Datei gesichert ${when}.`,
		pictures: (count, shown, size) =>
			many(count, { one: `1 Bild, ${size}.`, other: `${shown} Bilder, ${size}.` }),
		makeRoom: (size) => `Platz schaffen: hier ${size} löschen`,
		makeRoomAbout:
			'Bilder, die nicht mehr gezeigt werden, lassen sich von diesem Gerät löschen. In der gesicherten Erfassungsdatei bleiben sie; wer sie öffnet, hat sie wieder.',
		makeRoomAfter:
			'Sichern Sie in eine Datei, dann lassen sie sich von diesem Gerät löschen, um Platz zu schaffen.',
		unused: (size) =>
			`Davon werden ${size} nicht mehr gezeigt und nur für „Rückgängig“ aufbewahrt.`,
		missing: (count, shown) =>
			many(count, {
				one: '1 Bild fehlt auf diesem Gerät; eine Erfassungsdatei, die es enthält, bringt es zurück.',
				other: `${shown} Bilder fehlen auf diesem Gerät; eine Erfassungsdatei, die sie enthält, bringt sie zurück.`
			}),
		save: 'Erfassung in eine Datei sichern',
		setAside: 'Beiseitegelegt',
		setAsideAbout:
			'Diese Änderungen passten beim Zusammenführen nicht mehr oder waren nicht lesbar. Sie sind nicht verloren: Jede Erfassungsdatei führt sie weiter mit.',
		more: (shown) => `${shown} weitere.`,
		change: (kind, when) => `${kind}, ${when}:`,
		notReadable: (reason) => `nicht lesbar (${reason})`
	}
};
