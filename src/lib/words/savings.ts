import type { Payback } from '#lib/core/prove/payback.ts';
import type { Regrowth } from '#lib/core/prove/regrowth.ts';
import type { Format } from './format.ts';

/** How few data a rate of coming back rests on. */
export function regrowthGrounds(
	{ leaks, years }: Regrowth,
	format: Pick<Format, 'count' | 'significant'>
): string {
	const months = `${format.significant(years * 12, 2)} months`;
	if (leaks === 0)
		return `Nothing came back and nothing opened in ${months}: there is no rate yet.`;
	const few =
		leaks < 10 ? ' That is few: the interval is wide, and each round makes it narrower.' : '';
	return `This rests on ${format.count(leaks)} ${leaks === 1 ? 'leak' : 'leaks'} that came back or opened in ${months}.${few}`;
}

export const PAYBACK_UNKNOWN =
	'What the repairs cost has not been written down, so there is no payback. Mend has a box for it under “What it took”.';

/** When what was spent is earned back, what stands behind it, and what is missing from it. */
export function paybackSentence(
	{ spent, years, low, high }: Payback,
	format: Pick<Format, 'count' | 'significant' | 'money'>
): string {
	const missing = spent.repairs - spent.priced;
	const without =
		missing > 0
			? ` ${format.count(missing)} of ${format.count(spent.repairs)} repairs ${missing === 1 ? 'has' : 'have'} no cost written down, so it is longer than that.`
			: '';
	const cost = `Repairs cost ${format.money(spent.minor)}`;
	if (years === undefined) return `${cost}; nothing is proved yet that would pay for it.${without}`;
	const range = `${low === undefined ? '0' : timeText(low, format)} to ${high === undefined ? 'never' : timeText(high, format)}`;
	return `${cost}. What is proved by soap pays for it in ${timeText(years, format)} (90 %: ${range}).${without}`;
}

/** Months below two years. */
export function timeText(years: number, { significant }: Pick<Format, 'significant'>): string {
	return years < 2 ? `${significant(years * 12, 2)} months` : `${significant(years, 2)} years`;
}
