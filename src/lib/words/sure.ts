import { minorDigits } from '#lib/core/money/currency.ts';
import { fromSi, toSi } from '#lib/core/units/convert.ts';
import { earnedDigits } from '#lib/core/weigh/uncertainty/digits.ts';
import type { Spread } from '#lib/core/weigh/uncertainty/spread.ts';
import type { Format } from './format.ts';
import { sums } from './sums.ts';

/** A figure and the ends of its interval with the digits that they earn. METHOD W10. */
export interface SureText {
	readonly value: string;
	readonly low: string;
	readonly high: string;
	/** Both ends, to be read aloud: `€32,000 to €56,000`. */
	readonly range: string;
}

/** What of a format it takes to write an interval. */
export type SureFormat = Pick<Format, 'settings' | 'unitText' | 'number' | 'price'>;

export type SureQuantity = 'money' | 'energy' | 'carbon' | 'flow' | 'volume';

/** Writes a figure and its 90 % interval; money is in minor units, the others as in an assessment. */
export function sureText(
	format: SureFormat,
	quantity: SureQuantity,
	{ low, median, high }: Pick<Spread, 'low' | 'median' | 'high'>
): SureText {
	const { perUnit, write } = scaleOf(format, quantity, Math.abs(median));
	const earned = earnedDigits(median * perUnit, low * perUnit, high * perUnit);
	const [value, from, to] = [earned.value, earned.low, earned.high].map((each) => write(each)) as [
		string,
		string,
		string
	];
	return { value, low: from, high: to, range: sums.range(from, to) };
}

interface Scale {
	readonly perUnit: number;
	readonly write: (value: number) => string;
}

/** All three numbers of an interval in one unit, the one that the figure itself is best read in. */
function scaleOf(format: SureFormat, quantity: SureQuantity, size: number): Scale {
	const { currency, units } = format.settings;
	const inUnit = (perUnit: number, unit: string): Scale => ({
		perUnit,
		write: (value) => `${format.number(value)}\u202f${unit}`
	});
	switch (quantity) {
		case 'money': {
			const digits = minorDigits(currency);
			const places = digits.ok ? digits.value : 2;
			return {
				perUnit: 10 ** -places,
				write: (value) => format.price(value, Number.isInteger(value) ? 0 : places)
			};
		}
		case 'energy':
			return size >= 1e5 ? inUnit(1e-3, 'MWh') : inUnit(1, 'kWh');
		case 'carbon':
			return size >= 1e4 ? inUnit(1e-3, 't') : inUnit(1, 'kg');
		case 'flow':
			return inUnit(
				fromSi('volumeFlow', units.flow, toSi('volumeFlow', 'm3/s', 1)),
				format.unitText.flow
			);
		case 'volume':
			return inUnit(1, 'm³');
	}
}
