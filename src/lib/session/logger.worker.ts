import { guessDialect, type Dialect } from '#lib/core/logger/dialect.ts';
import { encodingOf } from '#lib/core/logger/encoding.ts';
import { pictureOf, type Picture } from '#lib/core/logger/picture.ts';
import { RowReader, type LoggerChoice, type LoggerRows } from '#lib/core/logger/read-rows.ts';
import type { Series } from '#lib/core/logger/series.ts';
import { refuse, type Refusal, type Result } from '#lib/core/units/result.ts';
import { loggerFindings, type LoggerFindings } from '#lib/core/weigh/logger-findings.ts';

export type LoggerRequest =
	| { readonly kind: 'look'; readonly file: File }
	| { readonly kind: 'read'; readonly file: File; readonly choice: LoggerChoice }
	/** A part of the recording that was read last. */
	| { readonly kind: 'draw'; readonly from: number; readonly to: number };

/** What was read, without the readings: those stay in the worker. */
export interface LoggerRead extends LoggerFindings {
	readonly choice: LoggerChoice;
	readonly rows: Omit<LoggerRows, 'series'>;
	readonly from: number;
	readonly to: number;
}

export type LoggerReply =
	| { readonly kind: 'looked'; readonly dialect: Dialect }
	| { readonly kind: 'progress'; readonly share: number; readonly rows: number }
	| { readonly kind: 'read'; readonly read: LoggerRead; readonly picture: Picture }
	| { readonly kind: 'drawn'; readonly picture: Picture }
	| { readonly kind: 'refused'; readonly refusal: Refusal };

const SAMPLE_BYTES = 1 << 18;
/** Of a file of any size, so much is read at a time: small enough that what is done with goes at once. */
const PIECE_BYTES = 96 << 10;
/** The page is told so often how far the reading is. */
const TOLD_EVERY_PIECES = 8;
/** Rows differ in length: room for a few more than the first of them let expect. */
const ROOM = 1.03;
const STRETCHES = 700;

let series: Series | undefined;

async function bytesOf(file: File, from: number, to: number): Promise<Result<Uint8Array>> {
	try {
		return { ok: true, value: new Uint8Array(await file.slice(from, to).arrayBuffer()) };
	} catch {
		return refuse('logger-unreadable');
	}
}

async function look(file: File): Promise<Result<Dialect>> {
	const bytes = await bytesOf(file, 0, SAMPLE_BYTES);
	if (!bytes.ok) return bytes;
	const whole = file.size <= SAMPLE_BYTES;
	const text = new TextDecoder(encodingOf(bytes.value)).decode(bytes.value, { stream: !whole });
	return guessDialect(text, whole);
}

async function readRows(file: File, choice: LoggerChoice): Promise<Result<LoggerRows>> {
	const first = await bytesOf(file, 0, 2);
	if (!first.ok) return first;
	const decoder = new TextDecoder(encodingOf(first.value));
	const reader = new RowReader(choice);
	const piece = (from: number) => bytesOf(file, from, from + PIECE_BYTES);
	let coming = piece(0);
	for (let at = 0; at * PIECE_BYTES < file.size; at++) {
		const from = at * PIECE_BYTES;
		const bytes = await coming;
		if (!bytes.ok) return bytes;
		// The next one is on its way while this one is read.
		coming = piece(from + PIECE_BYTES);
		const pushed = reader.push(decoder.decode(bytes.value, { stream: true }));
		if (!pushed.ok) return pushed;
		if (at === 0) reader.expect((ROOM * reader.rows * file.size) / bytes.value.length);
		if (at % TOLD_EVERY_PIECES === 0)
			tell({ kind: 'progress', share: from / file.size, rows: reader.rows });
	}
	return reader.finish();
}

async function read(file: File, choice: LoggerChoice): Promise<void> {
	series = undefined;
	const rows = await readRows(file, choice);
	if (!rows.ok) return tell({ kind: 'refused', refusal: rows.error });
	const { series: readings, ...about } = rows.value;
	const found = loggerFindings(readings, choice.kind);
	if (!found.ok) return tell({ kind: 'refused', refusal: found.error });
	series = readings;
	const from = readings.times[0] ?? 0;
	const to = readings.times.at(-1) ?? 0;
	tell({
		kind: 'read',
		read: { ...found.value, choice, rows: about, from, to },
		picture: pictureOf(readings, from, to, STRETCHES)
	});
}

function tell(reply: LoggerReply): void {
	postMessage(reply);
}

async function answer(request: LoggerRequest): Promise<void> {
	switch (request.kind) {
		case 'look': {
			const dialect = await look(request.file);
			return dialect.ok
				? tell({ kind: 'looked', dialect: dialect.value })
				: tell({ kind: 'refused', refusal: dialect.error });
		}
		case 'read':
			return read(request.file, request.choice);
		case 'draw':
			if (series)
				tell({ kind: 'drawn', picture: pictureOf(series, request.from, request.to, STRETCHES) });
	}
}

addEventListener('message', (event: MessageEvent<LoggerRequest>) => {
	answer(event.data).catch(() => tell({ kind: 'refused', refusal: { code: 'logger-unreadable' } }));
});
