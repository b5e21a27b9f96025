import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const files: Catalogue['files'] = {
	isHere: (site) => `${site} ist jetzt auf diesem Gerät.`,
	nothingNew: (site) => `${site} war schon hier, und die Datei enthielt nichts Neues.`,
	taken: (count, shown, site) =>
		many(count, {
			one: `Eine Änderung wurde in ${site} übernommen; hier wurde nichts überschrieben.`,
			other: `${shown} Änderungen wurden in ${site} übernommen; hier wurde nichts überschrieben.`
		}),
	moreClashes: (shown) => `${shown} weitere wurden auf beiden Seiten geändert.`,
	tagsTwice: (tags) =>
		`Doppelt verwendete Anhängernummern: ${tags}. Unter „Begehen“ wird für jede eine freie Nummer angeboten.`,
	conflicts: (count, shown) =>
		many(count, {
			one: 'Eine Änderung passte nicht mehr: Sie steht am Ende von „Einrichten“.',
			other: `${shown} Änderungen passten nicht mehr: Sie stehen am Ende von „Einrichten“.`
		}),
	unreadable: (count, shown) =>
		many(count, {
			one: 'Ein Eintrag war nicht lesbar: beiseitegelegt, nicht verloren; er steht am Ende von „Einrichten“.',
			other: `${shown} Einträge waren nicht lesbar: beiseitegelegt, nicht verloren; sie stehen am Ende von „Einrichten“.`
		}),
	pictures: (count, shown) =>
		many(count, {
			one: 'Ein Bild fehlt in der Datei oder ist darin beschädigt.',
			other: `${shown} Bilder fehlen in der Datei oder sind darin beschädigt.`
		}),

	nouns: {
		leak: 'Leckage',
		plan: 'Plan',
		section: 'Abschnitt',
		round: 'Rundgang',
		'system-test': 'Systemprüfung',
		area: 'Fläche',
		'room-check': 'Prüfpunkt im Kompressorraum',
		window: 'Abschaltfenster',
		adjustment: 'Anpassung',
		photo: 'Foto',
		site: 'Standort',
		supply: 'Drucklufterzeugung',
		prices: 'Preise',
		'starting-values': 'Startwerte',
		'mend-plan': 'Reparaturplan'
	},
	fields: {
		pin: 'Lage des Pins',
		tag: 'Anhängernummer',
		sectionId: 'Abschnitt',
		planId: 'Plan',
		sighting: 'was zu sehen war',
		mending: 'was getan wurde'
	},
	field: (name) => `Feld „${name}“`,
	thing: (noun, name) => (name === '' ? noun : `${noun} ${name}`),
	staysRemoved: {
		file: (thing) =>
			`${thing}: in der Datei entfernt, auf diesem Gerät geändert. Es bleibt entfernt.`,
		here: (thing) =>
			`${thing}: auf diesem Gerät entfernt, in der Datei geändert. Es bleibt entfernt.`
	},
	staysInUse: {
		file: (thing) =>
			`${thing}: in der Datei zurückgeholt, auf diesem Gerät entfernt. Es bleibt bestehen.`,
		here: (thing) =>
			`${thing}: auf diesem Gerät zurückgeholt, in der Datei entfernt. Es bleibt bestehen.`
	},
	staysFrom: {
		file: (thing, what, stays, goes) =>
			`${thing}, ${what}: auf beiden Seiten geändert. Es gilt ${stays} aus der Datei, nicht ${goes} von diesem Gerät.`,
		here: (thing, what, stays, goes) =>
			`${thing}, ${what}: auf beiden Seiten geändert. Es gilt ${stays} von diesem Gerät, nicht ${goes} aus der Datei.`
	},
	oneValue: 'der eine Wert',
	another: 'der andere',
	theOne: 'der Wert',
	nothing: '„nichts“',
	yes: '„ja“',
	no: '„nein“',
	quoted: (text) => `„${text}“`,

	pinned: (count, shown) =>
		many(count, { one: '1 Leckage markiert', other: `${shown} Leckagen markiert` }),
	notMarked: (plan, leaks) => `${plan}: kein Teil als begangen und dicht markiert; ${leaks}.`,
	marked: (plan, share, areas, leaks) =>
		`${plan}: ${share} als begangen und dicht markiert${areas === '' ? '' : ` (${areas})`}; ${leaks}.`,
	underOne: 'unter 1 %',
	about: (share) => `etwa ${share}`,
	elsewhere: 'Für den Rest hat niemand angegeben, dass er begangen wurde.'
};
