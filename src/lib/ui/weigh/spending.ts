import { jobWork } from '#lib/core/mend/jobs.ts';
import { toMinor } from '#lib/core/money/currency.ts';
import { find } from '#lib/core/survey/ids.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';

/** A repair, what its parts cost and what it saves a year, in minor units. */
export interface Spending {
	readonly leakId: string;
	readonly tag: number;
	readonly spent: number;
	readonly saved: number;
}

/** What the parts of each repair cost; empty where no money is known. */
export function spendings(survey: Survey, leaks: readonly LeakAssessment[]): Spending[] {
	return leaks.flatMap(({ leakId, tag, costMinorPerYear: saved }) => {
		const leak = find(survey.leaks, leakId);
		if (!leak || saved === undefined) return [];
		const parts = toMinor(jobWork(leak, survey).partsCost, survey.site.currency);
		return parts.ok ? [{ leakId, tag, spent: parts.value, saved }] : [];
	});
}

/** What pays back soonest first, each with all that was spent and saved up to it. */
export function spendingOrder(each: readonly Spending[]): Spending[] {
	let spent = 0;
	let saved = 0;
	return each
		.toSorted((a, b) => a.spent * b.saved - b.spent * a.saved || b.saved - a.saved || a.tag - b.tag)
		.map((one) => {
			spent += one.spent;
			saved += one.saved;
			return { ...one, spent, saved };
		});
}

/** What a sum of money reaches: how many repairs, and what they save a year. */
export function savedFor(
	points: readonly Spending[],
	money: number
): { readonly count: number; readonly saved: number } {
	const within = points.filter(({ spent }) => spent <= money);
	return { count: within.length, saved: within.at(-1)?.saved ?? 0 };
}
