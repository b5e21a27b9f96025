import { ok, refuse, type Result } from '../../units/result.ts';
import { coverageFactor90 } from './gum.ts';
import { randomFrom } from './random.ts';
import type { UncertaintyResult } from './result.ts';
import { NINETY_PERCENT, scaled, spreadOfSorted, type Spread } from './spread.ts';

/** What a system test says the whole system leaks. */
export interface MeasuredLeak {
	/** At the normal set pressure. */
	readonly massFlowKgPerS: number;
	readonly relativeStandardUncertainty: number;
	/** Degrees of freedom behind that uncertainty; left out, it is taken as known. */
	readonly freedom?: number;
}

/**
 * `keep-walking`: much of it has not been found. `found-most`: what was found accounts for it.
 * `estimates-too-high`: more was estimated than the system loses.
 */
export type Verdict = 'keep-walking' | 'found-most' | 'estimates-too-high';

export interface Reconciliation {
	readonly verdict: Verdict;
	/** False when the interval reaches into another verdict. */
	readonly clear: boolean;
	/** Found ÷ measured. */
	readonly foundShare: Spread;
	readonly foundKgPerS: Spread;
	readonly measuredKgPerS: Spread;
	/** Measured − found; below zero where the estimates are too high. */
	readonly unlocatedKgPerS: Spread;
	/** At what a kg/s of those found takes. */
	readonly unlocatedEnergyKwhPerYear?: Spread;
	readonly unlocatedCostMinorPerYear?: Spread;
	/** How likely it is that the estimates add up to more than the system loses. */
	readonly chanceTooHigh: number;
	/** How likely it is that less than `mostFrom` has been found. */
	readonly chanceKeepWalking: number;
	readonly mostFrom: number;
}

/** From this share on, most has been found. Our starting value. */
const MOST_FROM = 0.75;
/** A draw for the test that is not the leaks' own. */
const TEST_SEED = 0x7e57;

/**
 * Compares what was found with what a system test measured: share = found / measured and
 * unlocated = measured − found, draw by draw. The test's error is lognormal and independent of the
 * leaks'; with few readings behind it, it is widened by Student's factor.
 *
 * @param found the result of a run over the leaks that were under pressure during the test
 * @param measured the test at the set pressure
 * @param options `mostFrom` share that counts as most; `seed` of the test's draws
 * @returns the reconciliation, or `test-leak-not-positive`, `test-uncertainty-out-of-range`
 * @validity test and leaks at the same set pressure; the gauge's part in both is not cancelled
 * @source JCGM 101:2008, 5.9; JCGM 100:2008, G.3; METHOD W11
 */
export function reconcile(
	found: Pick<UncertaintyResult, 'flowDraws' | 'totals'>,
	measured: MeasuredLeak,
	options: { readonly mostFrom?: number; readonly seed?: number } = {}
): Result<Reconciliation> {
	const drawn = drawTest(measured, found.flowDraws.all.length, options.seed);
	if (!drawn.ok) return drawn;
	const test = drawn.value;
	const mostFrom = options.mostFrom ?? MOST_FROM;
	const flows = found.flowDraws.all;
	const share = flows.map((flow, i) => flow / test[i]!).sort();
	const unlocated = spreadOfSorted(flows.map((flow, i) => test[i]! - flow).sort());
	const foundShare = spreadOfSorted(share);
	const rates = ratesOf(found.totals);
	const verdict = verdictOf(foundShare, mostFrom);
	return ok({
		verdict,
		clear: isClear(verdict, foundShare, mostFrom),
		foundShare,
		foundKgPerS: spreadOfSorted(flows.slice().sort()),
		measuredKgPerS: spreadOfSorted(test.slice().sort()),
		unlocatedKgPerS: unlocated,
		...(rates.energy !== undefined && {
			unlocatedEnergyKwhPerYear: scaled(unlocated, rates.energy)
		}),
		...(rates.cost !== undefined && { unlocatedCostMinorPerYear: scaled(unlocated, rates.cost) }),
		chanceTooHigh: shareAbove(share, 1),
		chanceKeepWalking: 1 - shareAbove(share, mostFrom),
		mostFrom
	});
}

/** Draws of the test's own error, or a refusal of its figures. */
export function drawTest(
	measured: MeasuredLeak,
	draws: number,
	seed = TEST_SEED
): Result<Float64Array> {
	const { massFlowKgPerS, relativeStandardUncertainty: u, freedom = Infinity } = measured;
	if (!(massFlowKgPerS > 0 && massFlowKgPerS < Infinity))
		return refuse('test-leak-not-positive', { massFlowKgPerS: String(massFlowKgPerS) });
	if (!(u >= 0 && u <= 5 && freedom >= 1))
		return refuse('test-uncertainty-out-of-range', {
			relativeStandardUncertainty: String(u),
			least: 0,
			most: 5
		});
	const spread = freedom === Infinity ? u : (u * coverageFactor90(freedom)) / NINETY_PERCENT;
	const normals = new Float64Array(draws);
	randomFrom(seed).fillNormals(normals, draws);
	return ok(normals.map((z) => massFlowKgPerS * Math.exp(spread * z)));
}

/** Above one for certain: too high. Below `mostFrom` as likely as not: keep walking. */
function verdictOf(share: Spread, mostFrom: number): Verdict {
	if (share.low > 1) return 'estimates-too-high';
	return share.median < mostFrom ? 'keep-walking' : 'found-most';
}

function isClear(verdict: Verdict, share: Spread, mostFrom: number): boolean {
	switch (verdict) {
		case 'keep-walking':
			return share.high < mostFrom;
		case 'found-most':
			return share.low >= mostFrom;
		case 'estimates-too-high':
			return true;
	}
}

/** What a kg/s of those found takes a year; absent where it is not known or nothing was found. */
function ratesOf(totals: UncertaintyResult['totals']): {
	readonly energy: number | undefined;
	readonly cost: number | undefined;
} {
	const flow = totals.massFlowKgPerS.mean;
	const per = (total: Spread | undefined) => (total && flow > 0 ? total.mean / flow : undefined);
	return { energy: per(totals.energyKwhPerYear), cost: per(totals.costMinorPerYear) };
}

/** @param sorted rising */
function shareAbove(sorted: Float64Array, limit: number): number {
	const first = sorted.findIndex((value) => value > limit);
	return first < 0 ? 0 : 1 - first / sorted.length;
}
