/** Six in the morning of the next Saturday after a day, on the clock of this place. */
export function comingSaturday(from: Date): Date {
	const day = new Date(from);
	day.setDate(day.getDate() + ((6 - day.getDay() + 7) % 7 || 7));
	day.setHours(6, 0, 0, 0);
	return day;
}
