/** What a cycle needs, all in absolute power. The caller has checked it. */
export interface CycleInputs {
	/** Flow while loaded, free air, m³/min. */
	readonly capacityM3PerMin: number;
	readonly loadedKw: number;
	readonly unloadStartKw: number;
	readonly unloadedKw: number;
	readonly blowDownS: number;
	readonly runOnS: number | null;
	/** Free air between cut-in and cut-out, m³. */
	readonly storedM3: number;
}

/** How long a machine that cycles is loaded and off load. */
export interface Cycle {
	readonly loadedS: number;
	readonly offLoadS: number;
	readonly cyclesPerMin: number;
	/** Loading more than once a minute wears the machine and leaves the blow-down unfinished. */
	readonly shortCycling: boolean;
}

/** @source California energy code acceptance test NA7.13: short cycling (verified) */
const SHORT_CYCLES_PER_MIN = 1;

/**
 * Mean power of a machine that cycles: P̄ = x·P_L + (1 − x)·P̄_off(t_U), x = q/Q, t_U = S/q.
 *
 * The time loaded is t_L = S/(Q − q) and off load t_U = S/q, so the loaded share of a cycle is x
 * whatever the store; the store decides only how far the power has fallen when it is loaded again.
 * @param inputs the machine and its store; `storedM3` 0 is the limit of ever faster cycles
 * @param demandM3PerMin free-air demand q, m³/min
 * @returns mean power, kW; the loaded power at and above the capacity
 * @validity inputs as `checkCompressor` passes them, demand ≥ 0
 * @source derived from the cycle; METHOD S6
 */
export function cyclingKw(inputs: CycleInputs, demandM3PerMin: number): number {
	const loadedShare = demandM3PerMin / inputs.capacityM3PerMin;
	if (loadedShare >= 1) return inputs.loadedKw;
	const offLoadS = loadedShare > 0 ? (60 * inputs.storedM3) / demandM3PerMin : Infinity;
	return loadedShare * inputs.loadedKw + (1 - loadedShare) * meanOffLoadKw(inputs, offLoadS);
}

/**
 * Mean power over the time off load: the power falls along a straight line from P_s to P_U over the
 * blow-down time, stays at P_U, and is nothing once the run-on is over; the line is cut short where
 * the machine is loaded again or stopped before it ends.
 * @param inputs the machine
 * @param offLoadS time off load, s; may be 0 or Infinity
 * @returns mean power, kW
 * @validity as `cyclingKw`
 * @source derived; METHOD S6
 */
export function meanOffLoadKw(inputs: CycleInputs, offLoadS: number): number {
	const { unloadStartKw, unloadedKw, blowDownS, runOnS } = inputs;
	if (runOnS === 0) return 0;
	if (offLoadS === 0) return blowDownS > 0 ? unloadStartKw : unloadedKw;
	if (offLoadS === Infinity) return runOnS === null ? unloadedKw : 0;
	const turningS = runOnS === null ? offLoadS : Math.min(offLoadS, runOnS);
	const fallingS = Math.min(turningS, blowDownS);
	const fallen = blowDownS > 0 ? fallingS / blowDownS : 1;
	const lowestKw = unloadStartKw + (unloadedKw - unloadStartKw) * fallen;
	// Shares of the time rather than energies, so that no product overflows.
	const meanFallingKw = (unloadStartKw + lowestKw) / 2;
	return meanFallingKw * (fallingS / offLoadS) + unloadedKw * ((turningS - fallingS) / offLoadS);
}

/**
 * Times of one cycle: t_L = S/(Q − q), t_U = S/q.
 * @param capacityM3PerMin flow while loaded, m³/min
 * @param storedM3 free air between cut-in and cut-out, m³
 * @param demandM3PerMin demand, m³/min
 * @returns the cycle, or null where there is none: no demand, full demand or no store
 * @validity as `cyclingKw`
 * @source derived; METHOD S6
 */
export function cycleTimes(
	capacityM3PerMin: number,
	storedM3: number,
	demandM3PerMin: number
): Cycle | null {
	if (!(demandM3PerMin > 0 && demandM3PerMin < capacityM3PerMin && storedM3 > 0)) return null;
	const loadedS = (60 * storedM3) / (capacityM3PerMin - demandM3PerMin);
	const offLoadS = (60 * storedM3) / demandM3PerMin;
	const cyclesPerMin = 60 / (loadedS + offLoadS);
	return { loadedS, offLoadS, cyclesPerMin, shortCycling: cyclesPerMin > SHORT_CYCLES_PER_MIN };
}
