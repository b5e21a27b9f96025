import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSi } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import { storedEnergy, storedFreeAir } from './receiver.ts';
import type { Result } from '../units/result.ts';

function value<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

const pa = as<'Pa absolute'>;
const m3 = as<'m³'>;

describe('stored air', () => {
	// Derived by hand: 1 US gallon over 10 psi at 14.7 psia holds 0.13368 · 10/14.7 = 0.09094 ft³.
	it('[S5] a gallon over ten psi holds a little less than a tenth of a cubic foot', () => {
		const stored = storedFreeAir(
			toSi('volume', 'gal(US)', 1),
			toSi('pressure', 'psi', 10),
			pa(toSi('pressure', 'psi', 14.7))
		);
		if (!stored.ok) throw new Error(stored.error.code);
		expect(stored.value / toSi('volume', 'ft3', 1)).toBeCloseTo(0.09094, 5);
	});

	it('[S5] refuses nonsense', () => {
		expect(storedFreeAir(m3(-1), 1, pa(1e5))).toMatchObject({ ok: false });
		expect(storedFreeAir(m3(1), NaN, pa(1e5))).toMatchObject({ ok: false });
		expect(storedFreeAir(m3(1), 1, pa(0))).toMatchObject({ ok: false });
	});
});

describe('stored energy', () => {
	// Derived by a second route: the work of the slow expansion at ambient temperature, pushing the
	// surroundings back, added up step by step: W = ∫ (p·V/v − p₁) dv from V to V·p/p₁.
	it('[S5] is the work of a slow expansion', () => {
		const pressure = fc.double({ min: 1.01e5, max: 17e5, noNaN: true });
		fc.assert(
			fc.property(pressure, (p) => {
				const steps = 4000;
				const end = p / 1e5;
				let sum = 0;
				for (let i = 0; i < steps; i++) {
					const v = 1 + ((end - 1) * (i + 0.5)) / steps;
					sum += ((p / v - 1e5) * (end - 1)) / steps;
				}
				const energy = storedEnergy(m3(1), pa(p), pa(1e5));
				if (!energy.ok) throw new Error(energy.error.code);
				expect(Math.abs(energy.value - sum)).toBeLessThan(1e-4 * sum + 1);
			}),
			{ numRuns: 30 }
		);
	});

	// Derived by hand: 1 m³ at 8 bar absolute: 8e5·ln 8 − 7e5 = 963.6 kJ.
	it('[S5] of a cubic metre at 7 bar gauge is near a megajoule', () => {
		expect(value(storedEnergy(m3(1), pa(8e5), pa(1e5)))).toBeCloseTo(963_553, -1);
	});

	it('[S5] refuses a pressure below ambient', () => {
		expect(storedEnergy(m3(1), pa(9e4), pa(1e5))).toMatchObject({ ok: false });
		expect(storedEnergy(m3(-1), pa(9e5), pa(1e5))).toMatchObject({ ok: false });
	});
});
