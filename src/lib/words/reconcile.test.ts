import { describe, expect, it } from 'vitest';
import type { Reconciliation, Verdict } from '#lib/core/weigh/uncertainty/reconcile.ts';
import { createFormat } from './format.ts';
import { reconcileSentence } from './reconcile.ts';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
});

function outcome(verdict: Verdict, clear: boolean, low: number, median: number, high: number) {
	const spread = { low, median, high, mean: median };
	return {
		verdict,
		clear,
		foundShare: spread,
		foundKgPerS: spread,
		measuredKgPerS: spread,
		unlocatedKgPerS: spread,
		chanceTooHigh: 0,
		chanceKeepWalking: 0,
		mostFrom: 0.75
	} satisfies Reconciliation;
}

describe('[W11] what comparing with the system test says', () => {
	it('names the share with its interval, to what it is worth', () => {
		expect(reconcileSentence(outcome('keep-walking', true, 0.412, 0.587, 0.718), format)).toBe(
			'You have found about 60% of what the system loses (40% to 70%). Keep walking.'
		);
		expect(reconcileSentence(outcome('keep-walking', true, 0.012, 0.034, 0.061), format)).toContain(
			'about 3% of what the system loses (1% to 6%)'
		);
	});

	it('each outcome says what to do', () => {
		const say = (verdict: Verdict, clear: boolean) =>
			reconcileSentence(outcome(verdict, clear, 0.5, 1.2, 2), format);
		expect(say('keep-walking', false)).toMatch(/Keep walking, and measure the largest ones\.$/);
		expect(say('found-most', true)).toMatch(/^You have found most of it/);
		expect(say('found-most', false)).toMatch(/Measuring the largest ones would tell\.$/);
		expect(say('estimates-too-high', true)).toMatch(/scale the estimates to the test\.$/);
	});
});
