const HOURS_PER_YEAR = 8760;

/**
 * The mean of an amount whose logarithm is normal, as a multiple of its median: e^(u²/2).
 * @param u standard deviation of the logarithm
 * @returns factor, 1 or more
 * @validity u ≥ 0, finite
 * @source the lognormal distribution (derived by its moments); METHOD P5
 */
export function meanOverMedian(u: number): number {
	return Math.exp((u * u) / 2);
}

/**
 * What a repair saves until the horizon: c · f · h / 8760, nothing once the horizon is past.
 * @param costMinorPerYear what the leak wastes a year, minor units
 * @param factor mean over median of the saving, 1 where the estimate is taken as it is
 * @param hoursLeft from the end of the window to the horizon
 * @returns saving, minor units, not rounded
 * @validity finite; a year of 8,760 hours, as everywhere in the survey
 * @source derived; METHOD P5
 */
export function savingUntilHorizon(
	costMinorPerYear: number,
	factor: number,
	hoursLeft: number
): number {
	return (costMinorPerYear * factor * Math.max(0, hoursLeft)) / HOURS_PER_YEAR;
}
