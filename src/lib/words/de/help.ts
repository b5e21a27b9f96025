import type { Catalogue } from '../catalogue.ts';

export const help: Catalogue['help'] = {
	guide: 'So arbeiten Sie mit Airtally',
	method: 'So wird gerechnet',
	card: 'Feldkarte zum Drucken',
	about: (place) => `Hilfe: ${place}`,
	contents: 'Inhalt',
	back: 'Zurück',
	print: 'Drucken',
	licence: 'Lizenz',
	notices: 'Fremde Arbeit darin',
	changes: 'Was sich geändert hat',

	cardTitle: 'Leckagen durch Abseifen finden: Feldkarte',
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
			'Die Leitung unter Betriebsdruck. Die ganze Verbindung benetzen, auch von unten, und zehn Sekunden warten.',
			'Gewinde, Kupplungen, Schlauchenden, Ventilspindeln, Ableiter, Reglerbecher, Filter und Kolbenstangen ansehen.',
			'Abwischen, Anhänger anbringen, im Plan markieren, mit dem Anhänger fotografieren.',
			'Ein Gang ohne Fund ist ein Ergebnis: als begangen und dicht festhalten.'
		]
	},
	judge: {
		title: 'So schätzen Sie ein',
		intro: (pressure) =>
			`Was der Film bei ${pressure} tut. Die Bereiche sind unsere Startwerte und weit: Eine Blase stoppen, einen Beutel füllen oder einen Messwert ablesen ist sicherer.`,
		picture: 'Der Film',
		what: 'Was er tut',
		hole: 'Wie ein rundes Loch von',
		flow: 'Luftverlust'
	},
	range: (low, high, unit) => `${low} bis ${high} ${unit}`,
	safe: {
		title: 'Sicher bleiben',
		items: [
			'Abgeseift wird unter Druck; gelöst oder angezogen nie. Zum Beheben: absperren, sichern, entlüften, Null am Manometer nachweisen, dann lösen.',
			'Keine Seife an spannungsführende Teile. Keine Hand in den Strahl: Luft unter der Haut ist ein Notfall. Vorsicht vor schlagenden Schläuchen.',
			'Nicht klettern, nicht über bewegte Teile greifen, keine Schutzabdeckung öffnen. Als nicht erreicht notieren.',
			'Ein undichter oder rostiger Behälter geht sofort außer Betrieb und zu einer befähigten Person. Schraubenkompressoren: ihr Kundendienst.',
			'Örtliche Vorschriften, Freigaben des Standorts und befähigte Personen gehen vor.'
		]
	},
	notes: {
		title: 'Ohne Gerät',
		columns: ['Nr.', 'Wo', 'Bauteil', 'Druck', 'Der Film oder ein Messwert', 'Erreichbar?']
	}
};
