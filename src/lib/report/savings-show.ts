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
	/** With an interval beside it, it takes the unit of that. */
	readonly value: (amounts: Amounts | undefined, beside?: Ends) => string;
	readonly interval: (spread: Ends) => string;
}

type Ends = Pick<TermSpread, 'costMinorPerYear' | 'energyKwhPerYear'>;

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
	const text: (value: number, beside?: number) => string = money
		? format.money
		: energy
			? format.energy
			: format.flow;
	const endsOf = (spread: Ends | undefined) =>
		money ? spread?.costMinorPerYear : energy ? spread?.energyKwhPerYear : undefined;
	return {
		of,
		text,
		value: (amounts, beside) => (amounts ? besideText(of(amounts), endsOf(beside), text) : '–'),
		interval: (spread) => {
			const ends = endsOf(spread);
			return ends ? rangeText(ends, text) : savingsReport.notKnown;
		}
	};
}

/** A value in the unit that the interval beside it has, so that the two can be compared at sight. */
export function besideText(
	value: number,
	ends: Pick<Spread, 'low' | 'high'> | undefined,
	text: (value: number, beside?: number) => string
): string {
	return ends ? text(value, largest(value, ends)) : text(value);
}

const largest = (value: number, { low, high }: Pick<Spread, 'low' | 'high'>) =>
	Math.max(Math.abs(value), Math.abs(low), Math.abs(high));

/** The ends of an interval claim two digits. */
export function rangeText(
	{ low, high }: Pick<Spread, 'low' | 'high'>,
	text: (value: number, beside: number) => string
): string {
	const larger = Math.max(Math.abs(low), Math.abs(high));
	const two = (value: number) => text(value === 0 ? 0 : Number(value.toPrecision(2)), larger);
	return proof.range(two(low), two(high));
}
