import type { Catalogue } from '../catalogue.ts';

export const tag: Catalogue['tag'] = {
	find: 'Nach Anhänger suchen',
	number: 'Nummer auf dem Anhänger',
	open: { leak: 'Leckage öffnen', job: 'Arbeit öffnen' },
	scan: 'Anhänger scannen',
	stop: 'Kamera aus',
	camera: 'Was die Kamera sieht',
	hold: 'Den Code auf dem Anhänger vor die Kamera halten.',
	empty: 'Bitte die Nummer auf dem Anhänger eingeben.',
	unknown:
		'Keine Leckage dieses Standorts hat diesen Anhänger. Er kann zu einem anderen Standort gehören oder zu einer gelöschten Leckage.',
	noCamera: 'Die Kamera ist hier nicht verfügbar. Bitte die Nummer auf dem Anhänger eingeben.'
};
