/** The desk of one floor plan: what feeds a section, and which way its air goes. */
export const planDesk = {
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
		drawOf: (section: string) => `Show the way of the air into ${section}`,
		removeArrow: 'Remove arrow',
		removeArrowOf: (section: string) => `Remove the arrow of ${section}`,
		shown: 'way of air shown',
		tapFrom: (section: string) => `Tap the line that the air of ${section} comes from.`,
		tapTo: (section: string) => `Tap where it goes into ${section}.`
	}
};
