import type { Catalogue } from '../catalogue.ts';

export const mending: Catalogue['mending'] = {
	skills: {
		fitter: 'Schlosser',
		'competent-person': 'befähigte Person',
		'service-engineer': 'Kundendienst'
	},
	withoutAirToo: (sections: string) =>
		`Solange das Ventil geschlossen ist, auch ohne Luft: ${sections}`,
	left: {
		'left-out': 'Auf Ihren Wunsch ausgelassen',
		'not-priced': 'Kosten noch nicht bekannt',
		'too-long': 'Zu lang für jedes Abschaltfenster',
		cure: 'Dichtmittel kann nicht aushärten: In keinem Abschaltfenster bleibt die Luft lange genug aus',
		'no-gain': 'Spart im Zeitraum weniger, als die Teile kosten',
		budget: 'Über dem Budget',
		minutes: 'Andere sparen in den vorhandenen Minuten mehr'
	},
	workOrderFields: {
		number: 'Nummer der Reparatur',
		title: 'Titel, höchstens 100 Zeichen',
		asset: 'Anlage: der Abschnitt',
		location: 'Ort',
		type: 'Art der Arbeit',
		priority: 'Priorität',
		status: 'Status',
		due: 'Fällig am, jjjj-mm-tt',
		cost: 'Kosten der Teile',
		currency: 'Währung',
		minutes: 'Geplante Minuten',
		saving: 'Kosten der Leckage im Jahr',
		tag: 'Anhänger an der Verbindung',
		valve: 'Zu schließendes Ventil',
		part: 'Bauteil',
		action: 'Maßnahme',
		site: 'Standort',
		photo: 'Foto: seine Datei im Paket und in der Erfassungsdatei',
		description: 'Beschreibung mit den Sicherheitshinweisen'
	},
	doubtCounted:
		'Die Unsicherheit ist eingerechnet: Jede Leckage zählt mit ihrem Mittelwert. Eine Schätzung kann weit zu niedrig sein, aber kaum weit zu hoch; darum liegt der Mittelwert über dem Wert, der unten in der Liste steht.',
	toPlan: (terms) => `Zum Plan: ${terms}`,
	workOrderHeadings: {
		number: 'Nummer',
		title: 'Titel',
		asset: 'Anlage',
		location: 'Ort',
		type: 'Art',
		priority: 'Priorität',
		status: 'Status',
		due: 'Fällig',
		cost: 'Kosten',
		photo: 'Foto',
		description: 'Beschreibung'
	},
	priorities: { first: 'Zuerst', high: 'Hoch', normal: 'Normal', low: 'Niedrig' },
	windowJobs: (jobs, parts) =>
		`${jobs} ${jobs === 1 ? 'Reparatur' : 'Reparaturen'}, Teile ${parts}`,
	spending: {
		within: (parts, budget, left) => `Teile ${parts} von ${budget} Budget: ${left} übrig`,
		beyond: (parts, budget, over) => `Teile ${parts}: ${over} mehr als das Budget von ${budget}`,
		open: (parts) => `Teile ${parts}; kein Budget genannt`
	}
};
