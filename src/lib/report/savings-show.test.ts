import { expect, test } from 'vitest';
import { createFormat } from '#lib/words/format.ts';
import { rangeText } from './savings-show.ts';

test('both ends of a range stand in one unit, that of the larger', () => {
	const format = createFormat({
		locale: 'en-GB',
		currency: 'EUR',
		units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
	});
	expect(rangeText({ low: 61_234, high: 204_000 }, format.energy)).toBe(
		'61\u202fMWh to 200\u202fMWh'
	);
	expect(rangeText({ low: 612, high: 9_040 }, format.energy)).toBe(
		'610\u202fkWh to 9,000\u202fkWh'
	);
	expect(rangeText({ low: 6_300, high: 20_400 }, format.carbon)).toBe('6.3\u202ft to 20\u202ft');
});
