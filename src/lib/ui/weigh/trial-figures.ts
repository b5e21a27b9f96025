import type { YearFigures } from '#lib/core/weigh/what-if.ts';
import type { Format } from '#lib/words/format.ts';
import { signed } from '#lib/words/signed.ts';
import { weigh } from '#lib/words/weigh.ts';

/** One figure of today beside the same with what is tried. */
export interface FigureBeside {
	readonly name: string;
	readonly today: string;
	readonly then: string;
	/** `−€1,200` or `none`; a dash where it is not known. */
	readonly change: string;
}

/** The figures of two years side by side; what neither year knows is left out. */
export function figuresBeside(
	today: YearFigures,
	then: YearFigures,
	format: Format
): readonly FigureBeside[] {
	const { rows: rowNames } = weigh.trial;
	const rows: readonly (readonly [
		string,
		(of: YearFigures) => number | undefined,
		(value: number) => string
	])[] = [
		[rowNames.leaksCost, (of) => of.leaks.costMinorPerYear, format.money],
		[rowNames.leaksEnergy, (of) => of.leaks.energyKwhPerYear, format.energy],
		[rowNames.leaksCarbon, (of) => of.leaks.co2KgPerYear, format.carbon],
		[rowNames.leaksAir, (of) => of.freeAirM3PerS, format.flow],
		[rowNames.stationCost, (of) => of.station?.costMinorPerYear, format.money],
		[rowNames.stationEnergy, (of) => of.station?.energyKwhPerYear, format.energy],
		[rowNames.stationCarbon, (of) => of.station?.co2KgPerYear, format.carbon]
	];
	return rows.flatMap(([name, of, write]) => {
		const [from, to] = [of(today), of(then)];
		if (from === undefined && to === undefined) return [];
		const text = (value: number | undefined) => (value === undefined ? '–' : write(value));
		return [{ name, today: text(from), then: text(to), change: changeText(from, to, write) }];
	});
}

/** Smaller than this share of the figure, a change is only rounding. */
const ROUNDING = 1e-9;

function changeText(
	from: number | undefined,
	to: number | undefined,
	write: (value: number) => string
): string {
	if (from === undefined || to === undefined) return '–';
	const change = to - from;
	if (Math.abs(change) <= ROUNDING * Math.abs(from)) return weigh.trial.unchanged;
	return signed(change, write);
}
