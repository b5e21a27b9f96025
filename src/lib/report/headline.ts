import type { Assessment } from '../core/weigh/assessment.ts';
import type { UncertaintyTotals } from '../core/weigh/uncertainty/result.ts';
import { sureText, type SureFormat, type SureQuantity } from '../words/sure.ts';
import type { Figure, PrintFormat, ReportModel } from './model.ts';

/** What stands large on the cover: how much work there is, and what it is about. */
export function headline(
	{ totals, referenceLabel, unweighed }: Assessment,
	openCount: number,
	doneCount: number,
	format: PrintFormat
): Figure[] {
	const { energyKwhPerYear: energy, costMinorPerYear: cost, co2KgPerYear: carbon } = totals;
	const notWeighed = unweighed.length;
	return [
		{
			label: 'Jobs to do',
			value: format.count(openCount),
			note: `${format.count(doneCount)} done`
		},
		{
			label: 'Air lost while it leaks',
			value: format.flow(totals.freeAirM3PerS),
			of: 'flow',
			note:
				notWeighed === 0
					? `free air, ${referenceLabel}`
					: `free air, ${referenceLabel}; ${format.count(notWeighed)} more not weighed`
		},
		{
			label: 'Energy a year',
			...(energy === undefined ? UNKNOWN : { value: format.energy(energy), of: 'energy' as const }),
			...(carbon !== undefined && { note: `${format.carbon(carbon)} CO₂e` })
		},
		{
			label: 'Money a year',
			...(cost === undefined ? UNKNOWN : { value: format.money(cost), of: 'money' as const })
		}
	];
}

const UNKNOWN = { value: 'not known yet' };

/** The same report with the interval of each total, once the draws for it are done. METHOD W10. */
export function withIntervals(
	model: ReportModel,
	totals: UncertaintyTotals,
	format: SureFormat
): ReportModel {
	const spreads: Partial<Record<SureQuantity, UncertaintyTotals[keyof UncertaintyTotals]>> = {
		flow: totals.freeAirM3PerS,
		energy: totals.energyKwhPerYear,
		money: totals.costMinorPerYear
	};
	return {
		...model,
		figures: model.figures.map((figure) => {
			const spread = figure.of && spreads[figure.of];
			if (!figure.of || !spread) return figure;
			const range = `90 % interval ${sureText(format, figure.of, spread).range}`;
			return { ...figure, note: figure.note ? `${range}; ${figure.note}` : range };
		})
	};
}
