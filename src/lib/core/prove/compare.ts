import { find } from '../survey/ids.ts';
import { compareInstants } from '../survey/instants.ts';
import type { Round, Survey } from '../survey/schema.ts';
import { ok, refuse, type Refusal, type Result } from '../units/result.ts';
import type { SupplyMethod } from '../weigh/assessment.ts';
import { REFERENCES } from '../air/reference-air.ts';
import type { Amounts } from './amounts.ts';
import { bridgeTerms, emptySums, TERMS, type Term } from './bridge.ts';
import { byHand, routineSteps, type HandAdjustment, type RoutineAdjustment } from './adjust.ts';
import { surveyIn } from './conditions.ts';
import { groundOf, pairLeaks, type PairedLeaks } from './paired-leaks.ts';
import type { Fate } from './fate.ts';
import { worthOf, type Worth } from './worth.ts';

/** One leak's line of the comparison; a side where it did not leak is absent. */
export interface ComparedLeak {
	readonly leakId: string;
	readonly tag: number;
	readonly fate: Fate;
	readonly claimFailed: boolean;
	readonly before?: Amounts;
	readonly after?: Amounts;
}

export interface NotCompared {
	readonly leakId: string;
	readonly tag: number;
	readonly fate: Fate;
	readonly refusal: Refusal;
}

/** Two rounds of a site, both under the conditions of the later one. */
export interface Comparison {
	readonly before: Round;
	readonly after: Round;
	readonly method: SupplyMethod;
	readonly currency: string;
	readonly referenceLabel: string;
	readonly missing: readonly Refusal[];
	readonly terms: Readonly<Record<Term, Amounts>>;
	readonly counts: Readonly<Record<Fate, number>>;
	/** Said to be mended, and found leaking. */
	readonly failedClaims: number;
	/** By tag. */
	readonly leaks: readonly ComparedLeak[];
	readonly notCompared: readonly NotCompared[];
	/** Whether the conditions of the round before were kept with it; else there is nothing to adjust from. */
	readonly conditionsKept: boolean;
	readonly routine: readonly RoutineAdjustment[];
	readonly byHand: readonly HandAdjustment[];
	/** Adjusted baseline − reporting period ± adjustments by hand. METHOD V5. */
	readonly avoided: Pick<Amounts, 'energyKwhPerYear' | 'costMinorPerYear' | 'co2KgPerYear'>;
	/** For the intervals. */
	readonly paired: PairedLeaks;
	readonly worth: Worth;
}

/**
 * Compares what the walk of one round found with what the walk of a later one found, at the same
 * pressure, hours, supply, demand and tariff. METHOD V1 to V5.
 *
 * @returns `round-unknown`, `rounds-not-in-order`, `currency-differs`, or a refusal of the site's air
 */
export function compareRounds(
	survey: Survey,
	beforeId: string,
	afterId: string
): Result<Comparison> {
	const [before, after] = [find(survey.rounds, beforeId), find(survey.rounds, afterId)];
	if (!before || before.removed || !after || after.removed)
		return refuse('round-unknown', {
			round: before && !before.removed ? afterId : beforeId,
			rounds: ''
		});
	if (beforeId === afterId || compareInstants(before.startedAt, after.startedAt) > 0)
		return refuse('rounds-not-in-order', { before: before.name, after: after.name });
	const [past, present] = [surveyIn(survey, before), surveyIn(survey, after)];
	if (past.site.currency !== present.site.currency)
		return refuse('currency-differs', { before: past.site.currency, after: present.site.currency });
	const then = groundOf(past);
	if (!then.ok) return then;
	const now = groundOf(present);
	if (!now.ok) return now;

	const paired = pairLeaks(survey, beforeId, afterId, then.value, now.value);
	const worth = worthOf(paired.pairs, now.value);
	const leaks = comparedLeaks(paired, worth);
	const terms = termsOf(leaks, worth);
	const hand = byHand(survey, afterId, terms.before);
	return ok({
		before,
		after,
		method: worth.method,
		currency: present.site.currency,
		referenceLabel: REFERENCES[present.site.reference].label,
		missing: worth.missing,
		terms,
		counts: countsOf(leaks),
		failedClaims: leaks.filter(({ claimFailed }) => claimFailed).length,
		leaks,
		notCompared: paired.unweighed.map(({ leak, fate, refusal }) => ({
			leakId: leak.id,
			tag: leak.tag,
			fate,
			refusal
		})),
		conditionsKept: before.conditions !== undefined,
		routine: routineSteps(past, present, paired.pairs),
		byHand: hand,
		avoided: avoided(terms, hand, worth.kgCo2PerKwh),
		paired,
		worth
	});
}

/** Money is rounded leak by leak, so that every sum is the sum of its lines to the last cent. METHOD V3. */
function comparedLeaks({ pairs }: PairedLeaks, worth: Worth): ComparedLeak[] {
	const amountsAt = (i: number, side: Worth['before']): Amounts => {
		const kwh = side.energyKwh[i] ?? 0;
		return amounts(worth, {
			massFlow: side.massFlow[i] ?? 0,
			freeAir: side.freeAir[i] ?? 0,
			kwh,
			minor: Math.round(side.costMinor[i] ?? 0)
		});
	};
	return pairs.map(({ leak, fate, claimFailed, before, after }, i) => ({
		leakId: leak.id,
		tag: leak.tag,
		fate,
		claimFailed,
		...(before && { before: amountsAt(i, worth.before) }),
		...(after && { after: amountsAt(i, worth.after) })
	}));
}

interface Bare {
	readonly massFlow: number;
	readonly freeAir: number;
	readonly kwh: number;
	readonly minor: number;
}

function amounts(
	{ energyKnown, costKnown, kgCo2PerKwh }: Worth,
	{ massFlow, freeAir, kwh, minor }: Bare
): Amounts {
	return {
		massFlowKgPerS: massFlow,
		freeAirM3PerS: freeAir,
		...(energyKnown && { energyKwhPerYear: kwh }),
		...(costKnown && { costMinorPerYear: minor }),
		...(energyKnown && kgCo2PerKwh !== undefined && { co2KgPerYear: kwh * kgCo2PerKwh })
	};
}

function termsOf(leaks: readonly ComparedLeak[], worth: Worth): Record<Term, Amounts> {
	const sumsOf = (part: (amounts: Amounts) => number) => {
		const sums = emptySums();
		for (const { fate, before, after } of leaks) {
			if (before) sums[fate].before += part(before);
			if (after) sums[fate].after += part(after);
		}
		return bridgeTerms(sums);
	};
	const flow = sumsOf(({ massFlowKgPerS }) => massFlowKgPerS);
	const air = sumsOf(({ freeAirM3PerS }) => freeAirM3PerS);
	const kwh = sumsOf(({ energyKwhPerYear = 0 }) => energyKwhPerYear);
	const minor = sumsOf(({ costMinorPerYear = 0 }) => costMinorPerYear);
	return Object.fromEntries(
		TERMS.map((term) => [
			term,
			amounts(worth, {
				massFlow: flow[term],
				freeAir: air[term],
				kwh: kwh[term],
				minor: minor[term]
			})
		])
	) as Record<Term, Amounts>;
}

function countsOf(leaks: readonly ComparedLeak[]): Record<Fate, number> {
	const counts: Record<Fate, number> = {
		held: 0,
		claimed: 0,
		still: 0,
		'not-reached': 0,
		again: 0,
		new: 0
	};
	for (const { fate } of leaks) counts[fate]++;
	return counts;
}

/** Avoided energy = adjusted baseline − reporting period ± adjustments. METHOD V5. */
function avoided(
	{ before, after }: Readonly<Record<Term, Amounts>>,
	hand: readonly HandAdjustment[],
	kgCo2PerKwh: number | undefined
): Comparison['avoided'] {
	const [was, is] = [before.energyKwhPerYear, after.energyKwhPerYear];
	if (was === undefined || is === undefined) return {};
	const energy = was - is + hand.reduce((sum, each) => sum + each.energyKwhPerYear, 0);
	const [cost, costNow] = [before.costMinorPerYear, after.costMinorPerYear];
	return {
		energyKwhPerYear: energy,
		...(cost !== undefined &&
			costNow !== undefined && {
				costMinorPerYear:
					cost - costNow + hand.reduce((sum, each) => sum + (each.costMinorPerYear ?? 0), 0)
			}),
		...(kgCo2PerKwh !== undefined && { co2KgPerYear: energy * kgCo2PerKwh })
	};
}
