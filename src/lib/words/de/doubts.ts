import type { Catalogue } from '../catalogue.ts';

export const doubts: Catalogue['doubts'] = {
	airPressureMissing:
		'Der Luftdruck am Standort ist nicht bekannt. Tragen Sie die Höhe oder einen abgelesenen Luftdruck ein.',
	atSeaLevel: 'Er liegt auf Meereshöhe',
	supplyMissing:
		'Wie die Druckluft erzeugt wird, ist nicht bekannt, daher lässt sich noch keine Energie angeben. Tragen Sie die Drucklufterzeugung ein.',
	priceMissing: 'Der Strompreis ist nicht bekannt, daher lassen sich noch keine Kosten angeben.',
	hoursMissing: (section) =>
		`Wie viele Stunden im Jahr „${section}“ unter Druck steht, ist nicht bekannt.`,
	always: (hours) => `Immer: ${hours}`,
	hoursImplausible: (section, hours, most) =>
		`Für „${section}“ sind ${hours} Stunden im Jahr eingetragen; ein Jahr hat ${most}.`,
	makeIt: (value) => `Auf ${value} setzen`,
	meant: (value) => `Gemeint sind ${value}`,
	sectionPressure: (pressure, section) => `${pressure} in „${section}“?`,
	supplyPressure: (pressure) => `${pressure} an der Drucklufterzeugung?`,
	price: (price, period) =>
		period === ''
			? `${price} für eine Kilowattstunde?`
			: `${price} für eine Kilowattstunde in „${period}“?`,
	valveMissing: (section) =>
		`Für „${section}“ ist kein Absperrventil benannt. Die Reparaturliste braucht es.`,
	sizeMissing: (tag) => `Leckage ${tag} hat noch keine Größe.`,
	sectionMissing: (tag) =>
		`Leckage ${tag} gehört zu keinem Abschnitt, also weiß niemand, welches Ventil sie absperrt.`,
	outsideSection: (tag, section) =>
		`Leckage ${tag} liegt außerhalb der Fläche, die für „${section}“ eingezeichnet ist: Vielleicht sperrt ein anderes Ventil sie ab.`,
	putOn: (section) => `Es gehört zu „${section}“`,
	pressureMissing: (tag) =>
		`Der Druck an Leckage ${tag} ist nicht bekannt: Lesen Sie ihn ab oder tragen Sie ihn beim Abschnitt ein.`,
	leakPressure: (pressure, tag) => `${pressure} an Leckage ${tag}?`,
	opening: (size, tag) => `Ein Loch von ${size} an Leckage ${tag}?`,
	slit: (width, tag) => `Ein ${width} breiter Spalt an Leckage ${tag}?`,
	threadGap: (gap, tag) => `Ein Spalt von ${gap} um das Gewinde an Leckage ${tag}?`,
	leakFlow: (flow, tag) => `${flow} aus Leckage ${tag}?`,
	tagTwice: (tag) => `Zwei Leckagen haben die Anhängernummer ${tag}.`,
	giveTag: (tag) => `Dieser Leckage die ${tag} geben`,
	merged: (site) =>
		`Eine Datei, die in ${site} übernommen wurde, hat etwas zum Durchsehen hinterlassen: was auf beiden Seiten geändert wurde, oder doppelte Nummern.`,
	lookThrough: 'Durchsehen',
	pinMissing: (tag) => `Leckage ${tag} ist auf keinem Plan.`
};
