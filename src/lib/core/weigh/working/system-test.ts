import { bleedDownLeak, type BleedDownReadings } from '../../air/system-test/bleed-down.ts';
import { bleedIntegral } from '../../air/system-test/bleed-integral.ts';
import { bleedSeriesLeak, type BleedSeries } from '../../air/system-test/bleed-series.ts';
import { loadTimeLeak, type LoadTimeReadings } from '../../air/system-test/load-time.ts';
import { pressureAtTemperature } from '../../air/system-test/pressure-hold.ts';
import { deliveredCapacity, type PumpUpReadings } from '../../air/system-test/pump-up.ts';
import { fluxAt, type SystemLeak, type TestConditions } from '../../air/system-test/readings.ts';
import { absolutePressure } from '../../air/gas-state.ts';
import {
	massFlowOfFreeAir,
	REFERENCES,
	referenceDensity,
	referenceTemperature
} from '../../air/reference-air.ts';
import { barFromPascal } from '../../units/convert.ts';
import type { PascalGauge } from '../../units/quantity.ts';
import { ok, type Result } from '../../units/result.ts';
import { given, made, READING, SITE, type QuantityId, type Working } from './tree.ts';

/**
 * Shows the working of a load-time test: the leak at the set pressure, down to the cycles. METHOD T1.
 *
 * @returns the tree, or the refusals of `loadTimeLeak`
 */
export function workingOfLoadTime(
	readings: LoadTimeReadings,
	conditions: TestConditions
): Result<Working> {
	const found = loadTimeLeak(readings, conditions);
	if (!found.ok) return found;
	const { loadFraction, loadFractionUncertainty, leak } = found.value;
	const { capacity, capacityRelativeUncertainty, cycles, meanPressure } = readings;
	const seconds = (part: (cycle: (typeof cycles)[number]) => number): number =>
		cycles.reduce((sum, cycle) => sum + part(cycle), 0);
	const { reference, site, setPressure } = conditions;
	const density = densityOf(conditions);
	const full = massFlowOfFreeAir(capacity, reference, site);
	const atSet = fluxWorking('flux-at-set', 'set-pressure', setPressure, conditions);
	const atTest = fluxWorking('flux-at-test', 'test-pressure', meanPressure, conditions);
	const share = made(
		'load-share',
		loadFraction,
		'share',
		'T1',
		[
			given(
				'loaded-time',
				seconds(({ loaded }) => loaded),
				's',
				READING
			),
			given(
				'unloaded-time',
				seconds(({ unloaded, off }) => unloaded + (off ?? 0)),
				's',
				READING
			)
		],
		{ relativeUncertainty: loadFractionUncertainty / loadFraction }
	);
	const fullFlow = made('capacity-mass-flow', full, 'kg/s', 'A5', [
		given('capacity', capacity, 'm³/s', READING, {
			relativeUncertainty: capacityRelativeUncertainty
		}),
		density
	]);
	const ratio = made('flux-ratio', atSet.value / atTest.value, '', 'T9', [atSet, atTest]);
	return ok(leakWorking(leak, 'T1', [share, fullFlow, ratio], density));
}

/**
 * Shows the working of a bleed-down from two readings, the handbook's figure beside it. METHOD T3 to T5.
 *
 * @returns the tree, or the refusals of `bleedDownLeak`
 */
export function workingOfBleedDown(
	readings: BleedDownReadings,
	conditions: TestConditions
): Result<Working> {
	const found = bleedDownLeak(readings, conditions);
	if (!found.ok) return found;
	const { site, lineTemperature, setPressure } = conditions;
	const { effectiveArea, chokedThroughout, leak, handbook } = found.value;
	const { endTemperature } = readings;
	const to =
		endTemperature === undefined
			? readings.to
			: pressureAtTemperature(readings.to, endTemperature, lineTemperature, site);
	const start = absoluteWorking('start-pressure', readings.from, conditions);
	const end =
		endTemperature === undefined
			? absoluteWorking('end-pressure', to, conditions)
			: made('end-pressure', absolutePressure(to, site), 'Pa absolute', 'T7', [
					absoluteWorking('end-reading', readings.to, conditions),
					given('end-temperature', endTemperature, 'K', READING),
					temperatureOf(conditions)
				]);
	const volume = given('system-volume', readings.volume, 'm³', READING, {
		relativeUncertainty: readings.volumeRelativeUncertainty
	});
	const time = given('test-time', readings.duration, 's', READING);
	const integral = bleedIntegral(
		absolutePressure(readings.from, site),
		absolutePressure(to, site),
		lineTemperature,
		site
	);
	const rule = chokedThroughout ? 'T3' : 'T5';
	const temperature = temperatureOf(conditions);
	const area = made('effective-area', effectiveArea, 'm²', rule, [
		volume,
		made('bleed-integral', integral, 'Pa·s·m²/kg', rule, [start, end, temperature]),
		temperature,
		time
	]);
	const flux = fluxWorking('flux-at-set', 'set-pressure', setPressure, conditions);
	const outside = sitePressureOf(conditions);
	const beside = made('handbook-leak', handbook.freeAir, 'm³/s', 'T4', [
		volume,
		start,
		absoluteWorking('end-reading', readings.to, conditions),
		time,
		outside,
		given('handbook-factor', handbook.factor, '', {
			kind: 'cited',
			source: 'US DOE / Compressed Air Challenge sourcebook, as quoted widely'
		})
	]);
	return ok({ ...leakWorking(leak, rule, [area, flux], densityOf(conditions)), beside: [beside] });
}

/**
 * Shows the working of a bleed-down read many times, by the law that fits. METHOD T6.
 *
 * @returns the tree, or the refusals of `bleedSeriesLeak`
 */
export function workingOfBleedSeries(
	series: BleedSeries,
	conditions: TestConditions
): Result<Working> {
	const found = bleedSeriesLeak(series, conditions);
	if (!found.ok) return found;
	const { law, line, orifice, leak } = found.value;
	const { setPressure } = conditions;
	const density = densityOf(conditions);
	if (law === 'line' && line)
		return ok(
			leakWorking(
				leak,
				'T6',
				[
					made('line-slope', line.slope, 'kg/(s·Pa)', 'T6', []),
					made('line-intercept', line.intercept, 'kg/s', 'T6', []),
					given('set-pressure', barFromPascal(setPressure), 'bar gauge', SITE)
				],
				density
			)
		);
	const area = made('effective-area', orifice.area, 'm²', 'T6', [], {
		relativeUncertainty: orifice.areaUncertainty / orifice.area
	});
	const flux = fluxWorking('flux-at-set', 'set-pressure', setPressure, conditions);
	return ok(leakWorking(leak, 'T6', [area, flux], density));
}

/**
 * Shows the working of a pump-up test: what a machine really delivers. METHOD T8.
 *
 * @returns the tree, or the refusals of `deliveredCapacity`
 */
export function workingOfPumpUp(
	readings: PumpUpReadings,
	conditions: Pick<TestConditions, 'site' | 'reference'>
): Result<Working> {
	const found = deliveredCapacity(readings, conditions);
	if (!found.ok) return found;
	const { freeAir, massFlow, leakedMassFlow, relativeStandardUncertainty } = found.value;
	const { site, reference } = conditions;
	const { tankTemperature } = readings;
	const start = absoluteWorking('start-pressure', readings.from, conditions);
	const end = absoluteWorking('end-pressure', readings.to, conditions);
	const temperature =
		tankTemperature === undefined
			? given('tank-temperature', referenceTemperature(reference, site), 'K', {
					kind: 'cited',
					source: 'not read: taken as that of the reference'
				})
			: given('tank-temperature', tankTemperature, 'K', READING);
	const stored = made('stored-mass-flow', massFlow - leakedMassFlow, 'kg/s', 'T8', [
		given('system-volume', readings.volume, 'm³', READING),
		start,
		end,
		temperature,
		given('test-time', readings.duration, 's', READING)
	]);
	const leaked = made('leaked-mass-flow', leakedMassFlow, 'kg/s', 'T8', []);
	const whole = made('delivered-mass-flow', massFlow, 'kg/s', 'T8', [stored, leaked]);
	return ok(
		made('delivered-capacity', freeAir, 'm³/s', 'A5', [whole, densityOf(conditions)], {
			relativeUncertainty: relativeStandardUncertainty
		})
	);
}

function leakWorking(
	leak: SystemLeak,
	method: string,
	inputs: readonly Working[],
	density: Working
): Working {
	const doubt = { relativeUncertainty: leak.relativeStandardUncertainty };
	const massFlow = made('system-leak-mass-flow', leak.massFlow, 'kg/s', method, inputs, doubt);
	return made('system-leak', leak.freeAir, 'm³/s', 'A5', [massFlow, density], doubt);
}

function fluxWorking(
	id: QuantityId,
	of: QuantityId,
	pressure: PascalGauge,
	conditions: TestConditions
): Working {
	return made(id, fluxAt(pressure, conditions), 'kg/(s·m²)', 'A3', [
		absoluteWorking(of, pressure, conditions),
		temperatureOf(conditions),
		sitePressureOf(conditions)
	]);
}

function absoluteWorking(
	id: QuantityId,
	pressure: PascalGauge,
	conditions: Pick<TestConditions, 'site'>
): Working {
	const { site } = conditions;
	return made(id, absolutePressure(pressure, site), 'Pa absolute', 'A2', [
		given('gauge-pressure', barFromPascal(pressure), 'bar gauge', READING),
		sitePressureOf(conditions)
	]);
}

function sitePressureOf({ site }: Pick<TestConditions, 'site'>): Working {
	return given('site-pressure', site.pressure, 'Pa absolute', SITE);
}

function temperatureOf({ lineTemperature }: TestConditions): Working {
	return given('air-temperature', lineTemperature, 'K', SITE);
}

function densityOf({ site, reference }: Pick<TestConditions, 'site' | 'reference'>): Working {
	const { label, source } = REFERENCES[reference];
	return given(
		'reference-density',
		referenceDensity(reference, site),
		'kg/m³',
		{ kind: 'cited', source },
		{ of: { kind: 'reference', label } }
	);
}
