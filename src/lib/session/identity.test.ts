import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { Instant } from '#lib/core/survey/field-schema.ts';
import { boxTime } from '#lib/ui/mend/plan/box-time.ts';
import { withOffset } from './identity.ts';

afterEach(() => vi.unstubAllEnvs());

/** The clock of a place; the day that a zone changed its clocks is from its published rules (from memory). */
const at = (zone: string) => vi.stubEnv('TZ', zone);

describe('the time that a change is stamped with', () => {
	test('in the hour that comes twice tells the first from the second', () => {
		at('Europe/Vienna');
		const first = withOffset(new Date('2026-10-25T00:30:00Z'));
		const second = withOffset(new Date('2026-10-25T01:30:00Z'));
		expect(first).toBe('2026-10-25T02:30:00.000+02:00');
		expect(second).toBe('2026-10-25T02:30:00.000+01:00');
		// The hour that does not come is passed over.
		expect(withOffset(new Date('2026-03-29T00:59:59Z'))).toBe('2026-03-29T01:59:59.000+01:00');
		expect(withOffset(new Date('2026-03-29T01:00:00Z'))).toBe('2026-03-29T03:00:00.000+02:00');
	});

	test('has the day of the place, also where the zone is of half an hour or the day another', () => {
		const moment = new Date('2038-01-19T18:30:00Z');
		const written = ['Asia/Kathmandu', 'America/St_Johns', 'Pacific/Auckland', 'UTC'].map(
			(zone) => {
				at(zone);
				return withOffset(moment);
			}
		);
		expect(written).toEqual([
			'2038-01-20T00:15:00.000+05:45',
			'2038-01-19T15:00:00.000-03:30',
			'2038-01-20T07:30:00.000+13:00',
			'2038-01-19T18:30:00.000+00:00'
		]);
		expect(new Set(written.map((text) => Date.parse(text)))).toEqual(new Set([moment.getTime()]));
	});

	test.each(['UTC', 'Europe/Vienna', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kolkata'])(
		'is the same moment when it is read again, from 1970 to 2200: %s',
		(zone) => {
			at(zone);
			const date = fc.date({
				min: new Date('1970-01-02'),
				max: new Date('2200-01-01'),
				noInvalidDate: true
			});
			fc.assert(
				fc.property(date, (moment) => {
					const text = withOffset(moment);
					expect(Date.parse(text)).toBe(moment.getTime());
					expect(Instant.safeParse(text).success).toBe(true);
				})
			);
		}
	);

	test('is shown in a box as the clock here shows it, after a change of zone too', () => {
		at('Asia/Tokyo');
		const made = withOffset(new Date('2040-06-01T23:30:00Z'));
		expect(boxTime(made)).toBe('2040-06-02T08:30');
		at('Europe/Vienna');
		expect(boxTime(made)).toBe('2040-06-02T01:30');
		// The day that is printed is the one where it was recorded.
		expect(made.slice(0, 10)).toBe('2040-06-02');
	});
});
