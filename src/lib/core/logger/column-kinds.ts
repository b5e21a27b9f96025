/** What a logger's column may hold, as far as it matters here. */
export type ColumnKind = 'pressure' | 'power' | 'current' | 'load-signal' | 'other';
export type LoggedPressureUnit = 'bar' | 'psi' | 'kPa' | 'MPa' | 'mbar';

const WORDS: readonly (readonly [ColumnKind, RegExp])[] = [
	[
		'pressure',
		/press|druck|presi|pressão|reservoir|receiver|\bbar\b|\bpsig?\b|\b[km]pa\b|\bmbar\b/u
	],
	['power', /power|leistung|puissance|potenc|potenza|\bk?w(?:att)?s?\b/u],
	['current', /current|strom|courant|corriente|corrente|\bm?a(?:mp(?:s|ere)?)?\b/u],
	['load-signal', /\bload|loaded|\blast\b|charge|signal|valve|status|state|running|\bcomp\b/u]
];

/** What a column's name says that it holds. */
function kindByName(name: string): ColumnKind | undefined {
	const low = name.toLowerCase().replace(/[_()[\]/]/gu, ' ');
	return WORDS.find(([, words]) => words.test(low))?.[0];
}

/**
 * What a column holds, by its name and, where that says nothing, by its values: two values alone are a
 * signal; a spread of values as plants have in bar is a pressure.
 */
export function columnKind(name: string, values: readonly number[]): ColumnKind {
	const kinds = new Set(values);
	if (kinds.size === 0) return 'other';
	const binary = kinds.size <= 2 && [...kinds].every((value) => value === 0 || value === 1);
	if (binary) return 'load-signal';
	const named = kindByName(name);
	if (named === 'load-signal') return kinds.size <= 3 ? named : 'other';
	if (named) return named;
	const { low, high } = ends(values);
	return low >= 2 && high <= 16 && high - low >= 0.2 ? 'pressure' : 'other';
}

/** The unit of a pressure, from its name, else from how large its values are. */
export function pressureUnit(name: string, values: readonly number[]): LoggedPressureUnit {
	const low = name.toLowerCase();
	for (const [unit, pattern] of [
		['psi', /psi/u],
		['mbar', /mbar/u],
		['MPa', /mpa/u],
		['kPa', /kpa/u],
		['bar', /bar/u]
	] as const)
		if (pattern.test(low)) return unit;
	const { high } = ends(values);
	if (high < 2) return 'MPa';
	if (high <= 30) return 'bar';
	return high <= 250 ? 'psi' : high <= 2500 ? 'kPa' : 'mbar';
}

function ends(values: readonly number[]): { low: number; high: number } {
	let low = Infinity;
	let high = -Infinity;
	for (const value of values) {
		low = Math.min(low, value);
		high = Math.max(high, value);
	}
	return { low, high };
}

/** Which column to begin with: what shows the cycles best comes first. */
const PREFERENCE: readonly ColumnKind[] = ['pressure', 'power', 'current', 'load-signal'];

export interface GuessedColumn {
	readonly index: number;
	readonly name: string;
	readonly kind: ColumnKind;
	readonly unit: LoggedPressureUnit;
	/** Share of the cells that hold a number. */
	readonly numeric: number;
	/** The readings of the sample. */
	readonly values: readonly number[];
}

/** The column that is most likely meant, of those that are not the time. */
export function bestColumn(columns: readonly GuessedColumn[]): number | undefined {
	for (const kind of PREFERENCE) {
		const found = columns.filter(
			(column) => column.kind === kind && new Set(column.values).size > 1
		);
		const named = found.find(({ name }) => kindByName(name) === kind);
		const best = named ?? found[0];
		if (best) return best.index;
	}
	const moving = columns.find(({ kind, values }) => kind !== 'other' || new Set(values).size > 1);
	return moving?.index;
}
