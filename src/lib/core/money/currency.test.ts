import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromMinor, minorDigits, toMinor } from './currency.ts';

describe('minor units', () => {
	// Published. ISO 4217: yen have none, euro two, Kuwaiti dinar three. Status: from memory.
	it.each([
		['JPY', 0],
		['EUR', 2],
		['GBP', 2],
		['USD', 2],
		['INR', 2],
		['KWD', 3]
	])('[M1] %s has %d decimal digits', (currency, digits) => {
		expect(minorDigits(currency)).toEqual({ ok: true, value: digits });
	});

	// Derived by hand.
	it.each([
		[12.345, 'EUR', 1235],
		[1.005, 'EUR', 101],
		[-1.005, 'EUR', -101],
		[0.0004, 'EUR', 0],
		[-0.0004, 'EUR', 0],
		[1e-7, 'EUR', 0],
		[1999.5, 'JPY', 2000],
		[1.2345, 'KWD', 1235],
		[1e12, 'EUR', 1e14]
	])('[M1] %d %s is %d', (amount, currency, minor) => {
		expect(toMinor(amount, currency)).toEqual({ ok: true, value: minor });
	});

	// Law.
	it('[M1] comes back unchanged from minor units', () => {
		fc.assert(
			fc.property(
				fc.integer({ min: -1e15, max: 1e15 }),
				fc.constantFrom('JPY', 'EUR', 'KWD'),
				(minor, currency) => {
					const amount = fromMinor(minor, currency);
					if (!amount.ok) throw new Error(amount.error.code);
					expect(toMinor(amount.value, currency)).toEqual({ ok: true, value: minor });
				}
			)
		);
	});

	it('[M1] refuses an unknown currency and amounts beyond exact integers', () => {
		const unknown = {
			ok: false,
			error: { code: 'currency-unknown', detail: { currency: 'EURO' } }
		};
		expect(minorDigits('EURO')).toEqual(unknown);
		expect(toMinor(1, 'EURO')).toEqual(unknown);
		expect(fromMinor(1, 'EURO')).toEqual(unknown);
		expect(minorDigits('constructor')).toMatchObject({ ok: false });
		for (const amount of [NaN, Infinity, -Infinity, 1e15])
			expect(toMinor(amount, 'EUR')).toMatchObject({ error: { code: 'amount-out-of-range' } });
		expect(fromMinor(0.5, 'EUR')).toMatchObject({ error: { code: 'amount-out-of-range' } });
	});
});
