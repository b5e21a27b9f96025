import { describe, expect, it } from 'vitest';
import { createFormat } from './format.ts';
import { sureText } from './sure.ts';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'cfm', length: 'mm' }
});

describe('a figure with its interval in words', () => {
	// Derived by hand from METHOD W10: half the width is 12,250, so the last digit is worth 1,000.
	it('[W10] keeps the digits that the interval earns, in one unit for all three', () => {
		expect(
			sureText(format, 'money', { low: 3_158_517, median: 4_012_345, high: 5_606_261 })
		).toEqual({
			value: '€40,000',
			low: '€32,000',
			high: '€56,000',
			range: '€32,000 to €56,000'
		});
		// Half the width is 35.2, which keeps two digits.
		const energy = sureText(format, 'energy', { low: 90_400, median: 120_300, high: 160_800 });
		expect(energy.value).toBe('120\u202fMWh');
		expect(energy.range).toBe('90\u202fMWh to 161\u202fMWh');
	});

	// 1 cfm is 0.000471947 m³/s: rounded where it is read, not in m³/s.
	it('[W10] rounds in the unit that is shown', () => {
		const flow = sureText(format, 'flow', { low: 0.04, median: 0.05, high: 0.06 });
		expect(flow).toMatchObject({ value: '106\u202fcfm', range: '85\u202fcfm to 127\u202fcfm' });
	});

	it('writes small sums to the cent and never as nothing', () => {
		const cents = sureText(format, 'money', { low: 3, median: 44, high: 310 });
		expect(cents).toMatchObject({ value: '€0.40', low: '€0.03' });
	});
});
