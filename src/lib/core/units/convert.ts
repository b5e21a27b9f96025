/**
 * The only home of a conversion factor. Factors are exact by definition unless a line says not.
 * @source NIST SP 811, appendix B (from memory); METHOD A1
 */
import { CELSIUS_ZERO_K, STANDARD_ATMOSPHERE_PA, STANDARD_GRAVITY } from './constants.ts';
import type {
	CubicMetre,
	CubicMetrePerSecond,
	Joule,
	Kelvin,
	KilogramPerSecond,
	Metre,
	PascalAbsolute,
	PascalGauge,
	Second,
	SquareMetre,
	Watt
} from './quantity.ts';

interface Unit {
	readonly toSi: (value: number) => number;
	readonly fromSi: (value: number) => number;
}

/** A unit that is so many SI units. */
function times(factor: number): Unit {
	return { toSi: (value) => value * factor, fromSi: (value) => value / factor };
}

/** A unit of which so many make one SI unit; dividing keeps decimal units free of rounding. */
function per(count: number): Unit {
	return { toSi: (value) => value / count, fromSi: (value) => value * count };
}

const INCH = 0.0254;
const FOOT = 12 * INCH;
const POUND = 0.453_592_37;
const POUND_FORCE = POUND * STANDARD_GRAVITY;
const CUBIC_FOOT = FOOT ** 3;
/** Density of mercury at 0 °C by convention, 13 595.1 kg/m³. */
const MILLIMETRE_OF_MERCURY = 13.5951 * STANDARD_GRAVITY;

const PRESSURE = {
	bar: times(1e5),
	mbar: times(100),
	hPa: times(100),
	kPa: times(1e3),
	MPa: times(1e6),
	Pa: times(1),
	psi: times(POUND_FORCE / INCH ** 2),
	'kgf/cm2': times(STANDARD_GRAVITY * 1e4),
	atm: times(STANDARD_ATMOSPHERE_PA),
	mmHg: times(MILLIMETRE_OF_MERCURY),
	inHg: times(25.4 * MILLIMETRE_OF_MERCURY)
};

export const UNITS = {
	/** Gauge: what a pressure gauge shows. */
	pressure: PRESSURE,
	/** Absolute: a barometer, never a line gauge. */
	absolutePressure: PRESSURE,
	length: {
		mm: per(1e3),
		cm: per(100),
		m: times(1),
		um: per(1e6),
		km: times(1e3),
		in: times(INCH),
		ft: times(FOOT),
		thou: times(INCH / 1e3)
	},
	area: { mm2: per(1e6), cm2: per(1e4), m2: times(1), in2: times(INCH ** 2) },
	volume: {
		L: per(1e3),
		m3: times(1),
		ml: per(1e6),
		cm3: per(1e6),
		dm3: per(1e3),
		ft3: times(CUBIC_FOOT),
		in3: times(INCH ** 3),
		'gal(US)': times(231 * INCH ** 3),
		'gal(UK)': per(1e3 / 4.546_09)
	},
	volumeFlow: {
		'L/s': per(1e3),
		'L/min': per(6e4),
		'L/h': per(3.6e6),
		'm3/s': times(1),
		'm3/min': per(60),
		'm3/h': per(3600),
		'cm3/s': per(1e6),
		'cm3/min': per(6e7),
		cfm: times(CUBIC_FOOT / 60),
		'ft3/h': times(CUBIC_FOOT / 3600),
		'ft3/s': times(CUBIC_FOOT)
	},
	massFlow: {
		'kg/s': times(1),
		'g/s': per(1e3),
		'kg/min': per(60),
		'kg/h': per(3600),
		'lb/s': times(POUND),
		'lb/min': times(POUND / 60),
		'lb/h': times(POUND / 3600)
	},
	temperature: {
		C: {
			toSi: (value: number) => value + CELSIUS_ZERO_K,
			fromSi: (value: number) => value - CELSIUS_ZERO_K
		},
		K: times(1),
		F: {
			toSi: (value: number) => ((value + 459.67) * 5) / 9,
			fromSi: (value: number) => (value * 9) / 5 - 459.67
		}
	},
	time: { s: times(1), min: times(60), h: times(3600), d: times(86_400) },
	power: {
		W: times(1),
		kW: times(1e3),
		MW: times(1e6),
		/** Mechanical horsepower, 550 ft·lbf/s. */
		hp: times(550 * FOOT * POUND_FORCE),
		/** Metric horsepower, 75 kgf·m/s. */
		PS: times(75 * STANDARD_GRAVITY)
	},
	energy: {
		J: times(1),
		kJ: times(1e3),
		MJ: times(1e6),
		Wh: times(3600),
		kWh: times(3.6e6),
		MWh: times(3.6e9)
	}
} as const satisfies Record<string, Record<string, Unit>>;

export type Dimension = keyof typeof UNITS;
export type UnitOf<D extends Dimension> = D extends Dimension
	? Extract<keyof (typeof UNITS)[D], string>
	: never;

interface SiByDimension {
	pressure: PascalGauge;
	absolutePressure: PascalAbsolute;
	length: Metre;
	area: SquareMetre;
	volume: CubicMetre;
	volumeFlow: CubicMetrePerSecond;
	massFlow: KilogramPerSecond;
	temperature: Kelvin;
	time: Second;
	power: Watt;
	energy: Joule;
}
/** The branded SI quantity of a dimension. */
export type SiOf<D extends Dimension> = SiByDimension[D];

function unitAt(dimension: Dimension, unit: string): Unit {
	const found = (UNITS[dimension] as Readonly<Record<string, Unit>>)[unit];
	if (found === undefined) throw new RangeError(`no unit ${unit} of ${dimension}`);
	return found;
}

/**
 * Brings a number written in `unit` to SI.
 * @param dimension what is measured
 * @param unit a symbol from UNITS
 * @param value the number in that unit
 * @returns the quantity in SI (Pa, m, m², m³, m³/s, kg/s, K, s, W, J)
 */
export function toSi<D extends Dimension>(dimension: D, unit: UnitOf<D>, value: number): SiOf<D> {
	return unitAt(dimension, unit).toSi(value) as SiOf<D>;
}

/**
 * Shows an SI quantity in `unit`; the inverse of `toSi`.
 * @param dimension what is measured
 * @param unit a symbol from UNITS
 * @param value the quantity in SI
 * @returns the number in that unit
 */
export function fromSi<D extends Dimension>(
	dimension: D,
	unit: UnitOf<D>,
	value: SiOf<D> | number
): number {
	return unitAt(dimension, unit).fromSi(value);
}

/** bar gauge → Pa gauge. */
export const gaugeFromBar = (bar: number): PascalGauge => toSi('pressure', 'bar', bar);
/** bar absolute → Pa absolute. */
export const absoluteFromBar = (bar: number): PascalAbsolute =>
	toSi('absolutePressure', 'bar', bar);
/** Pa → bar; what is gauge stays gauge and what is absolute stays absolute. */
export const barFromPascal = (pascal: PascalGauge | PascalAbsolute): number =>
	fromSi('pressure', 'bar', pascal);
/** °C → K. */
export const kelvinFromCelsius = (celsius: number): Kelvin => toSi('temperature', 'C', celsius);
/** K → °C. */
export const celsiusFromKelvin = (kelvin: Kelvin): number => fromSi('temperature', 'C', kelvin);
/** mm → m. */
export const metreFromMillimetre = (millimetre: number): Metre => toSi('length', 'mm', millimetre);
/** m → mm. */
export const millimetreFromMetre = (metre: Metre): number => fromSi('length', 'mm', metre);
/** litre → m³. */
export const cubicMetreFromLitre = (litre: number): CubicMetre => toSi('volume', 'L', litre);
