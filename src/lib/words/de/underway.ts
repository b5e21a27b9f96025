import type { Catalogue } from '../catalogue.ts';

export const underway: Catalogue['underway'] = {
	stop: 'Abbrechen'
};
