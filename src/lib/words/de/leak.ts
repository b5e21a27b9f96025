import type { Catalogue } from '../catalogue.ts';

export const leak: Catalogue['leak'] = {
	parts: {
		'threaded-joint': 'Gewindeverbindung',
		'push-in-fitting': 'Steckverschraubung',
		'quick-coupling': 'Schnellkupplung',
		hose: 'Schlauch',
		'hose-clip': 'Schlauchschelle',
		'pipe-joint': 'Rohrverbindung',
		flange: 'Flansch',
		valve: 'Ventil',
		regulator: 'Druckregler',
		'filter-bowl': 'Filterbehälter',
		'lubricator-bowl': 'Ölerbehälter',
		gauge: 'Manometer',
		drain: 'Kondensatableiter',
		cylinder: 'Zylinder',
		'blow-gun': 'Blaspistole',
		tool: 'Werkzeug',
		'pump-joint': 'Verbindung am Verdichter',
		'pressure-vessel': 'Druckbehälter',
		other: 'Etwas anderes'
	},
	hazards: {
		'at-height': 'In der Höhe',
		'hot-surface': 'Heiße Oberfläche',
		'live-electrics': 'Spannungsführende Teile',
		'moving-machinery': 'Bewegte Maschinenteile',
		'confined-space': 'Enger Raum',
		'rotary-screw': 'Schraubenkompressor'
	},
	actions: {
		'nip-up': 'Nachziehen',
		'remake-thread': 'Gewinde neu eindichten',
		'replace-fitting': 'Verschraubung ersetzen',
		'replace-coupling': 'Kupplung ersetzen',
		'replace-hose': 'Schlauch ersetzen',
		'replace-clip': 'Schelle ersetzen',
		'replace-seal': 'Dichtung ersetzen',
		'replace-gasket': 'Flachdichtung ersetzen',
		'replace-valve': 'Ventil ersetzen',
		'replace-bowl': 'Filter-/Ölerbehälter ersetzen',
		'replace-gauge': 'Manometer ersetzen',
		'mend-drain': 'Kondensatableiter instand setzen',
		'close-off': 'Abtrennen und verschließen',
		'service-engineer': 'Kundendienst rufen',
		'out-of-service': 'Außer Betrieb nehmen',
		other: 'Vorgehen abstimmen'
	},
	states: {
		leaking: 'Undicht',
		mended: 'Behoben, noch abzuseifen',
		tight: 'Dicht',
		'not-reached': 'In diesem Rundgang nicht erreicht',
		unseen: 'In diesem Rundgang nicht angesehen'
	},
	evidence: {
		'soap-response': 'Verhalten des Schaums',
		hole: 'Rundes Loch',
		slit: 'Schlitz oder Riss',
		'thread-gap': 'Spalt am Gewinde',
		'bubble-growth': 'Eine Blase, mit Stoppuhr',
		bag: 'Beutel gefüllt, mit Stoppuhr',
		meter: 'Anzeige eines Durchflussmessers',
		catalogue: 'Offenes Bauteil laut Katalog (ISO 6358)'
	},
	soap: {
		'now-and-then': 'Hin und wieder eine Blase',
		'bubble-after-bubble': 'Blase um Blase',
		'foam-cushion': 'Ein Polster aus feinem Schaum',
		'foam-spits': 'Schaum, der spritzt',
		'film-tears': 'Film reißt, ein Loch bleibt',
		'film-blown-away': 'Film wird weggeblasen'
	},
	soapLooks: {
		'now-and-then': 'hin und wieder eine Blase',
		'bubble-after-bubble': 'eine Blase nach der anderen, jede behält ihre Form',
		'foam-cushion': 'ein Polster aus feinem Schaum baut sich auf',
		'foam-spits': 'Schaum baut sich auf und platzt, Tropfen fliegen',
		'film-tears': 'der Film reißt sofort auf, und im Schaum bleibt ein Loch',
		'film-blown-away': 'der Film wird weggeblasen, nichts hält sich auf der Verbindung'
	},
	edges: {
		unknown: 'Nicht bekannt',
		sharp: 'Scharfe Kante',
		rounded: 'Gerundete Kante'
	}
};
