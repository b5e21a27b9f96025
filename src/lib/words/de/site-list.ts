import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const siteList: Catalogue['siteList'] = {
	title: 'Airtally: Leckagen in Druckluftnetzen erfassen',
	tagline: 'Jedes Zischen hat seinen Preis.',
	about:
		'Gehen Sie mit der Sprühflasche durch das Werk, setzen Sie jede Leckage auf den Plan und sehen Sie, was sie im Jahr kostet, welche zuerst zu beheben ist und was vorher abzusperren ist. Alles bleibt auf diesem Gerät und funktioniert ohne Internet.',
	firstRound: 'Rundgang 1',
	demoName: 'Der Beispielstandort',
	notKept:
		'Ein Teil der App konnte nicht für die Arbeit ohne Internet abgelegt werden. Öffnen Sie diese Seite vor dem Rundgang noch einmal mit Internetverbindung.',
	onlyInMemory: (why) =>
		`${why} Sie können trotzdem an einer Erfassung arbeiten, doch sie ist weg, wenn diese Seite geschlossen oder neu geladen wird: Sichern Sie sie vorher in eine Datei. Was hier früher abgelegt wurde, bleibt unberührt.`,
	goToIt: 'Dorthin',
	removed: (site) => `${site} ist aus dieser Liste entfernt.`,
	undo: 'Rückgängig',
	drop: 'Erfassungsdatei an beliebiger Stelle ablegen',
	refusedFile: (file, why) => `${file}: ${why}`,

	guide: 'Anleitung und Taschenkarte',
	light: 'Hell, bei Sonne',
	dark: 'Dunkel, fürs Büro',

	newSite: 'Neuer Standort',
	openFile: 'Erfassungsdatei öffnen',
	openDemo: 'Beispielstandort öffnen',
	lookFirst: 'Erst einmal umsehen',
	lookFirstAbout:
		'Ein erfundenes Keramikwerk: sechsundvierzig Leckagen auf einem Plan, acht Abschnitte, drei Kompressoren.',
	haveFile: 'Sie haben eine Erfassungsdatei',
	haveFileAbout:
		'Von einem anderen Gerät oder gesichert, bevor dieser Browser geleert wurde. Alles kommt zurück.',
	own: 'Ein eigener Standort',
	ownAbout: 'Für den Anfang genügen Name und Währung; der Rest hat Zeit.',

	name: 'Name des Standorts',
	nameMissing: 'Bitte geben Sie dem Standort einen Namen.',
	currency: 'Währung',
	currencyMissing: 'Bitte wählen Sie die Währung, in der der Standort zahlt.',
	start: 'Standort anlegen',
	notNow: 'Jetzt nicht',

	leaks: (count) => many(count, { one: 'Leckage', other: 'Leckagen' }),
	standing: {
		leaking: (shown) => `${shown} undicht`,
		mended: (shown) => `${shown} behoben`,
		tight: (shown) => `${shown} dicht`
	},
	changed: (when) => `geändert ${when}`,
	inNoFile: 'Noch in keine Datei gesichert',
	changedSinceFile: (when) => `Geändert seit der Sicherung in eine Datei, ${when}`,
	inFile: (when) => `In eine Datei gesichert ${when}`,
	remove: 'Entfernen',
	removeSite: (site) => `${site} von diesem Gerät entfernen`,

	kept: 'Zugesagt: Dieser Browser löscht die Erfassungen nicht von sich aus.',
	notPromised:
		'Nicht zugesagt: Wird der Speicher knapp, kann dieser Browser die Erfassungen löschen. Sichern Sie jeden Standort in eine Datei.',
	homeFirst:
		'Legen Sie Airtally auf diesem Gerät vor der ersten Erfassung auf den Home-Bildschirm und öffnen Sie es von dort: Was ein Tab des Browsers aufbewahrt, sieht das Symbol nicht.',
	unsaid:
		'Dieser Browser sagt nicht, wie sicher er die Erfassungen aufbewahrt. Sichern Sie jeden Standort in eine Datei.',
	space: (used, most) => `${used} von ${most} belegt.`,
	nothingSent: 'Nichts wird übertragen. Eine Erfassungsdatei enthält alles eines Standorts.'
};
