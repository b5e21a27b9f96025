import { describe, expect, it } from 'vitest';
import { choiceOf } from './choice.ts';
import { guessDialect, type Dialect } from './dialect.ts';
import { RowReader, type LoggerRows } from './read-rows.ts';
import { civilText, daysFromCivil, readClock, readDate } from './time-stamps.ts';

function guessed(text: string): Dialect {
	const dialect = guessDialect(text, true);
	if (!dialect.ok) throw new Error(dialect.error.code);
	return dialect.value;
}

function readAll(text: string, pieces = [text]): LoggerRows {
	const reader = new RowReader(choiceOf(guessed(text)));
	for (const piece of pieces) {
		const pushed = reader.push(piece);
		if (!pushed.ok) throw new Error(pushed.error.code);
	}
	const rows = reader.finish();
	if (!rows.ok) throw new Error(rows.error.code);
	return rows.value;
}

/** The same four readings, ten seconds apart from 2020-02-25 13:59:50 on, as loggers write them. */
const READINGS = [8.07, 8.31, 8.55, 8.49];
const START = daysFromCivil(2020, 2, 25) * 86_400 + 13 * 3600 + 59 * 60 + 50;
const rows = (write: (seconds: number, value: number) => string) =>
	READINGS.map((value, at) => write(START + 10 * at, value)).join('\n');
const iso = (seconds: number) => civilText(seconds);
const day = (seconds: number) => civilText(seconds).slice(0, 10).split('-');
const clock = (seconds: number) => civilText(seconds).slice(11);
const comma = (value: number) => String(value).replace('.', ',');
const twelve = (seconds: number) => {
	const [h = '', m = '', s = ''] = clock(seconds).split(':');
	return `${String(Number(h) % 12 || 12)}:${m}:${s} PM`;
};

const DIALECTS: readonly (readonly [string, string])[] = [
	['ISO, comma, header', `time,pressure_bar\n${rows((t, v) => `${iso(t)},${String(v)}`)}`],
	[
		'ISO with a blank and an offset',
		`t,p bar\n${rows((t, v) => `${iso(t).replace('T', ' ')}+00:00,${String(v)}`)}`
	],
	['semicolon and decimal comma', `Zeit;Druck\n${rows((t, v) => `${iso(t)};${comma(v)}`)}`],
	['tab, no header', rows((t, v) => `${iso(t)}\t${String(v)}`)],
	[
		'day.month.year',
		`Zeit;Druck bar\n${rows((t, v) => `${day(t).reverse().join('.')} ${clock(t)};${comma(v)}`)}`
	],
	[
		'month/day/year and PM',
		`Time,P (bar)\n${rows((t, v) => `${day(t)[1] ?? ''}/${day(t)[2] ?? ''}/${day(t)[0] ?? ''} ${twelve(t)},${String(v)}`)}`
	],
	[
		'year/month/day, tab',
		`Time\tBar\n${rows((t, v) => `${day(t).join('/')} ${clock(t)}\t${String(v)}`)}`
	],
	[
		'two columns for day and time',
		`Date;Time;bar\n${rows((t, v) => `${day(t).reverse().join('.')};${clock(t)};${comma(v)}`)}`
	],
	['epoch seconds', `ts,bar\n${rows((t, v) => `${String(t)},${String(v)}`)}`],
	['epoch milliseconds', `ts,bar\n${rows((t, v) => `${String(t * 1000)},${String(v)}`)}`],
	[
		'days of a spreadsheet',
		`ts;bar\n${rows((t, v) => `${(t / 86_400 + 25_569).toFixed(7).replace('.', ',')};${comma(v)}`)}`
	],
	[
		'quotes, extra columns, units below',
		`"Time","Note","Pressure"\n"","","bar"\n${rows((t, v) => `"${iso(t)}","a, ""b""","${String(v)}"`)}`
	],
	[
		'lines above the header',
		`Logger 12\nSerial;4711\n\nTime;Oil °C;Druck bar\n${rows((t, v) => `${iso(t)};61,5;${comma(v)}`)}`
	],
	[
		'newest first',
		`time,bar\n${rows((t, v) => `${iso(t)},${String(v)}`)
			.split('\n')
			.reverse()
			.join('\n')}`
	],
	[
		'a mark of byte order and Windows line ends',
		`\ufefftime,bar\r\n${rows((t, v) => `${iso(t)},${String(v)}`).replaceAll('\n', '\r\n')}\r\n`
	],
	[
		'named months',
		`time,bar\n${rows((t, v) => `${day(t)[2] ?? ''}-Feb-${day(t)[0] ?? ''} ${clock(t)},${String(v)}`)}`
	]
];

describe('[T10] how a file is written (derived)', () => {
	it.each(DIALECTS)('[T10] reads %s', (_, text) => {
		const { series, rows: count, unreadable } = readAll(text);
		expect([count, unreadable]).toEqual([4, 0]);
		for (const [at, value] of READINGS.entries()) {
			expect(series.values[at]).toBeCloseTo(value, 9);
			expect(series.times[at]).toBeCloseTo(START + 10 * at, 1);
		}
		expect(
			guessed(text).columns.find(({ index }) => index === guessed(text).bestColumn)?.kind
		).toBe('pressure');
	});

	it.each([
		['psi', 'time,PSI\n', 100, 6.894757],
		['kPa', 'time,Header kPa\n', 700, 7],
		['MPa', 'time,p MPa\n', 0.7, 7]
	])('[T10] takes a pressure in %s as bar (exact factors, derived)', (_, head, value, bar) => {
		const text = `${head}${rows((t) => `${iso(t)},${String(value)}`)}`;
		expect(readAll(text).series.values[0]).toBeCloseTo(bar, 5);
	});

	it.each([
		['Druck [bar]', ['8.1', '8.2'], 'pressure'],
		['Motor_current', ['3.9', '5.6'], 'current'],
		['Active power kW', ['11', '37'], 'power'],
		['COMP', ['0', '1'], 'load-signal'],
		['State', ['on', 'off'], 'load-signal'],
		['Oil_temperature', ['61', '62'], 'other'],
		['', ['6.5', '7.2'], 'pressure']
	])('[T10] takes “%s” with %j for %s', (name, [a = '', b = ''], kind) => {
		const text = `time;${name}\n${rows((t) => `${iso(t)};${t % 20 === 0 ? a : b}`)}`;
		expect(guessed(text).columns[0]?.kind).toBe(kind);
	});

	it('[T10] goes on past midnight where only the time of day is written', () => {
		const text = 'clock,bar\n23:59:40,7.1\n23:59:50,7.2\n00:00:00,7.3\n00:00:10,7.4\n';
		const { series, dated } = readAll(text);
		expect([...series.times].map((time) => time - (series.times[0] ?? 0))).toEqual([0, 10, 20, 30]);
		expect(dated).toBe(false);
	});

	it('[T10] says when day and month could be the other way round', () => {
		const both =
			'time,bar\n01/02/2020 00:00:00,7\n01/02/2020 00:00:10,7.1\n01/02/2020 00:00:20,7\n';
		expect(guessed(both).time.orderUncertain).toBe(true);
		expect(guessed(both.replaceAll('01/02', '25/02')).time).toMatchObject({
			orderUncertain: false,
			format: { order: 'dmy' }
		});
	});

	it('[T10] reads a file in any pieces alike', () => {
		const text = DIALECTS[4]?.[1] ?? '';
		expect(readAll(text, [...text]).series).toEqual(readAll(text).series);
	});

	it('[T10] counts days as the calendar does (derived)', () => {
		expect(daysFromCivil(1970, 1, 1)).toBe(0);
		expect(daysFromCivil(2000, 3, 1)).toBe(11_017);
		expect(civilText(daysFromCivil(2024, 2, 29) * 86_400 + 86_399)).toBe('2024-02-29T23:59:59');
		expect(readDate('31.04.2020', 'dmy')).toBeNaN();
		expect(readClock('7:05 pm')).toBe(19 * 3600 + 300);
		expect(readClock('25:00')).toBeNaN();
	});
});

describe('[T10] what is no log is refused by line and reason', () => {
	const header = 'time,bar\n';
	const good = (n: number) =>
		Array.from({ length: n }, (_, at) => `${iso(START + at)},7.${String(at % 10)}\n`).join('');
	const refusalOf = (text: string) => {
		const dialect = guessDialect(text.slice(0, 15_000), text.length <= 15_000);
		if (!dialect.ok) return dialect.error;
		const reader = new RowReader(choiceOf(dialect.value));
		const pushed = reader.push(text);
		const finished = pushed.ok ? reader.finish() : pushed;
		return finished.ok ? undefined : finished.error;
	};

	it.each([
		['nothing', '', 'logger-empty'],
		['blank lines', '\n\n \n', 'logger-empty'],
		['a picture', '\u0089PNG\r\n\u001a\n\0\0\0\rIHDR', 'logger-not-text'],
		['prose', 'To whom it may concern\nthe compressor is loud.\n', 'logger-no-columns'],
		['a table without times', 'a;b\nx;y\nz;w\n', 'logger-no-time'],
		['times alone', `time;note\n${rows((t) => `${iso(t)};fine`)}`, 'logger-no-readings'],
		['one giant line', 'x'.repeat(70_000), 'logger-line-too-long'],
		['a header alone', header, 'logger-no-time'],
		['one row', header + good(1), 'logger-no-rows']
	])('[T10] %s', (_, text, code) => {
		expect(refusalOf(text)?.code).toBe(code);
	});

	it('[T10] names the line where a file breaks off into something else', () => {
		const broken = `${header}${good(1000)}${'garbage\n'.repeat(200)}`;
		expect(refusalOf(broken)).toMatchObject({
			code: 'logger-time-unreadable',
			detail: { line: 1002 }
		});
		const late = `${header}${good(2000)}\0\0\0`;
		expect(refusalOf(late)).toMatchObject({ code: 'logger-not-text', detail: { line: 2002 } });
		const giant = `${header}${good(2000)}${'7'.repeat(70_000)}\n`;
		expect(refusalOf(giant)).toMatchObject({
			code: 'logger-line-too-long',
			detail: { line: 2002 }
		});
		const still = header + `${iso(START)},7\n`.repeat(500);
		expect(refusalOf(still)?.code).toBe('logger-no-rows');
	});

	it('[T10] leaves a few broken rows out and says which was the first', () => {
		const text = `${header}${good(100)}oops\n${good(200).slice(good(101).length)}`;
		const found = readAll(text);
		expect(found.unreadable).toBe(1);
		expect(found.firstUnreadable).toMatchObject({ detail: { line: 102 } });
	});

	it('[T10] takes missing readings for missing, never for zero', () => {
		const text = `${header}${good(5)}${iso(START + 5)},\n${iso(START + 6)},NaN\n${iso(START + 7)},7\n`;
		const found = readAll(text);
		expect([found.rows, found.empty, found.series.values.length]).toEqual([8, 2, 6]);
	});
});
