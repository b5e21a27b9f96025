import { barFromPascal, celsiusFromKelvin, fromSi, toSi } from '#lib/core/units/convert.ts';
import { as } from '#lib/core/units/quantity.ts';
import type { Origin, Subject, Working, WorkingUnit } from '#lib/core/weigh/working/tree.ts';
import type { Format } from './format.ts';
import { sourceWords } from './sources.ts';
import { sums } from './sums.ts';
import { sureText, type SureQuantity } from './sure.ts';

/** What each quantity of a working is called. */
export const QUANTITY_WORDS = sums.quantities;

/** What the quantity is, and of what where there are several of its kind. */
export function workingLabel({ id, of }: Pick<Working, 'id' | 'of'>): string {
	const words = QUANTITY_WORDS[id];
	return of ? sums.ofWhat(words, subjectWords(of)) : words;
}

function subjectWords(of: Subject): string {
	switch (of.kind) {
		case 'leak':
			return sums.tag(of.tag);
		case 'period':
		case 'machine':
			return of.name;
		case 'closed':
			return sums.closed;
		case 'reference':
			return sourceWords(of.label);
	}
}

/** Where an input came from, in words. */
export function originWords(origin: Origin): string {
	switch (origin.kind) {
		case 'reading':
			return sums.origins.reading;
		case 'section':
			return origin.name === '' ? sums.origins.section : sums.origins.sectionNamed(origin.name);
		case 'supply':
			return sums.origins.supply;
		case 'schedule':
			return sums.origins.schedule;
		case 'station':
			return sums.origins.station;
		case 'site':
			return sums.origins.site;
		case 'prices':
			return sums.origins.prices;
		case 'cited':
			return sums.origins.cited(sourceWords(origin.source));
	}
}

/** A value of a working with its unit, in the reader's units where there are such. */
export function workingValue(
	{ value, unit }: Pick<Working, 'value' | 'unit'>,
	format: Format
): string {
	const { significant } = format;
	const plain = (text: string): string => `${significant(value, 4)}\u202f${text}`;
	switch (unit) {
		case 'minor':
			return format.money(value);
		case 'currency':
			return format.price(value, 2);
		case 'currency/kWh':
			return sums.per(format.price(value), 'kWh');
		case 'currency/kW':
			return sums.per(format.price(value), 'kW');
		case 'currency/m³':
			return sums.per(format.price(value), 'm³');
		case 'kg CO₂e':
			return format.carbon(value);
		case 'kg CO₂e/kWh':
			return sums.per(plain('kg'), 'kWh');
		case 'kWh':
			return format.energy(value);
		case 'kW':
			return format.power(value);
		case 'h':
			return format.hours(value);
		case 'm³/s':
			return format.flow(value);
		case 'm³/min':
			return format.flow(toSi('volumeFlow', 'm3/min', value));
		case 'm³':
			return smallVolume(value, format) ?? format.volume(value);
		case 'Pa absolute':
			return sums.absolute(format.pressure(barFromPascal(as<'Pa absolute'>(value))));
		case 'bar gauge':
			return format.pressure(value);
		case 'K':
			return `${significant(celsiusFromKelvin(as<'K'>(value)))}\u202f°C`;
		case 'mm':
			return format.length(value);
		case 'm²':
			return `${significant(fromSi('area', 'mm2', value))}\u202fmm²`;
		case 'kg/s':
			return `${significant(fromSi('massFlow', 'g/s', value))}\u202fg/s`;
		case 'share':
			return format.percent(value, 1);
		case '':
			return significant(value, 4);
		case 'kWh per m³/min':
			return sums.per(plain('kWh'), 'm³/min');
		case 'kW per m³/min':
			return sums.per(plain('kW'), 'm³/min');
		case 's':
		case 'm':
		case 'kg/(s·Pa)':
		case 'kg/(s·m²)':
		case 'Pa·s·m²/kg':
		case 'kg/m³':
		case 'dm³/(s·bar)':
			return plain(unit);
	}
}

/** Bags and bubbles are not read in cubic metres. */
function smallVolume(m3: number, { significant }: Format): string | undefined {
	if (m3 === 0 || Math.abs(m3) >= 0.1) return undefined;
	if (Math.abs(m3) >= 1e-4) return `${significant(fromSi('volume', 'L', m3))}\u202fL`;
	return `${significant(fromSi('volume', 'cm3', m3))}\u202fcm³`;
}

/** How many standard deviations of a normal lie either side of its middle 90 %. */
const NINETY_PERCENT = 1.644_853_627;
/** Nearer than this share, the middle of an interval is the figure itself. */
const SAME = 1e-3;

/** How the drawn interval of a unit is written, so that it reads as it does on the page. */
const SURE: Partial<Record<WorkingUnit, SureQuantity>> = {
	minor: 'money',
	kWh: 'energy',
	'kg CO₂e': 'carbon',
	'm³/s': 'flow'
};

/**
 * How sure a value of a working is, in words: by the draws where it was drawn, else by its reading
 * alone; nothing where nothing is known.
 */
export function workingInterval(working: Working, format: Format): string | undefined {
	const { value, unit, relativeUncertainty, interval } = working;
	const text = (of: number) => workingValue({ value: of, unit }, format);
	if (interval) {
		const quantity = SURE[unit];
		const { low, median, high } = interval;
		if (!quantity) return sums.byAllErrors(sums.range(text(low), text(high)));
		const sure = sureText(format, quantity, interval);
		return Math.abs(median - value) <= SAME * value
			? sums.byAllErrors(sure.range)
			: sums.byAllErrorsWithMiddle(sure.range, sure.value);
	}
	if (!relativeUncertainty || !(value > 0)) return undefined;
	const factor = Math.exp(NINETY_PERCENT * relativeUncertainty);
	return sums.byReading(sums.range(text(value / factor), text(value * factor)));
}
