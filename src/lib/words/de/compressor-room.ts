import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const compressorRoom: Catalogue['compressorRoom'] = {
	points: {
		'condensate-drain': {
			name: 'Kondensatablass',
			look: 'Bei drucklosem Behälter den Ablass öffnen und auffangen, was herausläuft. Wasser ist in Ordnung; Rost oder gar kein Wasser ist ein Befund.'
		},
		'timed-drain': {
			name: 'Zeitgesteuerter Ableiter',
			look: 'Warten, bis er öffnet und wieder schließt. Bleibt er offen, ist er ein offenes Rohr; öffnet er nie, füllt sich der Behälter mit Wasser.'
		},
		'intake-filter': {
			name: 'Ansaugfilter',
			look: 'Maschine abgestellt und gegen Wiedereinschalten gesichert: Ist er sauber und weich, schmutzig oder hart von Farbe?'
		},
		'oil-level': {
			name: 'Ölstand',
			look: 'Maschine abgestellt, Öl zur Ruhe gekommen: Steht es zwischen den Marken?'
		},
		'belt-tension': {
			name: 'Riemen',
			look: 'Maschine gegen Wiedereinschalten gesichert: den Riemen in der Mitte zwischen den Scheiben eindrücken. Bei kleinen Maschinen mit Riemenantrieb sind etwa 10 mm üblich; die Angabe des Herstellers geht vor.'
		},
		'head-bolts': {
			name: 'Zylinderkopfschrauben',
			look: 'Maschine kalt, entlüftet und gegen Wiedereinschalten gesichert: Haben sie das Drehmoment des Herstellers?'
		},
		'pump-joints': {
			name: 'Verbindungen am Verdichter',
			look: 'Die Verbindungen, Rohre und Ventile am Verdichter selbst ringsum abseifen, von einer Stelle aus, an der sich nichts dreht und nichts heiß ist.'
		}
	},
	findings: {
		'drain-rust': {
			found: 'Rost im Wasser',
			action: 'Außer Betrieb bis zur inneren Prüfung'
		},
		'drain-no-water': {
			found: 'Es kommt kein Wasser',
			action: 'Ablass reinigen oder ersetzen'
		},
		'drain-stuck-open': {
			found: 'Bleibt offen',
			action: 'Zeitgesteuerten Ableiter instand setzen oder ersetzen'
		},
		'drain-stuck-shut': {
			found: 'Öffnet nie',
			action: 'Zeitgesteuerten Ableiter instand setzen oder ersetzen'
		},
		'filter-dirty': { found: 'Schmutzig', action: 'Filter wechseln' },
		'filter-hard': { found: 'Hart von Farbe', action: 'Filter wechseln; Farbnebel fernhalten' },
		'oil-low': { found: 'Unter den Marken', action: 'Nachfüllen; klären, wo das Öl bleibt' },
		'oil-high': {
			found: 'Über den Marken',
			action: 'Bis zu den Marken ablassen; Ursache suchen'
		},
		'belt-slack': { found: 'Zu locker', action: 'Nach Herstellerangabe spannen' },
		'belt-tight': { found: 'Zu straff', action: 'Nach Herstellerangabe lockern' },
		'belt-worn': { found: 'Verschlissen', action: 'Riemen wechseln' },
		'bolts-loose': {
			found: 'Drehmoment zu klein',
			action: 'Mit Drehmoment und Reihenfolge des Herstellers anziehen'
		},
		'joint-leaks': {
			found: 'Eine Verbindung ist undicht',
			action: 'Entlüftet jeweils nur wenig nachziehen; sonst neue Dichtung'
		}
	},
	somethingElse: 'Etwas anderes',
	serviceEngineer: 'Kundendienst rufen',
	agree: 'Vorgehen abstimmen',
	madeSafe:
		'Maschine abschalten, mit Schloss gegen Wiedereinschalten sichern, abkühlen lassen, auf null entlüften',
	rotaryScrews: 'Schraubenkompressoren: dem Kundendienst überlassen',

	pageTitle: (site) => `Kompressorraum – ${site} – Airtally`,
	heading: 'Kompressorraum',
	back: 'Zurück zum Plan',
	soFar: (looked, shown, found) =>
		many(looked, {
			one: `1 Punkt angesehen, Befunde: ${found}`,
			other: `${shown} Punkte angesehen, Befunde: ${found}`
		}),
	beforeTouching: 'Bevor Sie etwas anfassen',
	machine: 'Maschine oder Behälter',
	firstMachine: 'Erste Maschine oder ersten Behälter benennen',
	anotherMachine: 'Weitere Maschine oder weiterer Behälter',
	add: 'Hinzufügen',
	isRotaryScrew: 'Dies ist ein Schraubenkompressor',
	leaveClosed: 'Lassen Sie die Maschine geschlossen.',
	leaveClosedWhy: 'Filter, Öl, Riemen und Verbindungen sind Sache des Kundendienstes.',
	whatFound: (point) => `${point}: Was haben Sie gefunden?`,
	inOrder: 'In Ordnung',
	notDone: 'Nicht geprüft',
	onList: 'Auf der Reparaturliste:',
	note: 'Notiz',
	putRight: 'In Ordnung gebracht'
};
