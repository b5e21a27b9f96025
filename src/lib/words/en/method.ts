/** What stands round the text of METHOD, which is kept in English. */
export const method = {
	title: 'How the figures are computed',
	back: 'Back',
	contents: 'Contents',
	/** Empty in the language that the text is in. */
	inEnglish: ''
};
