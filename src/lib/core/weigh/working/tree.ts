/** The quantities that a working is made of; `words/` has a label for each. */
export const QUANTITY_IDS = [
	// Money and carbon
	'cost-per-year',
	'cost-before-rounding',
	'quick-cost',
	'energy-cost',
	'energy-cost-in-part',
	'energy-price',
	'air-cost',
	'air-price',
	'shared-cost',
	'share-of-energy',
	'energy-of-all',
	'demand-charge-fall',
	'demand-price',
	'charges-per-year',
	'peak-power-with-leaks',
	'peak-power-without-leaks',
	'lost-heat-worth',
	'lost-heat',
	'recovered-share',
	'useful-share',
	'fuel-price',
	'boiler-efficiency',
	'carbon-per-year',
	'carbon-factor',
	// Energy
	'energy-per-year',
	'quick-energy',
	'quick-power',
	'specific-power',
	'hours-per-year',
	'saving-in-part',
	'saving-per-flow',
	'saving-of-all-in-part',
	'hours-in-part',
	'leaks-in-part',
	'power-with-leaks',
	'power-without-leaks',
	'delivered-with-leaks',
	'delivered-without-leaks',
	'demand',
	'set-pressure',
	'machine-power',
	'machine-flow',
	'machine-capacity',
	'machine-full-power',
	'work-factor',
	'rated-pressure',
	'inlet-flow',
	'share-of-hours',
	'station-hours',
	// Air
	'air-per-year',
	'air-in-part',
	'free-air-flow',
	'mass-flow',
	'reference-density',
	'mass-flux',
	'line-pressure',
	'gauge-pressure',
	'site-pressure',
	'altitude',
	'air-temperature',
	'duty-factor',
	'open-time',
	'interval',
	// Evidence
	'effective-area',
	'test-scaling',
	'uncertainty',
	'discharge-coefficient',
	'opening-area',
	'hole-diameter',
	'slit-length',
	'slit-width',
	'thread-diameter',
	'thread-gap',
	'caught-mass-flow',
	'caught-volume',
	'caught-time',
	'bubble-diameter',
	'meter-flow',
	'equivalent-hole',
	'band-low',
	'band-high',
	'sonic-conductance',
	'critical-ratio',
	// System tests
	'system-leak',
	'system-leak-mass-flow',
	'load-share',
	'loaded-time',
	'unloaded-time',
	'capacity',
	'capacity-mass-flow',
	'flux-ratio',
	'flux-at-test',
	'flux-at-set',
	'test-pressure',
	'system-volume',
	'test-time',
	'bleed-integral',
	'start-pressure',
	'end-pressure',
	'end-reading',
	'end-temperature',
	'handbook-leak',
	'handbook-factor',
	'line-slope',
	'line-intercept',
	'delivered-capacity',
	'delivered-mass-flow',
	'stored-mass-flow',
	'leaked-mass-flow',
	'tank-temperature'
] as const;
export type QuantityId = (typeof QUANTITY_IDS)[number];

/** Units of a working's values. `minor` is money in whole minor units, `currency` in major ones. */
export type WorkingUnit =
	| 'minor'
	| 'currency'
	| 'currency/kWh'
	| 'currency/kW'
	| 'currency/m³'
	| 'kg CO₂e'
	| 'kg CO₂e/kWh'
	| 'kWh'
	| 'kWh per m³/min'
	| 'kW'
	| 'kW per m³/min'
	| 'h'
	| 's'
	| 'm³/s'
	| 'm³/min'
	| 'm³'
	| 'kg/s'
	| 'kg/(s·Pa)'
	| 'kg/(s·m²)'
	| 'Pa·s·m²/kg'
	| 'kg/m³'
	| 'Pa absolute'
	| 'bar gauge'
	| 'K'
	| 'm'
	| 'mm'
	| 'm²'
	| 'dm³/(s·bar)'
	| 'share'
	| '';

/** Where an input came from. */
export type Origin =
	/** Read or judged at the leak, or read in the test. */
	| { readonly kind: 'reading' }
	| { readonly kind: 'section'; readonly name: string }
	/** The supply's set pressure, as entered on Set up. */
	| { readonly kind: 'supply' }
	/** The station's week. */
	| { readonly kind: 'schedule' }
	/** The sheet of one machine, or of the station. */
	| { readonly kind: 'station' }
	| { readonly kind: 'site' }
	| { readonly kind: 'prices' }
	/** What the method chose, or the user cited: a starting value, a handbook, a contract. */
	| { readonly kind: 'cited'; readonly source: string };

/** What a quantity is of, where there are several of its kind. */
export type Subject =
	| { readonly kind: 'leak'; readonly tag: number }
	| { readonly kind: 'period'; readonly name: string }
	/** The part of the year that no period covers. */
	| { readonly kind: 'closed' }
	| { readonly kind: 'machine'; readonly name: string }
	| { readonly kind: 'reference'; readonly label: string };

/** How a figure came about: what it was made from, down to what somebody entered. Plain data. */
export interface Working {
	readonly id: QuantityId;
	readonly of?: Subject;
	readonly value: number;
	readonly unit: WorkingUnit;
	/** The METHOD rule that made it from its inputs. */
	readonly method?: string;
	readonly origin?: Origin;
	/** Standard deviation of its logarithm, where it is known. */
	readonly relativeUncertainty?: number;
	/** The middle 90 % of the draws and their median, where the figure was drawn. METHOD W7. */
	readonly interval?: { readonly low: number; readonly median: number; readonly high: number };
	readonly inputs: readonly Working[];
	/** The same by another method, to be read beside it; not a part of the sum. */
	readonly beside?: readonly Working[];
}

type Details = Partial<Pick<Working, 'of' | 'origin' | 'relativeUncertainty' | 'beside'>>;

/** A value that a rule made from its inputs. */
export function made(
	id: QuantityId,
	value: number,
	unit: WorkingUnit,
	method: string,
	inputs: readonly Working[],
	details: Details = {}
): Working {
	return { id, value, unit, method, inputs, ...details };
}

/** A value that somebody entered, or that was looked up. */
export function given(
	id: QuantityId,
	value: number,
	unit: WorkingUnit,
	origin: Origin,
	details: Details = {}
): Working {
	return { id, value, unit, origin, inputs: [], ...details };
}

/** What the weighing promises to be there; if it is not, the program is wrong and says so. */
export function there<T>(value: T | undefined, what: QuantityId): T {
	if (value === undefined) throw new RangeError(`a working without ${what}`);
	return value;
}

export const READING: Origin = { kind: 'reading' };
export const SITE: Origin = { kind: 'site' };
export const STATION: Origin = { kind: 'station' };
export const SCHEDULE: Origin = { kind: 'schedule' };
export const PRICES: Origin = { kind: 'prices' };
