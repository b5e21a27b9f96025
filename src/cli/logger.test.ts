import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { asFile, METRO_NIGHT, METRO_START, record } from '../../tests/logger/rebuild.ts';
import { answered, captured } from './captured-run.ts';

interface Logged {
	readonly rows: number;
	readonly column: { readonly number: number; readonly kind: string };
	readonly cycles: readonly {
		readonly start: string | null;
		readonly loadedS: number;
		readonly unloadedS: number;
		readonly pressureStart: number | null;
		readonly pressureEnd: number | null;
	}[];
	readonly loadFraction: { readonly value: number; readonly standardUncertainty: number };
	readonly bySlopes: number | null;
	readonly offShift: unknown;
}

const night = record({
	cycles: METRO_NIGHT,
	start: METRO_START,
	stepS: 10,
	jitterS: 1.5,
	noise: 0.004,
	lost: 0.02,
	seed: 1
});
const bytes = (text: string) => new TextEncoder().encode(text);
const files = {
	'night.csv': bytes(asFile(night, 'Reservoirs')),
	'photo.csv': new Uint8Array([0x89, 0x50, 0, 0, 1, 2]),
	'demo.zip': new Uint8Array(
		readFileSync(new URL('../../survey-examples/ceramics-works.airtally.zip', import.meta.url))
	)
};

describe('logger', { timeout: 60_000 }, () => {
	it('[T11] the MetroPT-3 night (CC BY 4.0, verified), rebuilt: four cycles, 5 % loaded', async () => {
		const found = await answered<Logged>(['logger', 'night.csv'], files);
		expect(found.column).toMatchObject({ number: 2, kind: 'pressure' });
		expect(found.cycles.length).toBe(4);
		expect(found.cycles[1]?.start).toMatch(/^2020-02-01T00:3\d:/);
		expect(found.cycles[1]?.pressureStart).toBeCloseTo(8.064, 1);
		expect(found.cycles[1]?.pressureEnd).toBeCloseTo(10.066, 1);
		expect(found.loadFraction.value).toBeCloseTo(0.0502, 2);
		expect(found.loadFraction.standardUncertainty).toBeLessThan(0.005);
		expect(found.bySlopes).toBeCloseTo(0.0502, 2);
		expect(found.offShift).toBeNull();
	});

	it('[T10] takes a column by name or by number and refuses one that is not there', async () => {
		for (const column of ['reservoirs', '2'])
			expect(
				(await answered<Logged>(['logger', 'night.csv', '--column', column], files)).cycles.length
			).toBe(4);
		const { code, err } = await captured(['logger', 'night.csv', '--column', 'DV'], files);
		expect(code).toBe(2);
		expect(err).toContain('Reservoirs');
	});

	it('[T10] refuses a picture in one line', async () => {
		const { code, out, err } = await captured(['logger', 'photo.csv', '--json'], files);
		expect([code, out]).toEqual([2, '']);
		expect(err).toMatch(
			/^airtally logger: "photo\.csv": This is not a text file: see line 1;.*\n$/
		);
	});

	it('[W11] an audit says how much of the newest system test was found', async () => {
		const { systemCheck } = await answered<{
			systemCheck: {
				foundShare: { value: number; interval90: [number, number] };
				measuredKgPerS: { value: number };
				unlocatedKgPerS: { value: number };
				verdict: string;
			};
		}>(['audit', 'demo.zip'], files);
		const { value, interval90 } = systemCheck.foundShare;
		expect(interval90[0]).toBeLessThan(value);
		expect(interval90[1]).toBeGreaterThan(value);
		// 1 − share is what was not located, up to the difference of medians (derived).
		expect(systemCheck.unlocatedKgPerS.value / systemCheck.measuredKgPerS.value).toBeCloseTo(
			1 - value,
			1
		);
		expect(systemCheck.verdict).toBe(value < 0.75 ? 'keep-walking' : 'found-most');
	});
});
