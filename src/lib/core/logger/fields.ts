import type { DecimalMark } from '../units/parse-number.ts';

export type Delimiter = ';' | '\t' | ',';

/** The cells of one line; a cell in quotes may hold the delimiter. */
export function splitLine(line: string, delimiter: Delimiter): string[] {
	if (!line.includes('"')) return line.split(delimiter);
	const cells: string[] = [];
	let at = 0;
	while (at <= line.length) {
		if (line[at] !== '"') {
			const end = line.indexOf(delimiter, at);
			cells.push(line.slice(at, end < 0 ? undefined : end));
			if (end < 0) return cells;
			at = end + 1;
			continue;
		}
		let text = '';
		let from = at + 1;
		let close = line.indexOf('"', from);
		while (close >= 0 && line[close + 1] === '"') {
			text += line.slice(from, close + 1);
			from = close + 2;
			close = line.indexOf('"', from);
		}
		text += line.slice(from, close < 0 ? undefined : close);
		cells.push(text);
		const end = close < 0 ? -1 : line.indexOf(delimiter, close + 1);
		if (end < 0) return cells;
		at = end + 1;
	}
	return cells;
}

/** One cell without splitting the others off; `undefined` past the end of a line without quotes. */
export function cellAt(line: string, column: number, delimiter: Delimiter): string | undefined {
	let from = 0;
	for (let before = 0; before < column; before++) {
		const next = line.indexOf(delimiter, from);
		if (next < 0) return undefined;
		from = next + 1;
	}
	const end = line.indexOf(delimiter, from);
	return end < 0 ? line.slice(from) : line.slice(from, end);
}

/** What loggers write where they have no reading. */
const NO_READING = new Set([
	...['', '-', '--', '---', '?', '*', '**', '***', 'nan', 'null', 'none', 'n/a', 'na', '#n/a'],
	...['bad', 'error', 'err', 'fault', 'no data', 'offline', 'over', 'under', 'ol']
]);
const SIGNALS: Readonly<Record<string, number>> = {
	on: 1,
	off: 0,
	true: 1,
	false: 0,
	yes: 1,
	no: 0,
	loaded: 1,
	unloaded: 0
};
const PLAIN = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/u;
const GROUPED = {
	'.': /^[-+]?\d{1,3}(?:[, '’\u00a0\u202f]\d{3})*(?:\.\d*)?$/u,
	',': /^[-+]?\d{1,3}(?:[. '’\u00a0\u202f]\d{3})*(?:,\d*)?$/u
} as const;
const GROUPING = { '.': /[, '’\u00a0\u202f]/gu, ',': /[. '’\u00a0\u202f]/gu } as const;

/** Says that a cell holds no reading, or cannot be read; both differ from a number. */
export type CellReading = number | 'none' | 'unreadable';

/** A number of a logger: decimal point or comma, grouped or not, or a word for on and off. */
export function readCell(cell: string, decimal: DecimalMark): CellReading {
	const text = cell.trim();
	const quick = decimal === '.' ? quickNumber(text) : Number.NaN;
	if (!Number.isNaN(quick)) return quick;
	if (PLAIN.test(text))
		return decimal === '.' || !text.includes('.') ? finite(Number(text)) : grouped(text, ',');
	const low = text.toLowerCase();
	if (NO_READING.has(low)) return 'none';
	if (Object.hasOwn(SIGNALS, low)) return SIGNALS[low] ?? 'unreadable';
	if (decimal === ',') {
		const dotted = text.replace(',', '.');
		if (!text.includes('.') && PLAIN.test(dotted)) return finite(Number(dotted));
	}
	return grouped(text, decimal);
}

const EXACT_TENS = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12];

/** Digits with a point among them and nothing else, few enough to be exact; else NaN. */
function quickNumber(text: string): number {
	const { length } = text;
	if (length === 0 || length > 13) return Number.NaN;
	let whole = 0;
	let point = -1;
	for (let at = 0; at < length; at++) {
		const code = text.charCodeAt(at);
		if (code >= 48 && code <= 57) whole = whole * 10 + code - 48;
		else if (code === 46 && point < 0 && length > 1) point = at;
		else return Number.NaN;
	}
	return point < 0 ? whole : whole / (EXACT_TENS[length - point - 1] ?? Number.NaN);
}

function grouped(text: string, decimal: DecimalMark): CellReading {
	if (!GROUPED[decimal].test(text)) return 'unreadable';
	return finite(Number(text.replace(GROUPING[decimal], '').replace(',', '.')));
}

function finite(value: number): CellReading {
	return Number.isFinite(value) ? value : 'unreadable';
}
