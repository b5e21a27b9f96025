import type { Catalogue } from '../catalogue.ts';

export const method: Catalogue['method'] = {
	title: 'So werden die Zahlen berechnet',
	back: 'Zurück',
	contents: 'Inhalt',
	inEnglish:
		'Der Text der Regeln liegt nur auf Englisch vor: Formeln, Quellen und Nummern gelten in jeder Sprache.'
};
