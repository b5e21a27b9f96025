import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const mend: Catalogue['mend'] = {
	pageTitle: (site) => `Beheben: ${site}`,
	begun: (round, day) => `${round}, begonnen am ${day}`,
	toJobs: (open) => `Zu den Arbeiten: ${open} offen`,
	beforeWork: 'Vor jeder Arbeit',
	moreForAll: (count) => `${count} weitere für alle Arbeiten`,
	nothing: 'Noch nichts zu beheben',
	nothingAbout:
		'Jede unter „Begehen“ markierte Leckage wird hier zu einer Arbeit, hinter dem Ventil, das ihren Abschnitt absperrt.',
	toWalk: 'Zu „Begehen“',
	saves: 'Was es einspart',
	ofRound: (round) => `Hier zählt, was „${round}“ gefunden und behoben hat.`,
	ofEarlier: 'Was frühere Rundgänge eingespart haben',
	mendedCount: (done, all) => `${done} von ${all} behoben`,
	takeAlong: 'Mitnehmen',
	plan: 'Reparaturen planen',
	byWindowTitle: 'Abschaltfenster, nach Laufweg geordnet',
	bySectionTitle: 'Abschnitte, Unsicheres zuerst, dann nach Kosten',
	layOut: 'Liste ordnen',
	byWindow: 'Nach Abschaltfenster',
	bySection: 'Nach Abschnitt',
	noWindow: 'In keinem Abschaltfenster',
	windows: (count, shown) =>
		many(count, { one: '1 Abschaltfenster', other: `${shown} Abschaltfenster` }),
	noBudget: 'kein Budget genannt',
	forParts: (budget) => `${budget} für Teile`,

	columns: { leaking: 'Weiterhin undicht', mended: 'Gemeldet', tight: 'Belegt' },
	about: {
		leaking: (count, shown) =>
			many(count, {
				one: '1 Leckage, Verlust bis zur Reparatur',
				other: `${shown} Leckagen, Verlust bis zur Reparatur`
			}),
		mended: (count, shown) =>
			many(count, {
				one: '1 Leckage, behoben, noch nicht erneut abgeseift',
				other: `${shown} Leckagen, behoben, noch nicht erneut abgeseift`
			}),
		tight: (count, shown) =>
			many(count, {
				one: '1 Leckage, behoben, erneut abgeseift und dicht',
				other: `${shown} Leckagen, behoben, erneut abgeseift und dicht`
			})
	},
	notWeighed: (about, count) => `${about}; ${count} nicht bewertet`,
	aYear: 'im Jahr',

	noSection: 'Noch kein Abschnitt',
	allMended: (count, shown) => many(count, { one: 'behoben', other: `alle ${shown} behoben` }),
	toDo: (open, all) => `${open} von ${all} offen`,
	toDoAt: (open, all, cost) => `${open} von ${all} offen, ${cost} im Jahr`,
	hasFirst: 'Enthält eine Arbeit, die zuerst zu erledigen ist',
	close: 'Schließen',
	noValve: 'Ventil nicht bekannt.',
	nameValve: 'Unter „Einrichten“ benennen',
	stored: (energy) => `${energy} kJ in der Luft dahinter gespeichert`,
	beforeLoosened: 'Bevor etwas gelöst wird, für alle Arbeiten hier',
	steps: { isolated: 'Abgesperrt', vented: 'Entlüftet', zeroProved: 'Drucklosigkeit festgestellt' },
	showMore: (count) => `${count} weitere zeigen`,

	tag: (tag) => `Anhänger ${tag}`,
	costAYear: (cost) => `${cost} im Jahr`,
	minutes: (minutes) => `${minutes} min`,
	first: 'Zuerst erledigen',
	firstWhy: {
		lead: 'Zuerst erledigen,',
		whole:
			'Zuerst erledigen, was immer es kostet: Ein undichter Behälter unter Druck oder etwas, das außer Betrieb zu nehmen ist, ist zuerst eine Gefahr und erst dann ein Verlust.'
	},
	couldNot: 'Nicht möglich:',
	cautions: 'Sicherheitshinweise: ',
	costs: (cost, waiting) => `Kostet ${cost} im Jahr; jeder Tag Aufschub ${waiting}`,
	cost: (cost) => `Kostete ${cost} im Jahr, solange undicht`,
	notWeighedWhy: (why) => `Nicht bewertet: ${why}`,
	under: (sum) => `unter ${sum}`,
	leakOnWalk: (tag) => `Leckage ${tag} unter „Begehen“`,

	mended: 'Behoben',
	notTicked: (steps) => `Nicht abgehakt: ${steps}.`,
	soapAsked: 'Luft wieder an: Was zeigte das Abseifen?',
	soapSaid: {
		tight: 'Dicht',
		'still-leaking': 'Weiterhin undicht',
		'not-yet': 'Noch nicht erneut abgeseift'
	},
	airIsBack: {
		lead: 'Die Luft ist wieder an.',
		whole:
			'Die Luft ist wieder an. Erneut absperren, sichern, entlüften und Drucklosigkeit feststellen, bevor diese Verbindung wieder angefasst wird.'
	},
	took: {
		title: 'Aufwand',
		minutes: 'Minuten',
		planned: (minutes) => `Geplant: ${minutes} min.`,
		plannedAndTook: (planned, median, count, shown) =>
			many(count, {
				one: `Geplant: ${planned} min. Hier dauerte es ${median} min, bisher das einzige Mal.`,
				other: `Geplant: ${planned} min. Hier dauerte es ${median} min, der Median aus ${shown}.`
			}),
		cost: 'Kosten',
		costHint: 'Teile und Arbeit zusammen. „Belegen“ stellt sie der Einsparung gegenüber.',
		part: 'Verwendetes Teil',
		partHint: 'Zum Beispiel: Winkel 1/2 Zoll, aus dem Lager.'
	},
	notDone: {
		title: 'Nicht möglich',
		why: 'Warum nicht',
		hint: 'Zum Beispiel: Ersatzteil nicht da, keine Freigabe, kein Aufstieg.'
	},

	room: {
		title: 'Kompressorraum',
		allRight: (count, shown) =>
			many(count, { one: 'in Ordnung gebracht', other: `alle ${shown} in Ordnung gebracht` }),
		lookedAt: 'Was geprüft wurde, unter „Begehen“',
		where: (machine, point) => `${machine}, ${point}`,
		putRight: 'In Ordnung gebracht',
		toBePutRight: 'In Ordnung zu bringen',
		note: 'Notiz',
		noteHint: 'Was getan, was verwendet wurde.',
		couldNot: 'Nicht möglich: warum nicht',
		couldNotHint: 'Zum Beispiel: Ersatzteil nicht da, Kundendienst für Dienstag bestellt.'
	},

	hand: {
		paper: 'Papier',
		letter: 'Letter',
		make: { pdf: 'Reparaturliste drucken (PDF)', tags: 'Anhänger drucken (PDF)' },
		save: { pdf: 'PDF sichern', tags: 'Anhänger sichern' },
		share: { pdf: 'PDF teilen', tags: 'Anhänger teilen' },
		noGlyphs: (characters) =>
			`Der Druck kann ${characters} nicht darstellen: Dort stünden leere Kästchen. Ändern Sie zuerst diese Namen, oder sichern Sie ihn, wie er ist.`,
		noGlyphsAndMore: (characters, more) =>
			`Der Druck kann ${characters} und ${more} weitere Zeichen nicht darstellen: Dort stünden leere Kästchen. Ändern Sie zuerst diese Namen, oder sichern Sie ihn, wie er ist.`,
		noPlans: (plans) =>
			`Das Bild von ${plans} ließ sich nicht zeichnen; auf seiner Seite stehen die Pins ohne Bild.`,
		noPhotos: (tags) =>
			`Die Bilder zu Anhänger ${tags} ließen sich nicht zeichnen; die Arbeiten stehen ohne sie da.`,
		ready: {
			pdf: 'Das PDF ist fertig, mit den Sicherheitshinweisen auf jeder Seite.',
			tags: 'Die Anhänger sind fertig. Drucken Sie sie in voller Größe, ohne Skalierung.'
		},
		asPage: 'Als Seite zum Drucken oder Vorlesen',
		others: 'Für eine Tabelle oder ein anderes System',
		xlsx: 'Als Arbeitsmappe (XLSX)',
		xlsxAbout: 'Zahlen und Tage als solche, in jeder Sprache.',
		csv: 'Als Tabelle (CSV)',
		csvAbout: 'Reiner Text, mit den Dezimal- und Trennzeichen dieser Sprache.',
		orders: 'Als Arbeitsaufträge (CSV)',
		ordersAbout: 'Eine Zeile je offene Reparatur.',
		nameColumns: 'Spalten benennen',
		pack: 'Arbeitsaufträge mit Fotos (ZIP)',
		packAbout: 'Dieselbe Tabelle, und jedes Foto unter dem Namen in seiner Zeile.',
		calendar: 'Abschaltfenster für den Kalender (ICS)',
		calendarAbout: 'Erneut eingelesen, verschiebt es die Einträge und legt keine zweiten an.',
		noWindow: 'Es gibt noch kein Abschaltfenster.'
	},

	orders: {
		title: 'Arbeitsaufträge',
		pageTitle: (site) => `Arbeitsaufträge: ${site}`,
		back: 'Zurück zu „Beheben“',
		columns: 'Spalten',
		columnsAbout:
			'Eine Zeile je offene Reparatur. Schreiben Sie jede Überschrift so, wie Ihr System für Arbeitsaufträge sie verlangt, und wählen Sie, was darunter steht.',
		heading: (number) => `Überschrift ${number}`,
		holds: 'Enthält',
		column: (number) => `Spalte ${number}`,
		takeOut: 'Herausnehmen',
		takeOutThat: (number) => `Spalte ${number} herausnehmen`,
		stays: 'Bleibt: Die Sicherheitshinweise gehen mit jeder Reparatur mit.',
		add: 'Spalte hinzufügen',
		priorities: 'Prioritäten',
		prioritiesAbout:
			'Die meisten Systeme nehmen nur die Wörter ihrer eigenen Liste. Eine Priorität ohne Wort wird abgewiesen, nicht erraten.'
	},

	inShort: {
		C1: 'Absperren, sichern, entlüften, Drucklosigkeit feststellen',
		C2: 'Örtliche Vorschriften zuerst',
		C3: 'Druckbehälter außer Betrieb',
		C4: 'Sicherheitsventil: nicht anrühren',
		C5: 'Nur der Kundendienst',
		C6: 'Erst das Absperrventil finden',
		C7: 'Eingeschlossene Druckluft',
		C8: 'Manometer fallen sehen',
		C9: 'Augenschutz',
		C10: 'Netzspannung aus, mit Schloss gesichert',
		C11: 'Läuft von selbst an',
		C12: 'Erst Behälter drucklos',
		C13: 'Filter- oder Ölerbehälter kann bersten',
		C14: 'Druckregler hält Druck',
		C15: 'Maschine kann sich bewegen',
		C16: 'Schlauch schlägt um sich',
		C17: 'Werkzeug kann anlaufen',
		C18: 'Blaspistole',
		C19: 'Ausblasen: Atemschutzmaske',
		C20: 'Nur entlüftet nachziehen',
		C21: 'Dichtmittel härtet über Nacht aus',
		C22: 'Spannungsführende Teile: keine Seife',
		C23: 'Heiße Oberfläche',
		C24: 'In der Höhe',
		C25: 'Enger Raum',
		C26: 'Erst Vorgehen abstimmen',
		C27: 'Kein Ammoniak an Messing',
		C28: 'Langsam unter Druck setzen',
		C29: 'Ablass nur drucklos öffnen',
		C30: 'Öliges Kondensat',
		C31: 'Zeitgesteuerter Ableiter kann öffnen',
		C32: 'Filter: Maschine abgestellt',
		C33: 'Öl: Maschine abgestellt',
		C34: 'Riemenschutz bleibt montiert',
		C35: 'Drehmoment des Herstellers'
	}
};
