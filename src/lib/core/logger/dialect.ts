import type { DecimalMark } from '../units/parse-number.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import {
	bestColumn,
	columnKind,
	pressureUnit,
	type ColumnKind,
	type GuessedColumn,
	type LoggedPressureUnit
} from './column-kinds.ts';
import { readCell, splitLine, type Delimiter } from './fields.ts';
import { LineCutter } from './lines.ts';
import { guessTime, type TimeColumn } from './time-column.ts';

export interface LoggerColumn {
	readonly index: number;
	/** As in the header; empty without one. */
	readonly name: string;
	readonly kind: ColumnKind;
	/** Of a pressure. */
	readonly unit: LoggedPressureUnit;
	/** Fit to be chosen: most of its cells hold numbers. */
	readonly usable: boolean;
}

/** How a file is written, as guessed from its first lines. */
export interface Dialect {
	readonly delimiter: Delimiter;
	readonly decimal: DecimalMark;
	/** The line that the readings begin on; the first of the file is 1. */
	readonly firstLine: number;
	readonly time: TimeColumn;
	readonly columns: readonly LoggerColumn[];
	/** Of the column that is most likely meant. */
	readonly bestColumn: number | undefined;
	/** The first rows of readings, cell by cell. */
	readonly preview: readonly (readonly string[])[];
}

interface Numbered {
	readonly number: number;
	readonly cells: readonly string[];
}

const SAMPLE_LINES = 400;
const PREVIEW_ROWS = 5;
const MOST_COLUMNS = 500;
/** In the order of trust: a comma may be a decimal mark, the others are nothing but delimiters. */
const DELIMITERS: readonly Delimiter[] = [';', '\t', ','];

/**
 * Guesses how a logger file is written from its first lines: delimiter, decimal mark, header, the time
 * and what the columns hold. METHOD T10.
 *
 * @param sample the beginning of the file
 * @param whole whether that is all of it; else its last line is cut off and not looked at
 * @returns the dialect, or `logger-empty`, `logger-not-text`, `logger-line-too-long`,
 * `logger-no-columns`, `logger-too-many-columns`, `logger-no-time`, `logger-no-readings`
 */
export function guessDialect(sample: string, whole: boolean): Result<Dialect> {
	const read = sampleLines(sample, whole);
	if (!read.ok) return read;
	const lines = read.value;
	if (lines.length === 0)
		return whole ? refuse('logger-empty') : refuse('logger-line-too-long', { line: 1 });
	const found = guessDelimiter(lines.map(({ text }) => text));
	if (!found) return refuse('logger-no-columns', { line: lines[0]?.number ?? 1 });
	const { delimiter, width } = found;
	if (width > MOST_COLUMNS)
		return refuse('logger-too-many-columns', { columns: width, most: MOST_COLUMNS });
	const rows = lines
		.map(({ text, number }): Numbered => ({ number, cells: splitLine(text, delimiter) }))
		.filter(({ cells }) => cells.length === width || cells.length === width + 1);
	const decimal = guessDecimal(rows, delimiter);
	const start = rows.findIndex(
		(_, at) => guessTime(rows.slice(at, at + 3), decimal, []) !== undefined
	);
	// A row of readings has a time; a header and what may stand above it has none.
	const headers = start < 0 ? [] : rows.slice(0, start);
	const names = headerNames(headers, width);
	const data = start < 0 ? [] : rows.slice(start);
	const time = guessTime(data, decimal, names);
	const first = data[0];
	if (!time || !first)
		return refuse('logger-no-time', { line: rows[Math.min(1, rows.length - 1)]?.number ?? 1 });
	const taken = new Set([
		time.column,
		...(time.format.kind === 'date-and-clock' ? [time.format.clockColumn] : [])
	]);
	const guessed = Array.from({ length: width }, (_, index) => index)
		.filter((index) => !taken.has(index))
		.map((index) => guessColumn(index, names[index] ?? '', data, decimal));
	const usable = guessed.filter(({ numeric, values }) => numeric >= 0.5 && values.length > 0);
	if (usable.length === 0) return refuse('logger-no-readings', { line: first.number });
	return ok({
		delimiter,
		decimal,
		firstLine: first.number,
		time,
		columns: guessed.map(({ index, name, kind, unit }) => ({
			index,
			name,
			kind,
			unit,
			usable: usable.some((column) => column.index === index)
		})),
		bestColumn: bestColumn(usable),
		preview: data.slice(0, PREVIEW_ROWS).map(({ cells }) => cells)
	});
}

function sampleLines(
	sample: string,
	whole: boolean
): Result<{ readonly number: number; readonly text: string }[]> {
	const lines: { number: number; text: string }[] = [];
	const cutter = new LineCutter((text, number) => {
		if (text.trim() !== '' && lines.length < SAMPLE_LINES) lines.push({ number, text });
		return undefined;
	});
	const pushed = cutter.push(sample);
	if (!pushed.ok) return pushed;
	if (whole) {
		const finished = cutter.finish();
		if (!finished.ok) return finished;
	}
	return ok(lines);
}

/** The delimiter that cuts most lines into the same number of cells, two or more. */
function guessDelimiter(
	lines: readonly string[]
): { readonly delimiter: Delimiter; readonly width: number } | undefined {
	let best: { delimiter: Delimiter; width: number; share: number } | undefined;
	for (const delimiter of DELIMITERS) {
		const counts = new Map<number, number>();
		for (const line of lines) {
			const width = splitLine(line, delimiter).length;
			counts.set(width, (counts.get(width) ?? 0) + 1);
		}
		const [width = 1, count = 0] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
		const share = count / lines.length;
		if (width < 2 || share < 0.5) continue;
		if (!best || share > best.share + 0.3) best = { delimiter, width, share };
	}
	return best;
}

const WITH_COMMA = /^[-+]?(?:\d{1,3}(?:\.\d{3})+|\d+),\d+$/u;
const WITH_POINT = /^[-+]?(?:\d{1,3}(?:,\d{3})+|\d*)\.\d+$/u;

function guessDecimal(rows: readonly Numbered[], delimiter: Delimiter): DecimalMark {
	let commas = 0;
	let points = 0;
	for (const { cells } of rows)
		for (const cell of cells) {
			const text = cell.trim();
			if (WITH_COMMA.test(text)) commas += 1;
			else if (WITH_POINT.test(text)) points += 1;
		}
	return commas > points || (commas === points && commas > 0 && delimiter === ';') ? ',' : '.';
}

/** Names of the columns from the lines above the readings, a line of units joined on. */
function headerNames(headers: readonly Numbered[], width: number): readonly string[] {
	// Only what stands directly above belongs to the columns.
	const near = headers.slice(-2).filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
	return Array.from({ length: width }, (_, index) =>
		near
			.map(({ cells }) => (cells[index] ?? '').trim())
			.filter((text) => text !== '')
			.join(' ')
			.slice(0, 80)
	);
}

function guessColumn(
	index: number,
	name: string,
	data: readonly Numbered[],
	decimal: DecimalMark
): GuessedColumn {
	const values: number[] = [];
	let filled = 0;
	for (const { cells } of data) {
		const reading = readCell(cells[index] ?? '', decimal);
		if (reading === 'none') continue;
		filled += 1;
		if (reading !== 'unreadable') values.push(reading);
	}
	return {
		index,
		name,
		kind: columnKind(name, values),
		unit: pressureUnit(name, values),
		numeric: filled === 0 ? 0 : values.length / filled,
		values
	};
}
