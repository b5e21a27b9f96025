import { expect, test } from 'vitest';
import type { Period } from '#lib/core/survey/station-schema.ts';
import { barsOf, clock, daysInWords, endClock, minutesOf, uncovered } from './week-bars.ts';

const period = (days: number[], fromMin: number, toMin: number): Period => ({
	id: 'period-1',
	name: 'P',
	days,
	fromMin,
	toMin,
	air: { state: 'off' },
	priceId: null
});

test('a shift that runs past midnight is drawn on both days, Sunday into Monday', () => {
	expect(barsOf(period([6], 22 * 60, 6 * 60))).toEqual([
		{ day: 6, fromMin: 1320, toMin: 1440 },
		{ day: 0, fromMin: 0, toMin: 360 }
	]);
	expect(barsOf(period([2], 0, 0))).toEqual([{ day: 2, fromMin: 0, toMin: 1440 }]);
	expect(barsOf(period([2], 0, 1440))).toEqual([{ day: 2, fromMin: 0, toMin: 1440 }]);
});

test('what no period covers is found, where others overlap too', () => {
	const week = [period([0, 1, 2, 3, 4], 360, 840), period([0], 600, 1440), period([5, 6], 0, 0)];
	const gaps = uncovered(week);
	expect(gaps.filter(({ day }) => day === 0)).toEqual([{ day: 0, fromMin: 0, toMin: 360 }]);
	expect(gaps.filter(({ day }) => day === 3)).toEqual([
		{ day: 3, fromMin: 0, toMin: 360 },
		{ day: 3, fromMin: 840, toMin: 1440 }
	]);
	expect(gaps.filter(({ day }) => day > 4)).toEqual([]);
});

test('times go through a time field and back', () => {
	for (const minutes of [0, 1, 359, 1439]) expect(minutesOf(clock(minutes))).toBe(minutes);
	expect(clock(1440)).toBe('00:00');
	expect([0, 1440, 840].map(endClock)).toEqual(['24:00', '24:00', '14:00']);
	expect(minutesOf('')).toBeUndefined();
});

test('days are said in as few words as they take', () => {
	expect(daysInWords([0, 1, 2, 3, 4])).toBe('Mon to Fri');
	expect(daysInWords([5, 6])).toBe('Sat, Sun');
	expect(daysInWords([0, 2, 3, 4])).toBe('Mon, Wed, Thu, Fri');
	expect(daysInWords([0, 1, 2, 3, 4, 5, 6])).toBe('Every day');
	expect(daysInWords([])).toBe('');
});
