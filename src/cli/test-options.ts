import {
	STARTING_RESOLUTION,
	type SystemLeak,
	type TestConditions
} from '#lib/core/air/system-test/readings.ts';
import { REFERENCES } from '#lib/core/air/reference-air.ts';
import { barFromPascal, fromSi, gaugeFromBar } from '#lib/core/units/convert.ts';
import { as, type PascalGauge } from '#lib/core/units/quantity.ts';
import { may } from './options.ts';
import { figure, percent } from './plain-text.ts';
import { quantity, seconds, share } from './reading.ts';
import { notGiven, type Around } from './site-options.ts';

/** How finely a receiver test was read; each at our starting value when it is not given. */
export const RESOLUTION_OPTIONS = {
	gauge: may(
		'0.1 bar',
		'smallest step of the pressure gauge; 0.1 bar when not given',
		quantity('pressure')
	),
	clock: may('1 s', 'smallest step of the clock; 1 s when not given', seconds),
	'volume-uncertainty': may(
		'10 %',
		'standard uncertainty of the volume; 10 % when not given',
		share
	)
};

interface Resolutions {
	readonly gauge: PascalGauge | undefined;
	readonly clock: ReturnType<typeof as<'s'>> | undefined;
	readonly 'volume-uncertainty': number | undefined;
}

const GAUGE = gaugeFromBar(STARTING_RESOLUTION.gaugeBar);
export const CLOCK = as<'s'>(STARTING_RESOLUTION.clockS);

export function resolution(options: Resolutions) {
	return {
		gaugeResolution: options.gauge ?? GAUGE,
		clockResolution: options.clock ?? CLOCK,
		volumeRelativeUncertainty:
			options['volume-uncertainty'] ?? STARTING_RESOLUTION.volumeRelativeUncertainty
	};
}

/** The resolutions as they are printed, each marked where it was taken. */
export function resolutionLines(options: Resolutions): (readonly [string, string])[] {
	const { gaugeResolution, clockResolution, volumeRelativeUncertainty } = resolution(options);
	return [
		[
			'gauge step',
			`${figure(barFromPascal(as<'Pa gauge'>(gaugeResolution)))} bar${notGiven(options.gauge)}`
		],
		['clock step', `${figure(clockResolution)} s${notGiven(options.clock)}`],
		[
			'volume known to',
			`${percent(volumeRelativeUncertainty)}${notGiven(options['volume-uncertainty'])}`
		]
	];
}

export function testConditions(site: Around, setPressure: PascalGauge): TestConditions {
	return {
		site: site.air,
		lineTemperature: site.temperature,
		setPressure,
		reference: site.reference
	};
}

/** A flow of free air in the units people quote. */
export function flows(m3PerS: number): string {
	return (['L/s', 'm3/min', 'cfm'] as const)
		.map((unit) => `${figure(fromSi('volumeFlow', unit, m3PerS))} ${unit.replace('3', '³')}`)
		.join(' = ');
}

export function leakJson(leak: SystemLeak) {
	return {
		massFlowKgPerS: leak.massFlow,
		freeAirM3PerS: leak.freeAir,
		relativeUncertainty: leak.relativeStandardUncertainty,
		reference: REFERENCES[leak.reference].label
	};
}

export const LEAK_KEYS = [
	['massFlowKgPerS', 'the system’s leak, kg/s'],
	['freeAirM3PerS', 'the same as free air at the reference, m³/s'],
	['relativeUncertainty', 'standard uncertainty, as a share'],
	['reference', 'the state that free air is stated at, in words']
] as const;
