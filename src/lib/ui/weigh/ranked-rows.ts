import { comesFirst, jobWork } from '#lib/core/mend/jobs.ts';
import { toMinor } from '#lib/core/money/currency.ts';
import { simplePaybackYears } from '#lib/core/money/return.ts';
import { find } from '#lib/core/survey/ids.ts';
import type { LeakState } from '#lib/core/survey/leak-state.ts';
import type { Part } from '#lib/core/survey/parts.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { sectionOf } from '#lib/core/weigh/leak-inputs.ts';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
import type { LeakUncertainty } from '#lib/core/weigh/uncertainty/result.ts';
import type { Spread } from '#lib/core/weigh/uncertainty/spread.ts';
import { STATE_WORDS } from '#lib/words/actions.ts';
import { PART_WORDS } from '#lib/words/parts.ts';

/** One weighed leak as the ranked table shows it. What is not known is absent. */
export interface RankedRow {
	readonly leakId: string;
	/** Absent for a leak that is mended: it no longer competes for a repair. */
	readonly rank: number | undefined;
	readonly tag: number;
	readonly place: string;
	readonly part: Part;
	readonly sectionId: string | undefined;
	readonly section: string;
	readonly flow: number;
	readonly energy: number | undefined;
	readonly cost: number | undefined;
	readonly state: LeakState;
	/** Unsafe: first whatever it costs. */
	readonly first: boolean;
	/** Of the figure that leaks are compared by; while the draws run, absent. */
	readonly spread: Spread | undefined;
	/** The middle 90 % of its places. */
	readonly places: { readonly low: number; readonly high: number } | undefined;
	/** Of being among the first so many. */
	readonly chance: number | undefined;
	/** Years until the saving has paid for the parts. */
	readonly payback: number | undefined;
	/** Minor units saved a year for each minute at the joint. */
	readonly perMinute: number | undefined;
}

/** What to mend first can be asked in four ways; the other keys are columns. */
export const PRIORITIES = ['rank', 'payback', 'perMinute', 'chance'] as const;
export type Priority = (typeof PRIORITIES)[number];
export type SortKey =
	Priority | 'tag' | 'place' | 'part' | 'section' | 'flow' | 'energy' | 'cost' | 'state';
export interface Column {
	readonly key: SortKey;
	readonly name: string;
	readonly number?: true;
}
export interface Sorting {
	readonly key: SortKey;
	readonly falling: boolean;
}

/** What the table is narrowed to; an empty text lets everything through. */
export interface Narrowing {
	readonly sectionId: string;
	readonly part: string;
	readonly state: string;
}
export const NOT_NARROWED: Narrowing = { sectionId: '', part: '', state: '' };

/**
 * The leaks that waste now, by rank, and after them those that are mended, by what they wasted.
 * @param wasting what leaks now
 * @param mended what was mended in the round, weighed by what it leaked
 * @param sure how sure the figures of what leaks are, once that is worked out
 */
export function rankedRows(
	survey: Survey,
	wasting: readonly LeakAssessment[],
	mended: readonly LeakAssessment[],
	sure?: readonly LeakUncertainty[]
): RankedRow[] {
	const byLeak = new Map(sure?.map((each) => [each.leakId, each]));
	return [
		...wasting.flatMap((leak) => rowOf(survey, leak, leak.rank, byLeak.get(leak.leakId))),
		...mended.flatMap((leak) => rowOf(survey, leak, undefined))
	];
}

function rowOf(
	survey: Survey,
	weighed: LeakAssessment,
	rank: number | undefined,
	sure?: LeakUncertainty
): RankedRow[] {
	const leak = find(survey.leaks, weighed.leakId);
	if (!leak) return [];
	const section = sectionOf(survey, leak);
	const work = jobWork(leak, survey);
	const saved = rank === undefined ? undefined : weighed.costMinorPerYear;
	const parts = toMinor(work.partsCost, survey.site.currency);
	const payback =
		parts.ok && saved !== undefined ? simplePaybackYears(parts.value, saved) : undefined;
	return [
		{
			leakId: leak.id,
			rank,
			tag: leak.tag,
			place: leak.place ?? '',
			part: leak.part,
			sectionId: section?.id,
			section: section?.name ?? '',
			flow: weighed.freeAirM3PerS,
			energy: weighed.energyKwhPerYear,
			cost: weighed.costMinorPerYear,
			state: weighed.state,
			first: rank !== undefined && comesFirst(leak),
			spread: sure && (sure.costMinorPerYear ?? sure.energyKwhPerYear ?? sure.freeAirM3PerS),
			places: sure && { low: sure.rank.low, high: sure.rank.high },
			chance: sure?.rank.chanceOfTop,
			payback: payback?.ok ? payback.value : undefined,
			perMinute: saved !== undefined && work.minutes > 0 ? saved / work.minutes : undefined
		}
	];
}

export function isPriority(key: SortKey): key is Priority {
	return PRIORITIES.some((priority) => priority === key);
}

/** Rows that belong to no section are narrowed to by this in place of an id. */
export const NO_SECTION = 'none';

export function narrowed(rows: readonly RankedRow[], by: Narrowing): RankedRow[] {
	return rows.filter(
		(row) =>
			(by.sectionId === '' || (row.sectionId ?? NO_SECTION) === by.sectionId) &&
			(by.part === '' || row.part === by.part) &&
			(by.state === '' || row.state === by.state)
	);
}

/**
 * Sorts rows by a column; what is not known comes last either way, and equals stay as they were.
 * Codes are sorted as the words they read as, because people look for words in order. Where the
 * question is what to mend first, what is unsafe stands before everything else.
 */
export function sorted(rows: readonly RankedRow[], { key, falling }: Sorting): RankedRow[] {
	const valueOf = (row: RankedRow) => {
		if (key === 'part') return PART_WORDS[row.part];
		if (key === 'state') return STATE_WORDS[row.state];
		return row[key] === '' ? undefined : row[key];
	};
	const pinned = isPriority(key);
	return rows.toSorted((a, b) => {
		if (pinned && a.first !== b.first) return Number(b.first) - Number(a.first);
		const left = valueOf(a);
		const right = valueOf(b);
		if (left === undefined || right === undefined)
			return Number(left === undefined) - Number(right === undefined);
		const order =
			typeof left === 'number' && typeof right === 'number'
				? left - right
				: String(left).localeCompare(String(right), undefined, { numeric: true });
		return falling ? -order : order;
	});
}
