import type { Period } from '#lib/core/survey/station-schema.ts';
import { supply } from '#lib/words/supply.ts';

export const DAY_MIN = 1440;
/** Monday to Sunday. */
export const DAYS_A_WEEK = [0, 1, 2, 3, 4, 5, 6] as const;

/** A stretch of one day, in minutes after its midnight. */
export interface Bar {
	readonly day: number;
	readonly fromMin: number;
	readonly toMin: number;
}

/** The bars that a period draws: cut at midnight, Sunday night going on into Monday. */
export function barsOf({ days, fromMin, toMin }: Period): readonly Bar[] {
	return days.flatMap((day) =>
		toMin > fromMin
			? [{ day, fromMin, toMin }]
			: [
					{ day, fromMin, toMin: DAY_MIN },
					...(toMin > 0 ? [{ day: (day + 1) % 7, fromMin: 0, toMin }] : [])
				]
	);
}

/** Stretches of the week that no period covers, also where periods overlap. */
export function uncovered(periods: readonly Period[]): readonly Bar[] {
	const bars = periods.flatMap(barsOf);
	return DAYS_A_WEEK.flatMap((day) => {
		const taken = bars.filter((bar) => bar.day === day).sort((a, b) => a.fromMin - b.fromMin);
		const gaps: Bar[] = [];
		let end = 0;
		for (const { fromMin, toMin } of taken) {
			if (fromMin > end) gaps.push({ day, fromMin: end, toMin: fromMin });
			end = Math.max(end, toMin);
		}
		if (end < DAY_MIN) gaps.push({ day, fromMin: end, toMin: DAY_MIN });
		return gaps;
	});
}

/** Minutes of a day as a clock writes them, for a time field and for reading. */
export function clock(minutes: number): string {
	const within = minutes % DAY_MIN;
	const two = (value: number) => String(value).padStart(2, '0');
	return `${two(Math.floor(within / 60))}:${two(within % 60)}`;
}

/** The end of a period as people say it: midnight at its end is 24:00. */
export function endClock(minutes: number): string {
	return minutes % DAY_MIN === 0 ? '24:00' : clock(minutes);
}

/** What a time field holds, in minutes; nothing while it is not a whole time. */
export function minutesOf(text: string): number | undefined {
	const match = /^(\d\d):(\d\d)/u.exec(text);
	return match ? Number(match[1]) * 60 + Number(match[2]) : undefined;
}

/** Days of the week, 0 to 6 in order, in as few words as they take: `Mon to Fri`, `Sat, Sun`. */
export function daysInWords(days: readonly number[]): string {
	const first = days[0];
	const last = days.at(-1);
	if (first === undefined || last === undefined) return '';
	if (days.length === DAYS_A_WEEK.length) return supply.week.everyDay;
	const named = (day: number) => supply.week.days[day] ?? '';
	const unbroken = last - first === days.length - 1;
	return unbroken && days.length > 2
		? supply.week.span(named(first), named(last))
		: days.map(named).join(', ');
}
