import type { Amounts } from '#lib/core/prove/amounts.ts';
import type { TermSpread } from '#lib/core/prove/intervals.ts';
import type { Format } from '#lib/words/format.ts';
import { proof } from '#lib/words/proof.ts';

/** What sums are shown in: money where it is known, else energy, else air. */
export type ProveMeasure = 'money' | 'energy' | 'air';

export function proveMeasure({ costMinorPerYear, energyKwhPerYear }: Amounts): ProveMeasure {
	return costMinorPerYear !== undefined
		? 'money'
		: energyKwhPerYear !== undefined
			? 'energy'
			: 'air';
}

export function valueOf(amounts: Amounts, measure: ProveMeasure): number {
	if (measure === 'money') return amounts.costMinorPerYear ?? 0;
	if (measure === 'energy') return amounts.energyKwhPerYear ?? 0;
	return amounts.freeAirM3PerS;
}

/** @param beside a larger value in the same range, whose unit it takes */
export function valueText(
	format: Format,
	measure: ProveMeasure,
	value: number,
	beside = value
): string {
	if (measure === 'money') return format.money(value);
	return measure === 'energy' ? format.energy(value, beside) : format.flow(value);
}

/** `€ 7,100 to € 11,900`, or nothing where the measure has no interval. */
export function intervalText(
	format: Format,
	measure: ProveMeasure,
	spread: Pick<TermSpread, 'costMinorPerYear' | 'energyKwhPerYear'> | undefined,
	shift = 0
): string {
	const ends =
		measure === 'money'
			? spread?.costMinorPerYear
			: measure === 'energy'
				? spread?.energyKwhPerYear
				: undefined;
	if (!ends) return '';
	const larger = Math.max(Math.abs(ends.low + shift), Math.abs(ends.high + shift));
	const end = (value: number) => valueText(format, measure, rounded(value + shift), larger);
	return proof.range(end(ends.low), end(ends.high));
}

/** An end of an interval claims two digits. */
function rounded(value: number): number {
	return value === 0 ? 0 : Number(value.toPrecision(2));
}
