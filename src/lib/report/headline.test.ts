import { expect, it } from 'vitest';
import { sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import { uncertaintyModel } from '../core/weigh/uncertainty/model.ts';
import { uncertaintyResult } from '../core/weigh/uncertainty/result.ts';
import { startRun } from '../core/weigh/uncertainty/run.ts';
import type { Survey } from '../core/survey/schema.ts';
import { createFormat } from '../words/format.ts';
import { withIntervals } from './headline.ts';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
});
const numbers = (text: string) =>
	[...text.matchAll(/[\d,]+(?:\.\d+)?/g)].map(([digits]) => Number(digits.replaceAll(',', '')));

it('[W10] each total of the cover stands within the interval that is printed under it', () => {
	const survey = sampleSurvey(12);
	const drawn = uncertaintyModel(survey, 'round-1', {});
	const run = drawn.ok ? startRun(drawn.value) : drawn;
	if (!run.ok) throw new Error(run.error.code);
	while (!run.value.finished) run.value.step(1000);
	const plain = sampleModel(survey);
	const model = withIntervals(plain, uncertaintyResult(run.value).totals, format);
	const told = model.figures.filter(({ note }) => note?.startsWith('90 % interval '));
	expect(told.map(({ of }) => of)).toEqual(['flow', 'energy', 'money']);
	for (const { value, note = '' } of told) {
		const [of = NaN] = numbers(value);
		const [, low = NaN, high = NaN] = numbers(note);
		expect(low).toBeLessThan(of);
		expect(high).toBeGreaterThan(of);
	}
	expect(model.figures[2]?.note).toContain(plain.figures[2]?.note);
	expect(model.figures[0]).toEqual(plain.figures[0]);
});

it('the sum of leaks that none could weigh is not known, and has no interval', () => {
	const whole = sampleSurvey(3);
	const leaks = Object.fromEntries(
		Object.entries(whole.leaks).map(([id, leak]) => [
			id,
			{ ...leak, sightings: { 'round-1': { state: 'leaking', seenAt: '2026-03-05T09:00:00Z' } } }
		])
	) as Survey['leaks'];
	const [, air, energy, money] = sampleModel({ ...whole, leaks }).figures;
	for (const figure of [air, energy, money]) {
		expect(figure?.value).toBe('not known yet');
		expect(figure?.of).toBeUndefined();
	}
	expect(air?.note).toContain('3 more not weighed');
});
