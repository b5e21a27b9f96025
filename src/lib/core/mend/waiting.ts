const DAYS_PER_YEAR = 365;

/**
 * What a day of waiting costs: the yearly cost spread evenly, c / 365.
 * @param costMinorPerYear yearly cost, minor units of the currency
 * @returns cost per day, minor units of the currency, not rounded
 * @validity finite; a year of 8,760 hours, as everywhere in the survey
 * @source derived; METHOD P2
 */
export function costOfWaitingPerDay(costMinorPerYear: number): number {
	return costMinorPerYear / DAYS_PER_YEAR;
}
