import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, toSi } from '../units/convert.ts';
import { startingCapacityM3PerMin, startingLoadedKw, STARTING_CONTROL } from './starting-values.ts';

describe('starting values', () => {
	// Published. US DOE / Compressed Air Challenge sourcebook: about 18 to 22 kW per 100 cfm at 100 psig.
	// Status: from memory; a plausibility range.
	it.each([100, 200, 400, 800])('[S17] %d cfm at 100 psig takes 18 to 22 kW per 100 cfm', (cfm) => {
		const m3PerMin = fromSi('volumeFlow', 'm3/min', toSi('volumeFlow', 'cfm', cfm));
		const bar = fromSi('pressure', 'bar', toSi('pressure', 'psi', 100));
		const kw = startingLoadedKw(m3PerMin, bar, 'load-unload');
		if (!kw.ok) throw new Error(kw.error.code);
		expect((kw.value / cfm) * 100).toBeGreaterThan(18);
		expect((kw.value / cfm) * 100).toBeLessThan(22);
	});

	// Law.
	it('[S17] size from power undoes power from size', () => {
		const sizes = fc.double({ min: 0.1, max: 500, noNaN: true });
		const choices = fc.constantFrom('start-stop', 'load-unload', 'throttled', 'variable-speed');
		fc.assert(
			fc.property(
				sizes,
				fc.double({ min: 3, max: 13, noNaN: true }),
				choices,
				(size, bar, choice) => {
					const kw = startingLoadedKw(size, bar, choice);
					if (!kw.ok) throw new Error(kw.error.code);
					const back = startingCapacityM3PerMin(kw.value, bar, choice);
					if (!back.ok) throw new Error(back.error.code);
					expect(Math.abs(back.value / size - 1)).toBeLessThan(1e-7);
				}
			)
		);
	});

	it('[S17] refuses a size or power that is none', () => {
		expect(startingLoadedKw(0, 7, 'load-unload')).toMatchObject({ ok: false });
		expect(startingCapacityM3PerMin(0, 7, 'load-unload')).toMatchObject({
			error: { code: 'power-out-of-range' }
		});
		expect(startingCapacityM3PerMin(1e9, 7, 'load-unload')).toMatchObject({ ok: false });
		expect(startingCapacityM3PerMin(10, NaN, 'load-unload')).toMatchObject({ ok: false });
	});

	it('[S17] says of each control where its figures came from', () => {
		for (const { source } of Object.values(STARTING_CONTROL))
			expect(source).toMatch(/common practice|our starting value/);
	});
});
