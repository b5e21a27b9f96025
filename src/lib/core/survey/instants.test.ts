import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { afterInstant, compareInstants, hoursBetween } from './instants.ts';
import { latestRound } from './leak-state.ts';
import { newSurvey } from './new-survey.ts';
import { Instant } from './field-schema.ts';

describe('hours between instants', () => {
	// Expected: counted on the calendar by hand (derived).
	it.each([
		['2026-05-09T06:00:00+02:00', '2026-05-09T12:30:00+02:00', 6.5],
		['2026-05-09T06:00:00+02:00', '2026-05-09T04:00:00Z', 0],
		['2024-02-28T00:00:00Z', '2024-03-01T00:00:00Z', 48],
		['2026-02-28T00:00:00Z', '2026-03-01T00:00:00Z', 24],
		['2026-01-01T00:00Z', '2027-01-01T00:00Z', 8760],
		['2026-01-01T00:00:00-03:30', '2026-01-01T03:30:00Z', 0],
		// The night in which Vienna's clocks go back, and the one in which they go on.
		['2026-10-25T02:30:00+02:00', '2026-10-25T02:30:00+01:00', 1],
		['2026-03-29T01:30:00+01:00', '2026-03-29T03:30:00+02:00', 1],
		// Over the end of what 32 bits of seconds count to.
		['2038-01-19T03:14:07Z', '2038-01-19T04:14:08Z', 1 + 1 / 3600],
		['2026-05-09T06:00:00+02:00', '2046-05-09T06:00:00+02:00', 20 * 8760 + 5 * 24]
	])('from %s to %s', (from, to, hours) => {
		expect(hoursBetween(from, to)).toBeCloseTo(hours, 12);
	});

	it('law: agrees with the clock of the machine that runs this test', () => {
		const instant = fc
			.date({ min: new Date('1900-01-01'), max: new Date('2200-01-01'), noInvalidDate: true })
			.map((date) => date.toISOString());
		fc.assert(
			fc.property(instant, instant, (from, to) => {
				expect(hoursBetween(from, to)).toBeCloseTo((Date.parse(to) - Date.parse(from)) / 3.6e6, 6);
			})
		);
	});
});

describe('the order of instants', () => {
	const of = (...startedAt: string[]) => {
		const start = newSurvey(
			{ id: 'site-1', name: 'Works', currency: 'EUR' },
			{ id: 'round-0', name: '0', startedAt: startedAt[0] ?? '' }
		);
		const rounds = startedAt.map((at, index) => [
			`round-${index}`,
			{ id: `round-${index}`, name: String(index), startedAt: at }
		]);
		return { ...start, rounds: Object.fromEntries(rounds) as typeof start.rounds };
	};

	it.each([
		['the hour that comes twice', ['2026-10-25T02:50:00+02:00', '2026-10-25T02:10:00+01:00']],
		['a journey west', ['2026-05-09T09:00:00+09:00', '2026-05-09T02:30:00+02:00']],
		['after 2038', ['2038-01-19T03:14:07Z', '2038-01-19T04:14:08+01:00']]
	])('is that of time, not of the letters: %s', (_, [first = '', second = '']) => {
		expect(compareInstants(first, second)).toBeLessThan(0);
		expect(latestRound(of(first, second))?.id).toBe('round-1');
		expect(latestRound(of(second, first))?.id).toBe('round-0');
	});

	it('a round that a clock behind the time begins is still the one of now', () => {
		const last = '2026-05-09T06:00:00.250+02:00';
		for (const wrong of ['1970-01-01T00:10:00Z', last, '2026-05-09T03:00:00Z']) {
			const at = afterInstant(wrong, last);
			expect(Instant.safeParse(at).success).toBe(true);
			expect(at.slice(0, 10)).toBe('2026-05-09');
			expect(compareInstants(at, last)).toBeGreaterThan(0);
			expect(latestRound(of(last, at))?.id).toBe('round-1');
		}
		expect(afterInstant('2040-01-01T00:00:00Z', last)).toBe('2040-01-01T00:00:00Z');
		expect(afterInstant('1970-01-01T00:00:00Z', '2026-05-09T06:00Z')).toBe(
			'2026-05-09T06:00:00.0001Z'
		);
	});
});
