import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answered, captured } from './captured-run.ts';

interface Machine {
	readonly points: readonly {
		readonly powerKw: number;
		readonly powerFraction: number;
		readonly shortageM3PerMin: number;
		readonly cycle: { readonly loadedS: number; readonly offLoadS: number } | null;
	}[];
}

const machine = (control: string, ...more: string[]) =>
	answered<Machine>([
		...['power', '--capacity', '100 cfm', '--loaded', '20 kW', '--control', control],
		...more
	]);

describe('power of one machine', () => {
	// 87 % and 76 % at half flow, read in a third-party text that quotes DOE curves (verified as read);
	// the starting values were chosen to meet them.
	it('[S6][S17] at half flow a gallon per cfm takes 87 %, three gallons 76 % of the power', async () => {
		for (const [gallons, printed] of [
			[100, 0.87],
			[300, 0.76]
		] as const) {
			const { points } = await machine(
				...(['load-unload', '--receiver', `${gallons} gal(US)`, '--demand', '50 cfm'] as const)
			);
			expect(Math.abs((points[0]?.powerFraction ?? 0) - printed)).toBeLessThan(0.015);
		}
	});

	it('[S6] the cycle is S/(Q − q) on and S/q off (derived by hand)', async () => {
		const { points } = await answered<Machine>([
			...['power', '--capacity', '10 m3/min', '--loaded', '60 kW', '--control', 'load-unload'],
			...['--receiver', '2 m3', '--band', '1 bar', '--barometer', '100 kPa'],
			...['--demand', '4 m3/min']
		]);
		expect(points[0]?.cycle?.loadedS).toBeCloseTo(20, 9);
		expect(points[0]?.cycle?.offLoadS).toBeCloseTo(30, 9);
	});

	it('[S7] a throttled machine at 70 % takes 1 − 0.3·0.3 of its power (derived)', async () => {
		const { points } = await machine('throttled', '--receiver', '1 m3', '--demand', '70 cfm');
		expect(points[0]?.powerKw).toBeCloseTo(20 * 0.91, 9);
	});

	it('[S10] says what it cannot deliver, and takes full power then', async () => {
		const args = ['--receiver', '1 m3', '--demand', '100 cfm', '--demand', '120 cfm'];
		const { points } = await machine('load-unload', ...args);
		expect(points.map(({ powerKw }) => powerKw)).toEqual([20, 20]);
		expect((points[1]?.shortageM3PerMin ?? 0) / 0.3048 ** 3).toBeCloseTo(20, 9);
		const { err } = await captured([
			...['power', '--capacity', '100 cfm', '--loaded', '20 kW', '--control', 'load-unload'],
			...args
		]);
		expect(err).toContain('more is asked for');
	});
});

describe('power of a survey', () => {
	const name = 'ceramics-works.airtally.zip';
	const files = {
		[name]: new Uint8Array(readFileSync(new URL(`../../survey-examples/${name}`, import.meta.url)))
	};

	it('[S12][S13] the year is the sum of its parts, and the saving what audit shares out (law)', async () => {
		interface Year {
			readonly energyKwhPerYear: number;
			readonly energyWithoutLeaksKwhPerYear: number;
			readonly savingKwhPerYear: number;
			readonly parts: readonly {
				readonly hoursPerYear: number;
				readonly energyKwhPerYear: number;
				readonly powerKw: number;
				readonly machines: readonly { readonly powerKw: number }[];
			}[];
		}
		const year = await answered<Year>(['power', name], files);
		const audit = await answered<{ totals: { energyKwhPerYear: number } }>(['audit', name], files);
		const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
		expect(sum(year.parts.map(({ energyKwhPerYear }) => energyKwhPerYear))).toBeCloseTo(
			year.energyKwhPerYear,
			6
		);
		expect(sum(year.parts.map(({ hoursPerYear }) => hoursPerYear))).toBeCloseTo(8760, 6);
		for (const part of year.parts)
			expect(sum(part.machines.map(({ powerKw }) => powerKw))).toBeCloseTo(part.powerKw, 9);
		expect(year.savingKwhPerYear).toBeCloseTo(audit.totals.energyKwhPerYear, 6);
		expect(year.energyKwhPerYear - year.energyWithoutLeaksKwhPerYear).toBeCloseTo(
			year.savingKwhPerYear,
			6
		);
	});

	it('prints the machines of each part', async () => {
		const { out, code } = await captured(['power', name], files);
		expect(code).toBe(0);
		expect(out).toMatch(/Early shift +2,000 +17\.2 .*C1: full .*C3, trim: trim/);
	});
});
