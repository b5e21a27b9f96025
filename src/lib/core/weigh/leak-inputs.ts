import { find } from '../survey/ids.ts';
import type { Leak, Section, Sighting, Survey } from '../survey/schema.ts';
import { ok, refuse, type Result } from '../units/result.ts';

/** A value, and where in the survey it came from. */
export interface From<Origin extends string> {
	readonly value: number;
	readonly origin: Origin;
}

export type PressureOrigin = 'reading' | 'section' | 'supply';
export type HoursOrigin = 'section' | 'schedule';

/** The section that a leak is on, unless that was removed. */
export function sectionOf(survey: Survey, leak: Leak): Section | undefined {
	const section = find(survey.sections, leak.sectionId);
	return section?.removed ? undefined : section;
}

/**
 * The pressure that a leak stands under: its own reading, else its section's, else the supply's.
 * METHOD W1.
 *
 * @param setPressureBarGauge the supply's
 * @returns gauge pressure in bar, or `pressure-missing`
 */
export function pressureOf(
	sighting: Sighting,
	section: Section | undefined,
	setPressureBarGauge: number | undefined
): Result<From<PressureOrigin>> {
	if (sighting.pressureBarGauge !== undefined)
		return ok({ value: sighting.pressureBarGauge, origin: 'reading' });
	if (section?.pressureBarGauge !== undefined)
		return ok({ value: section.pressureBarGauge, origin: 'section' });
	if (setPressureBarGauge !== undefined)
		return ok({ value: setPressureBarGauge, origin: 'supply' });
	return refuse('pressure-missing');
}

/** Hours of a year; a leap year's extra day is not a leak's fault. */
export const HOURS_PER_YEAR = 8760;

/**
 * The hours a year that a leak is under pressure: its section's, which are not the production hours,
 * because a leak leaks at night too; else the hours that the station keeps pressure up. METHOD W1.
 *
 * @param scheduleHours pressurised hours a year by the station's schedule, if there is one
 * @returns hours a year, `hours-missing`, or `hours-out-of-range` above 8,760
 */
export function hoursOf(
	section: Section | undefined,
	scheduleHours: number | undefined
): Result<From<HoursOrigin>> {
	const hours: From<HoursOrigin> | undefined =
		section?.pressurisedHoursPerYear !== undefined
			? { value: section.pressurisedHoursPerYear, origin: 'section' }
			: scheduleHours !== undefined
				? { value: scheduleHours, origin: 'schedule' }
				: undefined;
	if (!hours) return refuse('hours-missing');
	if (hours.value > HOURS_PER_YEAR + 24)
		return refuse('hours-out-of-range', { hours: hours.value, least: 0, most: HOURS_PER_YEAR });
	return ok(hours);
}
