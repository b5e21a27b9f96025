import type { Dialect } from './dialect.ts';
import type { LoggerChoice } from './read-rows.ts';

/** How to read a file as it was guessed, with the column that was chosen; by default the likeliest. */
export function choiceOf(dialect: Dialect, column = dialect.bestColumn): LoggerChoice {
	const chosen =
		dialect.columns.find(({ index }) => index === column) ??
		dialect.columns.find(({ usable }) => usable);
	return {
		delimiter: dialect.delimiter,
		decimal: dialect.decimal,
		firstLine: dialect.firstLine,
		timeColumn: dialect.time.column,
		timeFormat: dialect.time.format,
		column: chosen?.index ?? 0,
		kind: chosen?.kind ?? 'other',
		unit: chosen?.unit ?? 'bar'
	};
}
