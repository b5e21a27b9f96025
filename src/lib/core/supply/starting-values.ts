import { as } from '../units/quantity.ts';
import { toSi } from '../units/convert.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import type { Control, Cycling } from './compressor.ts';
import { regulatedPower } from './package-efficiency.ts';

/** What a newcomer can tell about a machine's control by standing beside it. */
export type ControlChoice = 'start-stop' | 'load-unload' | 'throttled' | 'variable-speed';

/** A starting value never travels without where it came from; both are shown and printed. */
export interface StartingControl {
	readonly control: Control;
	readonly source: string;
}

/** 10 psi between cut-in and cut-out, rounded to the way a controller is set in bar. */
const LOAD_UNLOAD: Cycling = {
	kind: 'cycling',
	unloadedFraction: 0.25,
	unloadStartFraction: 0.85,
	blowDownS: 30,
	runOnS: null,
	pressureBandBar: 0.7
};

const LOAD_UNLOAD_SOURCE =
	'unloaded power 25 % and band 10 psi: R. Marshall, processnpower.com, 2014. Power at unloading ' +
	'85 % and blow-down 30 s: our starting values, chosen so that the part-load points printed for ' +
	'1 and 3 gallons of receiver per cfm are met. Never stopping: our starting value';

/**
 * Controls to start from, so that a first answer needs only one compressor's size and control.
 * @source stated beside each; METHOD S17
 */
export const STARTING_CONTROL: Readonly<Record<ControlChoice, StartingControl>> = {
	'start-stop': {
		control: {
			kind: 'cycling',
			unloadedFraction: 0,
			unloadStartFraction: 0,
			blowDownS: 0,
			runOnS: 0,
			pressureBandBar: 2
		},
		source: 'the motor stops at cut-out; band 2 bar: common practice for small piston machines'
	},
	'load-unload': { control: LOAD_UNLOAD, source: LOAD_UNLOAD_SOURCE },
	throttled: {
		control: {
			kind: 'throttled',
			slope: 0.3,
			unloadsBelowFraction: 0.5,
			below: LOAD_UNLOAD
		},
		source:
			'slope 0.3: Schmidt and Kissock, Power characteristics of industrial air compressors (from ' +
			'memory). Unloading at half flow: the middle of the 40 to 60 % printed in plantservices.com, ' +
			'Compressor capacity controls, 2006. Below: ' +
			LOAD_UNLOAD_SOURCE
	},
	'variable-speed': {
		control: {
			kind: 'variable-speed',
			minimumFraction: 0.3,
			minimumPowerFraction: 0.35,
			below: { ...LOAD_UNLOAD, runOnS: 300 }
		},
		source:
			'least speed 30 % at 35 % of the power, stopping after 5 minutes: our starting values. ' +
			'Below: ' +
			LOAD_UNLOAD_SOURCE
	}
};

/** Largest machine the search for a size looks at, m³/min. */
const LARGEST_M3_PER_MIN = 2000;

/**
 * Package power to start from where only the capacity is known: that of a machine that just meets
 * the least efficiency of the US regulation.
 * @param capacityM3PerMin free-air delivery, m³/min
 * @param ratedPressureBarGauge full-load operating pressure, bar gauge
 * @param choice how it is controlled
 * @returns package power, kW
 * @validity capacity > 0; outside 1 to 35 m³/min the efficiency at the nearer end is used
 * @source derived from 10 CFR 431.345; METHOD S17
 */
export function startingLoadedKw(
	capacityM3PerMin: number,
	ratedPressureBarGauge: number,
	choice: ControlChoice
): Result<number> {
	const power = regulatedPower(
		as<'m³/s'>(capacityM3PerMin / 60),
		toSi('pressure', 'bar', ratedPressureBarGauge),
		choice === 'variable-speed' ? 'variable-speed' : 'fixed-speed'
	);
	return power.ok ? ok(power.value / 1000) : power;
}

/**
 * Capacity to start from where only the power is known; the inverse of `startingLoadedKw`.
 * @param loadedKw package power, kW
 * @param ratedPressureBarGauge full-load operating pressure, bar gauge
 * @param choice how it is controlled
 * @returns free-air delivery, m³/min, to a relative 1e-9
 * @validity power > 0 and within what 2,000 m³/min take
 * @source derived, by bisection; METHOD S17
 */
export function startingCapacityM3PerMin(
	loadedKw: number,
	ratedPressureBarGauge: number,
	choice: ControlChoice
): Result<number> {
	const most = startingLoadedKw(LARGEST_M3_PER_MIN, ratedPressureBarGauge, choice);
	if (!most.ok) return most;
	if (!(loadedKw > 0 && loadedKw <= most.value))
		return refuse('power-out-of-range', { powerKw: loadedKw, above: 0, most: most.value });
	let low = 0;
	let high = LARGEST_M3_PER_MIN;
	while (high - low > 1e-9 * high) {
		const middle = (low + high) / 2;
		const power = startingLoadedKw(middle, ratedPressureBarGauge, choice);
		if (!power.ok) return power;
		if (power.value < loadedKw) low = middle;
		else high = middle;
	}
	return ok((low + high) / 2);
}
