/** The guide, the field card, and the way to them. */
export const help = {
	guide: 'How to use Airtally',
	method: 'How the figures are computed',
	card: 'Field card to print',
	about: (place: string) => `Help: ${place}`,
	contents: 'Contents',
	back: 'Back',
	print: 'Print it',
	licence: 'Licence',
	notices: 'The work of others in it',
	changes: 'What changed',

	cardTitle: 'Soaping for leaks: field card',
	cardFor: 'One sheet for the pocket. The app says more; where they differ, the app is newer.',
	take: {
		title: 'Take along',
		items: [
			'Spray bottle, soap solution (a few drops of dish soap in water, or leak-test fluid), cloth.',
			'Eye and ear protection, torch, mirror on a stick, numbered tags, this device or this card.',
			'The plan, the plant’s permission, and somebody who knows what may start by itself.'
		]
	},
	soap: {
		title: 'How to soap',
		items: [
			'Listen first: a hiss you hear is worth more than ten you look for.',
			'The line at working pressure. Wet the whole joint, from below too, and wait ten seconds.',
			'Look at threads, couplings, hose ends, valve stems, drains, regulator bowls, filters, cylinder rods.',
			'Wipe it dry, tag it, pin it, photograph it with its tag.',
			'An aisle with nothing found is a result: mark it walked and tight.'
		]
	},
	judge: {
		title: 'How to judge',
		intro: (pressure: string) =>
			`What the film does at ${pressure}. Bands are starting values of ours and wide: timing a bubble, filling a bag or reading a meter is surer.`,
		picture: 'The film',
		what: 'What it does',
		hole: 'Like a round hole of',
		flow: 'Free air lost'
	},
	range: (low: string, high: string, unit: string) => `${low} to ${high} ${unit}`,
	safe: {
		title: 'Stay safe',
		items: [
			'Soap on a live line; never loosen or tighten one. To mend: isolate, lock, vent, prove zero at the gauge, then loosen.',
			'No soap near live electrics. No hand in a jet: air under the skin is an emergency. Mind whipping hoses.',
			'No climbing, no reaching over moving parts, no opening of guards. Note it as not reached.',
			'A vessel that leaks or rusts goes out of service now, to a competent person. Rotary screw machines: their service engineer.',
			'Local codes, the site’s permits and licensed practice come first.'
		]
	},
	notes: {
		title: 'Without the device',
		columns: ['Tag', 'Where', 'Part', 'Pressure', 'The film, or a reading', 'Can it be reached?']
	}
};
