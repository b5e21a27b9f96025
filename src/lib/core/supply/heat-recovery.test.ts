import { describe, expect, it } from 'vitest';
import { recoveredHeatKwh } from './heat-recovery.ts';
import type { Result } from '../units/result.ts';

function value<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

describe('heat recovery', () => {
	// Derived by hand: 100,000 · 0.7 · 0.4.
	it('[S15] is the share caught and the share used', () => {
		expect(
			value(recoveredHeatKwh({ recoveredFraction: 0.7, usefulFraction: 0.4 }, 1e5))
		).toBeCloseTo(28_000, 9);
	});

	it('[S15] refuses more heat than energy', () => {
		expect(recoveredHeatKwh({ recoveredFraction: 1.1, usefulFraction: 1 }, 1)).toMatchObject({
			error: { code: 'heat-recovery-out-of-range' }
		});
		expect(recoveredHeatKwh({ recoveredFraction: 1, usefulFraction: 1 }, NaN)).toMatchObject({
			error: { code: 'energy-out-of-range' }
		});
	});
});
