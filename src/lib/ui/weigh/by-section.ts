import { rollup, sum } from 'd3-array';
import type { Survey } from '#lib/core/survey/schema.ts';
import { find } from '#lib/core/survey/ids.ts';
import { sectionOf } from '#lib/core/weigh/leak-inputs.ts';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
import { amountOf, type Measure } from './measure.ts';

/** What the leaks behind one isolating valve come to. */
export interface SectionShare {
	/** Absent for leaks that belong to no section. */
	readonly sectionId: string | undefined;
	readonly name: string;
	readonly leakCount: number;
	readonly amount: number;
	/** Of all leaks together, 0 to 1. */
	readonly share: number;
}

/** Where the air goes, by section, most first; leaks without a section stand last. */
export function bySection(
	survey: Survey,
	leaks: readonly LeakAssessment[],
	measure: Measure
): SectionShare[] {
	const groups = rollup(
		leaks,
		(of) => ({ leakCount: of.length, amount: sum(of, (leak) => amountOf(leak, measure)) }),
		(leak) => standingSection(survey, leak.leakId)?.id
	);
	const all = sum(groups.values(), ({ amount }) => amount);
	return [...groups]
		.map(([sectionId, { leakCount, amount }]) => ({
			sectionId,
			name: find(survey.sections, sectionId)?.name ?? '',
			leakCount,
			amount,
			share: all > 0 ? amount / all : 0
		}))
		.sort(
			(a, b) =>
				Number(a.sectionId === undefined) - Number(b.sectionId === undefined) || b.amount - a.amount
		);
}

function standingSection(survey: Survey, leakId: string) {
	const leak = find(survey.leaks, leakId);
	return leak && sectionOf(survey, leak);
}
