import { minorDigits } from '#lib/core/money/currency.ts';
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
	const sums = difference(format.settings.currency);
	const rows: readonly (readonly [
		string,
		(of: YearFigures) => number | undefined,
		(value: number, beside?: number) => string,
		less?: (to: number, from: number) => number
	])[] = [
		[rowNames.leaksCost, (of) => of.leaks.costMinorPerYear, format.money, sums],
		[rowNames.leaksEnergy, (of) => of.leaks.energyKwhPerYear, format.energy],
		[rowNames.leaksCarbon, (of) => of.leaks.co2KgPerYear, format.carbon],
		[rowNames.leaksAir, (of) => of.freeAirM3PerS, format.flow],
		[rowNames.stationCost, (of) => of.station?.costMinorPerYear, format.money, sums],
		[rowNames.stationEnergy, (of) => of.station?.energyKwhPerYear, format.energy],
		[rowNames.stationCarbon, (of) => of.station?.co2KgPerYear, format.carbon]
	];
	return rows.flatMap(([name, of, write, less = plainly]) => {
		const [from, to] = [of(today), of(then)];
		if (from === undefined && to === undefined) return [];
		// One unit along the row: 190 MWh beside 67,400 kWh is a sum for the reader.
		const larger = Math.max(from ?? 0, to ?? 0);
		const writeBeside = (value: number) => write(value, larger);
		const text = (value: number | undefined) => (value === undefined ? '–' : writeBeside(value));
		const change = changeText(from, to, writeBeside, less);
		return [{ name, today: text(from), then: text(to), change }];
	});
}

const plainly = (to: number, from: number) => to - from;

/** Of sums as they are written, so that whoever takes one from the other gets what stands there. */
function difference(currency: string): typeof plainly {
	const digits = minorDigits(currency);
	const unit = 10 ** (digits.ok ? digits.value : 2);
	/** From here on sums are written without what is less than a unit. */
	const least = 10 * unit;
	const written = (minor: number) =>
		Math.abs(minor) < least ? minor : Math.round(minor / unit) * unit;
	return (to, from) => (Math.abs(to - from) < least ? to - from : written(to) - written(from));
}

/** Smaller than this share of the figure, a change is only rounding. */
const ROUNDING = 1e-9;

function changeText(
	from: number | undefined,
	to: number | undefined,
	write: (value: number) => string,
	less: typeof plainly
): string {
	if (from === undefined || to === undefined) return '–';
	if (Math.abs(to - from) <= ROUNDING * Math.abs(from)) return weigh.trial.unchanged;
	return signed(less(to, from), write);
}
