/** What looks doubtful in a survey, and what its fixes are called. */
export const doubts = {
	airPressureMissing:
		'The air pressure of the site is not known. Enter its altitude or a barometer reading.',
	atSeaLevel: 'It lies at sea level',
	supplyMissing: 'How the air is made is not known, so there is no energy yet. Enter the supply.',
	priceMissing: 'The price of electricity is not known, so there is no cost yet.',
	hoursMissing: (section: string) =>
		`How many hours a year “${section}” is under pressure is not known.`,
	always: (hours: string) => `Always: ${hours}`,
	hoursImplausible: (section: string, hours: string, most: string) =>
		`“${section}” is given ${hours} hours a year; a year has ${most}.`,
	makeIt: (value: string) => `Make it ${value}`,
	meant: (value: string) => `I meant ${value}`,
	sectionPressure: (pressure: string, section: string) => `${pressure} in “${section}”?`,
	supplyPressure: (pressure: string) => `${pressure} at the supply?`,
	price: (price: string, period: string) =>
		period === ''
			? `${price} for a kilowatt-hour?`
			: `${price} for a kilowatt-hour in “${period}”?`,
	valveMissing: (section: string) =>
		`“${section}” has no isolating valve named. The fix list needs it.`,
	sizeMissing: (tag: string) => `Leak ${tag} has no size yet.`,
	sectionMissing: (tag: string) =>
		`Leak ${tag} is not on a section, so nobody knows which valve shuts it.`,
	outsideSection: (tag: string, section: string) =>
		`Leak ${tag} lies outside what is drawn of “${section}”: another valve may shut it.`,
	putOn: (section: string) => `It is on “${section}”`,
	pressureMissing: (tag: string) =>
		`The pressure at leak ${tag} is not known: read it, or set it for the section.`,
	leakPressure: (pressure: string, tag: string) => `${pressure} at leak ${tag}?`,
	opening: (size: string, tag: string) => `A hole of ${size} at leak ${tag}?`,
	slit: (width: string, tag: string) => `A slit ${width} wide at leak ${tag}?`,
	threadGap: (gap: string, tag: string) => `A gap of ${gap} round the thread at leak ${tag}?`,
	leakFlow: (flow: string, tag: string) => `${flow} from leak ${tag}?`,
	tagTwice: (tag: string) => `Two leaks have the tag number ${tag}.`,
	giveTag: (tag: string) => `Give this one ${tag}`,
	merged: (site: string) =>
		`A file that was taken into ${site} left something to look through: what both had changed, or numbers used twice.`,
	lookThrough: 'Look through it',
	pinMissing: (tag: string) => `Leak ${tag} is not on a plan.`
};
