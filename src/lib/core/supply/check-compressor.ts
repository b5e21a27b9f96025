import { ok, refuse, type Result } from '../units/result.ts';
import type { Compressor, Control, Curve, Cycling } from './compressor.ts';

/**
 * Says whether a compressor's figures can be computed with.
 * @param compressor as entered
 * @returns the compressor itself, or the first figure that cannot be
 * @validity any figures: this is what says whether the formulas of the control may be used
 * @source definitions of the fields; METHOD S6, S7, S8, S9
 */
export function checkCompressor(compressor: Compressor): Result<Compressor> {
	const { id, capacityM3PerMin, loadedKw, ratedPressureBarGauge, control } = compressor;
	const positive = { capacityM3PerMin, loadedKw, ratedPressureBarGauge };
	for (const [field, value] of Object.entries(positive))
		if (!(value > 0 && value < Infinity))
			return refuse('compressor-out-of-range', { id, field, value, above: 0 });
	const fault = controlFault(control);
	if (fault !== undefined) return refuse(fault.code, { id, ...fault.detail });
	return ok(compressor);
}

interface Fault {
	readonly code: string;
	readonly detail: Readonly<Record<string, string | number>>;
}

function controlFault(control: Control): Fault | undefined {
	switch (control.kind) {
		case 'cycling':
			return cyclingFault(control, 1);
		case 'throttled': {
			const { slope, unloadsBelowFraction } = control;
			return (
				fractionFault({ slope, unloadsBelowFraction }) ??
				cyclingFault(control.below, 1 - slope * (1 - unloadsBelowFraction))
			);
		}
		case 'variable-speed': {
			const { minimumFraction, minimumPowerFraction } = control;
			if (!(minimumFraction > 0 && minimumFraction < 1))
				return outOfRange('minimumFraction', minimumFraction, 0, 1);
			return (
				fractionFault({ minimumPowerFraction }) ?? cyclingFault(control.below, minimumPowerFraction)
			);
		}
		case 'curve':
			return curveFault(control);
	}
}

/** `onFraction` is the power just before unloading, which the unloaded power cannot exceed. */
function cyclingFault(cycling: Cycling, onFraction: number): Fault | undefined {
	const { unloadedFraction, unloadStartFraction, blowDownS, runOnS, pressureBandBar } = cycling;
	const fraction = fractionFault({ unloadedFraction, unloadStartFraction });
	if (fraction !== undefined) return fraction;
	if (unloadedFraction > onFraction)
		return { code: 'unloaded-above-loaded', detail: { unloadedFraction, most: onFraction } };
	if (unloadedFraction > unloadStartFraction)
		return {
			code: 'unloaded-above-unload-start',
			detail: { unloadedFraction, most: unloadStartFraction }
		};
	if (!(blowDownS >= 0 && blowDownS < Infinity)) return outOfRange('blowDownS', blowDownS, 0);
	if (runOnS !== null && !(runOnS >= 0 && runOnS < Infinity))
		return outOfRange('runOnS', runOnS, 0);
	if (!(pressureBandBar > 0 && pressureBandBar < Infinity))
		return outOfRange('pressureBandBar', pressureBandBar, 0);
	return undefined;
}

function curveFault({ points }: Curve): Fault | undefined {
	const first = points[0];
	const last = points.at(-1);
	if (points.length < 2 || first?.flowFraction !== 0 || last?.flowFraction !== 1)
		return { code: 'curve-must-span-no-flow-to-full-flow', detail: { points: points.length } };
	if (last.powerFraction !== 1)
		return {
			code: 'curve-must-end-at-full-power',
			detail: { powerFraction: last.powerFraction }
		};
	let before = { flowFraction: -1, powerFraction: 0 };
	for (const point of points) {
		const { flowFraction, powerFraction } = point;
		if (!(flowFraction > before.flowFraction && powerFraction >= before.powerFraction))
			return { code: 'curve-must-rise', detail: { flowFraction, powerFraction } };
		before = point;
	}
	return undefined;
}

function fractionFault(fractions: Readonly<Record<string, number>>): Fault | undefined {
	for (const [field, value] of Object.entries(fractions))
		if (!(value >= 0 && value <= 1)) return outOfRange(field, value, 0, 1);
	return undefined;
}

function outOfRange(field: string, value: number, least: number, most?: number): Fault {
	const limits = most === undefined ? { least } : { least, most };
	return { code: 'compressor-control-out-of-range', detail: { field, value, ...limits } };
}
