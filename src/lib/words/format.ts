import { minorDigits } from '#lib/core/money/currency.ts';
import type { Site } from '#lib/core/survey/schema.ts';
import { fromSi, toSi } from '#lib/core/units/convert.ts';
import { parseNumber, type DecimalMark } from '#lib/core/units/parse-number.ts';
import type { Result } from '#lib/core/units/result.ts';
import { readerLocale } from './locale.ts';

/** The site's units, and how a person here writes numbers. */
export interface FormatSettings {
	/** BCP 47, e.g. `de-AT`; the reader's own when absent. */
	readonly locale?: string | undefined;
	readonly currency: string;
	readonly units: Site['units'];
}

const UNIT_TEXT = {
	bar: 'bar',
	kPa: 'kPa',
	MPa: 'MPa',
	psi: 'psi',
	'L/s': 'L/s',
	'L/min': 'L/min',
	'm3/min': 'm³/min',
	'm3/h': 'm³/h',
	cfm: 'cfm',
	mm: 'mm',
	in: 'in'
} as const;

/** Below zero with a true minus sign, wherever the locale puts it. */
const minus = (text: string) => text.replace('-', '−');

/** A space that does not break, between a number and its unit. */
const THIN = '\u202f';

export type Format = ReturnType<typeof createFormat>;

/**
 * Writes and reads numbers, money, units and dates the way the reader does: the one place where
 * values of the core become text. Digits follow what such figures can claim, three by default.
 */
export function createFormat(settings: FormatSettings) {
	const { currency, units } = settings;
	const locale = withPlainDigits(settings.locale ?? readerLocale());
	const digits = minorDigits(currency);
	const decimals = digits.ok ? digits.value : 2;
	const decimalMark: DecimalMark =
		new Intl.NumberFormat(locale).formatToParts(1.5).find((part) => part.type === 'decimal')
			?.value === ','
			? ','
			: '.';

	const plain = new Intl.NumberFormat(locale, { maximumFractionDigits: 6 });
	/** To make one takes longer than to write a hundred numbers with it. */
	const made = new Map<string, Intl.NumberFormat>();
	function numberFormat(options: Intl.NumberFormatOptions): Intl.NumberFormat {
		const key = JSON.stringify(options);
		const format = made.get(key) ?? new Intl.NumberFormat(locale, options);
		made.set(key, format);
		return format;
	}
	const day = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
	const moment = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
	/** For boxes to type in: no grouping, so that what stands there can be read back. */
	const editable = new Intl.NumberFormat(locale, {
		useGrouping: false,
		maximumSignificantDigits: 7
	});
	const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
	const coin = moneyFormat(decimals);
	const note = moneyFormat(0);

	function moneyFormat(fractionDigits: number) {
		return new Intl.NumberFormat(locale, {
			style: 'currency',
			currency,
			currencyDisplay: 'narrowSymbol',
			minimumFractionDigits: fractionDigits,
			maximumFractionDigits: fractionDigits
		});
	}

	function significant(value: number, count = 3): string {
		return minus(
			numberFormat({
				maximumSignificantDigits: Math.abs(value) >= 10 ** count ? 21 : count,
				maximumFractionDigits: 20
			}).format(Math.abs(value) >= 10 ** count ? roundTo(value, count + 1) : value)
		);
	}

	const withUnit = (text: string, unit: string) => `${text}${THIN}${unit}`;

	return {
		settings: { ...settings, locale },
		unitText: {
			pressure: UNIT_TEXT[units.pressure],
			flow: UNIT_TEXT[units.flow],
			length: UNIT_TEXT[units.length]
		},

		/** A number with at most six decimals, grouped. */
		number: (value: number) => minus(plain.format(value)),
		/** A number to be edited: no grouping. */
		editable: (value: number) => editable.format(value),
		/** A number as a person typed it, refused rather than guessed when it can be read two ways. */
		readNumber: (text: string): Result<number> => parseNumber(text, { decimal: decimalMark }),
		count: (value: number) => minus(whole.format(value)),
		/** Things said one after the other. */
		list: (parts: readonly string[]) =>
			new Intl.ListFormat(locale, { type: 'unit', style: 'long' }).format(parts),
		/** A measured value, to so many significant digits. */
		significant,
		percent: (share: number, fractionDigits = 0) =>
			minus(
				numberFormat({ style: 'percent', maximumFractionDigits: fractionDigits }).format(share)
			),

		/** Yearly sums: whole units of money from ten on and for none, else to the cent. */
		money: (minor: number) => {
			const major = minor / 10 ** decimals;
			return minus((Math.abs(major) >= 10 || major === 0 ? note : coin).format(major));
		},
		/** To the last minor unit, for prices and for sums that must add up. */
		moneyExact: (minor: number) => minus(coin.format(minor / 10 ** decimals)),

		/** A price in major units, to as many digits as it has; or a sum before it is rounded. */
		price: (major: number, mostDigits = 6) =>
			minus(
				numberFormat({
					style: 'currency',
					currency,
					currencyDisplay: 'narrowSymbol',
					minimumFractionDigits: Math.min(decimals, mostDigits),
					maximumFractionDigits: mostDigits
				}).format(major)
			),

		/** Where it stands beside a larger one, such as in a range, it takes the unit of that. */
		energy: (kwh: number, beside = kwh) =>
			Math.abs(beside) >= 1e5
				? withUnit(significant(kwh / 1000), 'MWh')
				: withUnit(significant(kwh), 'kWh'),
		carbon: (kg: number, beside = kg) =>
			Math.abs(beside) >= 1e4
				? withUnit(significant(kg / 1000), 't')
				: withUnit(significant(kg), 'kg'),
		flow: (m3PerS: number) =>
			withUnit(
				significant(fromSi('volumeFlow', units.flow, toSi('volumeFlow', 'm3/s', m3PerS))),
				UNIT_TEXT[units.flow]
			),
		volume: (m3: number) => withUnit(significant(m3), 'm³'),
		pressure: (barGauge: number) =>
			withUnit(
				significant(fromSi('pressure', units.pressure, toSi('pressure', 'bar', barGauge))),
				UNIT_TEXT[units.pressure]
			),
		length: (mm: number) =>
			withUnit(
				significant(fromSi('length', units.length, toSi('length', 'mm', mm)), 2),
				UNIT_TEXT[units.length]
			),
		hours: (hours: number) => withUnit(whole.format(hours), 'h'),
		power: (kw: number) => withUnit(significant(kw), 'kW'),

		/** Between the unit that the site writes and the unit that the survey keeps. */
		pressureShown: (barGauge: number) =>
			fromSi('pressure', units.pressure, toSi('pressure', 'bar', barGauge)),
		pressureKept: (shown: number) =>
			fromSi('pressure', 'bar', toSi('pressure', units.pressure, shown)),
		lengthShown: (mm: number) => fromSi('length', units.length, toSi('length', 'mm', mm)),
		lengthKept: (shown: number) => fromSi('length', 'mm', toSi('length', units.length, shown)),
		flowShown: (lPerS: number) =>
			fromSi('volumeFlow', units.flow, toSi('volumeFlow', 'L/s', lPerS)),
		flowKept: (shown: number) => fromSi('volumeFlow', 'L/s', toSi('volumeFlow', units.flow, shown)),

		/** The day of an instant, on the calendar where it was recorded. */
		date: (instant: string) => day.format(new Date(`${instant.slice(0, 10)}T12:00:00Z`)),
		/** An instant as a clock here shows it. */
		moment: (instant: string) => moment.format(new Date(instant))
	};
}

/** The locale with the digits 0 to 9, so that what a box shows can be typed and read back. */
function withPlainDigits(locale: string | undefined): string | undefined {
	const resolved = new Intl.NumberFormat(locale).resolvedOptions();
	if (resolved.numberingSystem === 'latn') return locale;
	return new Intl.Locale(resolved.locale, { numberingSystem: 'latn' }).toString();
}

function roundTo(value: number, significantDigits: number): number {
	return value === 0 ? 0 : Number(value.toPrecision(significantDigits));
}
