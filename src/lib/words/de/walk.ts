import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const walk: Catalogue['walk'] = {
	heading: 'Begehen',
	pageTitle: (site) => `Begehen – ${site} – Airtally`,
	leaks: (count, shown) =>
		count === 0
			? 'Noch keine Leckage markiert'
			: many(count, { one: '1 Leckage', other: `${shown} Leckagen` }),
	leak: 'Leckage',
	leakTitle: (tag) => `Leckage ${tag}`,
	pin: (tag, state, part, place) =>
		`Leckage ${tag}, ${state}, ${part}${place === '' ? '' : `, ${place}`}`,
	wastes: (flow, yearly) => `${flow} freie Luft, ${yearly} im Jahr`,
	wastesFlow: (flow) => `${flow} freie Luft`,
	placed: (plan, left, top) => `${plan}: ${left} von links, ${top} von oben`,
	pinned: (tag) => `Leckage ${tag} ist markiert.`,
	pinnedToSize: (tag) => `Leckage ${tag} ist markiert, ihre Größe fehlt noch.`,
	areaMarked: 'Die Fläche ist als begangen und dicht markiert.',

	plan: {
		missing: 'Das Bild dieses Plans fehlt auf diesem Gerät. Die Liste funktioniert trotzdem.',
		none: 'Es gibt noch keinen Plan.',
		add: 'Fügen Sie unter „Einrichten“ einen Plan hinzu',
		addOr: (add) => `${add} oder führen Sie die Leckagen ohne Plan auf.`
	},

	start: {
		eachTapPins:
			'Jedes Tippen auf den Plan markiert sofort eine Leckage; bemessen wird sie später.',
		tapNext: 'Tippen Sie auf dem Plan dorthin, wo die nächste ist.',
		pinsNow: 'Erst markieren, später bemessen',
		walkedTight: 'Begangen und dicht',
		addWithout: 'Leckage ohne Plan hinzufügen',
		room: 'Kompressorraum',
		plan: 'Plan'
	},

	list: {
		find: 'Leckage suchen',
		findBy: 'Anhänger, Bauteil oder Ort',
		toSize: 'Größe fehlt',
		toCheck: 'Zu prüfen',
		none: 'Keine Leckage passt dazu.',
		more: (count) => `${count} weitere zeigen`,
		latest: 'Neueste Leckagen',
		toSizeShort: 'Größe fehlt'
	},

	coverage: {
		title: 'Begangen und dicht',
		done: 'Fertig',
		oneCorner: 'Tippen Sie auf eine Ecke der Fläche, die Sie begangen haben.',
		cornerAcross: 'Tippen Sie jetzt auf die Ecke gegenüber.',
		about:
			'Auch dass irgendwo niemand nachgesehen hat, ist ein Ergebnis: Markieren Sie nur, was Sie begangen und dicht gefunden haben.',
		whole: 'Ganzen Plan markieren',
		area: (place) => `Fläche ${place}`,
		butFor: (count, tags) =>
			many(count, {
				one: `Leckage ${tags} ist darin markiert. Sie bleibt: Der Rest der Fläche gilt als dicht.`,
				other: `Die Leckagen ${tags} sind darin markiert. Sie bleiben: Der Rest der Fläche gilt als dicht.`
			}),
		removeArea: (place) => `Fläche ${place} entfernen`,
		remove: 'Entfernen'
	},

	capture: {
		notOnPlan: 'Auf keinem Plan',
		leaveIt: 'Verwerfen',
		restored:
			'Diese Leckage war noch nicht markiert, als die Seite geschlossen wurde; was Sie eingetragen hatten, ist hier. Wenn Sie gerade ein Foto aufnehmen wollten, nehmen Sie es noch einmal auf.',
		notKept:
			'Dieser Browser kann eine Leckage erst aufbewahren, wenn sie markiert ist. Markieren Sie sie zuerst, dann nehmen Sie das Foto auf.',
		sameAgain: (tag) => `Noch einmal wie Leckage ${tag}`,
		carried: (tag, { sectionDrawn, elsewhere }) => {
			const drawn = sectionDrawn ? '; der Abschnitt ist der hier eingezeichnete' : '';
			if (elsewhere) return `Das Bauteil ist das von Leckage ${tag}${drawn}.`;
			return sectionDrawn
				? `Bauteil und Druck sind die von Leckage ${tag}${drawn}.`
				: `Bauteil, Abschnitt und Druck sind die von Leckage ${tag}.`;
		},
		clearCarried: 'Leeren',
		pin: (tag) => `Leckage ${tag} markieren`,
		pinUnsized: (tag) => `Leckage ${tag} markieren, später bemessen`
	},

	basics: {
		part: 'Bauteil',
		section: 'Abschnitt',
		sectionUnknown: 'Noch nicht bekannt',
		sectionNew: 'Ein neuer …',
		sectionName: 'Name des neuen Abschnitts',
		sectionNameHint:
			'Was ein Absperrventil absperrt. Ventil, Druck und Stunden werden unter „Einrichten“ eingetragen.',
		pressure: 'Abgelesener Druck',
		asOn: (tag) => `Wie an Leckage ${tag}.`,
		drawnHere: 'Wie im Plan eingezeichnet.',
		noPressure: 'Für diesen Abschnitt ist kein Druck eingetragen.',
		fromSupply: (pressure) => `Leer: ${pressure} aus der Drucklufterzeugung.`,
		fromSection: (pressure) => `Leer: ${pressure} aus dem Abschnitt.`
	},

	form: {
		allLeaks: 'Alle Leckagen',
		inThisRound: 'In diesem Rundgang',
		answers: { tight: 'Dicht', leaking: 'Undicht', 'not-reached': 'Nicht erreicht' },
		place: 'Ort',
		placeHint: 'So, dass auch Fremde sie finden: Maschine, Seite, Höhe.',
		note: 'Notiz',
		action: 'Was zu tun ist',
		usualAction: 'Das Übliche bei diesem Bauteil, bis Sie etwas anderes wählen.',
		atThisPlace: 'An dieser Stelle',
		partOfTime: 'Nur zeitweise offen',
		openFor: 'Offen für',
		inEvery: 'In jeweils',
		tagAndPlace: 'Anhänger und Stelle auf dem Plan',
		tag: 'Anhängernummer',
		fromLeft: 'Von links',
		fromTop: 'Von oben',
		remove: (tag) => `Leckage ${tag} löschen`
	},

	movePin: {
		notPlaced: 'Noch auf keinem Plan.',
		putOn: 'Setzen auf',
		tapNew:
			'Tippen Sie auf die neue Stelle im Plan. Mit Tasten: zum Plan gehen, die Stelle mit den Pfeiltasten unter das Kreuz bringen, Eingabetaste drücken.',
		tapOrDrag:
			'Tippen Sie auf die neue Stelle im Plan oder ziehen Sie den Pin dorthin. Mit Tasten: zum Plan gehen, die Stelle mit den Pfeiltasten unter das Kreuz bringen, Eingabetaste drücken.',
		leave: 'Dort lassen',
		move: 'Pin versetzen',
		put: 'Auf den Plan setzen'
	},

	evidence: {
		sizedBy: 'Bemessen nach',
		whatSoapDoes: 'Was macht der Schaum?',
		numbers: {
			'soap-response': {},
			hole: { diameterMm: 'Durchmesser' },
			slit: { lengthMm: 'Länge', widthMm: 'Breite' },
			'thread-gap': { threadDiameterMm: 'Durchmesser des Gewindes', gapMm: 'Spalt' },
			'bubble-growth': { bubbleDiameterMm: 'Blasendurchmesser', seconds: 'Zeit' },
			bag: { volumeL: 'Volumen des Beutels', seconds: 'Füllzeit' },
			meter: { flowLPerS: 'Abgelesener Volumenstrom' },
			catalogue: { cDm3PerSBar: 'Pneumatischer Leitwert C', b: 'Kritisches Druckverhältnis b' }
		},
		edge: 'Kante',
		meterAt: 'Die Liter des Messgeräts gelten bei',
		references: {
			'iso-1217': 'ISO 1217: 20 °C, 100 kPa, trocken',
			anr: 'ANR (ISO 8778): 20 °C, 100 kPa, 65 % r. F.',
			normal: 'Normzustand: 0 °C, 101,325 kPa',
			site: 'Wie die Luft am Standort ist'
		},
		soapThere: 'Was der Schaum dort machte',
		soapThereHint:
			'Ab drei solchen Leckagen lässt sich anpassen, was der Schaum an diesem Standort besagt: siehe „Bewerten“.',
		notLooked: 'Nicht angesehen'
	}
};
