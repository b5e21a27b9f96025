/** Control and direction marks, which a file from anybody could use to write over the screen. */
const UNSEEN = /[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;

/** Text from outside, safe to show on one line of a terminal. */
export function oneLine(text: string): string {
	return text.replace(UNSEEN, ' ').trim();
}

/** A number to so many significant digits, thousands grouped, with a dot for its decimal mark. */
export function figure(value: number, digits = 4): string {
	const large = Math.abs(value) >= 10 ** digits;
	return new Intl.NumberFormat('en-GB', { maximumFractionDigits: 15 }).format(
		large ? Math.round(value) : Number(value.toPrecision(digits))
	);
}

/** A number to so many digits after the point, thousands grouped. */
export function fixed(value: number, digits: number): string {
	return new Intl.NumberFormat('en-GB', {
		minimumFractionDigits: digits,
		maximumFractionDigits: digits
	}).format(value);
}

/** A share in per cent. */
export function percent(share: number, digits = 2): string {
	return `${figure(share * 100, digits)} %`;
}

export interface Column {
	readonly head: string;
	/** Numbers stand to the right, so that their digits are above each other. */
	readonly side: 'left' | 'right';
}

/** Aligned columns, two spaces apart; no blanks at the ends of lines. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
	const cells = [columns.map(({ head }) => head), ...rows.map((row) => row.map(oneLine))];
	const widths = columns.map((_, at) => Math.max(...cells.map((row) => widthOf(row[at] ?? ''))));
	return cells
		.map((row) =>
			columns
				.map(({ side }, at) => {
					const cell = row[at] ?? '';
					const blank = ' '.repeat((widths[at] ?? 0) - widthOf(cell));
					return side === 'left' ? cell + blank : blank + cell;
				})
				.join('  ')
				.trimEnd()
		)
		.join('\n');
}

/** Names and their values, indented, the values under each other. */
export function list(rows: readonly (readonly [name: string, value: string])[]): string {
	const width = Math.max(...rows.map(([name]) => widthOf(name)));
	return rows
		.map(([name, value]) => `  ${name.padEnd(width)}  ${oneLine(value)}`.trimEnd())
		.join('\n');
}

function widthOf(text: string): number {
	return [...text].length;
}
