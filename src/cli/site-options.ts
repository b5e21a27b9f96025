import { siteAir } from '#lib/core/air/atmosphere.ts';
import type { SiteAir } from '#lib/core/air/gas-state.ts';
import { REFERENCES, type ReferenceId } from '#lib/core/air/reference-air.ts';
import { celsiusFromKelvin, fromSi, kelvinFromCelsius } from '#lib/core/units/convert.ts';
import { as, type Kelvin } from '#lib/core/units/quantity.ts';
import { ok } from '#lib/core/units/result.ts';
import { complain, type Answer } from './complaint.ts';
import { may, typed, type Given } from './options.ts';
import { figure } from './plain-text.ts';
import { choice, quantity, REFERENCE_CHOICES } from './reading.ts';

/** Where the site's pressure comes from. */
export const PRESSURE_OPTIONS = {
	altitude: may('500 m', 'height above the sea; standard atmosphere', quantity('length')),
	barometer: may(
		'98 kPa',
		'absolute pressure of the air around; goes before --altitude',
		quantity('absolutePressure')
	)
};

/** The air around, as every command that computes with flows takes it. */
export const SITE_OPTIONS = {
	...PRESSURE_OPTIONS,
	temperature: may(
		'20 C',
		'of the air in the line and at the site; 20 C when not given',
		quantity('temperature')
	)
};

export const REFERENCE_OPTION = {
	reference: may(
		'iso-1217',
		`the state free air is stated at: ${REFERENCE_CHOICES.join(', ')}; iso-1217 when not given`,
		choice(REFERENCE_CHOICES)
	)
};

type Line = readonly [name: string, value: string];

/** The site's air; what it was reckoned with, and what was taken for want of an entry. */
interface Ambient {
	readonly air: SiteAir;
	readonly taken: Line;
	readonly inputs: { readonly altitudeM: number | null; readonly sitePressureKPa: number };
}

export interface Around {
	readonly air: SiteAir;
	readonly temperature: Kelvin;
	readonly reference: ReferenceId;
	readonly taken: readonly Line[];
	readonly inputs: Ambient['inputs'] & {
		readonly temperatureC: number;
		readonly reference: ReferenceId;
	};
}

type PressureGiven = Given<typeof PRESSURE_OPTIONS>;
type SiteGiven = Given<typeof SITE_OPTIONS>;
type ReferenceGiven = { readonly options: { readonly reference: ReferenceId | undefined } };

const SEA_LEVEL = as<'m'>(0);
const TWENTY_CELSIUS = kelvinFromCelsius(20);

/** The site's pressure by its barometer, else by its altitude, else at sea level. */
export function ambient(given: PressureGiven, temperature = TWENTY_CELSIUS): Answer<Ambient> {
	const { options, written } = given;
	const altitude = options.barometer === undefined ? (options.altitude ?? SEA_LEVEL) : undefined;
	const air = siteAir({ temperature, barometer: options.barometer, altitude });
	if (!air.ok) return complain(air.error, blame(air.error.code, written));
	const kiloPascal = fromSi('absolutePressure', 'kPa', air.value.pressure);
	return ok({
		air: air.value,
		taken: ['site pressure', `${figure(kiloPascal, 6)} kPa absolute, ${pressureFrom(given)}`],
		inputs: { altitudeM: altitude ?? null, sitePressureKPa: kiloPascal }
	});
}

/** The air around and the reference of free air, with a name for everything that was not given. */
export function around(given: SiteGiven & ReferenceGiven): Answer<Around> {
	const { options } = given;
	const temperature = options.temperature ?? TWENTY_CELSIUS;
	const site = ambient(given, temperature);
	if (!site.ok) return site;
	const { air, taken, inputs } = site.value;
	const reference = options.reference ?? 'iso-1217';
	const celsius = celsiusFromKelvin(temperature);
	return ok({
		air,
		temperature,
		reference,
		taken: [
			taken,
			['temperature', `${figure(celsius)} °C${notGiven(options.temperature)}`],
			['free air at', `${REFERENCES[reference].label}${notGiven(options.reference)}`]
		],
		inputs: { ...inputs, temperatureC: celsius, reference }
	});
}

/** Marks a value that was taken because none was given. */
export function notGiven(value: unknown): string {
	return value === undefined ? ' (not given, taken)' : '';
}

/** Names of the options that were left out and stand at a taken value. */
export function assumed(written: Readonly<Record<string, string>>, names: readonly string[]) {
	return names.filter((name) => !Object.hasOwn(written, name));
}

/** As `assumed`, for the site's pressure. */
export function assumedPressure(written: Readonly<Record<string, string>>): readonly string[] {
	return Object.hasOwn(written, 'barometer') ? [] : assumed(written, ['altitude']);
}

/** As `assumed`, for the air around. */
export function assumedAround(written: Readonly<Record<string, string>>): readonly string[] {
	return [...assumedPressure(written), ...assumed(written, ['temperature', 'reference'])];
}

function pressureFrom({ options }: PressureGiven): string {
	if (options.barometer !== undefined) return 'by the barometer';
	if (options.altitude === undefined) return 'standard atmosphere at sea level (not given, taken)';
	return `standard atmosphere at ${figure(options.altitude)} m`;
}

const BLAMED: Readonly<Record<string, string>> = {
	'altitude-out-of-range': 'altitude',
	'barometer-out-of-range': 'barometer',
	'temperature-out-of-range': 'temperature',
	'downstream-out-of-range': 'downstream',
	'coefficient-out-of-range': 'coefficient'
};

/** The option that a refusal of the core is about, as it was typed. */
export function blame(
	code: string,
	written: Readonly<Record<string, string>>,
	further: Readonly<Record<string, string>> = {}
): string | undefined {
	const name = further[code] ?? BLAMED[code];
	const text = name === undefined ? undefined : written[name];
	return name === undefined || text === undefined ? undefined : typed(name, text);
}
