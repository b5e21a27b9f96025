import type { YearWarning } from '#lib/core/supply/year.ts';
import type { Format } from './format.ts';
import { sums } from './sums.ts';

/**
 * What must be read beside a figure of the supply model, in a sentence with the next step.
 * @param partName what a part of the week is called
 */
export function supplyWarningSentence(
	warning: YearWarning,
	partName: (partId: string) => string,
	format: Pick<Format, 'significant' | 'hours' | 'energy'>
): string {
	const flow = (m3PerMin: number) => `${format.significant(m3PerMin)}\u202fm³/min`;
	const { warnings } = sums;
	switch (warning.code) {
		case 'shortage':
			return warnings.shortage(
				partName(warning.partId),
				flow(warning.demandM3PerMin),
				flow(warning.capacityM3PerMin)
			);
		case 'leaks-exceed-demand':
			return warnings.leaksExceedDemand(
				partName(warning.partId),
				flow(warning.leaksM3PerMin),
				flow(warning.availableM3PerMin)
			);
		case 'saving-negative':
			return warnings.savingNegative(partName(warning.partId), format.energy(-warning.savingKwh));
		case 'short-cycling':
			return warnings.shortCycling(
				partName(warning.partId),
				format.significant(warning.cyclesPerMin, 2)
			);
		case 'unassigned-time':
			return warnings.unassignedTime(format.hours(warning.hoursPerYear));
	}
}
