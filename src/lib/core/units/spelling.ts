import { UNITS } from './convert.ts';
import type { Dimension } from './convert.ts';

/** Other spellings of the symbols in UNITS, lower case; a symbol is always its own spelling. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
	mbar: ['millibar', 'mb'],
	psi: ['lbf/in2', 'lb/in2'],
	'kgf/cm2': ['kg/cm2', 'kp/cm2'],
	mmHg: ['torr'],
	mm: ['millimetre', 'millimeter', 'millimetres', 'millimeters'],
	m: ['metre', 'meter', 'metres', 'meters'],
	um: ['μm', 'micron', 'microns'],
	in: ['inch', 'inches', '"', '”', '“'],
	ft: ['foot', 'feet', "'", '’'],
	mm2: ['sqmm'],
	in2: ['sqin'],
	L: ['litre', 'liter', 'litres', 'liters', 'ltr'],
	cm3: ['cc'],
	m3: ['cbm'],
	ft3: ['cuft'],
	'gal(US)': ['usgal', 'galus', 'gallon(us)'],
	'gal(UK)': ['ukgal', 'galuk', 'impgal', 'gal(imp)', 'gallon(uk)'],
	'L/s': ['l/sec', 'dm3/s', 'lps'],
	'L/min': ['lpm', 'dm3/min'],
	'cm3/s': ['ml/s'],
	'cm3/min': ['ml/min', 'cc/min'],
	cfm: ['ft3/min', 'cuft/min'],
	'ft3/h': ['cfh'],
	'ft3/s': ['cfs'],
	s: ['sec', 'second', 'seconds'],
	min: ['minute', 'minutes'],
	h: ['hr', 'hrs', 'hour', 'hours'],
	d: ['day', 'days'],
	C: ['degc', 'celsius'],
	F: ['degf', 'fahrenheit'],
	K: ['kelvin'],
	W: ['watt', 'watts']
};

/** Where lower case would turn milli into mega, a millionfold or more: these need their capital M. */
const NEEDS_CAPITAL_M = new Set(['mpa', 'mw', 'mwh', 'mj']);

const SYMBOL_BY_SPELLING = new Map<Dimension, ReadonlyMap<string, string>>(
	(Object.keys(UNITS) as Dimension[]).map((dimension) => [
		dimension,
		new Map(
			Object.keys(UNITS[dimension]).flatMap((symbol) =>
				[symbol.toLowerCase(), ...(SPELLINGS[symbol] ?? [])].map((spelling) => [spelling, symbol])
			)
		)
	])
);

/** The unit as written, with superscripts, degree signs, spaces and inch marks made plain. */
export function plainUnit(text: string): string {
	return text
		.replace(/[°º˚]/gu, '')
		.normalize('NFKC')
		.replace(/°/gu, '')
		.replace(/′′|''/gu, '"')
		.replace(/′/gu, "'")
		.replace(/\^|\s|\.$/gu, '')
		.replace(/⁄|∕/gu, '/');
}

/**
 * The symbol in UNITS that a written unit stands for, or nothing.
 * @param dimension what is measured
 * @param plain a unit that has been through `plainUnit`
 */
export function symbolFor(dimension: Dimension, plain: string): string | undefined {
	const lower = plain.toLowerCase();
	if (NEEDS_CAPITAL_M.has(lower) && plain.startsWith('m')) return undefined;
	return SYMBOL_BY_SPELLING.get(dimension)?.get(lower);
}

/** The symbols a dimension accepts, for a refusal to name. */
export function acceptedUnits(dimension: Dimension): string {
	return Object.keys(UNITS[dimension]).join(', ');
}

/** The first dimension, other than `not`, in which the unit is known. */
export function dimensionOf(plain: string, not: Dimension): Dimension | undefined {
	return (Object.keys(UNITS) as Dimension[]).find(
		(dimension) => dimension !== not && symbolFor(dimension, plain) !== undefined
	);
}
