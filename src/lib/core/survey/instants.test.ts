import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hoursBetween } from './instants.ts';

describe('hours between instants', () => {
	// Expected: counted on the calendar by hand (derived).
	it.each([
		['2026-05-09T06:00:00+02:00', '2026-05-09T12:30:00+02:00', 6.5],
		['2026-05-09T06:00:00+02:00', '2026-05-09T04:00:00Z', 0],
		['2024-02-28T00:00:00Z', '2024-03-01T00:00:00Z', 48],
		['2026-02-28T00:00:00Z', '2026-03-01T00:00:00Z', 24],
		['2026-01-01T00:00Z', '2027-01-01T00:00Z', 8760],
		['2026-01-01T00:00:00-03:30', '2026-01-01T03:30:00Z', 0]
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
