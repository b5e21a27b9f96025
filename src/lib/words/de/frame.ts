import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const frame: Catalogue['frame'] = {
	language: 'Sprache',
	places: {
		name: 'Bereiche',
		setUp: 'Einrichten',
		walk: 'Begehen',
		weigh: 'Bewerten',
		mend: 'Beheben',
		prove: 'Belegen'
	},
	skip: 'Zum Inhalt',
	allSites: 'Alle Standorte:',
	save: { saved: 'Gesichert', saving: 'Wird gesichert …', 'not-saved': 'NICHT gesichert' },
	undo: 'Rückgängig',
	redo: 'Wiederholen',
	toFile: 'In Datei',
	toFileAbout: 'Erfassung in eine Datei sichern',
	filed: (file) => `Gespeichert als ${file}, bei den Downloads dieses Geräts.`,
	notWritten: 'Die letzte Änderung konnte nicht geschrieben werden.',
	inMemory: (why) => `${why} Was Sie erfassen, bleibt inzwischen im Arbeitsspeicher.`,
	saveNow: 'Jetzt alles in eine Datei sichern',
	updateReady: 'Eine neuere Version ist bereit. Was Sie erfasst haben, bleibt unverändert.',
	update: 'Neuere Version verwenden',
	opening: 'Erfassung wird geöffnet …',
	notOpened: 'Dieser Standort lässt sich nicht öffnen',
	unreadAbout:
		'Diese Version versteht nicht alles davon; darum zeigt sie nichts davon an und ändert nichts daran. Die Datei enthält alle Einträge und Bilder, wie sie hier liegen, für eine Version, die sie lesen kann.',
	saveUnread: 'Unverändert in eine Datei sichern',
	backToList: 'Zurück zur Liste der Standorte',

	clockBeforeChange: (now, changed) =>
		`Die Uhr dieses Geräts zeigt ${now}, die Erfassung wurde zuletzt am ${changed} geändert. Eines von beiden stimmt nicht. Verloren geht dadurch nichts, doch das Datum steht in Berichten: Stellen Sie die Uhr.`,
	clockCannotBe: (now) =>
		`Die Uhr dieses Geräts zeigt ${now}; das kann nicht sein. Verloren geht dadurch nichts, doch das Datum steht in Berichten: Stellen Sie die Uhr.`,
	leaveIt: 'So lassen',
	inNoFile: (count, shown) =>
		many(count, {
			one: 'Eine Änderung steht noch in keiner Erfassungsdatei. Die Datei ist die Sicherung, falls dieses Gerät verloren geht.',
			other: `${shown} Änderungen stehen noch in keiner Erfassungsdatei. Die Datei ist die Sicherung, falls dieses Gerät verloren geht.`
		}),
	saveToFile: 'In Datei sichern',
	later: 'Später',

	fault: 'Auf dieser Seite ist ein Fehler aufgetreten',
	faultTryAgain:
		'Was Sie erfasst haben, ist gesichert. Versuchen Sie es noch einmal; tritt der Fehler wieder auf, sichern Sie die Erfassung oben mit „In Datei“.',
	tryAgain: 'Noch einmal versuchen',
	faultLoadAgain:
		'Was Sie erfasst haben, ist gesichert. Laden Sie die Seite neu; tritt der Fehler wieder auf, öffnen Sie den Standort aus der Liste und sichern Sie ihn in eine Datei.',
	noPage: 'Diese Seite gibt es nicht',
	noPageAbout:
		'Vielleicht wurde die Adresse abgeschnitten. Ihre Erfassungen stehen in der Liste der Standorte.',
	toList: 'Zur Liste der Standorte',
	titles: { notHere: 'Nicht gefunden', fault: 'Fehler' }
};
