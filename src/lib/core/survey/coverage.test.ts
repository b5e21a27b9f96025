import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverage, coveredShare } from './coverage.ts';
import { newSurvey } from './new-survey.ts';
import { leaksWithin } from './leaks-within.ts';
import type { Area, Leak, PlanPoint, Survey } from './schema.ts';

function rectangle(x: number, y: number, width: number, height: number): PlanPoint[] {
	return [
		{ x, y },
		{ x: x + width, y },
		{ x: x + width, y: y + height },
		{ x, y: y + height }
	];
}

describe('the share of a plan that was walked', () => {
	it('[W14] a rectangle covers its width times its height, all of it all (derived)', () => {
		expect(coveredShare([])).toBe(0);
		expect(coveredShare([rectangle(0, 0, 1, 1)])).toBeCloseTo(1, 12);
		expect(coveredShare([rectangle(0.1, 0.2, 0.5, 0.4)])).toBeCloseTo(0.2, 12);
	});

	it('[W14] a right triangle covers half of its rectangle (derived)', () => {
		const triangle = [
			{ x: 0, y: 0 },
			{ x: 1, y: 1 },
			{ x: 0, y: 1 }
		];
		expect(coveredShare([triangle])).toBeCloseTo(0.5, 6);
	});

	it('[W14] what overlaps counts once: 0.25 + 0.25 − 0.0625 (derived)', () => {
		const share = coveredShare([rectangle(0, 0, 0.5, 0.5), rectangle(0.25, 0.25, 0.5, 0.5)]);
		expect(share).toBeCloseTo(0.4375, 12);
	});

	it('[W14] never below the largest outline, above the sum of them or above the whole', () => {
		const point = fc.record({
			x: fc.double({ min: 0, max: 1, noNaN: true }),
			y: fc.double({ min: 0, max: 1, noNaN: true })
		});
		const outline = fc.array(point, { minLength: 3, maxLength: 6 });
		fc.assert(
			fc.property(fc.array(outline, { minLength: 1, maxLength: 4 }), (outlines) => {
				const each = outlines.map((one) => coveredShare([one]));
				const share = coveredShare(outlines);
				expect(share).toBeGreaterThanOrEqual(Math.max(...each) - 1e-9);
				expect(share).toBeLessThanOrEqual(
					Math.min(
						1,
						each.reduce((sum, one) => sum + one, 0)
					) + 1e-9
				);
			}),
			{ numRuns: 60 }
		);
	});
});

it('counts what was walked tight in this round and was not taken back', () => {
	const base = newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: 'round-2', name: 'Round 2', startedAt: '2026-03-02T08:00:00Z' }
	);
	const area = (id: string, roundId: string, removed?: true): Area => ({
		id,
		planId: 'plan-1',
		outline: rectangle(0, 0, 0.5, 1),
		use: { kind: 'walked-tight', roundId, walkedAt: '2026-03-02T09:00:00Z' },
		...(removed && { removed })
	});
	const image = { sha256: 'a'.repeat(64), mediaType: 'image/png', widthPx: 8, heightPx: 8 };
	const survey: Survey = {
		...base,
		plans: {
			'plan-1': { id: 'plan-1', name: 'Hall', image },
			'plan-2': { id: 'plan-2', name: 'Yard', image },
			'plan-3': { id: 'plan-3', name: 'Gone', image, removed: true }
		},
		areas: {
			'area-1': area('area-1', 'round-2'),
			'area-2': area('area-2', 'round-1'),
			'area-3': area('area-3', 'round-2', true)
		}
	};
	const found = coverage(survey, 'round-2');
	expect(found.map(({ plan }) => plan.name)).toEqual(['Hall', 'Yard']);
	expect(found[0]?.areas.map(({ id }) => id)).toEqual(['area-1']);
	expect(found[0]?.share).toBeCloseTo(0.5, 12);
	expect(found[1]?.share).toBe(0);
});

it('names what leaks in an area that was called tight, and nothing else', () => {
	const base = newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: 'round-2', name: 'Round 2', startedAt: '2026-03-02T08:00:00Z' }
	);
	const seenAt = '2026-03-02T09:00:00Z';
	const leak = (id: string, tag: number, x: number, more: Partial<Leak> = {}): Leak => ({
		...{ id, tag, part: 'hose', hazards: [], mendings: {}, planId: 'plan-1', at: { x, y: 0.5 } },
		sightings: { 'round-2': { state: 'leaking', seenAt } },
		...more
	});
	const leaks = [
		leak('in-it', 9, 0.4),
		leak('in-it-too', 2, 0.1),
		leak('beside-it', 3, 0.6),
		leak('of-another-plan', 4, 0.4, { planId: 'plan-2' }),
		leak('taken-back', 5, 0.4, { removed: true }),
		leak('tight', 6, 0.4, { sightings: { 'round-2': { state: 'tight', seenAt } } }),
		leak('of-another-round', 7, 0.4, { sightings: { 'round-1': { state: 'leaking', seenAt } } })
	];
	const survey: Survey = { ...base, leaks: Object.fromEntries(leaks.map((one) => [one.id, one])) };
	const area: Area = {
		...{ id: 'area-1', planId: 'plan-1', outline: rectangle(0, 0, 0.5, 1) },
		use: { kind: 'walked-tight', roundId: 'round-2', walkedAt: seenAt }
	};
	expect(leaksWithin(survey, 'round-2', area).map(({ tag }) => tag)).toEqual([2, 9]);
});
