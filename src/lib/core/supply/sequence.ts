import { cycleAt, partLoadKw } from './part-load.ts';
import type { Cycle } from './cycling.ts';
import { factorAt, type ReadyStation } from './station.ts';

/** Flow for which no machine is started, m³/min: the rounding of sums and differences of flows. */
const NEGLIGIBLE_M3_PER_MIN = 1e-9;

/** What one machine does at a demand. */
export interface MachineState {
	readonly id: string;
	readonly role: 'full' | 'trim' | 'stopped';
	readonly flowM3PerMin: number;
	readonly powerKw: number;
	readonly cycle: Cycle | null;
}

/** What the station does at a demand. */
export interface StationState {
	readonly powerKw: number;
	/** Demand that the station cannot meet; the pressure falls until the load takes less. */
	readonly shortageM3PerMin: number;
	readonly machines: readonly MachineState[];
}

/**
 * Shares a demand out over the machines: in order, each full, and one that trims.
 *
 * With no trim named, the machine started last trims. With one named, the others are started in
 * order until it can take the rest; where the last of them is larger than the rest (a control gap),
 * that machine trims instead and the named one stops. Machines that are not needed are stopped.
 * @param station checked
 * @param demandM3PerMin demand on the station, m³/min, ≥ 0
 * @param flows written: flow of each machine, m³/min
 * @returns place of the machine that trims; the others run full or are stopped
 * @validity a demand above the capacity leaves every machine full
 * @source California energy code NA7.13: base machines full or off, one trims (verified); METHOD S10
 */
export function shareDemand(
	station: ReadyStation,
	demandM3PerMin: number,
	flows: Float64Array
): number {
	const { compressors, namedTrim } = station;
	flows.fill(0);
	const trimCapacity = compressors[namedTrim]?.capacityM3PerMin ?? 0;
	let left = demandM3PerMin;
	let last = namedTrim;
	for (let i = 0; i < compressors.length; i++) {
		if (i === namedTrim) continue;
		const started = namedTrim >= 0 || last >= 0;
		if (started && left <= trimCapacity + NEGLIGIBLE_M3_PER_MIN) break;
		const capacity = compressors[i]?.capacityM3PerMin ?? 0;
		const flow = Math.min(left, capacity);
		flows[i] = flow;
		left -= flow;
		if (namedTrim < 0 || flow < capacity) last = i;
	}
	if (namedTrim >= 0) flows[namedTrim] = Math.min(left, trimCapacity);
	return last;
}

/**
 * Power of the station at a demand: P = Σ Pᵢ(qᵢ).
 * @param station checked
 * @param demandM3PerMin demand on the station, m³/min, ≥ 0
 * @param setPressureBarGauge set pressure, bar gauge, > 0
 * @param flows working space, one place per machine
 * @returns power, kW
 * @validity as `shareDemand`
 * @source METHOD S10
 */
export function stationKw(
	station: ReadyStation,
	demandM3PerMin: number,
	setPressureBarGauge: number,
	flows: Float64Array
): number {
	const trim = shareDemand(station, demandM3PerMin, flows);
	let sum = 0;
	for (let i = 0; i < flows.length; i++) {
		const machine = station.compressors[i];
		const flow = flows[i] ?? 0;
		if (machine === undefined || (flow === 0 && i !== trim)) continue;
		const factor = factorAt(station, machine, setPressureBarGauge);
		sum += partLoadKw(machine, station.storedM3PerBar, flow, factor);
	}
	return sum;
}

/**
 * The cycle of the machine that trims.
 * @param station checked
 * @param demandM3PerMin demand on the station, m³/min, ≥ 0
 * @param flows working space, one place per machine
 * @returns the cycle, or null where it does not cycle
 * @validity as `shareDemand`
 * @source METHOD S6, S10
 */
export function trimCycle(
	station: ReadyStation,
	demandM3PerMin: number,
	flows: Float64Array
): Cycle | null {
	const trim = shareDemand(station, demandM3PerMin, flows);
	const machine = station.compressors[trim];
	return machine === undefined ? null : cycleAt(machine, station.storedM3PerBar, flows[trim] ?? 0);
}

/**
 * The same as `stationKw`, told machine by machine, for showing the working.
 * @param station checked
 * @param demandM3PerMin demand on the station, m³/min, ≥ 0
 * @param setPressureBarGauge set pressure, bar gauge, > 0
 * @returns what each machine does, the power and the shortage
 * @validity as `shareDemand`
 * @source METHOD S10
 */
export function stationState(
	station: ReadyStation,
	demandM3PerMin: number,
	setPressureBarGauge: number
): StationState {
	const flows = new Float64Array(station.compressors.length);
	const trim = shareDemand(station, demandM3PerMin, flows);
	const machines = station.compressors.map((machine, i): MachineState => {
		const flow = flows[i] ?? 0;
		if (flow === 0 && i !== trim)
			return { id: machine.id, role: 'stopped', flowM3PerMin: 0, powerKw: 0, cycle: null };
		const factor = factorAt(station, machine, setPressureBarGauge);
		return {
			id: machine.id,
			role: i === trim ? 'trim' : 'full',
			flowM3PerMin: flow,
			powerKw: partLoadKw(machine, station.storedM3PerBar, flow, factor),
			cycle: i === trim ? cycleAt(machine, station.storedM3PerBar, flow) : null
		};
	});
	return {
		powerKw: machines.reduce((sum, { powerKw }) => sum + powerKw, 0),
		shortageM3PerMin: Math.max(0, demandM3PerMin - station.capacityM3PerMin),
		machines
	};
}
