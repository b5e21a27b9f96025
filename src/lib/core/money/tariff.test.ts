import { describe, expect, it } from 'vitest';
import { toSi } from '../units/convert.ts';
import { airCost, demandChargePerYear, energyCost, flatEnergyCost, type Tariff } from './tariff.ts';
import type { Result } from '../units/result.ts';

function value<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

const tariff: Tariff = {
	energy: [
		{ id: 'day', name: 'Day', pricePerKwh: 0.2 },
		{ id: 'night', name: 'Night', pricePerKwh: 0.1 }
	],
	demandCharge: { pricePerKw: 8, per: 'month' },
	air: []
};

describe('energy', () => {
	// Published. Compressor trade association, performance verification background page: 109 bhp,
	// 8,000 h, motor efficiency 0.93, 0.06 USD/kWh, 0.746 kW/bhp. Status: verified.
	// Printed 41,968, cut off rather than rounded: the sum is 41,968.5.
	it('[M3] meets the yearly cost of a compressor printed by its trade association', () => {
		const cost = flatEnergyCost((109 * 0.746 * 8000) / 0.93, 0.06);
		if (!cost.ok) throw new Error(cost.error.code);
		expect(Math.trunc(cost.value)).toBe(41968);
	});

	// Derived by hand: 1,000 × 0.20 + 500 × 0.10 + 10 × 0.20.
	it('[M3] charges each period at its price, and the first price where none is named', () => {
		const drawn = [
			{ priceId: 'day', energyKwh: 1000 },
			{ priceId: 'night', energyKwh: 500 },
			{ priceId: null, energyKwh: 10 }
		];
		expect(value(energyCost(tariff, drawn))).toBeCloseTo(252, 9);
	});

	it('[M3] refuses a price that is not there, an empty tariff and nonsense', () => {
		expect(energyCost(tariff, [{ priceId: 'dusk', energyKwh: 1 }])).toMatchObject({
			error: { code: 'tariff-price-unknown', detail: { priceId: 'dusk' } }
		});
		expect(energyCost({ ...tariff, energy: [] }, [])).toMatchObject({
			error: { code: 'tariff-has-no-price' }
		});
		expect(flatEnergyCost(1, -0.1)).toMatchObject({ error: { code: 'price-out-of-range' } });
		expect(flatEnergyCost(NaN, 1)).toMatchObject({ error: { code: 'energy-out-of-range' } });
	});
});

describe('demand charge', () => {
	// Derived by hand: 100 kW × 8 × 12.
	it('[M4] takes a monthly price twelve times and a yearly one once', () => {
		expect(demandChargePerYear({ pricePerKw: 8, per: 'month' }, 100)).toEqual({
			ok: true,
			value: 9600
		});
		expect(demandChargePerYear({ pricePerKw: 96, per: 'year' }, 100)).toEqual({
			ok: true,
			value: 9600
		});
	});

	it('[M4] refuses a negative peak or price', () => {
		expect(demandChargePerYear({ pricePerKw: 8, per: 'year' }, -1)).toMatchObject({ ok: false });
		expect(demandChargePerYear({ pricePerKw: NaN, per: 'year' }, 1)).toMatchObject({ ok: false });
	});
});

describe('cost by the cubic metre', () => {
	// Published. NAVFAC MO-209 (1989), tables 5-3 and 5-4: 47 scfm leak at 0.50 USD per 1,000 ft³
	// over a year is printed as 12,350 USD. Status: verified.
	it('[M5] meets the yearly cost of a measured leak charged by volume', () => {
		const cubicFoot = toSi('volume', 'ft3', 1);
		const perCubicMetre = 0.5 / 1000 / cubicFoot;
		const cost = airCost([{ name: 'air', pricePerM3: perCubicMetre }], 47 * cubicFoot * 60 * 8760);
		expect(value(cost)).toBeCloseTo(12350, -1);
	});

	// Derived by hand: 1,000 × (0.002 + 0.003).
	it('[M5] adds water and service', () => {
		const costs = [
			{ name: 'water', pricePerM3: 0.002 },
			{ name: 'service', pricePerM3: 0.003 }
		];
		expect(value(airCost(costs, 1000))).toBeCloseTo(5, 9);
		expect(airCost([], 1000)).toEqual({ ok: true, value: 0 });
	});

	it('[M5] refuses nonsense', () => {
		expect(airCost([], NaN)).toMatchObject({ error: { code: 'volume-out-of-range' } });
		expect(airCost([{ name: 'x', pricePerM3: -1 }], 1)).toMatchObject({
			error: { code: 'price-out-of-range' }
		});
	});
});
