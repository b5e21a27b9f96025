import type { Amounts } from '../core/prove/amounts.ts';
import type { Comparison } from '../core/prove/compare.ts';
import type { TermSpread } from '../core/prove/intervals.ts';
import type { Spread } from '../core/weigh/uncertainty/spread.ts';
import { proof } from '../words/proof.ts';
import { savingsReport } from '../words/savings-report.ts';
import type { PrintFormat } from './model.ts';

export interface Shower {
	readonly of: (amounts: Amounts) => number;
	readonly text: (value: number) => string;
	readonly value: (amounts: Amounts | undefined) => string;
	readonly interval: (spread: Pick<TermSpread, 'costMinorPerYear' | 'energyKwhPerYear'>) => string;
}

/** Everything is shown in money where it is known, else in energy, else in air. */
export function shower({ terms }: Comparison, format: PrintFormat): Shower {
	const money = terms.before.costMinorPerYear !== undefined;
	const energy = terms.before.energyKwhPerYear !== undefined;
	const of = (amounts: Amounts) =>
		(money
			? amounts.costMinorPerYear
			: energy
				? amounts.energyKwhPerYear
				: amounts.freeAirM3PerS) ?? 0;
	const text = money ? format.money : energy ? format.energy : format.flow;
	return {
		of,
		text,
		value: (amounts) => (amounts ? text(of(amounts)) : '–'),
		interval: (spread) => {
			const ends = money ? spread.costMinorPerYear : energy ? spread.energyKwhPerYear : undefined;
			return ends ? rangeText(ends, text) : savingsReport.notKnown;
		}
	};
}

/** The ends of an interval claim two digits. */
export function rangeText(
	{ low, high }: Pick<Spread, 'low' | 'high'>,
	text: (value: number, beside: number) => string
): string {
	const larger = Math.max(Math.abs(low), Math.abs(high));
	const two = (value: number) => text(value === 0 ? 0 : Number(value.toPrecision(2)), larger);
	return proof.range(two(low), two(high));
}
