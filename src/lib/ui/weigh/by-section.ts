import { rollup, sum } from 'd3-array';
import type { Survey } from '#lib/core/survey/schema.ts';
import { find } from '#lib/core/survey/ids.ts';
import type { StationReport } from '#lib/core/weigh/station-report.ts';
import { sectionOf } from '#lib/core/weigh/leak-inputs.ts';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
import { PART_WORDS } from '#lib/words/parts.ts';
import { weigh } from '#lib/words/weigh.ts';
import { amountOf, type Measure } from './measure.ts';

/** One bar of where the air goes: a section, a kind of part, or a part of the week. */
export interface AirShare {
	/** Absent for leaks that belong to no section. */
	readonly key: string | undefined;
	readonly name: string;
	/** Absent where every leak has its part in it. */
	readonly leakCount: number | undefined;
	readonly amount: number;
	/** Of all leaks together, 0 to 1. */
	readonly share: number;
}

/** Where the air goes, by section, most first; leaks without a section stand last. */
export function bySection(
	survey: Survey,
	leaks: readonly LeakAssessment[],
	measure: Measure
): AirShare[] {
	return shares(
		leaks,
		measure,
		({ leakId }) => standingSection(survey, leakId)?.id,
		(id) => find(survey.sections, id)?.name ?? ''
	);
}

/** Where the air goes, by what leaks, most first. */
export function byPart(
	survey: Survey,
	leaks: readonly LeakAssessment[],
	measure: Measure
): AirShare[] {
	return shares(
		leaks,
		measure,
		({ leakId }) => find(survey.leaks, leakId)?.part,
		(part) => (part === undefined ? '' : PART_WORDS[part])
	);
}

/** When the leaks take energy, by part of the station's week, in the order of the week. */
export function byTime(survey: Survey, report: StationReport): AirShare[] {
	const periods = survey.supply.station?.schedule.periods ?? [];
	const groups = rollup(
		report.outcome.parts.filter(({ savingKwh }) => savingKwh !== 0),
		(of) => sum(of, ({ savingKwh }) => savingKwh),
		({ id }) => periods.find((period) => period.id === id)?.name ?? weigh.closedWeeks
	);
	const all = sum(groups.values());
	return [...groups].map(([name, amount]) => ({
		key: name,
		name,
		leakCount: undefined,
		amount,
		share: all > 0 ? amount / all : 0
	}));
}

function shares<K extends string>(
	leaks: readonly LeakAssessment[],
	measure: Measure,
	keyOf: (leak: LeakAssessment) => K | undefined,
	nameOf: (key: K | undefined) => string
): AirShare[] {
	const groups = rollup(
		leaks,
		(of) => ({ leakCount: of.length, amount: sum(of, (leak) => amountOf(leak, measure)) }),
		keyOf
	);
	const all = sum(groups.values(), ({ amount }) => amount);
	return [...groups]
		.map(([key, { leakCount, amount }]) => ({
			key,
			name: nameOf(key),
			leakCount,
			amount,
			share: all > 0 ? amount / all : 0
		}))
		.sort(
			(a, b) => Number(a.key === undefined) - Number(b.key === undefined) || b.amount - a.amount
		);
}

function standingSection(survey: Survey, leakId: string) {
	const leak = find(survey.leaks, leakId);
	return leak && sectionOf(survey, leak);
}
