import {
	CELSIUS_ZERO_K,
	REFERENCE_PRESSURE_PA,
	STANDARD_ATMOSPHERE_PA
} from '../units/constants.ts';
import { dryAirDensity } from '../units/constants.ts';
import type {
	CubicMetrePerSecond,
	Kelvin,
	KilogramPerCubicMetre,
	KilogramPerSecond,
	PascalAbsolute
} from '../units/quantity.ts';
import { as } from '../units/quantity.ts';
import type { SiteAir } from './gas-state.ts';
import { moistAirDensity } from './gas-state.ts';

export type ReferenceId = 'iso-1217' | 'anr' | 'normal' | 'site';

interface ReferenceAir {
	/** What is printed beside every flow. */
	readonly label: string;
	/** Its own state, or none where the site's is meant. */
	readonly state?: {
		readonly pressure: PascalAbsolute;
		readonly temperature: Kelvin;
		readonly relativeHumidity: number;
	};
	readonly source: string;
}

const TWENTY_CELSIUS = as<'K'>(CELSIUS_ZERO_K + 20);

/** The states that free air may be stated at; a flow without one of these names means nothing. */
export const REFERENCES: Readonly<Record<ReferenceId, ReferenceAir>> = {
	'iso-1217': {
		label: 'ISO 1217 (20 °C, 100 kPa, dry)',
		state: {
			pressure: as<'Pa absolute'>(REFERENCE_PRESSURE_PA),
			temperature: TWENTY_CELSIUS,
			relativeHumidity: 0
		},
		source: 'ISO 1217 annex C (from memory)'
	},
	anr: {
		label: 'ISO 8778 ANR (20 °C, 100 kPa, 65 % RH)',
		state: {
			pressure: as<'Pa absolute'>(REFERENCE_PRESSURE_PA),
			temperature: TWENTY_CELSIUS,
			relativeHumidity: 0.65
		},
		source: 'ISO 8778 (from memory); density computed 1.182 kg/m³, tables print 1.185'
	},
	normal: {
		label: 'DIN 1343 normal (0 °C, 101.325 kPa, dry)',
		state: {
			pressure: as<'Pa absolute'>(STANDARD_ATMOSPHERE_PA),
			temperature: as<'K'>(CELSIUS_ZERO_K),
			relativeHumidity: 0
		},
		source: 'DIN 1343 (read in an encyclopaedia page)'
	},
	site: {
		label: 'site inlet conditions (site pressure and temperature, dry)',
		source: 'measured or entered at the site'
	}
};

const densityOf = (reference: ReferenceId) => {
	const { state } = REFERENCES[reference];
	return state && moistAirDensity(state.pressure, state.temperature, state.relativeHumidity);
};

/** Densities of the states that are the same at every site. */
const FIXED_DENSITIES: Readonly<Record<ReferenceId, KilogramPerCubicMetre | undefined>> = {
	'iso-1217': densityOf('iso-1217'),
	anr: densityOf('anr'),
	normal: densityOf('normal'),
	site: undefined
};

/**
 * Density of the air that free air is stated at.
 * @param reference which state
 * @param site the site's air; only `site` depends on it
 * @returns density, kg/m³
 * @validity site air within the ranges of METHOD A15
 * @source the state's own standard, density by METHOD A4; METHOD A5
 */
export function referenceDensity(reference: ReferenceId, site: SiteAir): KilogramPerCubicMetre {
	return FIXED_DENSITIES[reference] ?? dryAirDensity(site.pressure, site.temperature);
}

/**
 * Temperature of the air that free air is stated at.
 * @param reference which state
 * @param site the site's air; only `site` depends on it
 * @returns temperature, K
 * @validity site air within the ranges of METHOD A15
 * @source the state's own standard; METHOD A5
 */
export function referenceTemperature(reference: ReferenceId, site: SiteAir): Kelvin {
	return REFERENCES[reference].state?.temperature ?? site.temperature;
}

/**
 * A mass flow as free air: Q = ṁ / ρ_ref.
 * @param massFlow kg/s
 * @param reference the state the volume is stated at
 * @param site the site's air
 * @returns volume flow of free air, m³/s
 * @validity any
 * @source definition; METHOD A5
 */
export function freeAirFlow(
	massFlow: KilogramPerSecond,
	reference: ReferenceId,
	site: SiteAir
): CubicMetrePerSecond {
	return as<'m³/s'>(massFlow / referenceDensity(reference, site));
}

/**
 * Free air as a mass flow, the inverse of `freeAirFlow`: ṁ = Q·ρ_ref.
 * @param freeAir m³/s
 * @param reference the state the volume is stated at
 * @param site the site's air
 * @returns mass flow, kg/s
 * @validity any
 * @source definition; METHOD A5
 */
export function massFlowOfFreeAir(
	freeAir: CubicMetrePerSecond,
	reference: ReferenceId,
	site: SiteAir
): KilogramPerSecond {
	return as<'kg/s'>(freeAir * referenceDensity(reference, site));
}
