import { GAS_CONSTANT_DRY_AIR } from '../../units/constants.ts';
import { barFromPascal } from '../../units/convert.ts';
import type { CubicMetre, KilogramPerSecond, PascalGauge, Second } from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';
import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import { absolutePressure } from '../gas-state.ts';
import { checkPositive } from '../ranges.ts';
import type { ReceiverResolution } from './bleed-down.ts';
import { bleedIntegral, lowestChokedPressure } from './bleed-integral.ts';
import type { FittedLaw, LawPoint, LineFit, OrificeFit } from './leak-law.ts';
import { chooseLaw, fitLine, fitOrifice } from './leak-law.ts';
import type { SystemLeak, TestConditions } from './readings.ts';
import {
	checkConditions,
	checkNotNegative,
	checkPressurePair,
	fluxAt,
	resolutionUncertainty,
	systemLeak
} from './readings.ts';

export interface BleedReading {
	readonly at: Second;
	readonly pressure: PascalGauge;
}

export interface BleedSeries extends ReceiverResolution {
	readonly volume: CubicMetre;
	/** In the order of time, the pressure falling from each to the next. */
	readonly readings: readonly BleedReading[];
}

export interface BleedSeriesLeak {
	readonly intervals: readonly LawPoint[];
	readonly orifice: OrificeFit;
	/** Left out with fewer than three intervals. */
	readonly line?: LineFit;
	/** Which law the readings follow, and which the leak below was reckoned by (else orifice). */
	readonly law: FittedLaw;
	readonly chokedThroughout: boolean;
	/** At the normal set pressure, by the law that fits. */
	readonly leak: SystemLeak;
	/** The set pressure lies outside the pressures that were read. */
	readonly extrapolated: boolean;
}

/** One interval between readings; where the gauge did not move, nothing was seen to leave. */
function intervalOf(
	before: BleedReading,
	after: BleedReading,
	series: BleedSeries,
	conditions: TestConditions
): LawPoint {
	const { site, lineTemperature } = conditions;
	const perPascal =
		series.volume / (GAS_CONSTANT_DRY_AIR * lineTemperature * (after.at - before.at));
	const fall = before.pressure - after.pressure;
	const high = absolutePressure(before.pressure, site);
	const low = absolutePressure(after.pressure, site);
	return {
		pressure: (before.pressure + after.pressure) / 2,
		flux:
			fall === 0
				? fluxAt(after.pressure, conditions)
				: fall / bleedIntegral(high, low, lineTemperature, site),
		massFlow: perPascal * fall,
		uncertainty: perPascal * Math.SQRT2 * resolutionUncertainty(series.gaugeResolution)
	};
}

function intervalsOf(series: BleedSeries, conditions: TestConditions): Result<LawPoint[]> {
	const { readings } = series;
	const first = readings[0];
	const last = readings.at(-1);
	if (first === undefined || last === undefined || readings.length < 3) {
		return refuse('series-too-short', { readings: readings.length, fewest: 3 });
	}
	const whole = checkPressurePair(first.pressure, last.pressure, 'above-zero');
	if (!whole.ok) return whole;
	const points: LawPoint[] = [];
	let before = first;
	for (const reading of readings.slice(1)) {
		const place = { reading: points.length + 2 };
		if (!(reading.at > before.at && Number.isFinite(reading.at - before.at))) {
			return refuse('times-not-rising', place);
		}
		if (!(reading.pressure <= before.pressure)) return refuse('pressure-rises', place);
		points.push(intervalOf(before, reading, series, conditions));
		before = reading;
	}
	return ok(points);
}

/** Flow by the line at a pressure, and its relative standard uncertainty from the scatter. */
function lineAt(line: LineFit, pressure: PascalGauge): { flow: number; relative: number } {
	const flow = line.slope * pressure + line.intercept;
	const away = (pressure - line.meanPressure) ** 2 / line.spread;
	return { flow, relative: (line.residual * Math.sqrt(1 / line.points + away)) / flow };
}

/**
 * Flow of a system at another pressure by the law that its own bleed-down showed: the what-if of a
 * lower set pressure.
 * @param fitted from `bleedSeriesLeak`
 * @param pressure gauge, Pa
 * @param conditions as the test's
 * @returns mass flow, kg/s; never below zero
 * @validity within the pressures of the test; outside it is extrapolated
 * @source METHOD T6
 */
export function flowByFittedLaw(
	fitted: Pick<BleedSeriesLeak, 'orifice' | 'line' | 'law'>,
	pressure: PascalGauge,
	conditions: TestConditions
): KilogramPerSecond {
	if (fitted.law === 'line' && fitted.line !== undefined) {
		return as<'kg/s'>(Math.max(0, lineAt(fitted.line, pressure).flow));
	}
	return as<'kg/s'>(fitted.orifice.area * fluxAt(pressure, conditions));
}

/**
 * The system's leak from a series of pressures read while the system bleeds down. Each interval
 * gives a flow, ṁ = V·Δp/(R·T·Δt); a fixed opening (METHOD A3, T5) and a straight line in gauge
 * pressure are fitted to them, and the leak at the set pressure follows the law that fits.
 * @param series volume in m³, times in s, gauge pressures in Pa, how finely they were read
 * @param conditions the site, line temperature (K), set pressure and reference
 * @returns both fits, which law holds, and the leak at the set pressure; or `series-too-short`,
 * `times-not-rising`, `pressure-rises`, `pressures-not-apart`, `set-pressure-below-zero-flow` and the refusals of the
 * ranges
 * @validity as METHOD T3, with nothing taken for granted about the openings
 * @source linear loss against pressure: NAVFAC MO-209 (January 1989), tables 5-3 and 5-4 (read);
 * orifice: METHOD T3; METHOD T6
 */
export function bleedSeriesLeak(
	series: BleedSeries,
	conditions: TestConditions
): Result<BleedSeriesLeak> {
	const checked = checkConditions(conditions);
	if (!checked.ok) return checked;
	const volume = checkPositive('volume', series.volume);
	if (!volume.ok) return volume;
	for (const name of ['gaugeResolution', 'clockResolution', 'volumeRelativeUncertainty'] as const) {
		const part = checkNotNegative(name, series[name]);
		if (!part.ok) return part;
	}
	const read = intervalsOf(series, conditions);
	if (!read.ok) return read;

	const intervals = read.value;
	const orifice = fitOrifice(intervals);
	const line = intervals.length >= 3 ? fitLine(intervals) : undefined;
	const law = chooseLaw(intervals, orifice, line);
	const { setPressure, site } = conditions;
	const bySet =
		law === 'line' && line !== undefined
			? lineAt(line, setPressure)
			: {
					flow: orifice.area * fluxAt(setPressure, conditions),
					relative: orifice.areaUncertainty / orifice.area
				};
	if (!(bySet.flow > 0)) {
		return refuse('set-pressure-below-zero-flow', {
			setBarGauge: barFromPascal(setPressure),
			zeroFlowBarGauge: barFromPascal(as<'Pa gauge'>(line?.zeroFlowPressure ?? 0))
		});
	}
	const first = series.readings[0] as BleedReading; // intervalsOf has refused fewer than three
	const last = series.readings.at(-1) as BleedReading;
	const duration = last.at - first.at;
	const wholeFall = first.pressure - last.pressure;
	const relative = Math.hypot(
		bySet.relative,
		series.volumeRelativeUncertainty,
		(Math.SQRT2 * resolutionUncertainty(series.clockResolution)) / duration,
		(Math.SQRT2 * resolutionUncertainty(series.gaugeResolution)) / wholeFall
	);
	return ok({
		intervals,
		orifice,
		...(line === undefined ? {} : { line }),
		law,
		chokedThroughout: absolutePressure(last.pressure, site) >= lowestChokedPressure(site),
		leak: systemLeak(bySet.flow, relative, conditions),
		extrapolated: setPressure > first.pressure || setPressure < last.pressure
	});
}
