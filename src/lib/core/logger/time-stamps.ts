import type { DecimalMark } from '../units/parse-number.ts';
import { readCell } from './fields.ts';

export type DateOrder = 'ymd' | 'dmy' | 'mdy';
/** What a column of plain numbers counts: seconds since 1970, days of a spreadsheet, or elapsed time. */
export type NumberTime = 'epoch-s' | 'epoch-ms' | 'sheet-days' | 's' | 'ms' | 'min' | 'h';

/** How the time of a row is written. */
export type TimeFormat =
	| { readonly kind: 'stamp'; readonly order: DateOrder }
	/** The day in one column, the time of day in another. */
	| { readonly kind: 'date-and-clock'; readonly order: DateOrder; readonly clockColumn: number }
	/** A time of day alone; past midnight it goes on. */
	| { readonly kind: 'clock' }
	| { readonly kind: 'number'; readonly unit: NumberTime };

const DAY_S = 86_400;
/** Of the day that spreadsheets count from, to 1970. */
const SHEET_DAY_OF_1970 = 25_569;
const SECONDS: Readonly<Record<NumberTime, number>> = {
	'epoch-s': 1,
	'epoch-ms': 1e-3,
	'sheet-days': DAY_S,
	s: 1,
	ms: 1e-3,
	min: 60,
	h: 3600
};
const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const DATE = /^(\d{1,4})[-./](\d{1,2}|[A-Za-z]{3,9})[-./](\d{1,4})\.?$/u;
const LONGEST_MONTH = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether a time has a day, so that it can be shown as a date. */
export function isDated(format: TimeFormat): boolean {
	if (format.kind === 'clock') return false;
	return format.kind !== 'number' || ['epoch-s', 'epoch-ms', 'sheet-days'].includes(format.unit);
}

/**
 * Days from 1 January 1970 to a day of the Gregorian calendar.
 * @returns whole days, negative before 1970
 */
export function daysFromCivil(year: number, month: number, day: number): number {
	const y = month <= 2 ? year - 1 : year;
	const era = Math.floor(y / 400);
	const ofEra = y - era * 400;
	const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
	const days = ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear;
	return era * 146_097 + days - 719_468;
}

/** Seconds since 1970 on the logger's own clock, as `2020-02-01T00:00:09`; a part of a second is dropped. */
export function civilText(seconds: number): string {
	const whole = Math.floor(seconds);
	const days = Math.floor(whole / DAY_S) + 719_468;
	const era = Math.floor(days / 146_097);
	const ofEra = days - era * 146_097;
	const year = Math.floor(
		(ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) /
			365
	);
	const ofYear = ofEra - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
	const shifted = Math.floor((5 * ofYear + 2) / 153);
	const day = ofYear - Math.floor((153 * shifted + 2) / 5) + 1;
	const month = shifted + (shifted < 10 ? 3 : -9);
	const civilYear = year + era * 400 + (month <= 2 ? 1 : 0);
	return `${String(civilYear).padStart(4, '0')}-${two(month)}-${two(day)}T${clockText(whole)}`;
}

/** The time of day, `07:05:09`. */
function clockText(seconds: number): string {
	const ofDay = ((Math.floor(seconds) % DAY_S) + DAY_S) % DAY_S;
	return `${two(Math.floor(ofDay / 3600))}:${two(Math.floor(ofDay / 60) % 60)}:${two(ofDay % 60)}`;
}

function two(value: number): string {
	return String(value).padStart(2, '0');
}

/** Days since 1970 of a written day, or NaN. Years of two digits are of this century. */
export function readDate(text: string, order: DateOrder): number {
	const match = DATE.exec(text.trim());
	if (!match) return Number.NaN;
	const [, first = '', second = '', third = ''] = match;
	// A year of four digits in front can be nothing else.
	const front = first.length === 4;
	if (front !== (order === 'ymd') && (front || first.length > 2)) return Number.NaN;
	const named = MONTHS.indexOf(second.slice(0, 3).toLowerCase()) + 1;
	const [year, month, day] = front
		? [Number(first), named || Number(second), Number(third)]
		: order === 'ymd'
			? [Number(first), named || Number(second), Number(third)]
			: order === 'dmy' || named > 0
				? [Number(third), named || Number(second), Number(first)]
				: [Number(third), Number(first), Number(second)];
	const full = year < 100 ? 2000 + year : year;
	const most = LONGEST_MONTH[month - 1];
	if (most === undefined || !(day >= 1 && day <= most) || full < 1900 || full > 2999)
		return Number.NaN;
	return daysFromCivil(full, month, day);
}

const CLOCK =
	/^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,:](\d{1,9}))?)?(?:\s*([AaPp])\.?[Mm]\.?)?(?:\s*(?:(Z)|([+-])(\d{2}):?(\d{2})?))?$/u;

/** Seconds since midnight of a written time of day, in UTC where it says how far it is off; or NaN. */
export function readClock(text: string): number {
	const quick = quickClock(text);
	if (quick === quick) return quick;
	const match = CLOCK.exec(text.trim());
	if (!match) return Number.NaN;
	const [, h = '', m = '', s = '0', fraction = '', half, , sign, offH = '0', offM = '0'] = match;
	let hour = Number(h);
	if (half !== undefined) {
		if (hour < 1 || hour > 12) return Number.NaN;
		hour = (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
	}
	if (hour > 24 || Number(m) > 59 || Number(s) > 60) return Number.NaN;
	const offset = (Number(offH) * 60 + Number(offM)) * 60 * (sign === '-' ? -1 : 1);
	return hour * 3600 + Number(m) * 60 + Number(s) + Number(`0.${fraction || '0'}`) - offset;
}

/** `hh:mm:ss`, with no more and no less: how nearly every row is written. */
function quickClock(text: string): number {
	if (text.length !== 8 || text.charCodeAt(2) !== 58 || text.charCodeAt(5) !== 58)
		return Number.NaN;
	const hour = twoDigits(text, 0);
	const minute = twoDigits(text, 3);
	const second = twoDigits(text, 6);
	return hour <= 24 && minute <= 59 && second <= 60
		? hour * 3600 + minute * 60 + second
		: Number.NaN;
}

function twoDigits(text: string, at: number): number {
	const tens = text.charCodeAt(at) - 48;
	const ones = text.charCodeAt(at + 1) - 48;
	return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : Number.NaN;
}

const BETWEEN = /[ T,]/u;

/**
 * Reads the times of a file's rows in seconds: since 1970 on the logger's clock where there is a day,
 * else since the midnight before the first row, or as counted. NaN where a cell cannot be read.
 */
export function timeReader(
	format: TimeFormat,
	decimal: DecimalMark
): (cell: string, clockCell: string) => number {
	let lastText = '';
	let lastDay = Number.NaN;
	const day = (text: string, order: DateOrder): number => {
		if (text !== lastText) {
			lastText = text;
			lastDay = readDate(text, order) * DAY_S;
		}
		return lastDay;
	};
	switch (format.kind) {
		case 'stamp':
			return (cell) => {
				const text = cell.trim();
				// Nearly every stamp has its day in ten characters.
				const mark = text.charCodeAt(10);
				const at = mark === 32 || mark === 84 ? 10 : text.slice(6).search(BETWEEN) + 6;
				if (at < 6) return day(text, format.order);
				return day(text.slice(0, at), format.order) + readClock(text.slice(at + 1).trimStart());
			};
		case 'date-and-clock':
			return (cell, clockCell) => day(cell.trim(), format.order) + readClock(clockCell.trim());
		case 'clock': {
			let before = Number.NEGATIVE_INFINITY;
			let midnight = 0;
			return (cell) => {
				const clock = readClock(cell.trim());
				if (clock + DAY_S / 2 < before) midnight += DAY_S;
				if (clock === clock) before = clock;
				return midnight + clock;
			};
		}
		case 'number': {
			const scale = SECONDS[format.unit];
			const shift = format.unit === 'sheet-days' ? SHEET_DAY_OF_1970 : 0;
			return (cell) => {
				const value = readCell(cell, decimal);
				return typeof value === 'number' ? (value - shift) * scale : Number.NaN;
			};
		}
	}
}
