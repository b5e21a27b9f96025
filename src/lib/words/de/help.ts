import type { Catalogue } from '../catalogue.ts';

export const help: Catalogue['help'] = {
	guide: 'So arbeiten Sie mit Airtally',
	method: 'So werden die Zahlen berechnet',
	card: 'Taschenkarte zum Drucken',
	about: (place) => `Hilfe: ${place}`,
	contents: 'Inhalt',
	back: 'Zurück',
	print: 'Drucken',
	licence: 'Lizenz',
	notices: 'Enthaltene Werke Dritter',
	changes: 'Was sich geändert hat',

	cardTitle: 'Leckagen durch Abseifen finden: Taschenkarte',
	cardFor: 'Ein Blatt für die Tasche. Die App sagt mehr; wo beide abweichen, gilt die App.',
	take: {
		title: 'Mitnehmen',
		items: [
			'Sprühflasche, Seifenlösung (einige Tropfen Spülmittel in Wasser oder Lecksuchmittel), Lappen.',
			'Augen- und Gehörschutz, Lampe, Spiegel am Stiel, nummerierte Anhänger, dieses Gerät oder diese Karte.',
			'Den Plan, die Erlaubnis des Betriebs und jemanden, der weiß, was von selbst anlaufen kann.'
		]
	},
	soap: {
		title: 'So seifen Sie ab',
		items: [
			'Erst hinhören: Ein Zischen, das man hört, ist mehr wert als zehn, die man sucht.',
			'Die Leitung bleibt unter Betriebsdruck. Die ganze Verbindung benetzen, auch von unten, und zehn Sekunden warten.',
			'Gewinde, Kupplungen, Schlauchenden, Ventilspindeln, Ableiter, Filterregler, Filter und Kolbenstangen ansehen.',
			'Abwischen, Anhänger anbringen, im Plan markieren, mit dem Anhänger fotografieren.',
			'Ein Gang ohne Fund ist ein Ergebnis: als begangen und dicht festhalten.'
		]
	},
	judge: {
		title: 'So schätzen Sie ein',
		intro: (pressure) =>
			`Was der Film bei ${pressure} tut. Die Spannen sind unsere Startwerte und breit: Eine Blase mit Stoppuhr, ein gefüllter Beutel oder ein Durchflussmesser ist sicherer.`,
		picture: 'Der Film',
		what: 'Was er tut',
		hole: 'Wie ein rundes Loch von',
		flow: 'Luftverlust'
	},
	range: (low, high, unit) => `${low} bis ${high} ${unit}`,
	safe: {
		title: 'Sicher bleiben',
		items: [
			'Abseifen unter Druck; unter Druck nie lösen oder anziehen. Zum Beheben: absperren, mit Schloss sichern, entlüften, Drucklosigkeit am Manometer feststellen, erst dann lösen.',
			'Keine Seife in die Nähe spannungsführender Teile. Keine Hand in den Strahl: Luft unter der Haut ist ein Notfall. Vorsicht vor schlagenden Schläuchen.',
			'Nicht klettern, nicht über bewegte Teile greifen, keine Schutzabdeckung öffnen. Als nicht erreicht notieren.',
			'Undichten oder rostigen Behälter sofort außer Betrieb nehmen, befähigte Person rufen. Schraubenkompressoren: nur ihr Kundendienst.',
			'Örtliche Vorschriften, Freigaben des Standorts und Regeln für zugelassene Fachkräfte gehen vor.'
		]
	},
	notes: {
		title: 'Ohne Gerät',
		columns: ['Nr.', 'Wo', 'Bauteil', 'Druck', 'Der Film oder ein Messwert', 'Erreichbar?']
	}
};
