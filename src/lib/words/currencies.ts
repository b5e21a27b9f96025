import { minorDigits } from '#lib/core/money/currency.ts';
import { controls } from './controls.ts';
import { readerLocale } from './locale.ts';

interface CurrencyOption {
	readonly value: string;
	readonly text: string;
}

/** Shown first, because most sites use one of them; our choice, by how many people pay with them. */
const OFTEN = ['EUR', 'USD', 'GBP', 'CHF', 'PLN', 'SEK', 'INR', 'CNY', 'JPY', 'CAD', 'AUD', 'BRL'];

/** The currencies that the core can count in, by code and by their name in the reader's language. */
export function currencyGroups(
	locale = readerLocale()
): readonly { readonly label: string; readonly options: readonly CurrencyOption[] }[] {
	const names = new Intl.DisplayNames(locale ?? new Intl.NumberFormat().resolvedOptions().locale, {
		type: 'currency'
	});
	const option = (code: string): CurrencyOption => ({
		value: code,
		text: `${code} – ${names.of(code) ?? code}`
	});
	const known = Intl.supportedValuesOf('currency').filter((code) => minorDigits(code).ok);
	const rest = known.filter((code) => !OFTEN.includes(code));
	return [
		{ label: controls.often, options: OFTEN.map(option) },
		{ label: controls.others, options: rest.map(option) }
	];
}
