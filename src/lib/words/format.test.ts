import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createFormat } from './format.ts';

const LOCALES = ['en', 'de', 'fr', 'pl', 'hi'] as const;
const formatOf = (locale: string) =>
	createFormat({ locale, currency: 'EUR', units: { pressure: 'bar', flow: 'L/s', length: 'mm' } });

/** What is read, or `asked` when there are two readings. Derived by hand: each has one reading or is asked. */
const ASKED = 'number-ambiguous';
const UNREAD = 'number-unreadable';
type Read = number | string;

describe('numbers as people type them', () => {
	test.each<[text: string, ...reads: [en: Read, de: Read, fr: Read, pl: Read, hi: Read]]>([
		['6,5', 6.5, 6.5, 6.5, 6.5, 6.5],
		['6.5', 6.5, 6.5, 6.5, 6.5, 6.5],
		// One and a bit where the dot is the decimal mark, else that or a thousand and more.
		['1.234', 1.234, ASKED, ASKED, ASKED, 1.234],
		['1,234', ASKED, 1.234, 1.234, 1.234, ASKED],
		['1,234.5', 1234.5, 1234.5, 1234.5, 1234.5, 1234.5],
		['1.234,5', 1234.5, 1234.5, 1234.5, 1234.5, 1234.5],
		['1 234,5', 1234.5, 1234.5, 1234.5, 1234.5, 1234.5],
		['1 234.5', 1234.5, 1234.5, 1234.5, 1234.5, 1234.5],
		['1\u202f234,5', 1234.5, 1234.5, 1234.5, 1234.5, 1234.5],
		['1\u00a0234,5', 1234.5, 1234.5, 1234.5, 1234.5, 1234.5],
		["1'234.5", 1234.5, 1234.5, 1234.5, 1234.5, 1234.5],
		['1200,99', 1200.99, 1200.99, 1200.99, 1200.99, 1200.99],
		['0,125', 0.125, 0.125, 0.125, 0.125, 0.125],
		['0.125', 0.125, 0.125, 0.125, 0.125, 0.125],
		['1.234.567', 1_234_567, 1_234_567, 1_234_567, 1_234_567, 1_234_567],
		['1,234,5', ASKED, ASKED, ASKED, ASKED, ASKED],
		// Grouped the Indian way: what the groups mean is not guessed at.
		['1,00,000', ASKED, ASKED, ASKED, ASKED, ASKED],
		['6 5', UNREAD, UNREAD, UNREAD, UNREAD, UNREAD],
		['', UNREAD, UNREAD, UNREAD, UNREAD, UNREAD]
	])('“%s” is read alike or asked about', (text, ...expected) => {
		const read = LOCALES.map((locale) => {
			const number = formatOf(locale).readNumber(text);
			return number.ok ? number.value : number.error.code;
		});
		expect(read).toEqual(expected);
	});

	test('a question names both readings', () => {
		const asked = formatOf('de').readNumber('1.234');
		expect(asked.ok ? {} : asked.error.detail).toMatchObject({ readAs: 1.234, orAs: 1234 });
	});

	test.each([...LOCALES, 'ar-EG', 'fa', 'sv', 'de-CH', 'en-IN'])(
		'what a box shows in %s can be read back, and what stands in a table is read right or asked about',
		(locale) => {
			const format = formatOf(locale);
			fc.assert(
				fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (any) => {
					const value = Number(any.toPrecision(6)) + 0;
					// Six decimals are kept: nobody types less of a millimetre or a bar.
					fc.pre(value === 0 || Math.abs(value) > 1e-4);
					const back = format.readNumber(format.editable(value));
					expect(back).toEqual({ ok: true, value });
					const shown = format.readNumber(format.number(value));
					if (shown.ok) expect(Math.abs(shown.value - value)).toBeLessThan(0.501e-6);
					else expect(shown.error.code).toBe('number-ambiguous');
				})
			);
		}
	);
});

describe('days and moments', () => {
	test('the day of a record is the day where it was made, whatever the zone of the reader', () => {
		const { date } = formatOf('en-GB');
		// A minute before midnight in Auckland, and after it in Honolulu.
		expect(date('2026-11-02T23:59:00+13:00')).toBe('2 Nov 2026');
		expect(date('2026-11-03T00:01:00-10:00')).toBe('3 Nov 2026');
	});
});
