import { expect, test } from 'vitest';
import { cardRows } from './field-card.ts';

test('[A3] the card says what the largest hole of its bands loses', () => {
	// Derived by hand: choked flow 0.040 42·p·A/√T through 3 mm at 8.01325 bar absolute, over 1.188 kg/m³.
	const row = cardRows().find(({ response }) => response === 'film-blown-away');
	const derived = (0.040_42 * 801_325 * Math.PI * 0.0015 ** 2) / Math.sqrt(293.15) / 1.188;
	expect(row?.highM3S).toBeCloseTo(derived, 4);
});

test('every soap response is on the card, mildest first, and each band is above the one before', () => {
	const rows = cardRows();
	expect(rows).toHaveLength(6);
	for (const [index, row] of rows.entries()) {
		expect(row.highM3S).toBeGreaterThan(row.lowM3S);
		expect(row.lowM3S).toBeGreaterThan(rows[index - 1]?.lowM3S ?? 0);
	}
});
