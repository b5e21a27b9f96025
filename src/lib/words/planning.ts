import type { Spending } from '../core/mend/plan/planned-parts.ts';
import type { Format } from './format.ts';
import { mending } from './mending.ts';

/** Who does a job, in words. */
export const SKILL_WORDS = mending.skills;

/** Why a leak is in no window, in words. */
export const LEFT_WORDS = mending.left;

/** What parts cost, and how that stands to the budget. METHOD P11. */
export function spendingWords(
	{ partsMinor, budgetMinor }: Spending,
	{ money }: Pick<Format, 'money'>
): string {
	const { within, beyond, open } = mending.spending;
	if (budgetMinor === undefined) return open(money(partsMinor));
	return partsMinor > budgetMinor
		? beyond(money(partsMinor), money(budgetMinor), money(partsMinor - budgetMinor))
		: within(money(partsMinor), money(budgetMinor), money(budgetMinor - partsMinor));
}
