import type { ReferenceId } from '../air/reference-air.ts';
import type { Refusal } from '../units/result.ts';
import type { YearWarning } from '../supply/year.ts';
import type { LeakState } from '../survey/leak-state.ts';

/**
 * Which method turned flow into power: `quick`, one specific power for all flow; `supply`, the
 * station model; `none`, when the survey does not say how the air is made.
 */
export type SupplyMethod = 'quick' | 'supply' | 'none';

/** What one leak wastes. What cannot be known yet is absent, never zero. */
export interface LeakAssessment {
	readonly leakId: string;
	readonly tag: number;
	readonly state: LeakState;
	/** C_d·A, m². */
	readonly effectiveAreaM2: number;
	/** Relative standard uncertainty of the effective area, as a share. */
	readonly relativeUncertainty: number;
	readonly pressureBarGauge: number;
	readonly hoursPerYear: number;
	readonly regime: 'choked' | 'subsonic';
	/** While it leaks, duty included. */
	readonly massFlowKgPerS: number;
	/** At the assessment's reference. */
	readonly freeAirM3PerS: number;
	readonly energyKwhPerYear?: number;
	/** Integer minor units of the currency; the leaks' shares add up to the total exactly. */
	readonly costMinorPerYear?: number;
	readonly co2KgPerYear?: number;
	/** 1 for the leak that wastes most: by money, else energy, else air. */
	readonly rank: number;
}

/** A leak that could not be weighed, and why. */
export interface Unweighed {
	readonly leakId: string;
	readonly tag: number;
	readonly refusal: Refusal;
}

export interface Totals {
	readonly leakCount: number;
	readonly massFlowKgPerS: number;
	readonly freeAirM3PerS: number;
	readonly freeAirM3PerYear: number;
	readonly energyKwhPerYear?: number;
	readonly costMinorPerYear?: number;
	readonly co2KgPerYear?: number;
}

/** What the leaks of one round waste, worst first. */
export interface Assessment {
	readonly roundId: string;
	readonly method: SupplyMethod;
	/** Why there is no energy or no money, when there is none, e.g. `price-missing`. */
	readonly missing: readonly Refusal[];
	/** The state that free air is stated at. */
	readonly reference: ReferenceId;
	/** The same, in words: `ISO 1217 (20 °C, 100 kPa, dry)`. */
	readonly referenceLabel: string;
	readonly currency: string;
	readonly totals: Totals;
	/** The quick method's figures, beside the station model's, where the survey has both. */
	readonly quickTotals?: Pick<Totals, 'energyKwhPerYear' | 'costMinorPerYear'>;
	/** The station as it runs today, leaks included; by the station model only. */
	readonly station?: { readonly energyKwhPerYear: number; readonly peakKw: number };
	/** What the station model found that must be shown beside its figures. */
	readonly warnings: readonly YearWarning[];
	readonly leaks: readonly LeakAssessment[];
	readonly unweighed: readonly Unweighed[];
}

/** Where there are leaks and none of them could be weighed, their sum is not nothing: it is not known. */
export function nothingWeighed({
	leaks,
	unweighed
}: Pick<Assessment, 'leaks' | 'unweighed'>): boolean {
	return leaks.length === 0 && unweighed.length > 0;
}
