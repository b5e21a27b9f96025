import { ok, refuse, type Result } from '../units/result.ts';

/**
 * Digits after the decimal point by ISO 4217 code, for the currencies that do not have two.
 * @source ISO 4217, list one (from memory)
 */
const UNUSUAL_EXPONENTS: Readonly<Record<string, number>> = {
	...exponents(0, 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF'),
	...exponents(3, 'BHD IQD JOD KWD LYD OMR TND')
};

/**
 * Currencies with two digits after the decimal point.
 * @source ISO 4217, list one (from memory)
 */
const TWO_DIGITS = exponents(
	2,
	`AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD
	CDF CHF CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD
	HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD
	MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON
	RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD
	TZS UAH USD UYU UZS VES WST XCD YER ZAR ZMW ZWG`
);

const EXPONENTS: ReadonlyMap<string, number> = new Map(
	Object.entries({ ...TWO_DIGITS, ...UNUSUAL_EXPONENTS })
);

function exponents(digits: number, codes: string): Record<string, number> {
	return Object.fromEntries(codes.split(/\s+/).map((code) => [code, digits]));
}

/**
 * How many decimal digits the minor unit of a currency stands for.
 * @param currency ISO 4217 code, e.g. 'EUR'
 * @returns 0, 2 or 3
 * @validity the code is on the list; an unknown one is refused, never taken as two digits
 * @source ISO 4217 (from memory); METHOD M1
 */
export function minorDigits(currency: string): Result<number> {
	const digits = EXPONENTS.get(currency);
	return digits === undefined ? refuse('currency-unknown', { currency }) : ok(digits);
}

/**
 * Rounds an amount to whole minor units, halves away from zero.
 *
 * The decimal digits of the number as it is written are what is rounded: 1.005 gives 101 cents,
 * although the nearest binary number lies just under it.
 * @param amount amount in major units
 * @param currency ISO 4217 code
 * @returns amount in minor units, an integer
 * @validity finite, and the result within ±(2⁵³ − 1)
 * @source common practice; METHOD M1
 */
export function toMinor(amount: number, currency: string): Result<number> {
	const digits = minorDigits(currency);
	if (!digits.ok) return digits;
	const [mantissa = '', exponent = '0'] = String(Math.abs(amount)).split('e');
	const shifted = Number(`${mantissa}e${Number(exponent) + digits.value}`);
	const minor = Math.round(shifted);
	if (!Number.isSafeInteger(minor)) return refuse('amount-out-of-range', { amount, currency });
	return ok(amount < 0 && minor > 0 ? -minor : minor);
}

/**
 * Shows minor units as an amount in major units; the inverse of `toMinor`.
 * @param minor amount in minor units, an integer
 * @param currency ISO 4217 code
 * @returns amount in major units
 * @validity a safe integer
 * @source ISO 4217; METHOD M1
 */
export function fromMinor(minor: number, currency: string): Result<number> {
	const digits = minorDigits(currency);
	if (!digits.ok) return digits;
	if (!Number.isSafeInteger(minor)) return refuse('amount-out-of-range', { minor, currency });
	return ok(minor / 10 ** digits.value);
}
