import { fromMinor } from '#lib/core/money/currency.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { latestLeakTest } from '#lib/core/weigh/system-check/reckon.ts';
import { surveyAtTest } from '#lib/core/weigh/system-check/survey-at-test.ts';
import { reconcile } from '#lib/core/weigh/uncertainty/reconcile.ts';
import type { Spread } from '#lib/core/weigh/uncertainty/spread.ts';
import type { JsonKey } from '../command.ts';
import { drawn } from './audit-sureness.ts';

export const SYSTEM_CHECK_KEYS: readonly JsonKey[] = [
	['systemCheck', 'the leaks found against the newest system test of the round; null without one:'],
	['', 'test (id, name, kind, doneAt), measuredKgPerS, foundShare, unlocatedKgPerS,'],
	['', 'unlocatedEnergyKwhPerYear, unlocatedCostPerYear (each value and interval90), verdict'],
	[
		'',
		'(keep-walking, found-most, estimates-too-high), clear, scaling (factor taken over, or null)'
	]
];

/** A share is told in steps of some per cent: the draws need not settle every total. */
const FEWER = { tolerance: 0.03 };

/** Found against measured, with what was leaking at the test. METHOD W11. */
export function systemCheck(
	survey: Survey,
	roundId: string
): Readonly<Record<string, unknown>> | null {
	const latest = latestLeakTest(survey, roundId);
	if (!latest) return null;
	const found = drawn(surveyAtTest(survey, roundId, latest.test), roundId, FEWER);
	const outcome = found && reconcile(found, latest.measured);
	if (!outcome?.ok) return null;
	const { test } = latest;
	const { value } = outcome;
	const major = (minor: number): number | null => {
		const amount = fromMinor(Math.round(minor), survey.site.currency);
		return amount.ok ? amount.value : null;
	};
	return {
		test: { id: test.id, name: test.name, kind: test.kind, doneAt: test.doneAt },
		measuredKgPerS: figures(value.measuredKgPerS),
		foundShare: figures(value.foundShare),
		unlocatedKgPerS: figures(value.unlocatedKgPerS),
		unlocatedEnergyKwhPerYear: figures(value.unlocatedEnergyKwhPerYear),
		unlocatedCostPerYear: figures(value.unlocatedCostMinorPerYear, major),
		verdict: value.verdict,
		clear: value.clear,
		scaling: survey.startingValues.scaling?.factor ?? null
	};
}

function figures(
	spread: Spread | undefined,
	shown: (value: number) => number | null = (value) => value
) {
	if (!spread) return null;
	return { value: shown(spread.median), interval90: [shown(spread.low), shown(spread.high)] };
}
