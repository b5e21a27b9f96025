import type { Catalogue } from '../catalogue.ts';

export const proof: Catalogue['proof'] = {
	fates: {
		held: 'Behoben und dicht',
		claimed: 'Als behoben gemeldet, nicht abgeseift',
		still: 'Weiterhin undicht',
		'not-reached': 'Nicht erreicht, wie zuvor angesetzt',
		again: 'Wieder undicht',
		new: 'Neu'
	},
	routines: {
		site: 'Luft am Standort',
		pressure: 'Druck',
		hours: 'Stunden unter Druck',
		supply: 'Drucklufterzeugung',
		demand: 'Bedarf',
		tariff: 'Preise'
	},
	standings: {
		leaking: 'Undicht',
		claimed: 'Als behoben gemeldet',
		tight: 'Dicht, abgeseift',
		unknown: 'Noch nicht bekannt'
	},
	agreements: {
		agree: 'Beide stimmen innerhalb ihrer Spannen überein.',
		'soap-more':
			'Beim Begehen zeigt sich mehr Einsparung, als das System weniger verliert. Vielleicht sind neue Leckagen noch nicht gefunden, die Größen zu hoch geschätzt, oder bei der späteren Prüfung war etwas anderes offen.',
		'test-more':
			'Das System verliert um mehr weniger, als sich beim Begehen als Einsparung zeigt. Vielleicht wurden Leckagen behoben, die niemand markiert hatte, die Größen sind zu niedrig geschätzt, oder bei der früheren Prüfung war etwas offen.'
	},
	strengthsRule:
		'Drei verschieden starke Belege derselben Einsparung. Sie werden nie zusammengezählt.',
	bridge: {
		before: 'Vorher',
		mended: 'Behoben',
		again: 'Wieder',
		new: 'Neu',
		changed: 'Neu bemessen',
		after: 'Nachher'
	}
};
