import { ok, refuse, type Result } from '../../units/result.ts';
import { drawTest, type MeasuredLeak } from './reconcile.ts';
import type { UncertaintyResult } from './result.ts';
import { spreadOfSorted, type Spread } from './spread.ts';

/** What the estimates would have to be multiplied by to add up to the system test. */
export interface ScalingOffer {
	/** Of the effective area of every leak that was estimated, not measured. */
	readonly factor: Spread;
	/** Of the flow, the part that would be scaled. */
	readonly estimatedShare: number;
	/** Whether the estimates are too high for certain. Below the test, what is missing may be leaks. */
	readonly calledFor: boolean;
}

/**
 * Offers a scaling of the estimates to the test: factor = (measured − flow measured at leaks) / flow
 * estimated, draw by draw. Leaks whose flow was measured keep theirs. It is the user's choice to take
 * it; the factor to record is the median.
 *
 * @param found the result of a run over the leaks that were under pressure during the test
 * @param measured the test at the set pressure
 * @returns the offer, or `scaling-without-estimates` where nothing was estimated,
 * `scaling-below-measured` where what was measured at leaks is more than the test, and the refusals of
 * the test's figures
 * @validity every leak that the test saw has been found
 * @source derived; METHOD W12
 */
export function offerScaling(
	found: Pick<UncertaintyResult, 'flowDraws'>,
	measured: MeasuredLeak
): Result<ScalingOffer> {
	const { all, measured: metered } = found.flowDraws;
	const drawn = drawTest(measured, all.length);
	if (!drawn.ok) return drawn;
	const test = drawn.value;
	let whole = 0;
	let estimated = 0;
	for (let i = 0; i < all.length; i++) {
		whole += all[i]!;
		estimated += all[i]! - metered[i]!;
	}
	// The two sums differ by rounding alone where every flow was measured.
	if (!(estimated > whole * 1e-9)) return refuse('scaling-without-estimates');
	const factors = all.map((flow, i) => (test[i]! - metered[i]!) / (flow - metered[i]!));
	const factor = spreadOfSorted(factors.sort());
	if (!(factor.median > 0))
		return refuse('scaling-below-measured', { testKgPerS: measured.massFlowKgPerS });
	return ok({ factor, estimatedShare: estimated / whole, calledFor: factor.high < 1 });
}
