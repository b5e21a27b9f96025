import type { Catalogue } from '../catalogue.ts';

/**
 * Safety text: each says what its English says, no less and no more. A test holds these sentences to
 * the English that they were written for; when that changes, the German is read again.
 */
export const cautions: Catalogue['cautions'] = {
	C1: 'Absperren, mit Schloss sichern, entlüften, Drucklosigkeit am Manometer feststellen, erst dann lösen. An einer Leitung unter Druck nie eine Verbindung lösen oder anziehen.',
	C2: 'Örtliche Vorschriften, das Freigabeverfahren dieses Standorts und die Regeln für zugelassene Fachkräfte gehen vor. Wo sie mehr verlangen, mehr tun. Im Zweifel die Arbeit einstellen und eine befähigte Person fragen.',
	C3: 'Einen undichten oder verrosteten Druckbehälter sofort außer Betrieb nehmen: absperren, entlüften, kennzeichnen und von einer befähigten Person prüfen lassen. Nie flicken, schweißen oder zustopfen.',
	C4: 'Ist es ein Sicherheitsventil: nie zustopfen, blind verschließen oder verstellen und nie ein Ventil zwischen Sicherheitsventil und Behälter setzen. Eine befähigte Person ersetzt es.',
	C5: 'Die Maschine geschlossen lassen und ihren Kundendienst rufen: Ein Schraubenkompressor enthält heißes Öl unter Druck.',
	C6: 'Zuerst das Absperrventil finden und dahinter ein Manometer, das null anzeigen kann. Kein Ventil, keine Arbeit.',
	C7: 'Druckluft bleibt hinter Rückschlagventilen und in Schläuchen, Behältern und Zylindern stehen und strömt durch ein undichtes Ventil langsam nach. Während der Arbeit das Manometer beobachten: Steigt der Druck, Arbeit sofort einstellen.',
	C8: 'Zusehen, wie das Manometer auf null fällt: Eines, das schon auf null stand, beweist nichts.',
	C9: 'Augenschutz tragen. Seitlich davon stehen, wenn eine Entlüftung oder Verbindung geöffnet wird.',
	C10: 'Netzspannung abschalten, mit Schloss gegen Wiedereinschalten sichern und Spannungsfreiheit feststellen, bevor eine Schutzeinrichtung oder Abdeckung abgenommen wird.',
	C11: 'Ein Kompressor läuft von selbst an, und seine Verbindungen sind heiß: abschalten, mit Schloss gegen Wiedereinschalten sichern, abkühlen lassen und beide Seiten seines Rückschlagventils entlüften.',
	C12: 'Zuerst Behälter oder Leitung drucklos machen: Kein Ablass oder Ableiter, kein Stopfen, Manometer oder Anschlussstück wird abgenommen, solange dahinter Druck ansteht.',
	C13: 'Einen Filter- oder Ölerbehälter nie unter Druck drehen. Lösemittel und manche Öle lassen Kunststoffbehälter reißen, und ein gerissener Behälter birst: den Metallschutzkorb wieder anbringen.',
	C14: 'Ein Druckregler kann am Ausgang Druck halten, auch wenn sein Eingang entlüftet ist: auf beiden Seiten Drucklosigkeit feststellen (Anzeige null).',
	C15: 'Maschinen bewegen sich, wenn die Luft wegfällt, und erneut, wenn sie zurückkommt: Maschine mit Schloss gegen Wiedereinschalten sichern, abstützen, was fallen kann, Hände heraushalten.',
	C16: 'Ein Schlauch, der sich unter Druck löst, schlägt um sich: Schlauch entlüften, bevor ein Ende gelöst wird, und mit Fangseil sichern, wo Ihre Vorschriften es verlangen.',
	C17: 'Ein Werkzeug kann anlaufen, wenn die Luft zurückkommt: zuerst den Einsatz herausnehmen (Bohrer, Bit, Blatt, Stecknuss).',
	C18: 'Eine Düse nie auf Menschen richten und nie Haut oder Kleidung damit reinigen. Eine Düse zum Reinigen bleibt unter 2 bar (30 psi), mit Späneschutz.',
	C19: 'Beim Ausblasen von Schmutz: Augenschutz und Atemschutzmaske tragen, niemand in Blasrichtung, eine Düse zum Reinigen unter 2 bar (30 psi).',
	C20: 'Die Verbindung nur bei entlüfteter Leitung und jeweils nur wenig nachziehen: Luft an, abseifen, wieder entlüften, dann das nächste kleine Stück. Gewinde reißen, wenn man sie mit Gewalt anzieht.',
	C21: 'Gewindedichtmittel härtet über Nacht bei abgesperrter Luft aus: das Ventil mit Schloss gesichert lassen und der nächsten Schicht Bescheid geben.',
	C22: 'Keine Seifenlösung, kein Lecksuchmittel und kein Wasser auf oder über spannungsführende Teile: erst spannungsfrei schalten, sonst nicht benetzen.',
	C23: 'Heiße Oberfläche: abkühlen lassen oder abschirmen und Handschuhe tragen, die für die Hitze geeignet sind.',
	C24: 'Arbeiten in der Höhe: nur die am Standort zugelassene Arbeitsbühne oder das zugelassene Gerüst benutzen, Werkzeug gegen Herabfallen anbinden, niemanden darunter lassen. Nie auf die Rohrleitungen klettern.',
	C25: 'Enger Raum: Niemand geht hinein ohne den Erlaubnisschein des Standorts für enge Räume, freigemessene Luft und einen Sicherungsposten draußen.',
	C26: 'Diese Arbeit ist nicht vollständig beschrieben: vor Beginn gemeinsam festlegen, wie sie sicher ausgeführt wird.',
	C27: 'Zum erneuten Abseifen Seifenlösung oder Lecksuchmittel nehmen. Kein ammoniakhaltiges Mittel an Messing: Es reißt davon.',
	C28: 'Die Leitung langsam wieder unter Druck setzen, wenn alle Abstand haben, dann jede reparierte Verbindung abseifen.',
	C29: 'Einen Ablass nur dann von Hand öffnen, wenn der Behälter drucklos ist und Sie selbst gesehen haben, wie sein Manometer auf null gefallen ist; seitlich davon stehen. Rost im Wasser: Der Behälter bleibt drucklos, bis eine befähigte Person ihn innen geprüft hat.',
	C30: 'Kondensat enthält Öl: auffangen und abgeben, wie es die Regeln des Standorts verlangen. Nichts davon darf in einen Bodenablauf gelangen. Handschuhe tragen.',
	C31: 'Ein zeitgesteuerter Ableiter kann jederzeit öffnen und kann an Netzspannung angeschlossen sein: das Ventil davor schließen, entlüften, seine Netzspannung abschalten, mit Schloss gegen Wiedereinschalten sichern und Spannungsfreiheit feststellen, bevor er geöffnet wird.',
	C32: 'Die Ansaugung nur bei abgestellter und mit Schloss gegen Wiedereinschalten gesicherter Maschine öffnen, und die Maschine nie ohne ihren Filter laufen lassen. Einen Filter nie in Benzin oder Lösemittel waschen: Die Dämpfe können sich im Verdichter entzünden.',
	C33: 'Den Ölstand bei abgestellter Maschine ablesen, wenn das Öl zur Ruhe gekommen ist. Keinen Stopfen und keine Verschlussschraube öffnen, solange die Maschine läuft, heiß ist oder unter Druck steht. Nur das Öl einfüllen, das der Hersteller nennt.',
	C34: 'Der Riemenschutz bleibt montiert, bis die Maschine mit Schloss gegen Wiedereinschalten gesichert und ihre Spannungsfreiheit festgestellt ist; auf die Einzugsstelle achten, wenn eine Riemenscheibe von Hand gedreht wird. Den Schutz wieder anbringen, bevor die Netzspannung eingeschaltet wird.',
	C35: 'Zylinderkopfschrauben nur an der kalten, entlüfteten und mit Schloss gegen Wiedereinschalten gesicherten Maschine, mit dem Drehmoment und in der Reihenfolge des Herstellers. Ohne die Angabe des Herstellers nicht anrühren.'
};
