import { barFromPascal, toSi } from '../units/convert.ts';
import type { DecimalMark } from '../units/parse-number.ts';
import { ok, refuse, type Refusal, type Result } from '../units/result.ts';
import type { ColumnKind, LoggedPressureUnit } from './column-kinds.ts';
import { cellAt, readCell, splitLine, type Delimiter } from './fields.ts';
import { LineCutter } from './lines.ts';
import { SeriesBuilder, type Series } from './series.ts';
import { isDated, timeReader, type TimeFormat } from './time-stamps.ts';

/** How to read a file: the dialect as guessed or corrected, and the column that was chosen. */
export interface LoggerChoice {
	readonly delimiter: Delimiter;
	readonly decimal: DecimalMark;
	readonly firstLine: number;
	readonly timeColumn: number;
	readonly timeFormat: TimeFormat;
	readonly column: number;
	readonly kind: ColumnKind;
	/** Of a pressure. */
	readonly unit: LoggedPressureUnit;
}

/** A recording with what was left out of it. */
export interface LoggerRows {
	/** Pressures in bar. */
	readonly series: Series;
	/** Times are of a calendar, on the logger's own clock. */
	readonly dated: boolean;
	readonly rows: number;
	/** Rows without a reading. */
	readonly empty: number;
	/** Rows that could not be read, and the first of them. */
	readonly unreadable: number;
	readonly firstUnreadable?: Refusal;
	/** Rows not later than the one before. */
	readonly outOfOrder: number;
}

/** So many readings fit in some 100 MB. */
const MOST_ROWS = 4_000_000;
/** A file has some broken rows; with more than this share it was not understood. */
const BROKEN_SHARE = 0.05;
const LOOK_AFTER_ROWS = 50;

/** Reads a logger file that comes in pieces of text; what it keeps is two numbers a row. METHOD T10. */
export class RowReader {
	readonly #choice: LoggerChoice;
	readonly #rows = new SeriesBuilder();
	readonly #cutter: LineCutter;
	#seen = 0;
	#empty = 0;
	#unreadable = 0;
	#first: Refusal | undefined;

	constructor(choice: LoggerChoice) {
		this.#choice = choice;
		const { delimiter, decimal, firstLine, timeColumn, timeFormat, column, kind, unit } = choice;
		const time = timeReader(timeFormat, decimal);
		const clockColumn = timeFormat.kind === 'date-and-clock' ? timeFormat.clockColumn : -1;
		const scale = kind === 'pressure' ? barFromPascal(toSi('pressure', unit, 1)) : 1;
		this.#cutter = new LineCutter((line, number) => {
			if (number < firstLine || line === '') return undefined;
			this.#seen += 1;
			const quoted = line.includes('"') ? splitLine(line, delimiter) : undefined;
			const cellOf = (of: number) => (quoted ? quoted[of] : cellAt(line, of, delimiter));
			const cell = cellOf(column);
			const value = cell === undefined ? 'unreadable' : readCell(cell, decimal);
			const clockCell = clockColumn < 0 ? '' : (cellOf(clockColumn) ?? '');
			const at = time(cellOf(timeColumn) ?? '', clockCell);
			if (!Number.isFinite(at))
				return this.#broken('logger-time-unreadable', number, line, timeColumn);
			if (value === 'none') this.#empty += 1;
			else if (value === 'unreadable')
				return this.#broken('logger-value-unreadable', number, line, column);
			else if (this.#rows.length === MOST_ROWS)
				return { code: 'logger-too-long', detail: { line: number, most: MOST_ROWS } };
			else this.#rows.add(at, value * scale);
			return undefined;
		});
	}

	/** Rows read so far. */
	get rows(): number {
		return this.#seen;
	}

	/** @returns the first line that cannot be understood, and why */
	/** Makes room for so many rows, where that can be told beforehand. */
	expect(rows: number): void {
		this.#rows.reserve(Math.min(Math.ceil(rows), MOST_ROWS));
	}

	push(piece: string): Result<true> {
		return this.#cutter.push(piece);
	}

	/** @returns the recording, or `logger-no-rows`, `logger-time-not-rising` or the first broken line */
	finish(): Result<LoggerRows> {
		const last = this.#cutter.finish();
		if (!last.ok) return last;
		if (this.#first && this.#unreadable > BROKEN_SHARE * this.#seen)
			return { ok: false, error: this.#first };
		const { series, outOfOrder } = this.#rows.finish();
		if (series.times.length < 3) return refuse('logger-no-rows', { rows: series.times.length });
		if (outOfOrder > series.times.length / 4)
			return refuse('logger-time-not-rising', { rows: outOfOrder });
		return ok({
			series,
			dated: isDated(this.#choice.timeFormat),
			rows: this.#seen,
			empty: this.#empty,
			unreadable: this.#unreadable,
			...(this.#first && { firstUnreadable: this.#first }),
			outOfOrder
		});
	}

	/** Counts a broken row; too many of them are the first one's refusal. */
	#broken(code: string, line: number, text: string, column: number): Refusal | undefined {
		this.#unreadable += 1;
		const cell = (splitLine(text, this.#choice.delimiter)[column] ?? '').trim().slice(0, 40);
		this.#first ??= { code, detail: { line, column: column + 1, text: cell } };
		const tooMany =
			this.#seen >= LOOK_AFTER_ROWS && this.#unreadable > Math.max(20, BROKEN_SHARE * this.#seen);
		return tooMany ? this.#first : undefined;
	}
}
