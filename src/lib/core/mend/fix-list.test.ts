import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Leak, Survey } from '../survey/schema.ts';
import { newSurvey } from '../survey/new-survey.ts';
import type { Assessment, LeakAssessment } from '../weigh/assessment.ts';
import { fixList } from './fix-list.ts';
import { storedEnergy } from './stored-energy.ts';
import { costOfWaitingPerDay } from './waiting.ts';

const round = { id: 'round-1', name: 'Round 1', startedAt: '2026-03-02T08:00:00Z' };
const leaking = { state: 'leaking', seenAt: '2026-03-02T09:00:00Z' } as const;

type Given = Partial<Leak> & { cost?: number };

function surveyOf(given: readonly Given[]): Survey {
	const survey = newSurvey({ id: 'site-a', name: 'Site A', currency: 'EUR' }, round);
	const leaks = given.map(({ cost: _cost, ...leak }, index): Leak => ({
		id: `leak-${String(index + 1)}`,
		tag: index + 1,
		part: 'flange',
		hazards: [],
		sightings: { 'round-1': leaking },
		mendings: {},
		...leak
	}));
	return {
		...survey,
		supply: { setPressureBarGauge: 7 },
		sections: {
			'section-a': {
				id: 'section-a',
				name: 'Section A',
				valve: 'BV1',
				volumeL: 50,
				pressureBarGauge: 10
			},
			'section-b': { id: 'section-b', name: 'Section B', volumeL: 100 },
			'section-c': { id: 'section-c', name: 'Section C', valve: 'BV3' },
			'section-gone': { id: 'section-gone', name: 'Gone', valve: 'BV9', removed: true }
		},
		leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
	};
}

function assessmentOf(given: readonly Given[]): Assessment {
	const weighed = given.flatMap(({ cost }, index): LeakAssessment[] =>
		cost === undefined
			? []
			: [
					{
						leakId: `leak-${String(index + 1)}`,
						tag: index + 1,
						state: 'leaking',
						effectiveAreaM2: 1e-6,
						relativeUncertainty: 0.5,
						pressureBarGauge: 7,
						hoursPerYear: 8760,
						regime: 'choked',
						massFlowKgPerS: 1e-3,
						freeAirM3PerS: 1e-3,
						costMinorPerYear: cost,
						rank: index + 1
					}
				]
	);
	return {
		roundId: 'round-1',
		method: 'quick',
		missing: [],
		warnings: [],
		reference: 'iso-1217' as const,
		referenceLabel: 'ISO 1217',
		currency: 'EUR',
		totals: { leakCount: weighed.length, massFlowKgPerS: 0, freeAirM3PerS: 0, freeAirM3PerYear: 0 },
		leaks: weighed,
		unweighed: given.flatMap(({ cost }, index) =>
			cost === undefined
				? [
						{
							leakId: `leak-${String(index + 1)}`,
							tag: index + 1,
							refusal: { code: 'no-evidence' }
						}
					]
				: []
		)
	};
}

const listOf = (...given: Given[]) => fixList(surveyOf(given), assessmentOf(given));
const namesOf = (list: ReturnType<typeof listOf>) =>
	list.groups.map(({ section }) => section?.name ?? 'no section');
const tagsOf = (list: ReturnType<typeof listOf>) =>
	list.groups.flatMap(({ jobs }) => jobs.map(({ tag }) => tag));

describe('fix list', () => {
	it('[P3] orders sections by what their open jobs cost, and jobs within them', () => {
		const list = listOf(
			{ sectionId: 'section-a', cost: 100 },
			{ sectionId: 'section-b', cost: 90 },
			{ sectionId: 'section-b', cost: 95 },
			{
				sectionId: 'section-c',
				cost: 5000,
				mendings: { 'round-1': { mendedAt: '2026-03-03T09:00:00Z' } }
			}
		);
		expect(namesOf(list)).toEqual(['Section B', 'Section A', 'Section C']);
		expect(tagsOf(list)).toEqual([3, 2, 1, 4]);
		expect(list.groups.map((group) => group.costMinorPerYear)).toEqual([185, 100, undefined]);
	});

	it('[P3] a pressure vessel comes first whatever it costs, and brings its section with it', () => {
		const list = listOf(
			{ sectionId: 'section-a', cost: 9000 },
			{ sectionId: 'section-b', cost: 10 },
			{ sectionId: 'section-b', part: 'pressure-vessel' }
		);
		expect(tagsOf(list)).toEqual([3, 2, 1]);
		expect(list.groups[0]?.jobs[0]).toMatchObject({ pinnedFirst: true, action: 'out-of-service' });
	});

	it('[P3] once a vessel is dealt with it no longer leads', () => {
		const list = listOf(
			{ sectionId: 'section-a', cost: 9000 },
			{
				sectionId: 'section-b',
				part: 'pressure-vessel',
				mendings: { 'round-1': { reSoaped: 'tight' } }
			}
		);
		expect(tagsOf(list)).toEqual([1, 2]);
	});

	it('keeps a leak that could not be weighed, without a cost', () => {
		const list = listOf({ sectionId: 'section-a' }, { sectionId: 'section-a', cost: 1 });
		expect(tagsOf(list)).toEqual([2, 1]);
		const job = list.groups[0]?.jobs[1];
		expect(job).toMatchObject({ unweighed: { code: 'no-evidence' }, done: false });
		expect(job).not.toHaveProperty('costMinorPerYear');
	});

	it('[C6] leaks without a standing section have a group of their own, last, that sends for the valve', () => {
		const list = listOf(
			{ cost: 900 },
			{ sectionId: 'section-gone', cost: 900 },
			{ sectionId: 'section-a', cost: 1 }
		);
		expect(namesOf(list)).toEqual(['Section A', 'no section']);
		expect(list.groups[1]?.cautions.map(({ id }) => id)).toContain('C6');
		for (const job of list.groups[1]?.jobs ?? [])
			expect(job.cautions.map(({ id }) => id)).toContain('C6');
	});

	it('shows mended and tight leaks as done, and one that still leaks as work', () => {
		const list = listOf(
			{ mendings: { 'round-1': { mendedAt: '2026-03-03T09:00:00Z' } } },
			{ mendings: { 'round-1': { mendedAt: '2026-03-03T09:00:00Z', reSoaped: 'tight' } } },
			{ mendings: { 'round-1': { mendedAt: '2026-03-03T09:00:00Z', reSoaped: 'still-leaking' } } }
		);
		expect(list).toMatchObject({ openCount: 1, doneCount: 2 });
		expect(tagsOf(list)).toEqual([3, 1, 2]);
	});

	it('every leak is on the list exactly once, with cautions, and the sections hold the whole cost', () => {
		const given = fc.array(
			fc.record(
				{
					sectionId: fc.constantFrom('section-a', 'section-b', 'section-c', 'section-gone'),
					cost: fc.integer({ min: 0, max: 1e6 }),
					part: fc.constantFrom('flange' as const, 'pressure-vessel' as const, 'hose' as const)
				},
				{ requiredKeys: [] }
			),
			{ maxLength: 30 }
		);
		fc.assert(
			fc.property(given, (leaks) => {
				const list = listOf(...leaks);
				expect(tagsOf(list).sort((a, b) => a - b)).toEqual(leaks.map((_, index) => index + 1));
				expect(list.groups.every((g) => g.jobs.every((job) => job.cautions.length > 0))).toBe(true);
				expect(list.groups.reduce((sum, g) => sum + (g.costMinorPerYear ?? 0), 0)).toBe(
					leaks.reduce((sum, { cost }) => sum + (cost ?? 0), 0)
				);
			})
		);
	});
});

describe('stored energy and waiting', () => {
	it('[P1] 10 bar × 50 L is 500 bar·L (HSE HSG39 / PSSR 2000 example, verified), 50 kJ', () => {
		const energy = storedEnergy(10, 50);
		expect(energy.ok && energy.value).toBeCloseTo(500 * 100, 6); // 1 bar·L = 100 J exactly
	});

	it('[P1] takes the section’s pressure, else the supply’s; without a volume there is none', () => {
		const list = listOf(
			{ sectionId: 'section-a', cost: 3 },
			{ sectionId: 'section-b', cost: 2 },
			{ sectionId: 'section-c', cost: 1 }
		);
		expect(list.groups.map((group) => group.storedEnergyJ)).toEqual([
			expect.closeTo(50_000),
			expect.closeTo(70_000),
			undefined
		]);
	});

	it('[P1] refuses what is no pressure or volume', () => {
		for (const [bar, litre] of [
			[-1, 1],
			[NaN, 1],
			[1, -1],
			[1, Infinity],
			[1e305, 1e9]
		] as const)
			expect(storedEnergy(bar, litre).ok).toBe(false);
	});

	it('names what loses its air with a section, where it was said what feeds it', () => {
		const given = [{ sectionId: 'section-a' }, { sectionId: 'section-b' }];
		const survey = surveyOf(given);
		const told = (survey: Survey) =>
			fixList(survey, assessmentOf(given)).groups.map(({ section, withoutAirToo }) => [
				section?.name,
				...withoutAirToo.map(({ name }) => name)
			]);
		expect(told(survey)).toEqual([['Section A'], ['Section B']]);
		const [a, c] = [survey.sections['section-a'], survey.sections['section-c']];
		if (!a || !c) throw new Error('no section');
		const fed: Survey = {
			...survey,
			sections: {
				...survey.sections,
				'section-a': { ...a, fedFrom: [{ kind: 'station' }] },
				'section-c': { ...c, fedFrom: [{ kind: 'section', sectionId: 'section-a' }] }
			}
		};
		expect(told(fed)).toEqual([['Section A', 'Section C'], ['Section B']]);
	});

	it('[P2] 365 days of waiting cost the year (derived)', () => {
		expect(costOfWaitingPerDay(36_500)).toBe(100);
		expect(costOfWaitingPerDay(1) * 365).toBeCloseTo(1, 12);
	});
});
