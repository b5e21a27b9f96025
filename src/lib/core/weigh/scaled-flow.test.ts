import { describe, expect, it } from 'vitest';
import { newSurvey } from '../survey/new-survey.ts';
import { apply } from '../survey/apply.ts';
import { invert } from '../survey/invert.ts';
import type { Leak, Survey } from '../survey/schema.ts';
import type { CommandBody } from '../survey/command.ts';
import { assess } from './assess.ts';

const ROUND = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };
const seenAt = '2026-01-05T09:00:00Z';

function leak(tag: number, evidence: NonNullable<Leak['sightings'][string]['evidence']>): Leak {
	return {
		id: `leak-${String(tag)}`,
		tag,
		sectionId: 'section-a',
		part: 'hose',
		hazards: [],
		sightings: { 'round-1': { state: 'leaking', seenAt, evidence } },
		mendings: {}
	};
}

function survey(): Survey {
	const empty = newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, ROUND);
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
		leaks: {
			'leak-1': leak(1, { kind: 'hole', diameterMm: 2, edge: 'sharp' }),
			'leak-2': leak(2, { kind: 'meter', flowLPerS: 3, reference: 'anr' }),
			'leak-3': leak(3, { kind: 'catalogue', cDm3PerSBar: 0.2, b: 0.3 })
		}
	};
}

const taken: CommandBody = {
	kind: 'set-starting-values',
	changes: { scaling: { factor: 0.7, systemTestId: 'test-1' } }
};

describe('[W12] scaling, taken over', () => {
	const plain = survey();
	const done = apply(plain, taken);
	if (!done.ok) throw new Error(done.error.code);
	const flowOf = (of: Survey, tag: number) =>
		assess(of, 'round-1').leaks.find((each) => each.tag === tag)?.massFlowKgPerS ?? Number.NaN;

	it('[W12] multiplies what was estimated and leaves what was metered (derived)', () => {
		expect(flowOf(done.value, 1)).toBeCloseTo(0.7 * flowOf(plain, 1), 15);
		expect(flowOf(done.value, 2)).toBe(flowOf(plain, 2));
		expect(flowOf(done.value, 3)).toBeCloseTo(0.7 * flowOf(plain, 3), 15);
	});

	it('[W12] leaves each uncertainty as it was', () => {
		const before = assess(plain, 'round-1').leaks;
		for (const each of assess(done.value, 'round-1').leaks)
			expect(each.relativeUncertainty).toBe(
				before.find(({ tag }) => tag === each.tag)?.relativeUncertainty
			);
	});

	it('[W12] is taken back without a trace', () => {
		const back = invert(plain, taken);
		if (!back.ok) throw new Error(back.error.code);
		const undone = apply(done.value, back.value);
		if (!undone.ok) throw new Error(undone.error.code);
		expect(assess(undone.value, 'round-1')).toEqual(assess(plain, 'round-1'));
	});
});
