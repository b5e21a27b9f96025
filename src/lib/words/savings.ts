import type { Payback } from '#lib/core/prove/payback.ts';
import type { Regrowth } from '#lib/core/prove/regrowth.ts';
import type { Format } from './format.ts';
import { proof } from './proof.ts';

/** How few data a rate of coming back rests on. */
export function regrowthGrounds(
	{ leaks, years }: Regrowth,
	format: Pick<Format, 'count' | 'significant'>
): string {
	const { noRate, grounds, few } = proof.rates;
	const months = timeText(years, format, { longestMonths: Infinity, within: true });
	if (leaks === 0) return noRate(months);
	const rests = grounds(leaks, format.count(leaks), months);
	return leaks < 10 ? `${rests} ${few}` : rests;
}

/** When what was spent is earned back, what stands behind it, and what is missing from it. */
export function paybackSentence(
	{ spent, years, low, high }: Payback,
	format: Pick<Format, 'count' | 'significant' | 'money'>
): string {
	const { missing, nothingProved, paysIn, never } = proof.payback;
	const cost = format.money(spent.minor);
	const lacking = spent.repairs - spent.priced;
	const paid =
		years === undefined
			? nothingProved(cost)
			: paysIn(
					cost,
					timeText(years, format, { within: true }),
					low === undefined ? '0' : timeText(low, format),
					high === undefined ? never : timeText(high, format)
				);
	if (lacking === 0) return paid;
	return `${paid} ${missing(lacking, format.count(lacking), format.count(spent.repairs))}`;
}

/** Below so many days a time is said as that. */
const DAYS = 3;

/**
 * A time in months below two years, else in years; a very short one as such.
 * @param options from how many months on it is said in years; and whether it stands after “in”
 */
export function timeText(
	years: number,
	{ significant }: Pick<Format, 'significant'>,
	{ longestMonths = 24, within = false } = {}
): string {
	const words = proof.payback;
	if (years * 365 < DAYS) return within ? words.inDays : words.days;
	const inMonths = years * 12 < longestMonths;
	const count = Number((inMonths ? years * 12 : years).toPrecision(2));
	const say = inMonths
		? within
			? words.inMonths
			: words.months
		: within
			? words.inYears
			: words.years;
	return say(count, significant(count, 2));
}
