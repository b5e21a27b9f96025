import { rollup } from 'd3-array';
import { comesFirst, jobWork } from '#lib/core/mend/jobs.ts';
import { toMinor } from '#lib/core/money/currency.ts';
import { simplePaybackYears } from '#lib/core/money/return.ts';
import { find } from '#lib/core/survey/ids.ts';
import type { LeakState } from '#lib/core/survey/leak-state.ts';
import type { Part } from '#lib/core/survey/parts.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { sectionOf } from '#lib/core/weigh/leak-inputs.ts';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
import type { LeakUncertainty, UncertaintyResult } from '#lib/core/weigh/uncertainty/result.ts';
import type { Ranking } from '#lib/core/weigh/uncertainty/run.ts';
import type { Spread } from '#lib/core/weigh/uncertainty/spread.ts';
import { STATE_WORDS } from '#lib/words/actions.ts';
import { PART_WORDS } from '#lib/words/parts.ts';
import { weigh } from '#lib/words/weigh.ts';

/** One weighed leak as the ranked table shows it. What is not known is absent. */
export interface RankedRow {
	readonly leakId: string;
	/** Its place in the order asked for; absent where that is not known, and for a leak that is mended. */
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
	readonly places: Range | undefined;
	/** Of being among the first so many. */
	readonly chance: number | undefined;
	/** Years until the saving has paid for the parts. */
	readonly payback: number | undefined;
	readonly paybackRange: Range | undefined;
	/** Minor units saved a year for each minute at the joint. */
	readonly perMinute: number | undefined;
	readonly perMinuteRange: Range | undefined;
}

interface Range {
	readonly low: number;
	readonly high: number;
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

/** What the table is narrowed to; an empty list lets everything through. */
export interface Narrowing {
	readonly section: readonly string[];
	readonly part: readonly string[];
	readonly state: readonly string[];
}
export type Facet = keyof Narrowing;
export const FACETS = ['section', 'part', 'state'] as const satisfies readonly Facet[];
export const NOT_NARROWED: Narrowing = { section: [], part: [], state: [] };

type RankingName = 'worth' | 'payback' | 'perMinute';

/** Which order the places in the table are places of. */
export function rankingName(key: SortKey): RankingName {
	return key === 'payback' || key === 'perMinute' ? key : 'worth';
}

/** The order as the draws need it, so that they say how sure each place in it is. */
export function rankingOf(survey: Survey, by: RankingName): Ranking {
	if (by === 'worth') return { by, divisors: {} };
	const divisors = Object.values(survey.leaks).map((leak) => {
		const { minutes, partsCost } = jobWork(leak, survey);
		return [leak.id, by === 'payback' ? partsCost : minutes] as const;
	});
	return { by, divisors: Object.fromEntries(divisors) };
}

/**
 * The leaks that waste now, in the order asked for, and after them those that are mended, by what
 * they wasted.
 * @param wasting what leaks now
 * @param mended what was mended in the round, weighed by what it leaked
 * @param by the order that places are of
 * @param sure how sure the figures of what leaks are, once that is worked out
 */
export function rankedRows(
	survey: Survey,
	wasting: readonly LeakAssessment[],
	mended: readonly LeakAssessment[],
	by: RankingName,
	sure?: Pick<UncertaintyResult, 'leaks' | 'rankedBy'>
): RankedRow[] {
	const byLeak = new Map(sure?.leaks.map((each) => [each.leakId, each]));
	const ranksKnown = sure?.rankedBy === by;
	const leaking = wasting
		.toSorted((a, b) => a.rank - b.rank)
		.flatMap((leak) => rowOf(survey, leak, true, byLeak.get(leak.leakId), ranksKnown));
	const ranked =
		by === 'worth' ? leaking : sorted(leaking, { key: by, falling: by === 'perMinute' }, false);
	return [
		...ranked.map((row, index) => ({
			...row,
			rank: by === 'worth' || row[by] !== undefined ? index + 1 : undefined
		})),
		...mended.flatMap((leak) => rowOf(survey, leak, false, undefined, false))
	];
}

function rowOf(
	survey: Survey,
	weighed: LeakAssessment,
	leaking: boolean,
	sure: LeakUncertainty | undefined,
	ranksKnown: boolean
): RankedRow[] {
	const leak = find(survey.leaks, weighed.leakId);
	if (!leak) return [];
	const section = sectionOf(survey, leak);
	const work = jobWork(leak, survey);
	const saved = leaking ? weighed.costMinorPerYear : undefined;
	const parts = toMinor(work.partsCost, survey.site.currency);
	const paybackBy = (costMinor: number | undefined): number | undefined => {
		const years =
			parts.ok && costMinor !== undefined ? simplePaybackYears(parts.value, costMinor) : undefined;
		return years?.ok ? years.value : undefined;
	};
	const cost = sure?.costMinorPerYear;
	const soonest = paybackBy(cost?.high);
	const latest = paybackBy(cost?.low);
	return [
		{
			leakId: leak.id,
			rank: undefined,
			tag: leak.tag,
			place: leak.place ?? '',
			part: leak.part,
			sectionId: section?.id,
			section: section?.name ?? '',
			flow: weighed.freeAirM3PerS,
			energy: weighed.energyKwhPerYear,
			cost: weighed.costMinorPerYear,
			state: weighed.state,
			first: leaking && comesFirst(leak),
			spread: sure && (cost ?? sure.energyKwhPerYear ?? sure.freeAirM3PerS),
			places: sure && ranksKnown ? { low: sure.rank.low, high: sure.rank.high } : undefined,
			chance: ranksKnown ? sure?.rank.chanceOfTop : undefined,
			payback: paybackBy(saved),
			paybackRange:
				soonest === undefined || latest === undefined ? undefined : { low: soonest, high: latest },
			perMinute: saved !== undefined && work.minutes > 0 ? saved / work.minutes : undefined,
			perMinuteRange:
				cost && work.minutes > 0
					? { low: cost.low / work.minutes, high: cost.high / work.minutes }
					: undefined
		}
	];
}

export function isPriority(key: SortKey): key is Priority {
	return PRIORITIES.some((priority) => priority === key);
}

/** Rows that belong to no section are narrowed to by this in place of an id. */
export const NO_SECTION = 'none';

const VALUE_OF: Readonly<Record<Facet, (row: RankedRow) => string>> = {
	section: (row) => row.sectionId ?? NO_SECTION,
	part: (row) => row.part,
	state: (row) => row.state
};
const NAME_OF: Readonly<Record<Facet, (row: RankedRow) => string>> = {
	section: (row) => row.section || weigh.noSection,
	part: (row) => PART_WORDS[row.part],
	state: (row) => STATE_WORDS[row.state]
};

/** The rows that fit: any of the values of each list, all lists together. */
export function narrowed(
	rows: readonly RankedRow[],
	by: Narrowing,
	facets: readonly Facet[] = FACETS
): RankedRow[] {
	return rows.filter((row) =>
		facets.every((facet) => by[facet].length === 0 || by[facet].includes(VALUE_OF[facet](row)))
	);
}

/** One thing that the table can be narrowed to, and how many rows would stand under it. */
export interface FacetChoice {
	readonly value: string;
	readonly text: string;
	readonly count: number;
}

/** What the rows hold, each once, in the order of the words; counted among what the other lists let through. */
export function facetChoices(
	rows: readonly RankedRow[],
	facet: Facet,
	by: Narrowing
): FacetChoice[] {
	const others = FACETS.filter((other) => other !== facet);
	const fitting = rollup(narrowed(rows, by, others), (of) => of.length, VALUE_OF[facet]);
	return [...new Map(rows.map((row) => [VALUE_OF[facet](row), NAME_OF[facet](row)]))]
		.map(([value, text]) => ({ value, text, count: fitting.get(value) ?? 0 }))
		.sort((a, b) => a.text.localeCompare(b.text, undefined, { numeric: true }));
}

/**
 * Sorts rows by a column; what is not known comes last either way, and equals stay as they were.
 * Codes are sorted as the words they read as, because people look for words in order. Where the
 * question is what to mend first, what is unsafe stands before everything else.
 * @param pinned whether what is unsafe stands first
 */
export function sorted(
	rows: readonly RankedRow[],
	{ key, falling }: Sorting,
	pinned = isPriority(key)
): RankedRow[] {
	const valueOf = (row: RankedRow) => {
		if (key === 'part') return PART_WORDS[row.part];
		if (key === 'state') return STATE_WORDS[row.state];
		return row[key] === '' ? undefined : row[key];
	};
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
