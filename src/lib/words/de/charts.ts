import type { Catalogue } from '../catalogue.ts';

export const charts: Catalogue['charts'] = {
	sameAsTable: 'Dasselbe als Tabelle',
	showMore: (count) => `${count} weitere zeigen`,
	day: 'Tag',
	from: 'Von',
	to: 'Bis',
	period: 'Zeitraum'
};
