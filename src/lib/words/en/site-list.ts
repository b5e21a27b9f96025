import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

export const siteList = {
	title: 'Airtally: compressed-air leak surveys',
	tagline: 'Every hiss has a price.',
	about:
		'Walk the plant with soapy water, pin each leak on the floor plan, and see what it costs a year, which to mend first and what to shut before touching it. Everything stays on this device and works without a network.',
	firstRound: 'Round 1',
	demoName: 'The demo site',
	notKept:
		'Part of the app could not be kept for use without a network. Open this page once more while there is one, before you walk.',
	onlyInMemory: (why: string) =>
		`${why} You can work on a survey all the same, but it is gone when this page is closed or loaded again: save it to a file before. What was kept here earlier is not touched.`,
	goToIt: 'Go to it',
	removed: (site: string) => `${site} is removed from this list.`,
	undo: 'Undo',
	drop: 'Drop the survey file anywhere',
	refusedFile: (file: string, why: string) => `${file}: ${why}`,

	guide: 'Guide and field card',
	light: 'Light, for glare',
	dark: 'Dark, for the office',

	newSite: 'New site',
	openFile: 'Open a survey file',
	openDemo: 'Open the demo site',
	lookFirst: 'Look around first',
	lookFirstAbout:
		'An invented ceramics works: forty-six leaks on a plan, eight sections, three compressors.',
	haveFile: 'You have a survey file',
	haveFileAbout:
		'From another device, or saved before this browser was cleared. All of it comes back.',
	own: 'A site of your own',
	ownAbout: 'It needs a name and a currency to begin with; the rest can wait.',

	name: 'Name of the site',
	nameMissing: 'Please give the site a name.',
	currency: 'Currency',
	currencyMissing: 'Please choose the currency that the site pays in.',
	start: 'Start this site',
	notNow: 'Not now',

	leaks: (count: number) => many(count, { one: 'leak', other: 'leaks' }),
	standing: {
		leaking: (shown: string) => `${shown} leaking`,
		mended: (shown: string) => `${shown} mended`,
		tight: (shown: string) => `${shown} tight`
	},
	changed: (when: string) => `changed ${when}`,
	inNoFile: 'Not yet saved to a file',
	changedSinceFile: (when: string) => `Changed since it was saved to a file, ${when}`,
	inFile: (when: string) => `Saved to a file ${when}`,
	remove: 'Remove',
	removeSite: (site: string) => `Remove ${site} from this device`,

	kept: 'Kept: this browser has promised not to clear the surveys by itself.',
	notPromised:
		'Not promised: this browser may clear the surveys when the device runs short of space. Save each site to a file.',
	homeFirst:
		'On this device put Airtally on the Home screen before the first survey, and open it from there: what a tab of the browser keeps, the icon does not see.',
	unsaid: 'This browser does not say how safely it keeps the surveys. Save each site to a file.',
	space: (used: string, most: string) => `${used} used of ${most}.`,
	nothingSent: 'Nothing is sent anywhere. A survey file holds everything of a site.'
};
