import type { DecimalMark } from '../units/parse-number.ts';
import { readCell } from './fields.ts';
import {
	readClock,
	readDate,
	timeReader,
	type DateOrder,
	type NumberTime,
	type TimeFormat
} from './time-stamps.ts';

/** Which column says when, and how. */
export interface TimeColumn {
	readonly column: number;
	readonly format: TimeFormat;
	/** Day and month could be the other way round: nothing in the first lines tells. */
	readonly orderUncertain: boolean;
}

interface Row {
	readonly cells: readonly string[];
}

/** Most rows must say when; a broken one here and there is left out later. */
const ENOUGH = 0.8;

/** Finds the column of time among rows of readings, or nothing. */
export function guessTime(
	rows: readonly Row[],
	decimal: DecimalMark,
	names: readonly string[]
): TimeColumn | undefined {
	const width = Math.max(0, ...rows.map(({ cells }) => cells.length));
	const columns = Array.from({ length: width }, (_, index) =>
		rows.map(({ cells }) => (cells[index] ?? '').trim())
	);
	for (const [column, cells] of columns.entries()) {
		const stamp = bestOrder(cells, (order) => timeReader({ kind: 'stamp', order }, decimal), true);
		if (stamp) return { column, ...withFormat(stamp, { kind: 'stamp', order: stamp.order }) };
	}
	const clockColumn = columns.findIndex((cells) => readable(cells, readClock));
	for (const [column, cells] of columns.entries()) {
		const date = bestOrder(cells, (order) => (cell) => readDate(cell, order), false);
		if (!date) continue;
		if (clockColumn >= 0)
			return {
				column,
				...withFormat(date, { kind: 'date-and-clock', order: date.order, clockColumn })
			};
	}
	if (clockColumn >= 0)
		return { column: clockColumn, format: { kind: 'clock' }, orderUncertain: false };
	for (const [column, cells] of columns.entries()) {
		const unit = numberTime(cells, names[column] ?? '', column, decimal);
		if (unit) return { column, format: { kind: 'number', unit }, orderUncertain: false };
	}
	return undefined;
}

function withFormat(
	{ uncertain }: { readonly uncertain: boolean },
	format: TimeFormat
): Pick<TimeColumn, 'format' | 'orderUncertain'> {
	return { format, orderUncertain: uncertain };
}

function readable(cells: readonly string[], read: (cell: string) => number): boolean {
	const good = cells.filter((cell) => !Number.isNaN(read(cell))).length;
	return cells.length > 0 && good >= ENOUGH * cells.length;
}

/** The order of day and month that reads the cells; where both do, the one with the smaller steps. */
function bestOrder(
	cells: readonly string[],
	reader: (order: DateOrder) => (cell: string, clockCell: string) => number,
	withClock: boolean
): { readonly order: DateOrder; readonly uncertain: boolean } | undefined {
	if (withClock && !readable(cells, (cell) => (/\d:\d/u.test(cell) ? 1 : Number.NaN)))
		return undefined;
	const fitting = (['ymd', 'dmy', 'mdy'] as const)
		.map((order) => {
			const read = reader(order);
			const times = cells.map((cell) => read(cell, ''));
			const good = times.filter((time) => !Number.isNaN(time));
			const span = good.length > 1 ? Math.abs((good.at(-1) ?? 0) - (good[0] ?? 0)) : 0;
			return { order, good: good.length, span, fits: good.length >= ENOUGH * cells.length };
		})
		.filter(({ fits }) => fits && cells.length > 0)
		.sort((a, b) => b.good - a.good || a.span - b.span);
	const best = fitting[0];
	if (!best) return undefined;
	const rival = fitting.find(({ order }) => order !== best.order);
	// A point between the parts is written day first wherever it is written.
	const dotted = cells[0]?.includes('.') === true && /^\d{1,2}\.\d{1,2}\./u.test(cells[0]);
	const even = rival?.good === best.good && rival.span === best.span;
	return {
		order: even && dotted ? 'dmy' : best.order,
		uncertain: even && !dotted
	};
}

/** What a column of plain numbers counts, if it may be the time at all. */
function numberTime(
	cells: readonly string[],
	name: string,
	column: number,
	decimal: DecimalMark
): NumberTime | undefined {
	const times = cells.map((cell) => readCell(cell, decimal));
	const numbers = times.filter((time) => typeof time === 'number');
	if (numbers.length < ENOUGH * cells.length || numbers.length < 2) return undefined;
	const steps = numbers.slice(1).map((time, at) => time - (numbers[at] ?? 0));
	const rising = steps.filter((step) => step > 0).length;
	const falling = steps.filter((step) => step < 0).length;
	if (Math.max(rising, falling) < ENOUGH * steps.length) return undefined;
	const low = Math.min(...numbers);
	const high = Math.max(...numbers);
	if (low > 1e8 && high < 5e9) return 'epoch-s';
	if (low > 1e11 && high < 5e12) return 'epoch-ms';
	const words = name.toLowerCase();
	const timely = /time|zeit|temps|tiempo|tempo|elapsed|\bt\b|sec|sek|\bs\b|\bms\b|min/u.test(words);
	if (low > 30_000 && high < 80_000 && numbers.some((value) => !Number.isInteger(value)))
		return 'sheet-days';
	if (!timely && column !== 0) return undefined;
	if (/\bms\b|milli/u.test(words)) return 'ms';
	if (/min/u.test(words)) return 'min';
	return /\bh\b|hour|stunde/u.test(words) ? 'h' : 's';
}
