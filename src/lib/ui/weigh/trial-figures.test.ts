import { describe, expect, it } from 'vitest';
import type { YearFigures } from '#lib/core/weigh/what-if.ts';
import { createFormat } from '#lib/words/format.ts';
import { figuresBeside } from './trial-figures.ts';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
});

const year = (costMinorPerYear: number, energyKwhPerYear: number): YearFigures => ({
	method: 'supply',
	leakCount: 1,
	freeAirM3PerS: 0.05,
	leaks: { costMinorPerYear, energyKwhPerYear },
	warnings: []
});

/** The rows of cost and of energy, as they stand in the table. */
const told = (today: YearFigures, then: YearFigures) =>
	figuresBeside(today, then, format)
		.slice(0, 2)
		.map((row) => [row.today, row.then, row.change].map((text) => text.replaceAll('\u202f', ' ')));

describe('a year today beside one that is tried', () => {
	it('gives the change of the sums as they stand there, and one unit along the row (derived)', () => {
		expect(told(year(3_606_242, 190_100), year(1_280_670, 67_400))).toEqual([
			['€36,062', '€12,807', '−€23,255'],
			['190 MWh', '67.4 MWh', '−123 MWh']
		]);
	});

	it('gives a change to the cent that the sums beside it do not show', () => {
		expect(told(year(3_606_242, 190_100), year(3_606_198, 190_100))).toEqual([
			['€36,062', '€36,062', '−€0.44'],
			['190 MWh', '190 MWh', 'none']
		]);
	});
});
