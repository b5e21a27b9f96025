import { describe, expect, it } from 'vitest';
import { fromSi, toSi } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import {
	leastRegulatedEfficiency,
	packageEfficiency,
	regulatedPower
} from './package-efficiency.ts';

const inlet = as<'Pa absolute'>(1e5);
const discharge = as<'Pa absolute'>(8e5);
const flow = as<'m³/s'>(1);

describe('package efficiency', () => {
	// Derived by hand: 284.0 / 378.7 = 0.75.
	it('[S4] is isentropic power over package power', () => {
		const result = packageEfficiency(flow, inlet, discharge, as<'W'>(378_700));
		if (!result.ok) throw new Error(result.error.code);
		expect(result.value.efficiency).toBeCloseTo(0.75, 3);
		expect(result.value.plausibility).toBe('ordinary');
	});

	it.each([
		[300_000, 'unusually-good'],
		[800_000, 'unusually-poor']
	])('[S4] asks about a package of %d W', (power, plausibility) => {
		const result = packageEfficiency(flow, inlet, discharge, as<'W'>(power));
		expect(result).toMatchObject({ value: { plausibility } });
	});

	// Law: nothing beats the isothermal limit, 207.9 kW here.
	it('[S4] refuses what no machine can do', () => {
		expect(packageEfficiency(flow, inlet, discharge, as<'W'>(207_000))).toMatchObject({
			error: { code: 'power-below-isothermal-limit' }
		});
		expect(packageEfficiency(flow, inlet, discharge, as<'W'>(NaN))).toMatchObject({
			error: { code: 'power-out-of-range' }
		});
		expect(packageEfficiency(flow, inlet, as<'Pa absolute'>(1), as<'W'>(1))).toMatchObject({
			error: { code: 'discharge-below-inlet' }
		});
	});
});

describe('least efficiency allowed', () => {
	// Derived from 10 CFR 431.345, table 1 (formula verified in a copy of the text): kW per 100 cfm at
	// 100 psig and an inlet of 100 kPa, computed apart from this program to two decimals.
	it.each([
		['fixed-speed', 100, 21.44],
		['fixed-speed', 200, 19.88],
		['fixed-speed', 400, 18.8],
		['fixed-speed', 800, 18.08],
		['fixed-speed', 1000, 17.91],
		['variable-speed', 100, 23.26],
		['variable-speed', 400, 19.39],
		['variable-speed', 1000, 18.33]
	] as const)('[S4] a %s machine of %d cfm takes %d kW per 100 cfm', (drive, cfm, kwPer100) => {
		const power = regulatedPower(
			toSi('volumeFlow', 'cfm', cfm),
			toSi('pressure', 'psi', 100),
			drive
		);
		if (!power.ok) throw new Error(power.error.code);
		expect((fromSi('power', 'kW', power.value) / cfm) * 100).toBeCloseTo(kwPer100, 2);
	});

	it('[S4] holds the value at the ends of what the regulation covers', () => {
		const at = (cfm: number) =>
			leastRegulatedEfficiency(toSi('volumeFlow', 'cfm', cfm), 'fixed-speed');
		expect(at(5)).toEqual(at(35));
		expect(at(9000)).toEqual(at(1250));
		expect(at(0)).toMatchObject({ error: { code: 'flow-out-of-range' } });
		expect(regulatedPower(as<'m³/s'>(0), 7e5, 'fixed-speed')).toMatchObject({ ok: false });
		expect(regulatedPower(flow, -2e5, 'fixed-speed')).toMatchObject({ ok: false });
	});
});
