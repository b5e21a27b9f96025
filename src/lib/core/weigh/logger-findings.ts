import {
	leakShareFromSlopes,
	loadFractionOf,
	type LoadFraction
} from '../air/system-test/load-time.ts';
import type { ColumnKind } from '../logger/column-kinds.ts';
import { findCycles, wholeOf, type FoundCycles, type LoggerCycle } from '../logger/cycles.ts';
import { quietCycles } from '../logger/quiet.ts';
import type { Series } from '../logger/series.ts';
import { gaugeFromBar } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import { ok, type Result } from '../units/result.ts';

/** What a group of cycles says of the leak. */
export interface CycleShare extends LoadFraction {
	readonly cycles: number;
	readonly hours: number;
	/** The same share by the slopes of the pressure; where a pressure was logged. */
	readonly shareBySlopes?: number;
	/** How fast the pressure falls while nothing is made, bar a minute. */
	readonly bleedBarPerMin?: number;
	/** Over all the time of the cycles. */
	readonly meanPressureBarGauge?: number;
}

/** A recording as a system test: plain data, safe to post between threads. */
export interface LoggerFindings extends FoundCycles {
	readonly all: CycleShare;
	/** Of the quiet hours alone, where busy and quiet hours could be told apart. */
	readonly offShift?: CycleShare;
	/** For each cycle whether it is of the quiet hours. */
	readonly quiet: readonly boolean[];
}

/**
 * Finds the cycles in a recording and what they say of the leak: over all, and in the quiet hours.
 * METHOD T11, T12; T1 and T2 for the shares.
 *
 * @param clock times of cycles are good to one step between rows
 * @returns the findings, or `logger-no-cycles`
 */
export function loggerFindings(series: Series, kind: ColumnKind): Result<LoggerFindings> {
	const found = findCycles(series, kind);
	if (!found.ok) return found;
	const { cycles, sampleS } = found.value;
	const all = cycleShare(cycles, sampleS);
	if (!all.ok) return all;
	const { split, quiet } = quietCycles(cycles);
	const offShift = split
		? cycleShare(
				cycles.filter((_, at) => quiet[at]),
				sampleS
			)
		: undefined;
	return ok({
		...found.value,
		quiet,
		all: all.value,
		...(offShift?.ok && { offShift: offShift.value })
	});
}

function cycleShare(cycles: readonly LoggerCycle[], sampleS: number): Result<CycleShare> {
	const fraction = loadFractionOf(
		cycles.map(({ loadedS, unloadedS, offS }) => ({
			loaded: as<'s'>(loadedS),
			unloaded: as<'s'>(unloadedS),
			off: as<'s'>(offS)
		})),
		as<'s'>(sampleS)
	);
	if (!fraction.ok) return fraction;
	const seconds = cycles.reduce((sum, cycle) => sum + wholeOf(cycle), 0);
	return ok({
		...fraction.value,
		cycles: cycles.length,
		hours: seconds / 3600,
		...bySlopes(cycles, seconds)
	});
}

function bySlopes(cycles: readonly LoggerCycle[], seconds: number): Partial<CycleShare> {
	const read = cycles.flatMap(({ loadedS, unloadedS, offS, fromBar, toBar, downToBar }) =>
		fromBar === undefined || toBar === undefined || downToBar === undefined
			? []
			: [{ loadedS, restS: unloadedS + offS, fromBar, toBar, downToBar }]
	);
	if (read.length === 0 || read.length < cycles.length) return {};
	const share = leakShareFromSlopes(
		read.map(({ loadedS, restS, fromBar, toBar, downToBar }) => ({
			loaded: as<'s'>(loadedS),
			off: as<'s'>(restS),
			from: gaugeFromBar(fromBar),
			to: gaugeFromBar(toBar),
			downTo: gaugeFromBar(downToBar)
		}))
	);
	const fall = read.reduce((sum, { toBar, downToBar }) => sum + toBar - downToBar, 0);
	const rest = read.reduce((sum, { restS }) => sum + restS, 0);
	const area = read.reduce(
		(sum, { loadedS, restS, fromBar, toBar, downToBar }) =>
			sum + (loadedS * (fromBar + toBar)) / 2 + (restS * (toBar + downToBar)) / 2,
		0
	);
	return {
		...(share.ok && { shareBySlopes: share.value }),
		bleedBarPerMin: (fall / rest) * 60,
		meanPressureBarGauge: area / seconds
	};
}
