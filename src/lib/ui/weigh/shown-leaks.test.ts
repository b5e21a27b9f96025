import { describe, expect, test } from 'vitest';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
import { byPart, bySection } from './by-section.ts';
import {
	NOT_NARROWED,
	NO_SECTION,
	facetChoices,
	narrowed,
	rankedRows,
	sorted
} from './ranked-rows.ts';
import { queryOf, STARTING_VIEW, viewOf, type TableView } from './table-view.ts';
import { savedFor, spendingOrder } from './spending.ts';
import { firstToReach, runningTotal } from './running-total.ts';

function weighed(tag: number, rank: number, cost: number | undefined): LeakAssessment {
	return {
		leakId: `leak-${tag}`,
		tag,
		state: 'leaking',
		effectiveAreaM2: 1e-6,
		relativeUncertainty: 0.3,
		pressureBarGauge: 7,
		hoursPerYear: 8000,
		regime: 'choked',
		massFlowKgPerS: 0.001,
		freeAirM3PerS: tag / 1000,
		...(cost !== undefined && { costMinorPerYear: cost }),
		rank
	};
}

function survey(): Survey {
	const empty = newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' }
	);
	const leak = (tag: number, sectionId: string | undefined, place: string) => ({
		id: `leak-${tag}`,
		tag,
		part: tag === 3 ? ('hose' as const) : ('valve' as const),
		...(sectionId !== undefined && { sectionId }),
		place,
		hazards: [],
		sightings: {},
		mendings: {}
	});
	return {
		...empty,
		sections: {
			'section-a': { id: 'section-a', name: 'Hall' },
			'section-b': { id: 'section-b', name: 'Yard' },
			'section-gone': { id: 'section-gone', name: 'Gone', removed: true }
		},
		leaks: Object.fromEntries(
			[
				leak(1, 'section-a', 'Bay 10'),
				leak(2, 'section-b', 'Bay 9'),
				leak(3, 'section-gone', ''),
				leak(4, 'section-a', 'bay 2')
			].map((each) => [each.id, each])
		)
	};
}

describe('the running total', () => {
	test('derived: shares of 50, 30 and 20 in rank order add up to all', () => {
		const points = runningTotal([weighed(1, 3, 20), weighed(2, 1, 50), weighed(3, 2, 30)], 'cost');
		expect(points.map(({ tag, running, share }) => [tag, running, share])).toEqual([
			[2, 50, 0.5],
			[3, 80, 0.8],
			[1, 100, 1]
		]);
		expect(firstToReach(points, 0.8)).toBe(2);
		expect(firstToReach(points, 0.81)).toBe(3);
	});

	test('is empty where there is nothing to share out', () => {
		expect(runningTotal([], 'cost')).toEqual([]);
		expect(runningTotal([weighed(1, 1, undefined)], 'cost')).toEqual([]);
		expect(firstToReach([], 0.8)).toBe(0);
	});

	test('derived: the air of a year is flow times hours: 0.001 m³/s for 8,000 h is 28,800 m³', () => {
		expect(runningTotal([weighed(1, 1, undefined)], 'air')[0]?.amount).toBeCloseTo(28_800, 6);
	});
});

describe('where the air goes', () => {
	test('derived: sections add up their leaks, most first, and what has none stands last', () => {
		const shares = bySection(
			survey(),
			[weighed(1, 1, 30), weighed(2, 2, 40), weighed(3, 3, 100), weighed(4, 4, 30)],
			'cost'
		);
		expect(
			shares.map(({ name, leakCount, amount, share }) => [name, leakCount, amount, share])
		).toEqual([
			['Hall', 2, 60, 0.3],
			['Yard', 1, 40, 0.2],
			['', 1, 100, 0.5]
		]);
	});
});

describe('where the air goes by part', () => {
	test('derived: kinds of part add up their leaks, most first', () => {
		const found = byPart(
			survey(),
			[weighed(1, 1, 30), weighed(2, 2, 40), weighed(3, 3, 100)],
			'cost'
		);
		expect(found.map(({ name, leakCount, amount }) => [name, leakCount, amount])).toEqual([
			['Hose', 1, 100],
			['Valve', 2, 70]
		]);
	});
});

describe('saving against money spent', () => {
	const point = (tag: number, cost: number, partsCost: number) => ({
		leakId: `leak-${tag}`,
		tag,
		spent: partsCost,
		saved: cost
	});

	test('derived: what pays back soonest comes first, and both sums run on', () => {
		// Paid back in 0, 0.1 and 1 year.
		const points = spendingOrder([point(1, 100, 100), point(2, 50, 0), point(3, 1000, 100)]);
		expect(points.map(({ tag, spent, saved }) => [tag, spent, saved])).toEqual([
			[2, 0, 50],
			[3, 100, 1050],
			[1, 200, 1150]
		]);
		expect(savedFor(points, 99)).toEqual({ count: 1, saved: 50 });
		expect(savedFor(points, 150)).toEqual({ count: 2, saved: 1050 });
	});
});

describe('the ranked table', () => {
	const rows = rankedRows(
		survey(),
		[weighed(4, 1, 90), weighed(1, 2, undefined), weighed(3, 3, 70)],
		[{ ...weighed(2, 1, 500), state: 'mended' }],
		'worth'
	);
	const tags = (of: typeof rows) => of.map(({ tag }) => tag);

	test('what is mended stands behind what leaks, without a rank', () => {
		expect(rows.map(({ tag, rank }) => [tag, rank])).toEqual([
			[4, 1],
			[1, 2],
			[3, 3],
			[2, undefined]
		]);
	});

	test('sorts numbers inside texts as numbers, and puts what is not known last either way', () => {
		expect(tags(sorted(rows, { key: 'place', falling: false }))).toEqual([4, 2, 1, 3]);
		expect(tags(sorted(rows, { key: 'place', falling: true }))).toEqual([1, 2, 4, 3]);
		expect(tags(sorted(rows, { key: 'cost', falling: true }))).toEqual([2, 4, 3, 1]);
		expect(tags(sorted(rows, { key: 'cost', falling: false }))).toEqual([3, 4, 2, 1]);
	});

	test('narrows by section, part and state together; a removed section is none', () => {
		expect(tags(narrowed(rows, NOT_NARROWED))).toEqual([4, 1, 3, 2]);
		const by = (change: Partial<typeof NOT_NARROWED>) =>
			tags(narrowed(rows, { ...NOT_NARROWED, ...change }));
		expect(by({ section: ['section-a'] })).toEqual([4, 1]);
		expect(by({ section: [NO_SECTION] })).toEqual([3]);
		expect(by({ section: ['section-a', NO_SECTION] })).toEqual([4, 1, 3]);
		expect(by({ part: ['valve'], state: ['leaking'] })).toEqual([4, 1]);
		expect(by({ part: ['valve', 'hose'], state: ['leaking', 'mended'] })).toEqual([4, 1, 3, 2]);
	});

	test('derived: choices count what the other lists let through, and keep what has none', () => {
		const counts = (change: Partial<typeof NOT_NARROWED>) =>
			facetChoices(rows, 'section', { ...NOT_NARROWED, ...change }).map(({ text, count }) => [
				text,
				count
			]);
		expect(counts({})).toEqual([
			['Hall', 2],
			['No section yet', 1],
			['Yard', 1]
		]);
		expect(counts({ section: ['section-b'], state: ['leaking'] })).toEqual([
			['Hall', 2],
			['No section yet', 1],
			['Yard', 0]
		]);
	});

	test('derived: places are those of the order asked for', () => {
		// One action for valves and one for a hose, so the cheaper leak may pay back sooner.
		const order = (by: 'payback' | 'perMinute') => {
			const of = rankedRows(
				survey(),
				[weighed(4, 1, 9000), weighed(1, 2, 80), weighed(3, 3, 70)],
				[],
				by
			);
			expect(of.map(({ rank }) => rank)).toEqual([1, 2, 3]);
			return of.map((row) => row[by] ?? NaN);
		};
		const payback = order('payback');
		expect(payback).toEqual(payback.toSorted((a, b) => a - b));
		const perMinute = order('perMinute');
		expect(perMinute).toEqual(perMinute.toSorted((a, b) => b - a));
	});
});

describe('the address of a table', () => {
	const start = new URL('https://example.org/weigh?site=site-a');

	test('says nothing while nothing is changed, and gives back what was put in', () => {
		expect(queryOf(start, STARTING_VIEW)).toBe('?site=site-a');
		const views: TableView[] = [
			STARTING_VIEW,
			{ sorting: { key: 'payback', falling: false }, narrowing: NOT_NARROWED },
			{
				sorting: { key: 'cost', falling: false },
				narrowing: {
					section: ['section-a', NO_SECTION],
					part: ['hose'],
					state: ['mended', 'tight']
				}
			}
		];
		for (const view of views)
			expect(viewOf(new URLSearchParams(queryOf(start, view)))).toEqual(view);
	});

	test('what nobody offers is read as the start', () => {
		expect(viewOf(new URLSearchParams('order=__proto__'))).toEqual(STARTING_VIEW);
	});
});
