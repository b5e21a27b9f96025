import type { Reconciliation } from '#lib/core/weigh/uncertainty/reconcile.ts';
import type { Format } from './format.ts';

/** What comparing the leaks found with the system test says, in plain words. */
export function reconcileSentence(outcome: Reconciliation, format: Format): string {
	const { foundShare } = outcome;
	const percent = (share: number) => format.percent(roundShare(share));
	const range = `${percent(foundShare.low)} to ${percent(foundShare.high)}`;
	switch (outcome.verdict) {
		case 'keep-walking':
			return outcome.clear
				? `You have found about ${percent(foundShare.median)} of what the system loses (${range}). Keep walking.`
				: `You have found about ${percent(foundShare.median)} of what the system loses, but the sizes are rough: anything from ${range}. Keep walking, and measure the largest ones.`;
		case 'found-most':
			return outcome.clear
				? `You have found most of it: about ${percent(foundShare.median)} of what the system loses (${range}).`
				: `What you have found fits what the system loses: about ${percent(foundShare.median)}, but anything from ${range} is possible. Measuring the largest ones would tell.`;
		case 'estimates-too-high':
			return `Your estimates add up to about ${percent(foundShare.median)} of what the system loses (${range}), which cannot be. Check the largest ones, or scale the estimates to the test.`;
	}
}

/** To 5 %, and below 10 % to 1 %: no share is known better than that. */
function roundShare(share: number): number {
	return share < 0.1 ? Math.round(share * 100) / 100 : Math.round(share * 20) / 20;
}
