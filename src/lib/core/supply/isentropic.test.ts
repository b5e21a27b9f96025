import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSi } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import type { Result } from '../units/result.ts';
import { inletVolumeFactor } from './inlet-air.ts';
import { isentropicPower, isothermalPower, workFactor } from './isentropic.ts';
import { energyKwh } from './quick.ts';

const pa = as<'Pa absolute'>;
const flow = as<'m³/s'>;
function value<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

describe('ideal power', () => {
	// Derived from the formula of 10 CFR 431 subpart T appendix A (formula from memory).
	it('[S2] 1 m³/s from 100 to 800 kPa takes 284.0 kW, and never under 207.9 kW', () => {
		expect(value(isentropicPower(flow(1), pa(1e5), pa(8e5))) / 1e3).toBeCloseTo(284.0, 1);
		expect(value(isothermalPower(flow(1), pa(1e5), pa(8e5))) / 1e3).toBeCloseTo(207.9, 1);
	});

	// Derived, per cubic metre drawn in at 1.01325 bar, computed apart from this program; to half of
	// the fourth decimal, which is what all six have.
	it.each([
		[6, 0.0727, 0.05445],
		[7, 0.07935, 0.0582],
		[8, 0.08543, 0.06151]
	])('[S2] energy per cubic metre to %d bar gauge', (bar, isentropic, isothermal) => {
		const inlet = pa(101_325);
		const discharge = pa(101_325 + bar * 1e5);
		const perHour = flow(1 / 3600);
		const ideal = value(isentropicPower(perHour, inlet, discharge)) / 1e3;
		const least = value(isothermalPower(perHour, inlet, discharge)) / 1e3;
		expect(Math.abs(ideal - isentropic)).toBeLessThan(0.000_05);
		expect(Math.abs(least - isothermal)).toBeLessThan(0.000_05);
	});

	// Published. Çengel and Boles, Thermodynamics, example 7-22: inputs and formula verified, the
	// printed answers 296.9 kJ/kg, 2.563 kW, 11,698 kWh and 913 USD from memory. The mass flow is the
	// printed 0.008632 kg/s; the book's constants R = 0.287 and 293 K give the inlet volume.
	it('[S2] meets the textbook leak from flow to money', () => {
		const inlet = pa(101_000);
		const volume = (massKgPerS: number) => flow((massKgPerS * 287 * 293) / inlet);
		const perKg = value(isentropicPower(volume(1), inlet, pa(801_000))) / 0.8;
		expect(perKg / 1e3).toBeCloseTo(296.9, 1);
		const kw = value(isentropicPower(volume(0.008_632), inlet, pa(801_000))) / 0.8 / 1e3;
		expect(Math.abs(kw - 2.563)).toBeLessThan(0.0005);
		const kwh = value(energyKwh(kw / 0.92, 4200));
		expect(Math.abs(kwh - 11_698)).toBeLessThan(0.0002 * 11_698);
		expect(Math.round(kwh * 0.078)).toBe(913);
	});

	// Law: isentropic lies above isothermal, and both meet at no compression.
	it('[S2] isentropic work is never under isothermal work', () => {
		const ratio = fc.double({ min: 1.000_001, max: 20, noNaN: true });
		fc.assert(
			fc.property(ratio, (r) => {
				const ideal = value(isentropicPower(flow(1), pa(1e5), pa(r * 1e5)));
				const least = value(isothermalPower(flow(1), pa(1e5), pa(r * 1e5)));
				expect(ideal).toBeGreaterThanOrEqual(least * (1 - 1e-9));
			})
		);
		expect(value(isentropicPower(flow(1), pa(1e5), pa(1e5)))).toBe(0);
	});

	it('[S2] refuses a discharge below the inlet and a flow that is none', () => {
		expect(isentropicPower(flow(1), pa(1e5), pa(9e4))).toMatchObject({
			error: { code: 'discharge-below-inlet' }
		});
		expect(isothermalPower(flow(NaN), pa(1e5), pa(8e5))).toMatchObject({
			error: { code: 'flow-out-of-range' }
		});
	});
});

describe('work and pressure', () => {
	// Published. Çengel and Boles, Thermodynamics, p. 399: from 985.6 to 885.6 kPa at an inlet of
	// 85.6 kPa saves the printed fraction 0.06, hence 720 of 12,000 USD. Status: verified.
	it('[S3] meets the textbook pressure reduction', () => {
		const saved = 1 - workFactor(pa(85_600), pa(985_600), pa(885_600));
		expect(Math.abs(saved - 0.06)).toBeLessThan(0.005);
		expect(saved).toBeCloseTo(0.05991, 5);
		expect(Math.round(saved * 100) * 120).toBe(720);
	});

	// Law.
	it('[S3] rises with pressure and is one at the rated pressure', () => {
		const pressure = fc.double({ min: 1.1e5, max: 17e5, noNaN: true });
		fc.assert(
			fc.property(pressure, pressure, (rated, actual) => {
				const here = workFactor(pa(1e5), pa(rated), pa(actual));
				const higher = workFactor(pa(1e5), pa(rated), pa(actual * 1.01));
				expect(higher).toBeGreaterThan(here);
			})
		);
		expect(workFactor(pa(1e5), pa(8e5), pa(8e5))).toBe(1);
	});
});

describe('air at the inlet', () => {
	const state = (kPa: number, celsius: number) => ({
		pressure: pa(kPa * 1e3),
		temperature: toSi('temperature', 'C', celsius)
	});

	// Derived by hand: (100/80)·(303.15/293.15) = 1.29264.
	it('[S18] a reference cubic metre takes more room in thin and warm air', () => {
		const factor = value(inletVolumeFactor(state(100, 20), state(80, 30)));
		expect(factor).toBeCloseTo(1.29264, 5);
		expect(value(inletVolumeFactor(state(100, 20), state(100, 20)))).toBe(1);
	});

	it('[S18] refuses a vacuum', () => {
		expect(inletVolumeFactor(state(100, 20), state(0, 20))).toMatchObject({
			error: { code: 'air-state-out-of-range' }
		});
	});
});
