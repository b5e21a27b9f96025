import type { Catalogue } from '../catalogue.ts';

/**
 * Safety text: each says what its English says, no less and no more. A test holds these sentences to
 * the English that they were written for; when that changes, the German is read again.
 */
export const cautions: Catalogue['cautions'] = {
	C1: 'Absperren, mit Schloss sichern, entlüften, am Manometer null nachweisen, erst dann lösen. Nie eine Verbindung an einer unter Druck stehenden Leitung lösen oder anziehen.',
	C2: 'Örtliche Vorschriften, das Freigabeverfahren dieses Standorts und die dafür zugelassene Fachpraxis gehen vor. Wo sie mehr verlangen, mehr tun. Im Zweifel anhalten und eine befähigte Person fragen.',
	C3: 'Ein undichter oder verrosteter Druckbehälter geht sofort außer Betrieb: absperren, entlüften, kennzeichnen und von einer befähigten Person prüfen lassen. Nie flicken, schweißen oder zustopfen.',
	C4: 'Ist es ein Sicherheitsventil: nie verschließen, blindsetzen oder verstellen und nie ein Ventil zwischen das Sicherheitsventil und seinen Behälter setzen. Eine befähigte Person ersetzt es.',
	C5: 'Die Maschine geschlossen lassen und ihren Kundendienst rufen: Ein Schraubenkompressor enthält heißes Öl unter Druck.',
	C6: 'Zuerst das Absperrventil finden und dahinter ein Manometer, das null anzeigen kann. Kein Ventil, keine Arbeit.',
	C7: 'Luft bleibt hinter Rückschlagventilen und in Schläuchen, Behältern und Zylindern und schleicht durch ein undichtes Ventil zurück. Bei der Arbeit das Manometer beobachten: Steigt es, anhalten.',
	C8: 'Das Manometer auf null fallen sehen: Eines, das schon auf null stand, beweist nichts.',
	C9: 'Augenschutz tragen. Seitlich stehen, wenn eine Entlüftung oder Verbindung öffnet.',
	C10: 'Netzspannung abschalten, gegen Wiedereinschalten mit Schloss sichern und Spannungsfreiheit prüfen, bevor eine Schutzvorrichtung oder Abdeckung abgenommen wird.',
	C11: 'Ein Kompressor läuft von selbst an, und seine Verbindungen sind heiß: gegen Wiedereinschalten mit Schloss sichern, abkühlen lassen und beide Seiten seines Rückschlagventils entlüften.',
	C12: 'Zuerst Behälter oder Leitung drucklos machen: Kein Ableiter, Stopfen, Manometer oder Anschlussstück wird abgenommen, solange Druck dahinter ansteht.',
	C13: 'Einen Filter- oder Ölerbehälter nie unter Druck drehen. Lösemittel und manche Öle lassen Kunststoffbehälter reißen, und ein gerissener Behälter birst: den Metallschutz wieder anbringen.',
	C14: 'Ein Druckregler kann am Ausgang Druck halten, nachdem sein Eingang entlüftet ist: auf beiden Seiten null nachweisen.',
	C15: 'Maschinen bewegen sich, wenn die Luft wegfällt, und wieder, wenn sie zurückkommt: die Maschine mit Schloss sichern, abstützen, was fallen kann, Hände heraushalten.',
	C16: 'Ein Schlauch, der sich unter Druck löst, schlägt um sich: entlüften, bevor ein Ende gelöst wird, und mit Fangseil sichern, wo Ihre Vorschriften es verlangen.',
	C17: 'Ein Werkzeug kann anlaufen, wenn seine Luft zurückkommt: zuerst Bit, Blatt oder Steckschlüsseleinsatz herausnehmen.',
	C18: 'Eine Düse nie auf Menschen richten und nie Haut oder Kleidung damit reinigen. Eine Reinigungsdüse bleibt unter 30 psi (2 bar), mit Späneschutz.',
	C19: 'Wenn Sie Schmutz ausblasen: Augenschutz und Maske, niemand in Blasrichtung, eine Reinigungsdüse unter 30 psi (2 bar).',
	C20: 'Die Verbindung bei entlüfteter Leitung jeweils nur wenig nachziehen: Luft auf, abseifen, wieder entlüften, dann das nächste Stück. Gewinde reißen, wenn man sie mit Gewalt anzieht.',
	C21: 'Gewindedichtmittel härtet über Nacht bei abgeschalteter Luft aus: das Ventil mit Schloss gesichert lassen und der nächsten Schicht Bescheid geben.',
	C22: 'Keine Seifenlösung, kein Lecksuchmittel und kein Wasser auf oder über Elektrik unter Spannung: erst spannungsfrei, sonst nicht benetzen.',
	C23: 'Heiße Oberfläche: abkühlen lassen oder abschirmen und Handschuhe tragen, die für die Hitze geeignet sind.',
	C24: 'Arbeit in der Höhe: die am Standort zugelassene Bühne oder das zugelassene Gerüst benutzen, Werkzeug anbinden, niemanden darunter lassen. Nie an den Rohrleitungen klettern.',
	C25: 'Enger Raum: Niemand geht hinein ohne die Freigabe des Standorts für enge Räume, freigemessene Luft und einen Sicherungsposten draußen.',
	C26: 'Diese Arbeit ist nicht vollständig beschrieben: vor dem Beginn vereinbaren, wie sie sicher gemacht wird.',
	C27: 'Mit Seifenlösung oder Lecksuchmittel erneut abseifen. Nichts mit Ammoniak kommt an Messing: Es reißt.',
	C28: 'Die Luft langsam zurückbringen, wenn alle Abstand haben, dann jede behobene Verbindung abseifen.',
	C29: 'Einen Ablass nur dann von Hand öffnen, wenn der Behälter drucklos ist und Sie sein Manometer auf null fallen gesehen haben; seitlich stehen. Rost im Wasser: Der Behälter bleibt drucklos, bis eine befähigte Person ihn innen geprüft hat.',
	C30: 'Kondensat enthält Öl: auffangen und abgeben, wie es die Regeln des Standorts verlangen. Nichts davon gelangt in einen Bodenablauf. Handschuhe an.',
	C31: 'Ein zeitgesteuerter Ableiter kann jederzeit öffnen und kann am Netz angeschlossen sein: das Ventil davor schließen, entlüften, seine Netzspannung abschalten und mit Schloss sichern und Spannungsfreiheit prüfen, bevor er geöffnet wird.',
	C32: 'Die Ansaugung wird nur bei abgestellter und mit Schloss gesicherter Maschine geöffnet, und die Maschine läuft nie ohne ihren Filter. Einen Filter nie in Benzin oder Lösemittel waschen: Der Dampf kann im Verdichter brennen.',
	C33: 'Den Ölstand bei abgestellter Maschine ablesen, wenn das Öl zur Ruhe gekommen ist. Kein Stopfen wird geöffnet, solange sie läuft, heiß ist oder unter Druck steht. Nur das Öl, das der Hersteller nennt, kommt hinein.',
	C34: 'Der Riemenschutz bleibt, bis die Maschine mit Schloss gesichert und ihre Spannungsfreiheit geprüft ist; auf die Einzugsstelle achten, wenn ein Rad von Hand gedreht wird. Der Schutz kommt zurück, bevor die Netzspannung eingeschaltet wird.',
	C35: 'Zylinderkopfschrauben: kalt, entlüftet und mit Schloss gesichert, mit dem Drehmoment und in der Reihenfolge des Herstellers. Ohne die Angabe des Herstellers nicht anrühren.'
};
