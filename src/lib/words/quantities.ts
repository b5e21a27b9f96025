import { barFromPascal, celsiusFromKelvin, fromSi, toSi } from '#lib/core/units/convert.ts';
import { as } from '#lib/core/units/quantity.ts';
import type { Origin, QuantityId, Subject, Working } from '#lib/core/weigh/working/tree.ts';
import type { Format } from './format.ts';

/** What each quantity of a working is called. */
export const QUANTITY_WORDS: Readonly<Record<QuantityId, string>> = {
	'cost-per-year': 'Cost a year',
	'cost-before-rounding': 'Cost before rounding',
	'quick-cost': 'Cost a year, quick method',
	'energy-cost': 'Energy at its price',
	'energy-cost-in-part': 'Energy at its price',
	'energy-price': 'Price of a kilowatt-hour',
	'air-cost': 'Paid by the cubic metre',
	'air-price': 'Price of a cubic metre',
	'shared-cost': 'Part of what is paid for the whole station',
	'share-of-energy': 'Its share of the energy of all leaks',
	'energy-of-all': 'Energy of all leaks a year',
	'demand-charge-fall': 'Fall of the demand charge',
	'demand-price': 'Price of a kilowatt of peak',
	'charges-per-year': 'Times charged a year',
	'peak-power-with-leaks': 'Highest power today',
	'peak-power-without-leaks': 'Highest power without the leaks',
	'lost-heat-worth': 'Worth of the recovered heat that is lost',
	'lost-heat': 'Recovered heat that is lost',
	'recovered-share': 'Share of the power caught as heat',
	'useful-share': 'Share of that heat put to use',
	'fuel-price': 'Price of the fuel',
	'boiler-efficiency': 'Efficiency of the boiler',
	'carbon-per-year': 'CO₂e a year',
	'carbon-factor': 'CO₂e of a kilowatt-hour',

	'energy-per-year': 'Energy a year',
	'quick-energy': 'Energy a year, quick method',
	'quick-power': 'Power by the quick method',
	'specific-power': 'Specific power',
	'hours-per-year': 'Hours a year under pressure',
	'saving-in-part': 'Saved energy',
	'saving-per-flow': 'Energy saved by each m³/min',
	'saving-of-all-in-part': 'Saved when all leaks go',
	'hours-in-part': 'Hours a year',
	'leaks-in-part': 'All leaks together, inlet air',
	'power-with-leaks': 'Power of the station today',
	'power-without-leaks': 'Power of the station without the leaks',
	'delivered-with-leaks': 'Delivered today',
	'delivered-without-leaks': 'Delivered without the leaks',
	demand: 'Demand',
	'set-pressure': 'Set pressure',
	'machine-power': 'Power',
	'machine-flow': 'Flow asked of it',
	'machine-capacity': 'Capacity',
	'machine-full-power': 'Power at full load',
	'work-factor': 'Work at the set pressure over work at the rated one',
	'rated-pressure': 'Rated pressure',
	'inlet-flow': 'Flow, inlet air',
	'share-of-hours': 'Share of the station’s hours under pressure',
	'station-hours': 'Hours a year the station holds pressure',

	'air-per-year': 'Free air a year',
	'air-in-part': 'Free air',
	'free-air-flow': 'Free air',
	'mass-flow': 'Mass flow',
	'reference-density': 'Density of the air it is stated in',
	'mass-flux': 'Mass flow through each square metre',
	'line-pressure': 'Pressure in the line',
	'gauge-pressure': 'Gauge pressure',
	'site-pressure': 'Pressure of the site’s air',
	altitude: 'Height above the sea',
	'air-temperature': 'Temperature of the air',
	'duty-factor': 'Share of the time it is open',
	'open-time': 'Open for',
	interval: 'In every',

	'effective-area': 'Effective area',
	'test-scaling': 'Scaling of the estimates to the system test',
	uncertainty: 'Its relative standard uncertainty',
	'discharge-coefficient': 'Discharge coefficient',
	'opening-area': 'Area of the opening',
	'hole-diameter': 'Diameter of the hole',
	'slit-length': 'Length of the slit',
	'slit-width': 'Width of the slit',
	'thread-diameter': 'Diameter of the thread',
	'thread-gap': 'Gap',
	'caught-mass-flow': 'Mass flow that was caught or metered',
	'caught-volume': 'Air caught',
	'caught-time': 'In',
	'bubble-diameter': 'Diameter of the bubble',
	'meter-flow': 'Reading of the meter',
	'equivalent-hole': 'Ideal hole that the soap response stands for',
	'band-low': 'Low end of the band',
	'band-high': 'High end of the band',
	'sonic-conductance': 'Sonic conductance C',
	'critical-ratio': 'Critical pressure ratio b',

	'system-leak': 'Leak of the whole system at the set pressure',
	'system-leak-mass-flow': 'Mass flow of the whole system’s leak',
	'load-share': 'Share of the time loaded',
	'loaded-time': 'Loaded, all cycles',
	'unloaded-time': 'Unloaded or off, all cycles',
	capacity: 'Capacity of the machine',
	'capacity-mass-flow': 'Mass flow of the machine',
	'flux-ratio': 'From the pressure of the test to the set pressure',
	'flux-at-test': 'Mass flow through each square metre, at the test',
	'flux-at-set': 'Mass flow through each square metre, at the set pressure',
	'test-pressure': 'Mean pressure of the test',
	'system-volume': 'Volume of receivers and pipes',
	'test-time': 'Time it took',
	'bleed-integral': 'Fall of pressure over the flow it drives',
	'start-pressure': 'Pressure at the start',
	'end-pressure': 'Pressure at the end',
	'end-reading': 'Pressure read at the end',
	'end-temperature': 'Temperature at the end',
	'handbook-leak': 'Leak by the handbook',
	'handbook-factor': 'Factor of the handbook',
	'line-slope': 'Slope of the fitted line',
	'line-intercept': 'Fitted line at zero gauge',
	'delivered-capacity': 'Capacity really delivered',
	'delivered-mass-flow': 'Mass flow really delivered',
	'stored-mass-flow': 'Stored in the receiver',
	'leaked-mass-flow': 'Leaked while it filled',
	'tank-temperature': 'Temperature of the air in the tank'
};

/** What the quantity is, and of what where there are several of its kind. */
export function workingLabel({ id, of }: Pick<Working, 'id' | 'of'>): string {
	const words = QUANTITY_WORDS[id];
	return of ? `${words}: ${subjectWords(of)}` : words;
}

function subjectWords(of: Subject): string {
	switch (of.kind) {
		case 'leak':
			return `tag ${of.tag}`;
		case 'period':
		case 'machine':
			return of.name;
		case 'closed':
			return 'closed';
		case 'reference':
			return of.label;
	}
}

/** Where an input came from, in words. */
export function originWords(origin: Origin): string {
	switch (origin.kind) {
		case 'reading':
			return 'as read or judged on the walk or in the test';
		case 'section':
			return origin.name === '' ? 'from the section' : `from the section “${origin.name}”`;
		case 'supply':
			return 'from Set up, the supply';
		case 'schedule':
			return 'from Set up, the week';
		case 'station':
			return 'from Set up, the machines';
		case 'site':
			return 'from Set up, the site';
		case 'prices':
			return 'from Set up, the prices';
		case 'cited':
			return `source: ${origin.source}`;
	}
}

/** A value of a working with its unit, in the reader's units where there are such. */
export function workingValue(
	{ value, unit }: Pick<Working, 'value' | 'unit'>,
	format: Format
): string {
	const { significant } = format;
	const plain = (text: string): string => `${significant(value, 4)}\u202f${text}`;
	switch (unit) {
		case 'minor':
			return format.money(value);
		case 'currency':
			return format.price(value, 2);
		case 'currency/kWh':
			return `${format.price(value)} per kWh`;
		case 'currency/kW':
			return `${format.price(value)} per kW`;
		case 'currency/m³':
			return `${format.price(value)} per m³`;
		case 'kg CO₂e':
			return format.carbon(value);
		case 'kg CO₂e/kWh':
			return plain('kg per kWh');
		case 'kWh':
			return format.energy(value);
		case 'kW':
			return format.power(value);
		case 'h':
			return format.hours(value);
		case 'm³/s':
			return format.flow(value);
		case 'm³/min':
			return format.flow(toSi('volumeFlow', 'm3/min', value));
		case 'm³':
			return smallVolume(value, format) ?? format.volume(value);
		case 'Pa absolute':
			return `${format.pressure(barFromPascal(as<'Pa absolute'>(value)))} absolute`;
		case 'bar gauge':
			return format.pressure(value);
		case 'K':
			return `${significant(celsiusFromKelvin(as<'K'>(value)))}\u202f°C`;
		case 'mm':
			return format.length(value);
		case 'm²':
			return `${significant(fromSi('area', 'mm2', value))}\u202fmm²`;
		case 'kg/s':
			return `${significant(fromSi('massFlow', 'g/s', value))}\u202fg/s`;
		case 'share':
			return format.percent(value, 1);
		case '':
			return significant(value, 4);
		case 'kWh per m³/min':
		case 'kW per m³/min':
		case 's':
		case 'm':
		case 'kg/(s·Pa)':
		case 'kg/(s·m²)':
		case 'Pa·s·m²/kg':
		case 'kg/m³':
		case 'dm³/(s·bar)':
			return plain(unit);
	}
}

/** Bags and bubbles are not read in cubic metres. */
function smallVolume(m3: number, { significant }: Format): string | undefined {
	if (m3 === 0 || Math.abs(m3) >= 0.1) return undefined;
	if (Math.abs(m3) >= 1e-4) return `${significant(fromSi('volume', 'L', m3))}\u202fL`;
	return `${significant(fromSi('volume', 'cm3', m3))}\u202fcm³`;
}

/** How many standard deviations of a normal lie either side of its middle 90 %. */
const NINETY_PERCENT = 1.644_853_627;

/** The middle 90 % of a lognormal spread about the value, where its uncertainty is known. */
export function workingInterval(working: Working, format: Format): string | undefined {
	const { value, unit, relativeUncertainty } = working;
	if (!relativeUncertainty || !(value > 0)) return undefined;
	const factor = Math.exp(NINETY_PERCENT * relativeUncertainty);
	const low = workingValue({ value: value / factor, unit }, format);
	return `${low} to ${workingValue({ value: value * factor, unit }, format)}`;
}
