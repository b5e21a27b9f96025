import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const planDesk: Catalogue['planDesk'] = {
	back: 'Zurück zu „Einrichten“',
	length: 'Länge',
	setScale: 'Maßstab festlegen',
	finishOutline: 'Umriss schließen',
	cornerBack: 'Letzte Ecke zurücknehmen',
	offNewer: (count, tags) =>
		many(count, {
			one: `Außerhalb der neueren Zeichnung, darum an ihren Rand gesetzt: Anhänger ${tags}.`,
			other: `Außerhalb der neueren Zeichnung, darum an ihren Rand gesetzt: Anhänger ${tags}.`
		}),
	useNewer: 'Neuere Zeichnung verwenden',
	matchAgain: 'Noch einmal zuordnen',
	twoEnough:
		'Zwei Punkte genügen, wenn die Zeichnung nur gedreht oder in der Größe geändert wurde; drei halten besser.',
	showWhere: 'Zeigen, wohin alles kommt',
	giveUp: 'Abbrechen',

	tasks: {
		scaleEnds: 'Tippen Sie auf beide Enden einer Strecke, die Sie kennen.',
		howLong: 'Wie lang ist sie?',
		outline: (section) => `Tippen Sie um „${section}“ herum, Ecke für Ecke.`,
		outlineOn: (section) => `Tippen Sie weiter oder schließen Sie den Umriss von „${section}“.`,
		valve: (section) => `Tippen Sie dorthin, wo das Absperrventil von „${section}“ ist.`,
		preview: 'Hier wäre alles auf der neueren Zeichnung.',
		matchNewer: (place) =>
			`Punkt ${place}: Tippen Sie auf dieselbe Stelle in der neueren Zeichnung.`,
		matchOlder: (place) =>
			`Punkt ${place}: Tippen Sie in der älteren Zeichnung auf eine Stelle, die auch die neuere zeigt.`
	},

	facts: {
		heading: 'Maßstab',
		none: 'Noch kein Maßstab: Eine Strecke, deren Länge bekannt ist, ergibt Längen und Flächen.',
		size: (wide, high) => `Der Plan ist ${wide} m breit und ${high} m hoch.`,
		set: 'Maßstab an einer bekannten Strecke festlegen',
		setAgain: 'Maßstab neu festlegen',
		north: 'Norden, im Uhrzeigersinn von oben',
		limits: (low, high) => `${low} bis ${high}`,
		level: 'Gebäude oder Geschoss'
	},

	sections: {
		heading: 'Abschnitte auf diesem Plan',
		none: 'Noch kein Abschnitt. Fügen Sie Abschnitte unter „Einrichten“ hinzu und zeichnen Sie hier ein, wo sie liegen.',
		about: 'Ein neuer Pin gehört zu dem Abschnitt, in dem er liegt.',
		pinsWithout: (count, shown) =>
			many(count, {
				one: '1 Pin liegt darin und gehört zu keinem Abschnitt.',
				other: `${shown} Pins liegen darin und gehören zu keinem Abschnitt.`
			}),
		putOn: (count, section) =>
			many(count, { one: `Zu ${section} nehmen`, other: `Alle zu ${section} nehmen` }),
		drawn: 'eingezeichnet',
		drawnOf: (area) => `eingezeichnet, ${area} m²`,
		notDrawn: 'nicht eingezeichnet',
		valveShown: 'Ventil eingetragen',
		draw: 'Einzeichnen',
		drawAgain: 'Neu zeichnen',
		drawNamed: (section) => `Einzeichnen: ${section}`,
		drawAgainNamed: (section) => `Neu zeichnen: ${section}`,
		placeValve: 'Ventil eintragen',
		moveValve: 'Ventil versetzen',
		placeValveOf: (section) => `Ventil eintragen: ${section}`,
		moveValveOf: (section) => `Ventil versetzen: ${section}`,
		removeOutline: 'Umriss entfernen',
		removeOutlineOf: (section) => `Umriss entfernen: ${section}`
	},

	newer: {
		heading: 'Neuere Zeichnung',
		about:
			'Legen Sie eine neuere Zeichnung unter die Pins: zwei oder drei Punkte zuordnen, ansehen, wohin alles kommt, und sie übernehmen oder verwerfen.',
		choose: 'Neuere Zeichnung wählen',
		opening: (file) => `${file} wird geöffnet`
	},

	out: {
		heading: 'Für ein anderes Programm',
		about:
			'Leckagen, Ventile, Abschnitte und was begangen wurde, in Metern auf diesem Plan. Das sind keine geografischen Koordinaten: Eine Landkarte würde alles an der falschen Stelle zeigen.',
		save: 'Als GeoJSON sichern (Meter auf dem Plan)'
	},

	intake: {
		whichPages: 'Welche Seiten?',
		planOf: (place, count) => `Plan ${place} von ${count}`,
		cut: 'Plan zuschneiden',
		cancel: 'Abbrechen',
		drawing: 'Die Seite wird gezeichnet …',
		boxHint:
			'Verschieben Sie die Ecken, um Ränder wegzulassen: eine ziehen, oder erst auf sie und dann auf ihren Platz tippen.',
		cornersHint: 'Legen Sie jede Ecke auf die passende Ecke des Blatts im Foto.',
		turn: 'Um 90° drehen',
		cornersDo: 'Was die Ecken tun',
		box: 'Rechteck ausschneiden',
		straighten: 'Foto entzerren',
		name: 'Name des Plans',
		plan: 'Plan',
		pageOf: (file, page) => `${file}, Seite ${page}`,
		making: 'Der Plan wird erstellt',
		cutting: 'Er wird für vergrößerte Ansichten zerlegt',
		useDrawing: 'Diese Zeichnung verwenden',
		take: 'Diesen Plan übernehmen',
		choosePage: 'Seite wählen',
		choosePages: 'Wählen Sie die Seiten, die Pläne sind',
		page: (place) => `Seite ${place}`,
		goOn: 'Weiter',
		goOnWith: (count) =>
			many(count, { one: `Weiter mit ${count} Seite`, other: `Weiter mit ${count} Seiten` }),
		corners: ['oben links', 'oben rechts', 'unten rechts', 'unten links'],
		cornerAt: (corner, left, top) => `Ecke ${corner}, ${left} % von links, ${top} % von oben`
	},

	feeding: {
		about: 'Gespeist aus',
		ofSection: (section) => `Was ${section} speist`,
		notSaid: 'noch nicht angegeben',
		station: 'der Station',
		circle: 'Diese Abschnitte speisen einander im Kreis: Von der Station führt kein Weg hierher.',
		whatFor:
			'Damit sagt die Reparaturliste, was noch ohne Luft ist, solange ein Ventil geschlossen ist. An einem Ring beide Seiten ankreuzen.',
		volume: 'Volumen hinter dem Ventil',
		draw: 'Weg der Luft einzeichnen',
		drawAgain: 'Weg neu einzeichnen',
		drawOf: (section) => `Weg der Luft nach ${section} einzeichnen`,
		drawAgainOf: (section) => `Weg nach ${section} neu einzeichnen`,
		removeArrow: 'Pfeil entfernen',
		removeArrowOf: (section) => `Pfeil entfernen: ${section}`,
		shown: 'Weg der Luft eingezeichnet',
		tapFrom: (section) => `Auf die Leitung tippen, aus der die Luft von ${section} kommt.`,
		tapTo: (section) => `Dorthin tippen, wo sie in ${section} eintritt.`
	}
};
