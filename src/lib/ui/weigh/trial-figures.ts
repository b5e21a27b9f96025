import type { YearFigures } from '#lib/core/weigh/what-if.ts';
import type { Format } from '#lib/words/format.ts';

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
	const rows: readonly (readonly [
		string,
		(of: YearFigures) => number | undefined,
		(value: number) => string
	])[] = [
		['Leaks cost a year', (of) => of.leaks.costMinorPerYear, format.money],
		['Leaks take, energy', (of) => of.leaks.energyKwhPerYear, format.energy],
		['Leaks, CO₂e', (of) => of.leaks.co2KgPerYear, format.carbon],
		['Leaks, free air', (of) => of.freeAirM3PerS, format.flow],
		['Station costs a year', (of) => of.station?.costMinorPerYear, format.money],
		['Station takes, energy', (of) => of.station?.energyKwhPerYear, format.energy],
		['Station, CO₂e', (of) => of.station?.co2KgPerYear, format.carbon]
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
	if (Math.abs(change) <= ROUNDING * Math.abs(from)) return 'none';
	return `${change < 0 ? '−' : '+'}${write(Math.abs(change))}`;
}
