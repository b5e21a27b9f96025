import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** A plan taken in from a file, and what is drawn on it afterwards. */
export const planDesk = {
	back: 'Back to Set up',
	length: 'Length',
	setScale: 'Set the scale',
	finishOutline: 'Finish the outline',
	cornerBack: 'Take the last corner back',
	offNewer: (count: number, tags: string) =>
		many(count, {
			one: `Off the newer drawing, so put on its edge: tag ${tags}.`,
			other: `Off the newer drawing, so put on its edge: tags ${tags}.`
		}),
	useNewer: 'Use the newer drawing',
	matchAgain: 'Match again',
	twoEnough: 'Two points are enough when the drawing was only turned or sized; three hold better.',
	showWhere: 'Show where everything goes',
	giveUp: 'Give up',

	tasks: {
		scaleEnds: 'Tap both ends of a distance that you know.',
		howLong: 'How long is it?',
		outline: (section: string) => `Tap round ${section}, corner by corner.`,
		outlineOn: (section: string) => `Tap on, or finish the outline of ${section}.`,
		valve: (section: string) => `Tap where the isolating valve of ${section} is.`,
		preview: 'This is where everything would be on the newer drawing.',
		matchNewer: (place: number) => `Point ${place}: tap the same place on the newer drawing.`,
		matchOlder: (place: number) =>
			`Point ${place}: tap a place on the older drawing that the newer one shows too.`
	},

	facts: {
		heading: 'Scale',
		none: 'No scale yet: a distance that is known on the floor gives lengths and areas.',
		size: (wide: string, high: string) => `The plan is ${wide} m wide and ${high} m high.`,
		set: 'Set the scale by a known distance',
		setAgain: 'Set the scale again',
		north: 'North, clockwise from the top',
		limits: (low: string, high: string) => `${low} to ${high}`,
		level: 'Building or floor'
	},

	sections: {
		heading: 'Sections on this plan',
		none: 'No section yet. Add sections on Set up, then draw here where they lie.',
		about: 'A new pin takes the section that it lies in.',
		pinsWithout: (count: number, shown: string) =>
			many(count, {
				one: '1 pin lies in it and stands on no section.',
				other: `${shown} pins lie in it and stand on no section.`
			}),
		putOn: (count: number, section: string) =>
			many(count, { one: `Put it on ${section}`, other: `Put them on ${section}` }),
		drawn: 'drawn',
		drawnOf: (area: string) => `drawn, ${area} m²`,
		notDrawn: 'not drawn',
		valveShown: 'valve shown',
		draw: 'Draw it',
		drawAgain: 'Draw again',
		drawNamed: (section: string) => `Draw it: ${section}`,
		drawAgainNamed: (section: string) => `Draw again: ${section}`,
		placeValve: 'Place valve',
		moveValve: 'Move valve',
		placeValveOf: (section: string) => `Place valve of ${section}`,
		moveValveOf: (section: string) => `Move valve of ${section}`,
		removeOutline: 'Remove outline',
		removeOutlineOf: (section: string) => `Remove outline of ${section}`
	},

	newer: {
		heading: 'Newer drawing',
		about:
			'Put a newer drawing under the pins: match two or three points, look where everything goes, and take it or leave it.',
		choose: 'Choose the newer drawing',
		opening: (file: string) => `Opening ${file}`
	},

	out: {
		heading: 'For another program',
		about:
			'Leaks, valves, sections and what was walked, in metres on this plan. They are not longitude and latitude: a map would show them in the wrong place.',
		save: 'Save as GeoJSON (local metres)'
	},

	intake: {
		whichPages: 'Which pages?',
		planOf: (place: number, count: number) => `Plan ${place} of ${count}`,
		cut: 'Cut the plan',
		cancel: 'Cancel',
		drawing: 'Drawing the page …',
		boxHint: 'Move the corners to leave out margins: drag one, or tap it and then its place.',
		cornersHint: 'Put each corner on the matching corner of the sheet in the photo.',
		turn: 'Turn by 90°',
		cornersDo: 'What the corners do',
		box: 'Cut a box',
		straighten: 'Straighten a photo',
		name: 'Name of the plan',
		plan: 'Plan',
		pageOf: (file: string, page: number) => `${file}, page ${page}`,
		making: 'Making the plan',
		cutting: 'Cutting it for closer looks',
		useDrawing: 'Use this drawing',
		take: 'Take this plan',
		choosePage: 'Choose the page',
		choosePages: 'Choose the pages that are plans',
		page: (place: number) => `Page ${place}`,
		goOn: 'Go on',
		goOnWith: (count: number) =>
			many(count, { one: `Go on with ${count} page`, other: `Go on with ${count} pages` }),
		/** Clockwise from the top left. */
		corners: ['Top left', 'Top right', 'Bottom right', 'Bottom left'],
		cornerAt: (corner: string, left: number, top: number) =>
			`${corner} corner, ${left} % from the left, ${top} % from the top`
	},

	feeding: {
		/** Folded: whose feeds, and what is said of them. */
		about: 'Fed from',
		ofSection: (section: string) => `What feeds ${section}`,
		notSaid: 'nobody said yet',
		station: 'the station',
		circle: 'These sections feed each other in a circle: no way leads here from the station.',
		whatFor:
			'With this the fix list says what else is without air while a valve is shut. On a ring tick both sides.',
		volume: 'Volume behind the valve',
		draw: 'Show way of air',
		drawAgain: 'Show way again',
		drawOf: (section: string) => `Show way of air into ${section}`,
		drawAgainOf: (section: string) => `Show way again into ${section}`,
		removeArrow: 'Remove arrow',
		removeArrowOf: (section: string) => `Remove arrow of ${section}`,
		shown: 'way of air shown',
		tapFrom: (section: string) => `Tap the line that the air of ${section} comes from.`,
		tapTo: (section: string) => `Tap where it goes into ${section}.`
	}
};
