import type { Catalogue } from '../catalogue.ts';

export const photos: Catalogue['photos'] = {
	title: 'Fotos',
	named: (place, caption) => `Foto ${place}: ${caption}`,
	ofLeak: (place) => `Foto ${place} der Leckage`,
	ofMending: (place) => `Foto ${place} der Reparatur`,
	missing: (place) => `Foto ${place} fehlt auf diesem Gerät`,
	caption: 'Bildunterschrift',
	shows: 'Es zeigt',
	leak: 'Die Leckage',
	mending: 'Die Reparatur',
	remove: 'Dieses Foto entfernen',
	take: 'Foto aufnehmen',
	fromFiles: 'Fotos aus Dateien',
	taking: 'Das Foto wird übernommen …'
};
