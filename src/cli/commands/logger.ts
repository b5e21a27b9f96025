import { choiceOf } from '#lib/core/logger/choice.ts';
import type { ColumnKind } from '#lib/core/logger/column-kinds.ts';
import { guessDialect, type Dialect, type LoggerColumn } from '#lib/core/logger/dialect.ts';
import { encodingOf } from '#lib/core/logger/encoding.ts';
import { RowReader, type LoggerChoice, type LoggerRows } from '#lib/core/logger/read-rows.ts';
import { civilText } from '#lib/core/logger/time-stamps.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import {
	loggerFindings,
	type CycleShare,
	type LoggerFindings
} from '#lib/core/weigh/logger-findings.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import type { Io } from '../io.ts';
import { may, type Given } from '../options.ts';
import { figure, list, oneLine, percent, table } from '../plain-text.ts';
import { choice, words } from '../reading.ts';

const KINDS = [
	'pressure',
	'power',
	'current',
	'load-signal'
] as const satisfies readonly ColumnKind[];

const OPTIONS = {
	column: may(
		'Reservoirs',
		'name of the column, or its number from 1; the likeliest when not given',
		words
	),
	kind: may('pressure', `what it holds: ${KINDS.join(', ')}; guessed when not given`, choice(KINDS))
};

const JSON_KEYS: readonly JsonKey[] = [
	['rows', 'how many rows of readings the file has'],
	[
		'column',
		'the column that was read: number (from 1), name, kind, unit (of a pressure, else null)'
	],
	['dialect', 'delimiter, decimal, firstLine, orderUncertain (day and month could be swapped)'],
	[
		'cycles[]',
		'start (the logger’s own clock; null without a date), startS (since the first row),'
	],
	[
		'',
		'loadedS, unloadedS, offS, pressureStart, pressureEnd, pressureAfter (bar gauge where loading'
	],
	['', 'begins, where it ends and where the next begins; null but for a pressure), offShift'],
	['loadFraction', 'loaded time over all time: value, standardUncertainty'],
	['bySlopes', 'the same share by the slopes of the pressure (METHOD T2); null but for a pressure'],
	['bleedBarPerMin', 'how fast the pressure falls while nothing is made; null but for a pressure'],
	['meanPressure', 'bar gauge, over the cycles; null but for a pressure'],
	['offShift', 'of the quiet hours alone: cycles, hours, loadFraction, bySlopes, bleedBarPerMin,'],
	['', 'meanPressure; null where busy and quiet hours could not be told apart'],
	['sampleS', 'usual time between rows'],
	[
		'leftOut',
		'withGap, stayedOff, irregular: cycles that do not count; emptyRows, unreadableRows,'
	],
	['', 'outOfOrderRows, gaps, missingSamples']
];

export const logger = command({
	name: 'logger',
	summary: 'the load and unload cycles in a logger’s file',
	usage: ['logger FILE.csv [--column Reservoirs] [--json]'],
	word: { as: 'FILE', says: 'a recording as text, in columns; it is only read', must: true },
	notes: [
		'The load fraction times what the machine delivers is the leak: see test load-time. METHOD T10 to T12.'
	],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

const SAMPLE_BYTES = 1 << 18;
const PIECE_BYTES = 1 << 20;

async function run(
	{ options, words: [path = ''] }: Given<typeof OPTIONS>,
	io: Io
): Promise<Answer<Outcome>> {
	const about = `"${oneLine(path)}"`;
	const bytes = await io.readFile(path);
	if (!bytes.ok) return complain(bytes.error, about);
	const encoding = encodingOf(bytes.value);
	const sample = new TextDecoder(encoding).decode(bytes.value.subarray(0, SAMPLE_BYTES), {
		stream: true
	});
	const dialect = guessDialect(sample, bytes.value.length <= SAMPLE_BYTES);
	if (!dialect.ok) return complain(dialect.error, about);
	const column = columnAsked(dialect.value, options.column);
	if (!column.ok) return complain(column.error, '--column');
	const guess = choiceOf(dialect.value, column.value?.index);
	const chosen: LoggerChoice = { ...guess, kind: options.kind ?? guess.kind };
	const rows = readRows(bytes.value, chosen, encoding);
	if (!rows.ok) return complain(rows.error, about);
	const found = loggerFindings(rows.value.series, chosen.kind);
	if (!found.ok) return complain(found.error, about);
	const name = dialect.value.columns.find(({ index }) => index === chosen.column)?.name ?? '';
	return ok({
		json: jsonOf(dialect.value, chosen, name, rows.value, found.value),
		text: textOf(chosen, name, rows.value, found.value),
		notes: notesOf(dialect.value, rows.value)
	});
}

function columnAsked(
	{ columns }: Dialect,
	asked: string | undefined
): Result<LoggerColumn | undefined> {
	if (asked === undefined) return ok(undefined);
	const low = asked.trim().toLowerCase();
	const found =
		columns.find(({ name }) => name.toLowerCase() === low) ??
		columns.find(({ index }) => String(index + 1) === low);
	if (found) return ok(found);
	const names = columns.map(({ index, name }) => (name === '' ? String(index + 1) : oneLine(name)));
	return refuse('logger-column-unknown', { column: oneLine(asked), columns: names.join(', ') });
}

function readRows(bytes: Uint8Array, chosen: LoggerChoice, encoding: string): Result<LoggerRows> {
	const decoder = new TextDecoder(encoding);
	const reader = new RowReader(chosen);
	for (let from = 0; from < bytes.length; from += PIECE_BYTES) {
		const piece = bytes.subarray(from, from + PIECE_BYTES);
		const pushed = reader.push(decoder.decode(piece, { stream: true }));
		if (!pushed.ok) return pushed;
	}
	return reader.finish();
}

function jsonOf(
	dialect: Dialect,
	chosen: LoggerChoice,
	name: string,
	rows: LoggerRows,
	found: LoggerFindings
): Outcome['json'] {
	const first = rows.series.times[0] ?? 0;
	return {
		rows: rows.rows,
		column: {
			number: chosen.column + 1,
			name,
			kind: chosen.kind,
			unit: chosen.kind === 'pressure' ? chosen.unit : null
		},
		dialect: {
			delimiter: dialect.delimiter,
			decimal: dialect.decimal,
			firstLine: dialect.firstLine,
			orderUncertain: dialect.time.orderUncertain
		},
		cycles: found.cycles.map((cycle, at) => ({
			start: rows.dated ? civilText(cycle.start) : null,
			startS: cycle.start - first,
			loadedS: cycle.loadedS,
			unloadedS: cycle.unloadedS,
			offS: cycle.offS,
			pressureStart: cycle.fromBar ?? null,
			pressureEnd: cycle.toBar ?? null,
			pressureAfter: cycle.downToBar ?? null,
			offShift: found.offShift ? (found.quiet[at] ?? false) : null
		})),
		...shareJson(found.all),
		offShift: found.offShift
			? { cycles: found.offShift.cycles, hours: found.offShift.hours, ...shareJson(found.offShift) }
			: null,
		sampleS: found.sampleS,
		leftOut: {
			...found.leftOut,
			emptyRows: rows.empty,
			unreadableRows: rows.unreadable,
			outOfOrderRows: rows.outOfOrder,
			gaps: found.gaps,
			missingSamples: found.missingSamples
		}
	};
}

function shareJson(share: CycleShare) {
	return {
		loadFraction: {
			value: share.loadFraction,
			standardUncertainty: share.loadFractionUncertainty
		},
		bySlopes: share.shareBySlopes ?? null,
		bleedBarPerMin: share.bleedBarPerMin ?? null,
		meanPressure: share.meanPressureBarGauge ?? null
	};
}

function textOf(
	chosen: LoggerChoice,
	name: string,
	rows: LoggerRows,
	found: LoggerFindings
): string {
	const { all, offShift, leftOut } = found;
	const out = leftOut.withGap + leftOut.stayedOff + leftOut.irregular;
	const seconds = (value: number) => figure(value, 3);
	const bar = (value: number | undefined) => (value === undefined ? '' : figure(value, 3));
	const first = rows.series.times[0] ?? 0;
	const start = (time: number) =>
		rows.dated ? civilText(time).replace('T', ' ') : `${figure(time - first, 5)} s`;
	return `${[
		`Column ${String(chosen.column + 1)}${name === '' ? '' : ` (${oneLine(name)})`}, read as ${chosen.kind}: ${figure(rows.rows, 7)} rows, ${String(found.cycles.length)} whole cycles${out > 0 ? `, ${String(out)} left out` : ''}.`,
		list([
			...shareLines(all, ''),
			...(offShift ? shareLines(offShift, `quiet hours (${String(offShift.cycles)} cycles), `) : [])
		]),
		'',
		table(
			[
				{ head: 'start', side: 'left' },
				{ head: 'loaded s', side: 'right' },
				{ head: 'unloaded s', side: 'right' },
				{ head: 'off s', side: 'right' },
				{ head: 'from bar', side: 'right' },
				{ head: 'to bar', side: 'right' }
			],
			found.cycles.map((cycle) => [
				start(cycle.start),
				seconds(cycle.loadedS),
				seconds(cycle.unloadedS),
				seconds(cycle.offS),
				bar(cycle.fromBar),
				bar(cycle.toBar)
			])
		)
	].join('\n')}\n`;
}

function shareLines(share: CycleShare, of: string): (readonly [string, string])[] {
	const { loadFraction, loadFractionUncertainty, shareBySlopes, bleedBarPerMin } = share;
	return [
		[`${of}load fraction`, `${percent(loadFraction, 3)} ± ${percent(loadFractionUncertainty)}`],
		...(shareBySlopes === undefined
			? []
			: [[`${of}by the slopes`, percent(shareBySlopes, 3)] as const]),
		...(bleedBarPerMin === undefined
			? []
			: [[`${of}fall while unloaded`, `${figure(bleedBarPerMin, 3)} bar a minute`] as const])
	];
}

function notesOf(dialect: Dialect, rows: LoggerRows): string[] {
	return [
		...(dialect.time.orderUncertain
			? ['Day and month could be the other way round in this file; times of day are not affected.']
			: []),
		...(rows.firstUnreadable
			? [
					`Rows left out because they could not be read: ${String(rows.unreadable)}. The first: ${refusalSentence(rows.firstUnreadable)}`
				]
			: [])
	];
}
