import type { Catalogue } from '../catalogue.ts';

export const refusalParts: Catalogue['refusalParts'] = {
	unknown: (code) =>
		`Das ließ sich nicht ausführen (${code}). Prüfen Sie die Eingabe und versuchen Sie es noch einmal.`,
	limits: {
		from: (value) => `ab ${value}`,
		above: (value) => `über ${value}`,
		to: (value) => `bis ${value}`,
		below: (value) => `unter ${value}`
	},
	perUnit: (unit, per) => `${unit} je ${per}`,
	absolute: 'Pa absolut',
	bytes: 'Bytes',
	megapixels: 'Megapixel'
};
