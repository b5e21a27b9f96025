import type { Assessment, LeakAssessment } from '#lib/core/weigh/assessment.ts';
import type { Format } from '#lib/words/format.ts';

/** What the leaks are compared by: money if it is known, else energy, else air. */
export type Measure = 'cost' | 'energy' | 'air';

export function measureOf({ totals }: Pick<Assessment, 'totals'>): Measure {
	if (totals.costMinorPerYear !== undefined) return 'cost';
	return totals.energyKwhPerYear !== undefined ? 'energy' : 'air';
}

const SECONDS_PER_HOUR = 3600;

/** What one leak wastes in a year; 0 where the measure is not known, so that it takes no share. */
export function amountOf(leak: LeakAssessment, measure: Measure): number {
	if (measure === 'cost') return leak.costMinorPerYear ?? 0;
	if (measure === 'energy') return leak.energyKwhPerYear ?? 0;
	return leak.freeAirM3PerS * leak.hoursPerYear * SECONDS_PER_HOUR;
}

export function amountText(format: Format, measure: Measure, amount: number): string {
	if (measure === 'cost') return format.money(amount);
	return measure === 'energy' ? format.energy(amount) : format.volume(amount);
}
