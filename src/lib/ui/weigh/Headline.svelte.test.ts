import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { createFormat } from '#lib/words/format.ts';
import Headline from './Headline.svelte';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
});

test('leaks that none could weigh do not cost nothing: what they cost is not known', async () => {
	const survey = newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' }
	);
	const seen = { state: 'leaking', seenAt: '2026-01-05T09:00:00Z' } as const;
	const leak = { id: 'leak-1', tag: 1, part: 'hose' as const, hazards: [], mendings: {} };
	const assessment = assess(
		{
			...survey,
			site: { ...survey.site, altitudeM: 0 },
			supply: {
				setPressureBarGauge: 7,
				quick: { specificPowerKwPerM3PerMin: 6.8, source: '' }
			},
			prices: { pricePerKwh: 0.2 },
			leaks: { [leak.id]: { ...leak, sightings: { 'round-1': seen } } }
		},
		'round-1'
	);
	await render(Headline, {
		assessment,
		sure: { result: undefined, progress: undefined },
		format,
		gaps: [],
		unweighedHref: '#unweighed',
		workOut: () => undefined,
		methodHref: () => '#'
	});
	await expect.element(page.getByRole('link', { name: '1 more not weighed yet' })).toBeVisible();
	expect(page.getByText('Not known yet').elements()).toHaveLength(4);
	expect(page.getByText('€0').elements()).toHaveLength(0);
});
