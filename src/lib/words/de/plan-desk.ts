import type { Catalogue } from '../catalogue.ts';

export const planDesk: Catalogue['planDesk'] = {
	feeding: {
		about: 'Gespeist aus',
		ofSection: (section) => `Was ${section} speist`,
		notSaid: 'noch nicht angegeben',
		station: 'der Station',
		circle: 'Diese Abschnitte speisen einander im Kreis: Von der Station führt kein Weg hierher.',
		whatFor:
			'Damit sagt die Reparaturliste, was noch ohne Luft ist, solange ein Ventil zu ist. An einem Ring beide Seiten ankreuzen.',
		volume: 'Volumen hinter dem Ventil',
		draw: 'Weg der Luft zeigen',
		drawAgain: 'Weg neu zeigen',
		drawOf: (section) => `Den Weg der Luft nach ${section} zeigen`,
		removeArrow: 'Pfeil entfernen',
		removeArrowOf: (section) => `Den Pfeil von ${section} entfernen`,
		shown: 'Weg der Luft gezeigt',
		tapFrom: (section) => `Auf die Leitung tippen, aus der die Luft von ${section} kommt.`,
		tapTo: (section) => `Dorthin tippen, wo sie in ${section} eintritt.`
	}
};
