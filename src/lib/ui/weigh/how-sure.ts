import type { UncertaintyResult } from '#lib/core/weigh/uncertainty/result.ts';
import type { SureQuantity } from '#lib/words/sure.ts';
import type { Measure } from './measure.ts';

/** What is known by now of how sure the figures are. */
export interface HowSure {
	readonly result: UncertaintyResult | undefined;
	/** Share of the draws done while they are worked out, else absent. */
	readonly progress: number | undefined;
}

/** How the interval of what leaks are compared by is written. */
export const SURE_QUANTITY: Readonly<Record<Measure, SureQuantity>> = {
	cost: 'money',
	energy: 'energy',
	air: 'flow'
};
