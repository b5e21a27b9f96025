import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weeksWithout, yearOfParts, type Air, type Period, type Schedule } from './schedule.ts';

const on: Air = { state: 'on', demandM3PerMin: 10, setPressureBarGauge: 7 };
const off: Air = { state: 'off' };
const period = (id: string, days: readonly number[], fromMin: number, toMin: number): Period => ({
	id,
	name: id,
	days,
	fromMin,
	toMin,
	air: on,
	priceId: null
});
const schedule = (periods: readonly Period[], weeksPerYear = 50): Schedule => ({
	periods,
	weeksPerYear,
	closed: off,
	closedPriceId: null
});
const WORKDAYS = [0, 1, 2, 3, 4];

describe('a year of parts', () => {
	// Derived by hand. Two shifts 06:00 to 22:00 on five days: 80 h a week; nights 22:00 to 06:00 from
	// Monday to Friday: 40 h; the weekend from Saturday 06:00 to Monday 06:00: 48 h. 50 weeks.
	it('[S11] counts hours, across midnight and across the end of the week', () => {
		const found = yearOfParts(
			schedule([
				period('shifts', WORKDAYS, 360, 1320),
				period('nights', WORKDAYS, 1320, 360),
				period('weekend', [5, 6], 360, 360)
			])
		);
		if (!found.ok) throw new Error(found.error.code);
		const hours = found.value.parts.map(({ id, hoursPerYear }) => [id, hoursPerYear]);
		expect(hours).toEqual([
			['shifts', 4000],
			['nights', 2000],
			['weekend', 2400],
			['closed', 360]
		]);
		expect(found.value.gaps).toEqual([]);
		expect(found.value.unassignedHoursPerYear).toBe(0);
	});

	// Derived by hand.
	it('[S11] reports the time that nobody has assigned', () => {
		const found = yearOfParts(schedule([period('day', WORKDAYS, 480, 1020)], 52));
		if (!found.ok) throw new Error(found.error.code);
		expect(found.value.gaps[0]).toEqual({ fromMin: 0, toMin: 480 });
		expect(found.value.gaps.at(-1)).toEqual({ fromMin: 4 * 1440 + 1020, toMin: 7 * 1440 });
		expect(found.value.unassignedHoursPerYear).toBe((168 - 45) * 52);
	});

	it('[S11] takes midnight to midnight as a whole day, and a full year as 8,760 h', () => {
		const found = yearOfParts(
			schedule([period('all', [0, 1, 2, 3, 4, 5, 6], 0, 1440)], 8760 / 168)
		);
		if (!found.ok) throw new Error(found.error.code);
		expect(found.value.parts[0]?.hoursPerYear).toBeCloseTo(8760, 9);
		expect(found.value.parts[1]?.hoursPerYear).toBeCloseTo(0, 9);
		const typed = yearOfParts(schedule([period('all', [0, 1, 2, 3, 4, 5, 6], 0, 1440)], 52.143));
		expect(typed.ok).toBe(true);
	});

	it('[S11] refuses an overlap, naming both and the minute', () => {
		const late = period('late', [0], 1320, 480);
		const early = period('early', [1], 420, 1020);
		expect(yearOfParts(schedule([late, early]))).toEqual({
			ok: false,
			error: {
				code: 'schedule-overlap',
				detail: { first: 'late', second: 'early', atMin: 1440 + 420 }
			}
		});
		const sunday = period('sunday', [6], 1320, 480);
		const monday = period('monday', [0], 420, 1020);
		expect(yearOfParts(schedule([sunday, monday]))).toMatchObject({
			error: { code: 'schedule-overlap' }
		});
	});

	it.each([
		[schedule([period('a', [7], 0, 60)]), 'period-day-out-of-range'],
		[schedule([period('a', [0], 1440, 60)]), 'period-time-out-of-range'],
		[schedule([period('a', [0], 0.5, 60)]), 'period-time-out-of-range'],
		[schedule([period('a', [0], 0, 60), period('a', [1], 0, 60)]), 'period-twice'],
		[schedule([period('closed', [0], 0, 60)]), 'period-twice'],
		[schedule([], 53), 'weeks-out-of-range'],
		[schedule([], NaN), 'weeks-out-of-range'],
		[
			schedule([{ ...period('a', [0], 0, 60), air: { ...on, demandM3PerMin: -1 } }]),
			'demand-out-of-range'
		],
		[{ ...schedule([]), closed: { ...on, setPressureBarGauge: 0 } }, 'set-pressure-out-of-range']
	])('[S11] refuses %j', (wrong, code) => {
		expect(yearOfParts(wrong)).toMatchObject({ ok: false, error: { code } });
	});

	// Law: assigned, unassigned and closed hours are the whole year; checked minute by minute.
	it('[S11] never loses an hour', () => {
		const anyPeriod = fc.record({
			days: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 3 }),
			fromMin: fc.integer({ min: 0, max: 1439 }),
			toMin: fc.integer({ min: 0, max: 1440 })
		});
		const weeks = fc.double({ min: 0, max: 52, noNaN: true });
		fc.assert(
			fc.property(fc.array(anyPeriod, { maxLength: 3 }), weeks, (drawn, weeksPerYear) => {
				const periods = drawn.map((p, i) => period(`p${i}`, p.days, p.fromMin, p.toMin));
				const covered = new Uint8Array(10_080);
				for (const { days, fromMin, toMin } of periods)
					for (const day of days) {
						const minutes = toMin > fromMin ? toMin - fromMin : toMin + 1440 - fromMin;
						for (let m = 0; m < minutes; m++) {
							const at = (day * 1440 + fromMin + m) % 10_080;
							covered[at] = (covered[at] ?? 0) + 1;
						}
					}
				const found = yearOfParts(schedule(periods, weeksPerYear));
				if (!found.ok) {
					expect(found.error.code).toBe('schedule-overlap');
					expect(Math.max(...covered)).toBeGreaterThan(1);
					return;
				}
				expect(Math.max(...covered)).toBeLessThan(2);
				const open = covered.filter((times) => times === 0).length;
				expect(found.value.unassignedHoursPerYear).toBeCloseTo((open / 60) * weeksPerYear, 6);
				const all = found.value.parts.reduce((sum, part) => sum + part.hoursPerYear, 0);
				expect(all + found.value.unassignedHoursPerYear).toBeCloseTo(8760, 6);
			})
		);
	});

	// Derived by hand: 365 − 15 = 350 days.
	it('[S11] takes closed days off the weeks', () => {
		expect(weeksWithout(15)).toEqual({ ok: true, value: 50 });
		expect(weeksWithout(366)).toMatchObject({ error: { code: 'days-out-of-range' } });
	});
});
