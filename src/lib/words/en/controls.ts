/** What fields and other shared parts of the screen say by themselves. */
export const controls = {
	numberMissing: 'Please enter a number here.',
	textMissing: 'Please enter something here.',
	full: (letters: number) =>
		`Only ${letters} letters have room here: see that nothing was cut off at the end.`,
	choose: 'Choose…',
	often: 'Often used',
	others: 'All others',
	/** Read out after a figure that opens its working. */
	showWorking: ', show the working',
	workedOut: 'How this was worked out',
	fewerSteps: 'Show fewer steps',
	everyStep: 'Show every step',
	close: 'Close'
};
