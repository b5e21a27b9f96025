import { describe, expect, it } from 'vitest';
import { planned, sampleSurvey } from '../../../../../tests/report/sample.ts';
import { assess } from '../../weigh/assess.ts';
import { planProblem } from './plan-problem.ts';
import { plannedParts } from './planned-parts.ts';
import { proposal } from './proposal.ts';
import { greedyPlan } from './greedy.ts';

// Expected: hand sums of the table of METHOD P4 (derived).
describe('the parts of a plan', () => {
	const hoses = (budget?: number) => {
		const survey = planned(sampleSurvey(3));
		const leaks = Object.values(survey.leaks).map((leak) => ({
			...leak,
			action: 'replace-hose' as const,
			...(leak.tag === 3 && { job: { partsCost: 12.5 } })
		}));
		return {
			...survey,
			leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak])),
			mendPlan: { ...survey.mendPlan, ...(budget !== undefined && { budget }) }
		};
	};

	it('[P11] are summed by window and in all, and stand beside the budget', () => {
		// Tag 2 in the first window, tags 1 and 3 in the second; a hose is 25, that of tag 3 has its own sum.
		expect(plannedParts(hoses(60))).toEqual({
			windows: [
				{ windowId: 'window-1', jobCount: 1, partsMinor: 2500 },
				{ windowId: 'window-2', jobCount: 2, partsMinor: 3750 }
			],
			partsMinor: 6250,
			budgetMinor: 6000
		});
		expect(plannedParts(hoses())).not.toHaveProperty('budgetMinor');
	});

	it('[P11] a leak or a window that is gone takes no parts', () => {
		const survey = hoses(60);
		const [first] = Object.values(survey.leaks);
		if (!first) throw new Error('the sample has no leak');
		const leaks = { ...survey.leaks, [first.id]: { ...first, removed: true } };
		expect(plannedParts({ ...survey, leaks }).partsMinor).toBe(3750);
		const windows = { ...survey.windows };
		delete windows['window-2'];
		expect(plannedParts({ ...survey, windows }).partsMinor).toBe(2500);
	});

	it('[P11] a proposal has the sum that its plan has once it is taken', () => {
		const survey = { ...planned(sampleSurvey(40)), mendPlan: { budget: 300 } };
		const asked = planProblem(survey, assess(survey, 'round-1'));
		if (!asked.ok) throw new Error(asked.error.code);
		const greedy = greedyPlan(asked.value.problem);
		const worth = greedy.worthMinor();
		const shown = proposal(survey, asked.value, {
			windowOf: greedy.windowOf,
			foundBy: 'greedy',
			worthMinor: worth,
			greedyWorthMinor: worth
		});
		const taken = plannedParts({
			...survey,
			mendPlan: { ...survey.mendPlan, windows: shown.assignment }
		});
		expect(shown.parts).toEqual({ partsMinor: taken.partsMinor, budgetMinor: 30_000 });
		expect(taken.partsMinor).toBeGreaterThan(0);
		expect(shown.windows.map(({ partsMinor }) => partsMinor)).toEqual(
			taken.windows.map(({ partsMinor }) => partsMinor)
		);
	});
});
