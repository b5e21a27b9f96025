import type { Catalogue } from '../catalogue.ts';

export const planMap: Catalogue['planMap'] = {
	picture: (plan) => `Plan: ${plan}`,
	keys: (plan) =>
		`Plan ${plan}. Pfeiltasten verschieben den Plan, Plus und Minus vergrößern und verkleinern, die Eingabetaste nimmt die Stelle unter dem Kreuz. Die Liste der Leckagen kann alles, was der Plan kann.`,
	zoomIn: 'Vergrößern',
	zoomOut: 'Verkleinern',
	north: 'Nordpfeil'
};
