import type { Catalogue } from '../catalogue.ts';

export const sources: Catalogue['sources'] = {
	passages: {
		ours: 'unser Startwert',
		ownBand: 'die eigene Spanne des Standorts',
		own: 'vom Benutzer eingetragen',
		starting: 'Startwert: ',
		measuredHere: 'am Standort gemessen oder eingetragen',
		notRead: 'nicht abgelesen: wie beim Bezugszustand angenommen',
		sourcebook: 'US DOE / Compressed Air Challenge, Sourcebook, wie vielfach zitiert',

		edgeSharp: 'Handbuchfaktor 0,61; Versuche reichen von 0,56 bis 0,84',
		edgeRounded: 'Handbuchfaktor 0,97; Versuche reichen von 0,92 bis 0,99',
		edgeUnknown: 'Mitte der Handbuchfaktoren 0,61 und 0,97, beide gleich wahrscheinlich',
		hole: 'Durchmesser mit dem Auge auf 20 % geschätzt, dazu die Kante',
		slit: 'Länge auf 10 %, Breite auf 40 % geschätzt, dazu die Kante',
		threadGap: 'Spalt auf 50 % geschätzt, dazu die Kante',
		bubble: 'Durchmesser auf 10 % geschätzt, und die Blase ist keine ganze Kugel',
		bag: 'Beutelvolumen und Füllmarke auf je 10 %, etwas Luft geht an der Öffnung verloren',
		meter: 'ein Messgerät in seinem Messbereich, so eingebaut, wie es ist',
		catalogue: 'Streuung von Stück zu Stück und Verschleiß',

		iso1217: 'ISO 1217 (20 °C, 100 kPa, trocken)',
		iso1217From: 'ISO 1217 Anhang C (aus dem Gedächtnis)',
		anrFrom: 'ISO 8778 (aus dem Gedächtnis); Dichte berechnet 1,182 kg/m³, Tabellen drucken 1,185',
		anr: 'ISO 8778 ANR (20 °C, 100 kPa, 65 % r. F.)',
		normal: 'DIN 1343, Norm (0 °C, 101,325 kPa, trocken)',
		normalFrom: 'DIN 1343 (in einer Enzyklopädie gelesen)',
		siteInlet: 'Ansaugzustand am Standort (Druck und Temperatur am Standort, trocken)',

		receiver: 'eine US-Gallone je cfm: übliche Praxis',
		purge: 'kaltregenerierte Adsorptionstrockner: übliche Praxis',
		startStop:
			'der Motor steht beim Abschaltdruck still; Druckband 2 bar: übliche Praxis bei kleinen Kolbenmaschinen',
		loadUnload:
			'Leerlaufleistung 25 % und Druckband 10 psi: R. Marshall, processnpower.com, 2014. Leistung beim ' +
			'Entlasten 85 % und Entlastungszeit 30 s: unsere Startwerte, so gewählt, dass die gedruckten Teillastpunkte ' +
			'für 1 und 3 Gallonen Behälter je cfm getroffen werden. Kein Stillsetzen: unser Startwert',
		throttled:
			'Steigung 0,3: Schmidt und Kissock, Power characteristics of industrial air compressors (aus dem ' +
			'Gedächtnis). Entlasten bei halbem Volumenstrom: die Mitte der 40 bis 60 % aus plantservices.com, ' +
			'Compressor capacity controls, 2006. Darunter: ',
		variableSpeed:
			'kleinste Drehzahl 30 % bei 35 % der Leistung, Stillstand nach 5 Minuten: unsere Startwerte. Darunter: '
	},
	band: (low, high) => `neun von zehn zwischen ${low} und ${high} mm`,
	machine: (capacity, pressure) =>
		`eine Maschine mit ${capacity} m³/min bei ${pressure} bar, die den Mindestwirkungsgrad nach 10 CFR 431.345 gerade erfüllt`
};
