import { describe, expect, it } from 'vitest';
import { QUANTITY_IDS, type Working, type WorkingUnit } from '#lib/core/weigh/working/tree.ts';
import { sureText } from './sure.ts';
import { createFormat } from './format.ts';
import {
	originWords,
	QUANTITY_WORDS,
	workingInterval,
	workingLabel,
	workingValue
} from './quantities.ts';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'psi', flow: 'cfm', length: 'mm' }
});
const show = (value: number, unit: WorkingUnit): string =>
	workingValue({ value, unit }, format).replaceAll('\u202f', ' ');

describe('words for the quantities of a working', () => {
	it('every quantity has its words, and no word is left over', () => {
		expect(Object.keys(QUANTITY_WORDS).sort()).toEqual([...QUANTITY_IDS].sort());
		expect(new Set(QUANTITY_IDS).size).toBe(QUANTITY_IDS.length);
		for (const words of Object.values(QUANTITY_WORDS)) expect(words).toMatch(/^[A-Z][^.]+$/);
	});

	it('says of which leak, part of the week or machine it is', () => {
		expect(workingLabel({ id: 'energy-per-year', of: { kind: 'leak', tag: 12 } })).toBe(
			'Energy a year: tag 12'
		);
		expect(workingLabel({ id: 'demand', of: { kind: 'closed' } })).toBe('Demand: closed');
	});

	it('writes values in the reader’s units (derived by hand)', () => {
		expect(show(123_456, 'minor')).toBe('€1,235');
		expect(show(0.19, 'currency/kWh')).toBe('€0.19 per kWh');
		expect(show(12.345, 'currency')).toBe('€12.35');
		expect(show(0.000_471_947_443, 'm³/s')).toBe('1 cfm');
		expect(show(0.028_316_846_6, 'm³/min')).toBe('1 cfm');
		expect(show(101_325, 'Pa absolute')).toBe('14.7 psi absolute');
		expect(show(293.15, 'K')).toBe('20 °C');
		expect(show(3e-6, 'm²')).toBe('3 mm²');
		expect(show(0.002, 'm³')).toBe('2 L');
		expect(show(4e-9, 'm³')).toBe('0.004 cm³');
		expect(show(0.125, 'share')).toBe('12.5%');
		expect(show(1500, 'kWh per m³/min')).toBe('1,500 kWh per m³/min');
	});

	it('gives the middle 90 % where the uncertainty is known, else nothing', () => {
		const node: Working = { id: 'free-air-flow', value: 0.01, unit: 'm³/s', inputs: [] };
		expect(workingInterval(node, format)).toBeUndefined();
		// ln 2 / 1.645 = 0.4214: half to twice.
		const doubtful = workingInterval({ ...node, relativeUncertainty: 0.421_404 }, format);
		expect(doubtful?.replaceAll('\u202f', ' ')).toBe(
			'nine in ten, by its reading alone: 10.6 cfm to 42.4 cfm'
		);
	});

	it('[W7] writes a drawn interval as the page does, with its middle where that is another', () => {
		const interval = { low: 3_213_400, median: 4_100_900, high: 5_612_300 };
		const node: Working = {
			id: 'cost-per-year',
			value: 3_900_000,
			unit: 'minor',
			interval,
			inputs: []
		};
		const { range, value } = sureText(format, 'money', interval);
		expect(workingInterval(node, format)).toBe(
			`nine in ten, by all errors: ${range}, its middle ${value}`
		);
		expect(workingInterval({ ...node, value: interval.median }, format)).toBe(
			`nine in ten, by all errors: ${range}`
		);
	});

	it('says where an input came from', () => {
		expect(originWords({ kind: 'section', name: 'Press hall' })).toBe(
			'from the section “Press hall”'
		);
		expect(originWords({ kind: 'cited', source: 'our starting value' })).toBe(
			'source: our starting value'
		);
	});
});
