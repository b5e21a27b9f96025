import { afterEach, describe, expect, it, vi } from 'vitest';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Leak, Survey } from '#lib/core/survey/schema.ts';
import { uncertaintyModel } from '#lib/core/weigh/uncertainty/model.ts';
import { uncertaintyResult } from '#lib/core/weigh/uncertainty/result.ts';
import { startRun } from '#lib/core/weigh/uncertainty/run.ts';
import { Uncertainty } from './uncertainty.svelte.ts';

const ROUND = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };

function survey(leakCount: number): Survey {
	const empty = newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, ROUND);
	const leaks = Array.from({ length: leakCount }, (_, index): Leak => ({
		id: `leak-${index + 1}`,
		tag: index + 1,
		sectionId: 'section-a',
		part: 'hose',
		hazards: [],
		sightings: {
			'round-1': {
				state: 'leaking',
				seenAt: '2026-01-05T09:00:00Z',
				evidence: { kind: 'hole', diameterMm: 1 + (index % 17) / 10, edge: 'sharp' }
			}
		},
		mendings: {}
	}));
	return {
		...empty,
		site: { ...empty.site, barometerKPa: 100 },
		supply: { quick: { specificPowerKwPerM3PerMin: 6.5, source: 'test' } },
		prices: { pricePerKwh: 0.2 },
		sections: {
			'section-a': {
				id: 'section-a',
				name: 'A',
				pressureBarGauge: 7,
				pressurisedHoursPerYear: 8000
			}
		},
		leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
	};
}

describe('how sure, beside the page', () => {
	const uncertainty = new Uncertainty();
	afterEach(() => uncertainty.close());

	it('[W7] gives what the same run gives on the page', async () => {
		const small = survey(20);
		uncertainty.start(small, 'round-1');
		await vi.waitFor(() => expect(uncertainty.state).toBe('done'), { timeout: 10_000 });
		const model = uncertaintyModel(small, 'round-1');
		if (!model.ok) throw new Error(model.error.code);
		const run = startRun(model.value);
		if (!run.ok) throw new Error(run.error.code);
		while (!run.value.finished) run.value.step(500);
		expect(uncertainty.outcome?.result).toEqual(uncertaintyResult(run.value));
		expect(uncertainty.outcome?.survey).toBe(small);
		expect(uncertainty.progress).toBe(1);
	});

	it('[W7] stops when told, keeps the page free, and starts again', async () => {
		const large = survey(5000);
		uncertainty.start(large, 'round-1');
		await vi.waitFor(() => expect(uncertainty.progress).toBeGreaterThan(0), { timeout: 10_000 });
		expect(uncertainty.state).toBe('running');
		uncertainty.cancel();
		const stopped = uncertainty.state;
		expect(stopped).not.toBe('running');
		await new Promise((resolve) => setTimeout(resolve, 200));
		expect(uncertainty.state).toBe(stopped);
		uncertainty.start(survey(3), 'round-1');
		await vi.waitFor(() => expect(uncertainty.outcome?.result.leaks.length).toBe(3), {
			timeout: 10_000
		});
	});

	it('[W6] says why not', async () => {
		const { barometerKPa: _, ...site } = survey(1).site;
		uncertainty.start({ ...survey(1), site }, 'round-1');
		await vi.waitFor(() => expect(uncertainty.state).toBe('refused'), { timeout: 10_000 });
		expect(uncertainty.refusal?.code).toBe('site-pressure-unknown');
	});
});
