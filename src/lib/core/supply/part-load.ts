import type { Compressor, Curve, Cycling } from './compressor.ts';
import { cycleTimes, cyclingKw, type Cycle } from './cycling.ts';

/**
 * Mean power of one machine at a demand.
 * @param machine as `checkCompressor` passes it
 * @param storedM3PerBar free air that the system stores per bar, m³/bar
 * @param demandM3PerMin free-air demand on this machine, m³/min, ≥ 0
 * @param factor compression work at the set pressure over that at the rated pressure; it scales what
 *   the machine draws while compressing, never below its unloaded power
 * @returns mean power, kW
 * @validity steady demand over many cycles
 * @source METHOD S6 cycling, S7 throttled, S8 variable speed, S9 curve
 */
export function partLoadKw(
	machine: Compressor,
	storedM3PerBar: number,
	demandM3PerMin: number,
	factor: number
): number {
	const { control, capacityM3PerMin, loadedKw } = machine;
	const flow = Math.min(1, demandM3PerMin / capacityM3PerMin);
	switch (control.kind) {
		case 'cycling':
			return cycleKw(machine, control, 1, 1, storedM3PerBar, demandM3PerMin, factor);
		case 'throttled': {
			// P = P_L · (1 − k·(1 − q/Q)), down to the point of unloading.
			const least = control.unloadsBelowFraction;
			const power = 1 - control.slope * (1 - Math.max(flow, least));
			if (flow < least)
				return cycleKw(
					machine,
					control.below,
					least,
					power,
					storedM3PerBar,
					demandM3PerMin,
					factor
				);
			return compressingKw(machine, control.below, power, factor);
		}
		case 'variable-speed': {
			// A straight line from the power at least flow to that at full flow.
			const { minimumFraction: least, minimumPowerFraction: leastPower, below } = control;
			if (flow < least)
				return cycleKw(machine, below, least, leastPower, storedM3PerBar, demandM3PerMin, factor);
			const power = leastPower + ((1 - leastPower) * (flow - least)) / (1 - least);
			return compressingKw(machine, below, power, factor);
		}
		case 'curve':
			return loadedKw * factor * curvePower(control, flow);
	}
}

/**
 * The cycle of a machine at a demand.
 * @param machine as `checkCompressor` passes it
 * @param storedM3PerBar free air that the system stores per bar, m³/bar
 * @param demandM3PerMin free-air demand on this machine, m³/min
 * @returns the cycle, or null where the machine does not cycle
 * @validity steady demand
 * @source METHOD S6
 */
export function cycleAt(
	machine: Compressor,
	storedM3PerBar: number,
	demandM3PerMin: number
): Cycle | null {
	const { control, capacityM3PerMin } = machine;
	if (control.kind === 'curve') return null;
	const [cycling, share] =
		control.kind === 'cycling'
			? [control, 1]
			: control.kind === 'throttled'
				? [control.below, control.unloadsBelowFraction]
				: [control.below, control.minimumFraction];
	const stored = cycling.pressureBandBar * storedM3PerBar;
	return cycleTimes(share * capacityM3PerMin, stored, demandM3PerMin);
}

/** Power while compressing: it scales with the work, but a machine cannot take less than unloaded. */
function compressingKw(
	{ loadedKw }: Compressor,
	{ unloadedFraction }: Cycling,
	powerFraction: number,
	factor: number
): number {
	return loadedKw * Math.max(powerFraction * factor, unloadedFraction);
}

/** Mean power of cycling between no flow and `flowShare` of the capacity at `powerShare`. */
function cycleKw(
	machine: Compressor,
	cycling: Cycling,
	flowShare: number,
	powerShare: number,
	storedM3PerBar: number,
	demandM3PerMin: number,
	factor: number
): number {
	const onKw = compressingKw(machine, cycling, powerShare, factor);
	const startKw = compressingKw(machine, cycling, cycling.unloadStartFraction, factor);
	return cyclingKw(
		{
			capacityM3PerMin: flowShare * machine.capacityM3PerMin,
			loadedKw: onKw,
			unloadStartKw: Math.min(startKw, onKw),
			unloadedKw: cycling.unloadedFraction * machine.loadedKw,
			blowDownS: cycling.blowDownS,
			runOnS: cycling.runOnS,
			storedM3: cycling.pressureBandBar * storedM3PerBar
		},
		demandM3PerMin
	);
}

function curvePower({ points }: Curve, flow: number): number {
	let before = points[0];
	for (const point of points) {
		if (before !== undefined && flow <= point.flowFraction) {
			const width = point.flowFraction - before.flowFraction;
			if (width <= 0) return point.powerFraction;
			const share = (flow - before.flowFraction) / width;
			return before.powerFraction + share * (point.powerFraction - before.powerFraction);
		}
		before = point;
	}
	return 1;
}
