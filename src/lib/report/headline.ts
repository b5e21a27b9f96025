import { nothingWeighed, type Assessment, type Totals } from '../core/weigh/assessment.ts';
import type { UncertaintyTotals } from '../core/weigh/uncertainty/result.ts';
import { fixList as words } from '../words/fix-list.ts';
import { sums } from '../words/sums.ts';
import { sureText, type SureFormat, type SureQuantity } from '../words/sure.ts';
import type { Figure, PrintFormat, ReportModel } from './model.ts';

/** What stands large on the cover: how much work there is, and what it is about. */
export function headline(
	assessment: Assessment,
	openCount: number,
	doneCount: number,
	format: PrintFormat
): Figure[] {
	const { totals, reference, unweighed } = assessment;
	const none = nothingWeighed(assessment);
	const {
		energyKwhPerYear: energy,
		costMinorPerYear: cost,
		co2KgPerYear: carbon
	}: Partial<Totals> = none ? {} : totals;
	const notWeighed = unweighed.length;
	const { figures } = words;
	const stated = sums.references[reference];
	const unknown = { value: figures.notKnown };
	return [
		{
			label: figures.toDo,
			value: format.count(openCount),
			note: figures.done(format.count(doneCount))
		},
		{
			label: figures.air,
			...(none ? unknown : { value: format.flow(totals.freeAirM3PerS), of: 'flow' as const }),
			note:
				notWeighed === 0
					? figures.freeAir(stated)
					: figures.notWeighed(stated, format.count(notWeighed))
		},
		{
			label: figures.energy,
			...(energy === undefined ? unknown : { value: format.energy(energy), of: 'energy' as const }),
			...(carbon !== undefined && { note: figures.carbon(format.carbon(carbon)) })
		},
		{
			label: figures.money,
			...(cost === undefined ? unknown : { value: format.money(cost), of: 'money' as const })
		}
	];
}

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
			const { range } = sureText(format, figure.of, spread);
			const note = figure.note
				? words.figures.intervalAnd(range, figure.note)
				: words.figures.interval(range);
			return { ...figure, note };
		})
	};
}
