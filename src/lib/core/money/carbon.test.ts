import { describe, expect, it } from 'vitest';
import { carbonKg } from './carbon.ts';

describe('carbon', () => {
	// Published. US Energy Information Administration, frequently asked question 74: 1,650 Mt CO₂ for
	// 4,230,672 GWh in 2022, printed as 0.39 kg/kWh and 0.86 lb/kWh. Status: verified.
	it('[M6] gives back the national emissions that its factor was made from', () => {
		const factor = { kgCo2ePerKwh: 0.39, year: 2022, source: 'US EIA FAQ 74' };
		const kg = carbonKg(4_230_672e6, factor);
		if (!kg.ok) throw new Error(kg.error.code);
		expect(Math.abs(kg.value / 1650e9 - 1)).toBeLessThan(0.005 / 0.39);
		expect(0.39 / 0.453_592_37).toBeCloseTo(0.86, 2);
	});

	it('[M6] refuses a factor without a source, and nonsense', () => {
		const factor = { kgCo2ePerKwh: 0.2, year: 2025, source: 'a named table' };
		expect(carbonKg(1, { ...factor, source: ' ' })).toMatchObject({
			error: { code: 'emission-factor-without-source' }
		});
		expect(carbonKg(1, { ...factor, kgCo2ePerKwh: -0.2 })).toMatchObject({
			error: { code: 'emission-factor-out-of-range' }
		});
		expect(carbonKg(Infinity, factor)).toMatchObject({ error: { code: 'energy-out-of-range' } });
	});
});
