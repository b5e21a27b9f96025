import { choiceOf } from '#lib/core/logger/choice.ts';
import { guessDialect } from '#lib/core/logger/dialect.ts';
import { RowReader } from '#lib/core/logger/read-rows.ts';
import { loggerFindings } from '#lib/core/weigh/logger-findings.ts';
import { asFile, METRO_NIGHT, METRO_START, record } from '../logger/rebuild.ts';
import { median, type Row } from './measure.ts';

const ROWS = 2_000_000;
const PIECE = 1 << 20;

/** A recording of two million rows: the night of a parked railway unit over and over, once a second. */
function longFile(): string {
	const seconds = METRO_NIGHT.reduce((sum, { loadedS, restS }) => sum + loadedS + restS, 0);
	const nights = Math.ceil(ROWS / seconds);
	const cycles = Array.from({ length: nights }, () => METRO_NIGHT).flat();
	const recording = { stepS: 1, jitterS: 0, noise: 0.004, lost: 0, seed: 1 };
	return asFile(record({ ...recording, cycles, start: METRO_START }), 'Reservoirs');
}

/** Reads it as the app does and finds its cycles. */
function readAndFind(text: string): number {
	const dialect = guessDialect(text.slice(0, 1 << 18), false);
	if (!dialect.ok) throw new Error(dialect.error.code);
	const choice = choiceOf(dialect.value);
	const reader = new RowReader(choice);
	for (let from = 0; from < text.length; from += PIECE) {
		const pushed = reader.push(text.slice(from, from + PIECE));
		if (!pushed.ok) throw new Error(pushed.error.code);
	}
	const rows = reader.finish();
	if (!rows.ok) throw new Error(rows.error.code);
	const found = loggerFindings(rows.value.series, choice.kind);
	if (!found.ok) throw new Error(found.error.code);
	return found.value.cycles.length;
}

/** The bare loop: line ends and one number a line, no times and no cycles. */
function bareLoop(text: string): number {
	let sum = 0;
	let from = 0;
	for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
		sum += Number(text.slice(text.indexOf(',', from) + 1, end)) || 0;
		from = end + 1;
	}
	return sum;
}

/** As one would write it at first: an object a row, times by the platform's own clock. */
function objectARow(text: string): number {
	const rows = text
		.split('\n')
		.slice(1)
		.map((line) => line.split(','))
		.map(([stamp = '', value = '']) => ({ time: Date.parse(`${stamp}Z`), value: Number(value) }));
	return rows.length;
}

export async function logging(): Promise<Row[]> {
	const text = longFile();
	const bare = {
		what: 'a bare loop over the lines',
		ms: await median(3, () => bareLoop(text))
	};
	const plain = {
		what: 'an object a row, without cycles',
		ms: await median(3, () => objectARow(text))
	};
	const ms = await median(3, () => readAndFind(text));
	const what = `read ${String(ROWS / 1e6)} million logger rows and find the cycles`;
	return [
		{ what, ms, against: bare, target: '≤ 5 s' },
		{ what: 'the same', ms, against: plain }
	];
}
