import type { Reconciliation } from '#lib/core/weigh/uncertainty/reconcile.ts';
import type { Format } from './format.ts';
import { sums } from './sums.ts';

/** What comparing the leaks found with the system test says, in plain words. */
export function reconcileSentence(outcome: Reconciliation, format: Format): string {
	const { foundShare } = outcome;
	const percent = (share: number) => format.percent(roundShare(share));
	const range = sums.range(percent(foundShare.low), percent(foundShare.high));
	const share = percent(foundShare.median);
	const { keepWalking, keepWalkingRough, most, mostRough, tooHigh } = sums.found;
	switch (outcome.verdict) {
		case 'keep-walking':
			return (outcome.clear ? keepWalking : keepWalkingRough)(share, range);
		case 'found-most':
			return (outcome.clear ? most : mostRough)(share, range);
		case 'estimates-too-high':
			return tooHigh(share, range);
	}
}

/** To 5 %, and below 10 % to 1 %: no share is known better than that. */
function roundShare(share: number): number {
	return share < 0.1 ? Math.round(share * 100) / 100 : Math.round(share * 20) / 20;
}
