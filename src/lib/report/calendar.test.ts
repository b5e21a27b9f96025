import ICAL from 'ical.js';
import { afterEach, describe, expect, it } from 'vitest';
import { planned, sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import type { Survey } from '../core/survey/schema.ts';
import { windowsCalendar } from './calendar.ts';

const zone = process.env['TZ'];
afterEach(() => {
	if (zone === undefined) delete process.env['TZ'];
	else process.env['TZ'] = zone;
});

const survey = () => planned(sampleSurvey(24));
const events = (text: string) =>
	new ICAL.Component(ICAL.parse(text) as unknown[])
		.getAllSubcomponents('vevent')
		.map((component) => new ICAL.Event(component));
const calendarOf = (of: Survey, printedAt = '2026-03-10T07:30:00Z') =>
	windowsCalendar({ ...sampleModel(of), printedAt });

describe('windows as a calendar', () => {
	// RFC 5545, 3.1: lines end in CRLF and are no longer than 75 octets (from memory).
	it('lines end in CRLF, are at most 75 octets long, and no character is cut in two', () => {
		const text = calendarOf(survey());
		expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
		for (const line of text.split('\r\n'))
			expect(new TextEncoder().encode(line).length, line).toBeLessThanOrEqual(75);
		expect(text).not.toContain('\ufffd');
		expect(events(text)[1]?.summary).toBe('Air off: Łódź; stop, “half day”, Sample works');
	});

	it.each(['Europe/Vienna', 'America/Los_Angeles'])('in %s it is the same instant', (place) => {
		process.env['TZ'] = place;
		const [first, second] = events(calendarOf(survey()));
		// 06:00 and 22:00 at +01:00, four hours each; the clocks change in the night of the second.
		expect(first?.startDate.toJSDate().toISOString()).toBe('2026-03-14T05:00:00.000Z');
		expect(first?.endDate.toJSDate().toISOString()).toBe('2026-03-14T09:00:00.000Z');
		expect(second?.startDate.toJSDate().toISOString()).toBe('2026-03-28T21:00:00.000Z');
		expect(second?.endDate.toJSDate().toISOString()).toBe('2026-03-29T01:00:00.000Z');
	});

	it('a later export has the same names and a higher sequence, so that it moves the entries', () => {
		const first = events(calendarOf(survey()));
		const later = events(calendarOf(survey(), '2026-03-10T07:30:01Z'));
		expect(later.map(({ uid }) => uid)).toEqual(first.map(({ uid }) => uid));
		expect(new Set(first.map(({ uid }) => uid)).size).toBe(2);
		first.forEach(({ sequence }, index) =>
			expect(later[index]?.sequence).toBeGreaterThan(sequence)
		);
		// RFC 5545, 3.3.8: an integer of 32 bits with its sign (from memory).
		const last = events(calendarOf(survey(), '2060-01-01T00:00:00Z'));
		expect(last[0]?.sequence).toBeLessThan(2 ** 31);
	});

	it('[C1] says per section which valve to close, and each job with its cautions', () => {
		const model = sampleModel(survey());
		events(calendarOf(survey())).forEach(({ description }, index) => {
			for (const group of model.groups)
				for (const row of group.rows.filter(
					({ windowId }) => windowId === `window-${String(index + 1)}`
				)) {
					const from = description.indexOf(`Tag ${row.tag}:`);
					expect(from).toBeGreaterThan(0);
					expect(description).toContain(group.valve);
					const own = description
						.slice(from)
						.split('\n')
						.slice(1, 1 + row.cautions.length);
					expect(own.join('\n')).toContain(row.cautions.map(({ text }) => text).at(-1));
				}
		});
	});

	it('says no caution of the site twice', () => {
		const model = sampleModel(survey());
		const [first] = events(calendarOf(survey()));
		expect(first?.description.split(model.closing.text)).toHaveLength(2);
	});

	it('a window without jobs says so, with the cautions of the site', () => {
		const { mendPlan: _, ...none } = survey();
		const [event] = events(calendarOf(none));
		expect(event?.description).toContain('No job is planned into this window yet.');
		expect(event?.description).toContain('prove zero');
	});
});
