import { expect, test } from 'vitest';
import { clockDoubt } from './clock.ts';

const last = { at: '2026-03-02T08:15:00+01:00' };

test('a clock is doubted when it says less than what was done already, or than the program', () => {
	expect(clockDoubt('2026-03-02T07:15:00Z', last)).toBeUndefined();
	expect(clockDoubt('2026-03-02T08:06:00+01:00', last)).toBeUndefined();
	expect(clockDoubt('2026-03-02T07:15:00+01:00', last)).toBe('before-last-change');
	expect(clockDoubt('1970-01-01T00:10:00Z', last)).toBe('before-this-program');
	expect(clockDoubt('1970-01-01T00:10:00Z', undefined)).toBe('before-this-program');
	// A day ahead cannot be told from a day later.
	expect(clockDoubt('2026-03-03T08:15:00+01:00', last)).toBeUndefined();
	expect(clockDoubt('2026-03-02T07:15:00Z', undefined)).toBeUndefined();
});
