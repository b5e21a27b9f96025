import type { Catalogue } from '../catalogue.ts';

export const helpLink: Catalogue['helpLink'] = {
	about: (place) => `Hilfe zu „${place}“`
};
