import type { Catalogue } from '../catalogue.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('de');

export const savingsReport: Catalogue['savingsReport'] = {
	title: 'Einsparbericht',
	pageTitle: (site) => `Einsparbericht: ${site}`,
	rounds: (before, beforeOn, after, afterOn) => `${before} (${beforeOn}) bis ${after} (${afterOn})`,
	printed: (day) => `Gedruckt am ${day}`,
	roundsPrinted: (rounds, day) => `${rounds}  ·  gedruckt am ${day}`,
	headline: (sum, interval) => `Durch Abseifen belegt: ${sum} im Jahr, 90-%-Bereich ${interval}.`,
	printPage: 'Diese Seite drucken',
	backToProve: 'Zurück zu „Belegen“',
	toProve: 'Zu „Belegen“',
	oneRound:
		'Ein Einsparbericht vergleicht zwei Rundgänge, und dieser Standort hat erst einen. Beginnen Sie den nächsten unter „Belegen“.',
	page: (page, pages) => `Seite ${page} von ${pages}`,

	makePdf: 'PDF erstellen',
	savePdf: 'PDF sichern',
	pdfReady: 'Das PDF ist fertig.',
	noGlyphs: (characters) => `Es kann ${characters} nicht darstellen: Dort stehen leere Kästchen.`,
	noPictures: (tags) =>
		`Die Bilder zu Anhänger ${tags} ließen sich nicht zeichnen; die Leckagen stehen ohne sie da.`,
	doing: {
		gathering: 'Belege werden gesammelt',
		drawing: 'Bilder werden gezeichnet',
		fetching: 'Schrift wird geladen',
		laying: 'Seiten werden gesetzt'
	},
	pictureNotHere: 'Das Bild ist nicht auf diesem Gerät.',

	strengthsTitle: 'Drei Nachweisstufen',
	strengthsLead: 'Drei Nachweisstufen, nie zusammengezählt',
	strength: 'Nachweisstufe',
	aYear: 'Im Jahr',
	interval: '90-%-Bereich',
	within: (range) => `90 %: ${range}`,
	withInterval: (range) => `90-%-Bereich ${range}`,
	notMeasured: 'Nicht gemessen',
	tests: (before, after) => `${before}; dann ${after}`,
	test: (flow, day, name) => `${flow} am ${day} (${name})`,
	noTest: (round) =>
		`${round} hat keine Systemprüfung; eine gemessene Einsparung braucht eine in beiden Rundgängen.`,
	notKnown: 'nicht bekannt',
	agreement: (words) => `Bei den Rundgängen Gefundenes neben Gemessenem: ${words}`,
	bridge: 'Von vorher nach nachher, im Jahr',
	lessTitle: 'Weniger als zuvor, bei gleichen Bedingungen',
	lessEnergy: 'Weniger Energie im Jahr',
	lessMoney: 'Weniger Geld im Jahr',
	lessCarbon: 'Weniger CO₂e im Jahr',
	payback: 'Amortisationszeit',

	otherwiseTitle: 'Was die Antwort ändern würde',
	if: 'Wenn',
	lessAYear: 'Weniger im Jahr',
	againstThis: 'Unterschied',
	otherwise: {
		'claims-hold': () => 'Alles Gemeldete erweist sich als dicht',
		'not-reached-tight': () => 'Was niemand erreicht hat, ist dicht',
		'largest-smaller': (tag) =>
			`Leckage ${tag}, die größte belegte, war halb so groß wie eingeschätzt`,
		'method-smaller': (_tag, evidence) =>
			`Alles nach „${evidence}“ Bemessene ist um ein Drittel kleiner, in beiden Rundgängen`
	},
	wouldMove: 'Was es verschieben würde',
	soapClaimed: (sum) =>
		`Würde das Gemeldete abgeseift, könnten bis zu ${sum} im Jahr von „gemeldet“ zu „belegt“ rücken.`,
	restsOnUnseen: (sum) => `${sum} im Jahr beruhen auf Leckagen, die niemand erneut angesehen hat.`,
	testBoth:
		'Eine Systemprüfung in beiden Rundgängen würde die Einsparung messen, ohne eine Größe zu schätzen.',
	bothAlike:
		'Ein neuer Preis oder neue Stunden ändern beide Rundgänge im gleichen Verhältnis; ein neuer Messwert einer Leckage ändert nur deren Zeile.',

	evidenceTitle: 'Belege Leckage für Leckage',
	group: (fate, count) => `${fate}: ${count}`,
	groupSum: (before, after) => `Vorher ${before}, nachher ${after}, im Jahr`,
	leak: (tag) => `Leckage ${tag}`,
	noneKnown: 'nicht bekannt',
	tight: 'dicht',
	seen: {
		mended: (day) => `behoben ${day}`,
		soapedTight: 'abgeseift, dicht',
		soapedLeaking: 'abgeseift, weiterhin undicht',
		claimFailed: 'als behoben gemeldet, aber undicht',
		notReached: (day) => `${day} nicht erreicht`,
		tightBySoap: (day) => `${day} dicht, abgeseift`,
		leaking: (day) => `${day} undicht`,
		leakingBy: (day, evidence) => `${day} undicht (${evidence})`
	},
	sides: { before: 'Vorher', after: 'Nachher' },
	caption: (side, day) => `${side}, ${day}`,
	photo: (tag, caption, about) => `Leckage ${tag}, ${caption}: ${about}`,

	notReachedTitle: 'Nicht erneut angesehen',
	eachBelow: 'Jede ist unter „Nicht erneut angesehen“ genannt.',
	notReached: (count, shown, sum) =>
		many(count, {
			one: `1 Leckage wurde nicht erneut angesehen: ${sum} im Jahr, als undicht gezählt.`,
			other: `${shown} Leckagen wurden nicht erneut angesehen: ${sum} im Jahr, als undicht gezählt.`
		}),
	leftOutToo: (count, shown) =>
		many(count, {
			one: '1 Leckage ist in beiden Rundgängen ausgelassen.',
			other: `${shown} Leckagen sind in beiden Rundgängen ausgelassen.`
		}),
	oneByOne: 'Einzeln aufgeführt',
	everyReached: 'Jede Stelle wurde erreicht.',
	countedAsLeaking: (tag, place, sum, seen) =>
		`Leckage ${tag}, ${place}: ${sum} im Jahr, als undicht gezählt (${seen}).`,
	countedThoughClaimed: (tag, place, sum, seen) =>
		`Leckage ${tag}, ${place}: ${sum} im Jahr, als undicht gezählt, obwohl als behoben gemeldet (${seen}).`,
	leftOut: (tag, place, why) =>
		`Leckage ${tag}, ${place}: in beiden Rundgängen ausgelassen. ${why}`,
	noPlace: 'Ort nicht notiert',

	adjustedTitle: 'Auf gleiche Bedingungen gebracht',
	adjusted: (what, size, reason) => `${what}: ${size} im Jahr zum früheren Rundgang (${reason}).`,
	nothingAdjusted: 'Nichts wurde angepasst.',
	routine: 'auf den Stand des späteren gebracht',

	ratesTitle: 'Wie schnell es wiederkommt',
	joints: 'Als dicht belegte und erneut angesehene Verbindungen',
	back: 'Wieder undicht',
	each: 'Im Jahr, je Stück (90 %)',
	leftAlone: (sum, range) =>
		`Ohne Zutun kommen mit jedem Jahr ${sum} im Jahr hinzu, durch wieder oder neu undichte Stellen (90 %: ${range}); etwa so viel ist ein jährlicher Rundgang wert.`,
	nextRound: (day, from, to) =>
		`Nächster Rundgang bis ${day} (${from} bis ${to}): Bis dahin ist ein Viertel der erreichten Einsparung wieder verloren.`,
	kind: (part, action) => `${part}: ${action}`,

	restsTitle: 'Worauf das beruht',
	conditionsOf: (round) =>
		`Beide Rundgänge sind auf die Bedingungen von ${round} gebracht: Druck, Stunden, Drucklufterzeugung, Bedarf und Preise.`,
	conditionsKept: (round) => `Die Bedingungen von ${round} wurden beim Abschluss festgehalten.`,
	conditionsNotKept: (round) =>
		`Die Bedingungen von ${round} wurden nicht festgehalten; eine Anpassung von dort aus lässt sich nicht zeigen.`,
	energyBy: (method) => `Energie – ${method}.`,
	assumptions: [
		'Was niemand erreicht hat, zählt nach seinem letzten Messwert als undicht; Gemeldetes zählt nicht als eingespart.',
		'Was ein Verfahren oder ein Manometer falsch anzeigt, ist in beiden Rundgängen gleich und hebt sich in der Differenz auf.',
		'Der 90-%-Bereich betrifft nur die Größen der Leckagen; Preise und Drucklufterzeugung gelten als bekannt.',
		'Die Amortisation stellt alles, was als Ausgabe für Reparaturen notiert wurde, dem gegenüber, was durch Abseifen belegt ist, ohne Abzinsung.'
	],
	carbon: (factor, source, year) => `CO₂e: ${factor} kg je kWh (${source}, ${year}).`,
	rules: 'Regeln V1 bis V10 der Methode, die die App ganz zeigt.'
};
