/** What stands at every chart, and the columns of the week's table. */
export const charts = {
	sameAsTable: 'The same as a table',
	showMore: (count: string) => `Show ${count} more`,
	day: 'Day',
	from: 'From',
	to: 'To',
	period: 'Period'
};
