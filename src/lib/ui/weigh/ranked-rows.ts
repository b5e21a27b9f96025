import { find } from '#lib/core/survey/ids.ts';
import type { LeakState } from '#lib/core/survey/leak-state.ts';
import type { Part } from '#lib/core/survey/parts.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { sectionOf } from '#lib/core/weigh/leak-inputs.ts';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
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
}

export type SortKey =
	'rank' | 'tag' | 'place' | 'part' | 'section' | 'flow' | 'energy' | 'cost' | 'state';
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
 */
export function rankedRows(
	survey: Survey,
	wasting: readonly LeakAssessment[],
	mended: readonly LeakAssessment[]
): RankedRow[] {
	return [
		...wasting.flatMap((leak) => rowOf(survey, leak, leak.rank)),
		...mended.flatMap((leak) => rowOf(survey, leak, undefined))
	];
}

function rowOf(survey: Survey, weighed: LeakAssessment, rank: number | undefined): RankedRow[] {
	const leak = find(survey.leaks, weighed.leakId);
	if (!leak) return [];
	const section = sectionOf(survey, leak);
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
			state: weighed.state
		}
	];
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
 * Codes are sorted as the words they read as, because people look for words in order.
 */
export function sorted(rows: readonly RankedRow[], { key, falling }: Sorting): RankedRow[] {
	const valueOf = (row: RankedRow) => {
		if (key === 'part') return PART_WORDS[row.part];
		if (key === 'state') return STATE_WORDS[row.state];
		return row[key] === '' ? undefined : row[key];
	};
	return rows.toSorted((a, b) => {
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
