import { ok, refuse, type Result } from '../units/result.ts';

/** What the supply is asked for during a time. */
export type Air = AirOn | { readonly state: 'off' };

export interface AirOn {
	readonly state: 'on';
	readonly demandM3PerMin: number;
	readonly setPressureBarGauge: number;
}

/** A part of the week that recurs. */
export interface Period {
	readonly id: string;
	readonly name: string;
	/** Monday is 0, Sunday 6: the days on which it begins. */
	readonly days: readonly number[];
	/** Minutes after midnight, 0 to 1439. */
	readonly fromMin: number;
	/** Minutes after midnight, 0 to 1440; at or before `fromMin` it ends on the next day. */
	readonly toMin: number;
	readonly air: Air;
	/** Price of the tariff; null means the first. */
	readonly priceId: string | null;
}

export interface Schedule {
	readonly periods: readonly Period[];
	/** Weeks that follow the periods; the rest of the year is closed (holidays, shutdowns). */
	readonly weeksPerYear: number;
	/** What the supply does while closed. */
	readonly closed: Air;
	readonly closedPriceId: string | null;
}

/** A stretch of the year with one demand, in hours per year. */
export interface YearPart {
	readonly id: string;
	readonly hoursPerYear: number;
	readonly air: Air;
	readonly priceId: string | null;
}

/** Time of the week that no period covers, in minutes after Monday 00:00; `toMin` may be 10,080. */
export interface Gap {
	readonly fromMin: number;
	readonly toMin: number;
}

export interface YearOfParts {
	/** The periods in order, then the closed time, which may be no hours. */
	readonly parts: readonly YearPart[];
	readonly gaps: readonly Gap[];
	/** Hours a year in the gaps. They are counted as off, and whoever shows the result must say so. */
	readonly unassignedHoursPerYear: number;
}

export const HOURS_PER_YEAR = 8760;
/** Name of the closed time among the parts of a year. */
export const CLOSED = 'closed';
const MINUTES_PER_DAY = 1440;
const MINUTES_PER_WEEK = 7 * MINUTES_PER_DAY;
const HOURS_PER_WEEK = 168;
/** Weeks in a year of 365 days. */
export const WEEKS_PER_YEAR = HOURS_PER_YEAR / HOURS_PER_WEEK;

interface Stretch extends Gap {
	readonly id: string;
}

/**
 * Turns a weekly schedule into hours per year: h = minutes a week / 60 · weeks per year, and
 * 8,760 − 168 · weeks closed hours.
 * @param schedule as entered
 * @returns the parts of the year, the gaps of the week and the hours nobody has assigned
 * @validity periods do not overlap; 0 ≤ weeks ≤ 8,760/168; a year of 365 days
 * @source definition; METHOD S11
 */
export function yearOfParts(schedule: Schedule): Result<YearOfParts> {
	const { periods, weeksPerYear, closed, closedPriceId } = schedule;
	// A hand-typed 52.143 is a whole year too.
	if (!(weeksPerYear >= 0 && weeksPerYear < WEEKS_PER_YEAR + 0.001))
		return refuse('weeks-out-of-range', { weeksPerYear, least: 0, most: WEEKS_PER_YEAR });
	const weeks = Math.min(weeksPerYear, WEEKS_PER_YEAR);
	const stretches: Stretch[] = [];
	const ids = new Set([CLOSED]);
	for (const period of periods) {
		if (ids.has(period.id)) return refuse('period-twice', { id: period.id });
		ids.add(period.id);
		const found = stretchesOf(period);
		if (!found.ok) return found;
		stretches.push(...found.value);
	}
	for (const [id, air] of [
		...periods.map(({ id, air }) => [id, air] as const),
		[CLOSED, closed] as const
	]) {
		const fault = airFault(id, air);
		if (fault !== undefined) return fault;
	}
	const gaps = gapsBetween(stretches);
	if (!gaps.ok) return gaps;
	const yearly = (minutes: number): number => (minutes / 60) * weeks;
	const parts: YearPart[] = periods.map(({ id, air, priceId }) => ({
		id,
		hoursPerYear: yearly(length(stretches.filter((stretch) => stretch.id === id))),
		air,
		priceId
	}));
	parts.push({
		id: CLOSED,
		hoursPerYear: HOURS_PER_YEAR - HOURS_PER_WEEK * weeks,
		air: closed,
		priceId: closedPriceId
	});
	return ok({ parts, gaps: gaps.value, unassignedHoursPerYear: yearly(length(gaps.value)) });
}

/**
 * The same schedule with another demand or set pressure wherever the supply is on.
 * @param schedule as entered
 * @param change given what is on and its place: the periods in order, then the closed time
 * @returns the changed schedule
 * @validity any; what is off stays off
 * @source definition of the schedule; METHOD S11
 */
export function mapAir(schedule: Schedule, change: (air: AirOn, place: number) => AirOn): Schedule {
	const { periods, closed } = schedule;
	const changed = (air: Air, place: number): Air => (air.state === 'on' ? change(air, place) : air);
	return {
		...schedule,
		periods: periods.map((period, i) => ({ ...period, air: changed(period.air, i) })),
		closed: changed(closed, periods.length)
	};
}

/**
 * Weeks per year that are left when whole days are closed: w = (365 − d) / 7.
 * @param closedDays days a year on which the works is closed
 * @returns weeks per year
 * @validity 0 to 365 days
 * @source definition; METHOD S11
 */
export function weeksWithout(closedDays: number): Result<number> {
	if (!(closedDays >= 0 && closedDays <= 365))
		return refuse('days-out-of-range', { days: closedDays, least: 0, most: 365 });
	return ok((365 - closedDays) / 7);
}

function length(stretches: readonly Gap[]): number {
	return stretches.reduce((sum, { fromMin, toMin }) => sum + toMin - fromMin, 0);
}

/** The stretches of the week that a period covers, cut at Sunday midnight. */
function stretchesOf({ id, days, fromMin, toMin }: Period): Result<readonly Stretch[]> {
	const whole = Number.isInteger(fromMin) && Number.isInteger(toMin);
	if (!(
		whole &&
		fromMin >= 0 &&
		fromMin < MINUTES_PER_DAY &&
		toMin >= 0 &&
		toMin <= MINUTES_PER_DAY
	))
		return refuse('period-time-out-of-range', { id, fromMin, toMin, most: MINUTES_PER_DAY });
	const minutes = toMin > fromMin ? toMin - fromMin : toMin + MINUTES_PER_DAY - fromMin;
	const stretches: Stretch[] = [];
	for (const day of days) {
		if (!(Number.isInteger(day) && day >= 0 && day <= 6))
			return refuse('period-day-out-of-range', { id, day, least: 0, most: 6 });
		const start = day * MINUTES_PER_DAY + fromMin;
		const end = start + minutes;
		stretches.push({ id, fromMin: start, toMin: Math.min(end, MINUTES_PER_WEEK) });
		if (end > MINUTES_PER_WEEK) stretches.push({ id, fromMin: 0, toMin: end - MINUTES_PER_WEEK });
	}
	return ok(stretches);
}

function airFault(id: string, air: Air): ReturnType<typeof refuse> | undefined {
	if (air.state === 'off') return undefined;
	const { demandM3PerMin, setPressureBarGauge } = air;
	if (!(demandM3PerMin >= 0 && demandM3PerMin < Infinity))
		return refuse('demand-out-of-range', { id, demandM3PerMin, least: 0 });
	if (!(setPressureBarGauge > 0 && setPressureBarGauge < Infinity))
		return refuse('set-pressure-out-of-range', { id, setPressureBarGauge, above: 0 });
	return undefined;
}

function gapsBetween(stretches: readonly Stretch[]): Result<readonly Gap[]> {
	const sorted = [...stretches].sort((a, b) => a.fromMin - b.fromMin || a.toMin - b.toMin);
	const gaps: Gap[] = [];
	let end = 0;
	let before = '';
	for (const { id, fromMin, toMin } of sorted) {
		if (fromMin < end)
			return refuse('schedule-overlap', { first: before, second: id, atMin: fromMin });
		if (fromMin > end) gaps.push({ fromMin: end, toMin: fromMin });
		end = toMin;
		before = id;
	}
	if (end < MINUTES_PER_WEEK) gaps.push({ fromMin: end, toMin: MINUTES_PER_WEEK });
	return ok(gaps);
}
