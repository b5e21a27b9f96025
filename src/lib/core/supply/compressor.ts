/**
 * Between cut-in and cut-out: full flow, then none. Load/unload and start/stop are one thing, told
 * apart by the run-on. Fractions are of the package power at full load.
 */
export interface Cycling {
	readonly kind: 'cycling';
	/** Power once blown down, still turning. */
	readonly unloadedFraction: number;
	/** Power at the moment of unloading, before the blow-down has begun. */
	readonly unloadStartFraction: number;
	/** How long the power takes to fall from the one to the other. */
	readonly blowDownS: number;
	/** How long the motor turns after unloading; 0 stops at once, null never stops. */
	readonly runOnS: number | null;
	readonly pressureBandBar: number;
}

/** The inlet is throttled; under `unloadsBelowFraction` of its flow the machine cycles instead. */
export interface Throttled {
	readonly kind: 'throttled';
	/** Share of the full power that would be gone at no flow. */
	readonly slope: number;
	readonly unloadsBelowFraction: number;
	readonly below: Cycling;
}

/** Speed follows demand; under the least speed the machine cycles at that speed. */
export interface VariableSpeed {
	readonly kind: 'variable-speed';
	/** Least flow as a fraction of the capacity. */
	readonly minimumFraction: number;
	/** Power at the least flow. */
	readonly minimumPowerFraction: number;
	readonly below: Cycling;
}

export interface CurvePoint {
	readonly flowFraction: number;
	readonly powerFraction: number;
}

/** Points of the data sheet, joined by straight lines, from no flow to full flow. */
export interface Curve {
	readonly kind: 'curve';
	readonly points: readonly CurvePoint[];
}

export type Control = Cycling | Throttled | VariableSpeed | Curve;

export interface Compressor {
	readonly id: string;
	readonly name: string;
	/** A label; how the machine behaves comes from its control. */
	readonly build: 'piston' | 'screw' | 'vane' | 'centrifugal';
	/** Free-air delivery at inlet conditions. */
	readonly capacityM3PerMin: number;
	/** Electrical power of the whole package at full load and at the rated pressure. */
	readonly loadedKw: number;
	readonly ratedPressureBarGauge: number;
	readonly control: Control;
}
