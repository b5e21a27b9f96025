import type {
	LeakUncertainty,
	UncertaintyResult,
	UncertaintyTotals
} from '#lib/core/weigh/uncertainty/result.ts';
import type { Spread } from '#lib/core/weigh/uncertainty/spread.ts';
import type { SureQuantity } from '#lib/words/sure.ts';
import type { Measure } from './measure.ts';

/** What is known by now of how sure the figures are. */
export interface HowSure {
	readonly result: UncertaintyResult | undefined;
	/** Share of the draws done while they are worked out, else absent. */
	readonly progress: number | undefined;
}

/** The spread of what leaks are compared by. */
export function spreadOf(
	of: LeakUncertainty | UncertaintyTotals,
	measure: Measure
): Spread | undefined {
	if (measure === 'cost') return of.costMinorPerYear;
	return measure === 'energy' ? of.energyKwhPerYear : of.freeAirM3PerS;
}

export const SURE_QUANTITY: Readonly<Record<Measure, SureQuantity>> = {
	cost: 'money',
	energy: 'energy',
	air: 'flow'
};
