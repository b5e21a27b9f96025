import type { CubicMetrePerSecond, PascalGauge, Second } from '../../units/quantity.ts';
import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import { checkLinePressure, checkPositive } from '../ranges.ts';
import { massFlowOfFreeAir } from '../reference-air.ts';
import type { SystemLeak, TestConditions } from './readings.ts';
import {
	checkConditions,
	checkNotNegative,
	fluxAt,
	resolutionUncertainty,
	systemLeak
} from './readings.ts';

export interface LoadCycle {
	readonly loaded: Second;
	readonly unloaded: Second;
	/** Time stopped, where the machine also switches off; it counts with the unloaded time. */
	readonly off?: Second | undefined;
}

export interface LoadTimeReadings {
	readonly cycles: readonly LoadCycle[];
	/** What the machine delivers when loaded, at the reference of the conditions. */
	readonly capacity: CubicMetrePerSecond;
	readonly capacityRelativeUncertainty: number;
	/** Between the unload and the load pressure, where the leak blew during the test. */
	readonly meanPressure: PascalGauge;
	/** Smallest step of the clock or logger that timed the cycles. */
	readonly clockResolution: Second;
}

export interface LoadFraction {
	/** Loaded time over all time: the share of the capacity that the leak takes at that pressure. */
	readonly loadFraction: number;
	/** Standard uncertainty of the share, from the scatter of the cycles and from the clock. */
	readonly loadFractionUncertainty: number;
	/** False for a single cycle: its scatter is not known, only the clock's part. */
	readonly scatterKnown: boolean;
}

export interface LoadTimeLeak extends LoadFraction {
	readonly cycles: number;
	/** At the normal set pressure. */
	readonly leak: SystemLeak;
}

interface Totals {
	readonly loaded: number;
	readonly rest: number;
	readonly each: readonly { readonly loaded: number; readonly whole: number }[];
}

function sumCycles(cycles: readonly LoadCycle[]): Result<Totals> {
	let loaded = 0;
	let rest = 0;
	const each: { loaded: number; whole: number }[] = [];
	for (const cycle of cycles) {
		const parts = [cycle.loaded, cycle.unloaded, cycle.off ?? 0];
		if (!parts.every((part) => part >= 0 && Number.isFinite(part))) {
			return refuse('cycle-unreadable', { cycle: each.length + 1 });
		}
		const idle = cycle.unloaded + (cycle.off ?? 0);
		loaded += cycle.loaded;
		rest += idle;
		each.push({ loaded: cycle.loaded, whole: cycle.loaded + idle });
	}
	if (each.length === 0) return refuse('no-cycles');
	if (!(loaded > 0)) return refuse('never-loaded', { unloadedSeconds: rest });
	if (!(rest > 0)) return refuse('never-unloaded', { loadedSeconds: loaded });
	return ok({ loaded, rest, each });
}

/** Standard error of a ratio of sums; unknown for one cycle. */
function scatterOf({ loaded, rest, each }: Totals): number | undefined {
	const n = each.length;
	if (n < 2) return undefined;
	const whole = loaded + rest;
	const fraction = loaded / whole;
	const squares = each.reduce((sum, c) => sum + (c.loaded - fraction * c.whole) ** 2, 0);
	return Math.sqrt((n / (n - 1)) * squares) / whole;
}

function clockPart({ loaded, rest, each }: Totals, clockResolution: number): number {
	const u = resolutionUncertainty(clockResolution) * Math.sqrt(each.length);
	return (u * Math.hypot(loaded, rest)) / (loaded + rest) ** 2;
}

/**
 * Share of the time that a machine is loaded: f = ΣT_loaded / (ΣT_loaded + ΣT_unloaded), off time
 * counted as unloaded.
 * @param cycles times in s
 * @param clockResolution smallest step of the clock or logger, s
 * @returns the share with its standard uncertainty; or `no-cycles`, `cycle-unreadable`,
 * `never-loaded`, `never-unloaded`
 * @validity whole cycles; the uncertainty is the larger of the scatter over the cycles (standard error
 * of a ratio) and the clock's
 * @source as `loadTimeLeak`; METHOD T1
 */
export function loadFractionOf(
	cycles: readonly LoadCycle[],
	clockResolution: Second
): Result<LoadFraction> {
	const totals = sumCycles(cycles);
	if (!totals.ok) return totals;
	const { loaded, rest } = totals.value;
	const scatter = scatterOf(totals.value);
	return ok({
		loadFraction: loaded / (loaded + rest),
		loadFractionUncertainty: Math.max(scatter ?? 0, clockPart(totals.value, clockResolution)),
		scatterKnown: scatter !== undefined
	});
}

/**
 * The system's leak from the share of time that a loaded machine runs with no production:
 * q = Q·ΣT_loaded / (ΣT_loaded + ΣT_unloaded), off time counted as unloaded; carried to the set
 * pressure by the flux there over the flux at the pressure of the test.
 * @param readings times in s, capacity in m³/s at the reference, pressures in Pa gauge
 * @param conditions the site, line temperature (K), set pressure and reference
 * @returns the load fraction with its standard uncertainty and the leak; or `no-cycles`,
 * `cycle-unreadable`, `never-loaded`, `never-unloaded` and the refusals of the ranges
 * @validity one machine cycling against the leak alone; the fraction's uncertainty is the larger
 * of the scatter over the cycles (standard error of a ratio) and the clock's
 * @source US DOE / Compressed Air Challenge sourcebook, as quoted widely (read in several texts);
 * off time: read where its omission was discussed; METHOD T1
 */
export function loadTimeLeak(
	readings: LoadTimeReadings,
	conditions: TestConditions
): Result<LoadTimeLeak> {
	const checked = checkConditions(conditions);
	if (!checked.ok) return checked;
	const capacity = checkPositive('capacity', readings.capacity);
	if (!capacity.ok) return capacity;
	const meanPressure = checkLinePressure(readings.meanPressure);
	if (!meanPressure.ok) return meanPressure;
	for (const name of ['capacityRelativeUncertainty', 'clockResolution'] as const) {
		const part = checkNotNegative(name, readings[name]);
		if (!part.ok) return part;
	}
	const share = loadFractionOf(readings.cycles, readings.clockResolution);
	if (!share.ok) return share;
	const { loadFraction, loadFractionUncertainty } = share.value;
	const full = massFlowOfFreeAir(readings.capacity, conditions.reference, conditions.site);
	const toSet = fluxAt(conditions.setPressure, conditions) / fluxAt(meanPressure.value, conditions);
	const relative = Math.hypot(
		loadFractionUncertainty / loadFraction,
		readings.capacityRelativeUncertainty
	);
	return ok({
		...share.value,
		cycles: readings.cycles.length,
		leak: systemLeak(loadFraction * full * toSet, relative, conditions)
	});
}

/** One cycle whose pressures were read as well as its times. */
export interface PressureCycle {
	readonly loaded: Second;
	readonly off: Second;
	readonly from: PascalGauge;
	readonly to: PascalGauge;
	readonly downTo: PascalGauge;
}

/**
 * The leak's share of the capacity by a second route, from the slopes of the pressure:
 * share = s_down / (s_down + s_up), s = Δp/t summed over the cycles; no volume is needed.
 * @param cycles times in s, pressures in Pa gauge
 * @returns share of the capacity, or `no-cycles`, `cycle-unreadable`
 * @validity a leak and a capacity that hold steady over the cycle
 * @source derived from the mass balance of the receiver; METHOD T2
 */
export function leakShareFromSlopes(cycles: readonly PressureCycle[]): Result<number> {
	if (cycles.length === 0) return refuse('no-cycles');
	const unreadable = cycles.findIndex(
		({ loaded, off, from, to, downTo }) =>
			!(loaded > 0 && off > 0 && to > from && to > downTo && Number.isFinite(loaded + off + to))
	);
	if (unreadable >= 0) return refuse('cycle-unreadable', { cycle: unreadable + 1 });
	const sum = (part: (cycle: PressureCycle) => number): number =>
		cycles.reduce((total, cycle) => total + part(cycle), 0);
	const up = sum(({ to, from }) => to - from) / sum(({ loaded }) => loaded);
	const down = sum(({ to, downTo }) => to - downTo) / sum(({ off }) => off);
	return ok(down / (down + up));
}
