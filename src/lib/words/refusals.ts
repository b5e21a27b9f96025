import type { Refusal } from '#lib/core/units/result.ts';
import { currentLanguage } from './language.ts';
import { readerLocale } from './locale.ts';
import { refusalParts } from './refusal-parts.ts';
import { REFUSAL_SENTENCES } from './refusal-table.ts';

type Unit = string | (() => string);

/** Units at the end of a quantity's name, longest first, as they are written after a number. */
const UNITS_IN_NAMES: readonly (readonly [ending: string, unit: Unit])[] = [
	['KwPerM3PerMin', () => refusalParts.perUnit('kW', 'm³/min')],
	['PaAbsolute', () => refusalParts.absolute],
	['BarGauge', 'bar'],
	['Cm3PerS', 'cm³/s'],
	['M3PerMin', 'm³/min'],
	['M3PerS', 'm³/s'],
	['LPerS', 'L/s'],
	['Bytes', () => refusalParts.bytes],
	['Kwh', 'kWh'],
	['KPa', 'kPa'],
	['Mm', 'mm'],
	['M2', 'm²'],
	['M3', 'm³'],
	['Kw', 'kW'],
	['W', 'W'],
	['C', '°C'],
	['M', 'm'],
	['L', 'L']
];
const WHOLE_NAME_UNITS: Readonly<Record<string, Unit>> = {
	bytes: () => refusalParts.bytes,
	megabytes: 'MB',
	megapixels: () => refusalParts.megapixels,
	hours: 'h'
};
const LIMITS = [
	['from', /^(?:least|lowest)(?=[A-Z]|$)/],
	['above', /^above(?=[A-Z]|$)/],
	['to', /^(?:most|highest)(?=[A-Z]|$)/],
	['below', /^below(?=[A-Z]|$)/]
] as const;
const NOT_THE_OFFENDER = new Set(['id', 'of', 'field', 'table', 'reading', 'entry', 'entries']);

type Detail = NonNullable<Refusal['detail']>;

/** What was refused and what to do next, in one or two plain sentences. */
export function refusalSentence(refusal: Refusal): string {
	const template = Object.hasOwn(REFUSAL_SENTENCES, refusal.code)
		? REFUSAL_SENTENCES[refusal.code]
		: undefined;
	if (template === undefined) return refusalParts.unknown(refusal.code);
	const detail = refusal.detail ?? {};
	return template
		.replace(/\[([^\]]*)\]/g, (_, part: string) => fill(part, detail) ?? '')
		.replace(/\{(\w+)\}/g, (_, name: string) => quantity(name, detail) ?? '…');
}

/** The part with its quantities in place, or nothing when one of them is not known. */
function fill(part: string, detail: Detail): string | undefined {
	let whole = true;
	const filled = part.replace(/\{(\w+)\}/g, (_, name: string) => {
		const text = quantity(name, detail);
		whole &&= text !== undefined;
		return text ?? '';
	});
	return whole ? filled : undefined;
}

function quantity(name: string, detail: Detail): string | undefined {
	if (Object.hasOwn(detail, name)) return written(name, detail[name]);
	if (name === 'limits') return limits(detail);
	if (name !== 'value') return undefined;
	const offender = Object.entries(detail).find(
		([key]) => !NOT_THE_OFFENDER.has(key) && !LIMITS.some(([, pattern]) => pattern.test(key))
	);
	return offender && written(...offender);
}

function limits(detail: Detail): string | undefined {
	const parts = LIMITS.flatMap(([word, pattern]) => {
		const found = Object.entries(detail).find(([key]) => pattern.test(key));
		return found ? [refusalParts.limits[word](written(...found) ?? '')] : [];
	});
	return parts.length > 0 ? parts.join(' ') : undefined;
}

function written(name: string, value: string | number | undefined): string | undefined {
	if (value === undefined) return undefined;
	if (typeof value === 'string') return value === '' ? undefined : value;
	const unit =
		WHOLE_NAME_UNITS[name] ?? UNITS_IN_NAMES.find(([ending]) => name.endsWith(ending))?.[1];
	const number = new Intl.NumberFormat(readerLocale() ?? currentLanguage(), {
		useGrouping: false,
		maximumSignificantDigits: 6
	}).format(value);
	return unit === undefined ? number : `${number} ${typeof unit === 'string' ? unit : unit()}`;
}
