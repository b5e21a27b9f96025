import type { YearWarning } from '#lib/core/supply/year.ts';
import type { Format } from './format.ts';

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
	switch (warning.code) {
		case 'shortage':
			return `In “${partName(warning.partId)}” the demand is ${flow(warning.demandM3PerMin)}, and the machines give at most ${flow(warning.capacityM3PerMin)}: the pressure would fall. Check both.`;
		case 'leaks-exceed-demand':
			return `In “${partName(warning.partId)}” the leaks add up to ${flow(warning.leaksM3PerMin)}, more than the ${flow(warning.availableM3PerMin)} that is delivered; only that much is counted. Check the sizes or the demand.`;
		case 'saving-negative':
			return `In “${partName(warning.partId)}” the station would draw more without the leaks (${format.energy(-warning.savingKwh)} a year): its machines leave a gap in what they can deliver. Check their order.`;
		case 'short-cycling':
			return `In “${partName(warning.partId)}” a machine loads ${format.significant(warning.cyclesPerMin, 2)} times a minute. Check the receiver volume and the pressure band.`;
		case 'unassigned-time':
			return `${format.hours(warning.hoursPerYear)} a year belong to no period of the week and count as off. Add a period for them if there is pressure then.`;
	}
}
