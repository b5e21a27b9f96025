import type { Evidence } from './evidence-schema.ts';

/** Above this a workshop or factory line is unlikely: our starting value. */
export const PLAUSIBLE_BAR = 16;
const LEAST_BAR = 0.1;
const PSI_PER_BAR = 14.503_77;
/** A leak this wide would be heard across the hall and mended: our starting value. */
const PLAUSIBLE_HOLE_MM = 15;
/** What such a hole loses at 7 bar, rounded up: our starting value. */
const PLAUSIBLE_L_PER_S = 300;
const LEAST_L_PER_S = 0.1;
const SECONDS_PER_MINUTE = 60;

/** What was probably meant: a lost decimal point, or psi typed as bar. */
export function likelyPressures(barGauge: number): readonly number[] {
	if (barGauge <= PLAUSIBLE_BAR) return [];
	const fromPsi = Math.round((barGauge / PSI_PER_BAR) * 100) / 100;
	return [barGauge / 10, fromPsi].filter((bar) => bar >= LEAST_BAR && bar <= PLAUSIBLE_BAR);
}

/** A size that nobody would have left, and what was probably meant by it. */
export interface LargeSize {
	readonly of: 'hole' | 'slit' | 'thread-gap' | 'flow';
	/** The dimension that is most likely wrong, in mm, or the flow in L/s. */
	readonly value: number;
	readonly likely: readonly Evidence[];
}

/** @returns nothing when the size is one that a leak may have */
export function largeSize(evidence: Evidence): LargeSize | undefined {
	switch (evidence.kind) {
		case 'hole': {
			const { diameterMm: value } = evidence;
			if (value <= PLAUSIBLE_HOLE_MM) return undefined;
			return { of: 'hole', value, likely: [{ ...evidence, diameterMm: value / 10 }] };
		}
		case 'slit': {
			const { widthMm: value, lengthMm } = evidence;
			if (asHole(value * lengthMm) <= PLAUSIBLE_HOLE_MM) return undefined;
			return { of: 'slit', value, likely: [{ ...evidence, widthMm: value / 10 }] };
		}
		case 'thread-gap': {
			const { gapMm: value, threadDiameterMm } = evidence;
			if (asHole(Math.PI * threadDiameterMm * value) <= PLAUSIBLE_HOLE_MM) return undefined;
			return { of: 'thread-gap', value, likely: [{ ...evidence, gapMm: value / 10 }] };
		}
		case 'meter': {
			const { flowLPerS: value } = evidence;
			if (value <= PLAUSIBLE_L_PER_S) return undefined;
			// Litres a minute, read as litres a second, or a lost decimal point.
			const likely = [value / SECONDS_PER_MINUTE, value / 10]
				.filter((flow) => flow >= LEAST_L_PER_S && flow <= PLAUSIBLE_L_PER_S)
				.map((flowLPerS) => ({ ...evidence, flowLPerS }));
			return { of: 'flow', value, likely };
		}
		case 'bag': {
			const { volumeL, seconds } = evidence;
			const value = seconds > 0 ? volumeL / seconds : 0;
			return value > PLAUSIBLE_L_PER_S ? { of: 'flow', value, likely: [] } : undefined;
		}
		case 'bubble-growth':
		case 'soap-response':
		case 'catalogue':
			return undefined;
	}
}

/** The diameter of a hole of an area, in mm. */
function asHole(areaMm2: number): number {
	return Math.sqrt((4 * areaMm2) / Math.PI);
}

/**
 * How many of a currency about make a euro, to one digit: only to ask about a price of electricity
 * that is far from any paid anywhere, never to convert. From memory, 2026.
 */
const UNITS_PER_EURO: Readonly<Record<string, number>> = {
	...units(1, 'EUR USD GBP CHF CAD AUD NZD SGD BGN BAM'),
	...units(4, 'PLN RON ILS MYR AED SAR QAR PEN'),
	...units(8, 'CNY DKK HKD BRL'),
	...units(11, 'SEK NOK'),
	...units(20, 'MXN ZAR CZK'),
	...units(40, 'TRY TWD THB UYU UAH'),
	...units(80, 'INR RUB PHP'),
	...units(150, 'JPY ISK RSD BDT'),
	...units(400, 'HUF NGN'),
	...units(1000, 'CLP ARS KRW'),
	...units(4000, 'COP'),
	...units(18_000, 'IDR'),
	...units(28_000, 'VND')
};
/** Between these a kilowatt-hour of industry costs, in euros: our starting values, wide on purpose. */
const LEAST_PER_KWH = 0.005;
const MOST_PER_KWH = 1.5;
/** Slips of the decimal point, and cents typed for euros. */
const SLIPS = [1 / 100, 1 / 10, 1 / 1000, 100, 10];

function units(perEuro: number, codes: string): Record<string, number> {
	return Object.fromEntries(codes.split(' ').map((code) => [code, perEuro]));
}

/**
 * @returns nothing when a kilowatt-hour may cost that, or the currency is not one whose worth is
 * roughly known here; else what was probably meant, likeliest first
 */
export function oddPrice(pricePerKwh: number, currency: string): readonly number[] | undefined {
	const perEuro = Object.hasOwn(UNITS_PER_EURO, currency) ? UNITS_PER_EURO[currency] : undefined;
	if (perEuro === undefined || pricePerKwh === 0) return undefined;
	const may = (price: number): boolean =>
		price >= LEAST_PER_KWH * perEuro && price <= MOST_PER_KWH * perEuro;
	if (may(pricePerKwh)) return undefined;
	return SLIPS.map((slip) => Number((pricePerKwh * slip).toPrecision(12)))
		.filter(may)
		.slice(0, 2);
}
