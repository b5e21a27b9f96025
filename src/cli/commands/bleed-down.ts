import { bleedDownLeak, type BleedDownLeak } from '#lib/core/air/system-test/bleed-down.ts';
import {
	bleedSeriesLeak,
	type BleedReading,
	type BleedSeriesLeak
} from '#lib/core/air/system-test/bleed-series.ts';
import type { TestConditions } from '#lib/core/air/system-test/readings.ts';
import { barFromPascal, celsiusFromKelvin, fromSi } from '#lib/core/units/convert.ts';
import { as, type PascalGauge } from '#lib/core/units/quantity.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import { many, may, must, typed, type Given } from '../options.ts';
import { figure, list, percent } from '../plain-text.ts';
import { quantity, seconds, type Read } from '../reading.ts';
import {
	around,
	assumed,
	assumedAround,
	blame,
	notGiven,
	REFERENCE_OPTION,
	SITE_OPTIONS
} from '../site-options.ts';
import {
	flows,
	LEAK_KEYS,
	leakJson,
	resolution,
	RESOLUTION_OPTIONS,
	resolutionLines,
	testConditions
} from '../test-options.ts';

const EXAMPLE = '600 s: 3.5 bar';
const reading: Read<BleedReading> = (text) => {
	const [time, pressure, rest] = text.split(':');
	if (time === undefined || pressure === undefined || rest !== undefined)
		return refuse('pair-unreadable', { text, example: EXAMPLE });
	const at = seconds(time);
	if (!at.ok) return at;
	const read = quantity('pressure')(pressure);
	return read.ok ? ok({ at: at.value, pressure: read.value }) : read;
};

const OPTIONS = {
	volume: must('2 m3', 'of receivers and pipes that bleed down', quantity('volume')),
	reading: many(EXAMPLE, 'time and gauge pressure, in order; two or more', reading),
	at: may(
		'7 bar',
		'gauge pressure to state the leak at; that of the first reading when not given',
		quantity('pressure')
	),
	'end-temperature': may(
		'15 C',
		'of the air at the end, where it changed; with two readings only',
		quantity('temperature')
	),
	...RESOLUTION_OPTIONS,
	...SITE_OPTIONS,
	...REFERENCE_OPTION
};

const JSON_KEYS: readonly JsonKey[] = [
	...LEAK_KEYS,
	['atBarGauge', 'the pressure the leak is stated at'],
	['effectiveAreaM2', 'all leaks as one opening, m²'],
	[
		'chokedThroughout',
		'whether the flow stayed choked; where it did not, that part was integrated'
	],
	['law', 'orifice, line or undecided: which law three or more readings follow; null for two'],
	[
		'line',
		'with four or more readings the straight line: slopeKgPerSPerBar, zeroFlowBarGauge; else null'
	],
	['extrapolated', 'the pressure stated at lies outside the readings'],
	['handbook', 'the handbook’s figure: freeAirM3PerS at site pressure, factor (1.25)'],
	['physicsFactor', 'what that factor would be for this fall through a fixed opening'],
	[
		'inputs',
		'volumeM3, readings (s, barGauge), endTemperatureC, gaugeBar, clockS, volumeUncertainty,'
	],
	['', 'altitudeM, sitePressureKPa, temperatureC, reference, assumed']
];

export const bleedDown = command({
	name: 'test bleed-down',
	summary: 'the system’s leak from the fall of its pressure',
	usage: ['test bleed-down --volume "2 m3" --reading "0 s: 7 bar" --reading "600 s: 3.5 bar"'],
	notes: ['The supply is shut off and nothing is used meanwhile. METHOD T3 to T7 and T9.'],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

type BleedGiven = Given<typeof OPTIONS>;

interface Tested {
	readonly two: BleedDownLeak;
	readonly series: BleedSeriesLeak | undefined;
}

function run(given: BleedGiven): Answer<Outcome> {
	const { options, written } = given;
	const site = around(given);
	if (!site.ok) return site;
	const [first, last] = [options.reading[0], options.reading.at(-1)];
	if (first === undefined || last === undefined || first === last)
		return complain(
			refuse('series-too-short', { readings: options.reading.length, fewest: 2 }).error,
			'--reading'
		);
	if (options['end-temperature'] !== undefined && options.reading.length > 2)
		return complain(
			refuse('option-unusable-with', {
				option: '--end-temperature',
				other: 'more than two readings'
			}).error,
			typed('end-temperature', written['end-temperature'] ?? '')
		);
	const at = options.at ?? first.pressure;
	const tested = test(given, first, last, testConditions(site.value, at));
	if (!tested.ok)
		return complain(
			tested.error,
			blame(tested.error.code, written, {
				'pressure-out-of-range': options.at === undefined ? 'reading' : 'at',
				'temperature-out-of-range':
					tested.error.detail?.['of'] === 'tank' ? 'end-temperature' : 'temperature',
				'set-pressure-below-zero-flow': 'at'
			})
		);
	const { two, series } = tested.value;
	const leak = series?.leak ?? two.leak;
	const chokedThroughout = series?.chokedThroughout ?? two.chokedThroughout;
	const extrapolated = at > first.pressure || at < last.pressure;
	return ok({
		text: textOf(given, tested.value, at, site.value.taken),
		json: {
			...leakJson(leak),
			atBarGauge: barFromPascal(at),
			effectiveAreaM2: series?.orifice.area ?? two.effectiveArea,
			chokedThroughout,
			law: series?.law ?? null,
			line: lineJson(series),
			extrapolated,
			handbook: {
				freeAirM3PerS: two.handbook.freeAir,
				factor: two.handbook.factor
			},
			physicsFactor: two.physicsFactor,
			inputs: {
				volumeM3: options.volume,
				readings: options.reading.map((each) => ({
					s: each.at,
					barGauge: barFromPascal(each.pressure)
				})),
				endTemperatureC:
					options['end-temperature'] === undefined
						? null
						: celsiusFromKelvin(options['end-temperature']),
				gaugeBar: fromSi('pressure', 'bar', resolution(options).gaugeResolution),
				clockS: resolution(options).clockResolution,
				volumeUncertainty: resolution(options).volumeRelativeUncertainty,
				...site.value.inputs,
				assumed: [
					...assumed(written, ['at', ...Object.keys(RESOLUTION_OPTIONS)]),
					...assumedAround(written)
				]
			}
		},
		notes: [
			...(chokedThroughout
				? []
				: [
						'The flow was not choked all the way down; that part was integrated, not taken as choked.'
					]),
			...(extrapolated ? ['The pressure stated at lies outside the readings: extrapolated.'] : []),
			...(series?.law === 'line'
				? [
						'The readings follow a straight line in pressure, not a fixed opening; the leak is by the line.'
					]
				: [])
		]
	});
}

function test(
	{ options }: BleedGiven,
	first: BleedReading,
	last: BleedReading,
	conditions: TestConditions
): Result<Tested> {
	const { volume, reading: readings } = options;
	const fineness = resolution(options);
	const series =
		readings.length > 2
			? bleedSeriesLeak({ volume, readings, ...fineness }, conditions)
			: undefined;
	if (series?.ok === false) return series;
	const duration = last.at - first.at;
	if (!(duration > 0)) return refuse('times-not-rising', { reading: readings.length });
	const two = bleedDownLeak(
		{
			volume,
			from: first.pressure,
			to: last.pressure,
			duration: as<'s'>(duration),
			endTemperature: options['end-temperature'],
			...fineness
		},
		conditions
	);
	return two.ok ? ok({ two: two.value, series: series?.value }) : two;
}

function lineJson(series: BleedSeriesLeak | undefined) {
	if (series?.line === undefined) return null;
	return {
		slopeKgPerSPerBar: series.line.slope * 1e5,
		zeroFlowBarGauge: barFromPascal(as<'Pa gauge'>(series.line.zeroFlowPressure))
	};
}

const LAW_WORDS = {
	orifice: 'a fixed opening, which the readings follow',
	line: 'a straight line in pressure, which the readings follow',
	undecided: 'a fixed opening; too few readings to tell'
} as const;

function textOf(
	{ options, written }: BleedGiven,
	{ two, series }: Tested,
	at: PascalGauge,
	taken: readonly (readonly [string, string])[]
): string {
	const leak = series?.leak ?? two.leak;
	const choked = series?.chokedThroughout ?? two.chokedThroughout;
	const area = series?.orifice.area ?? two.effectiveArea;
	return `${[
		`The system loses ${flows(leak.freeAir).split(' = ')[0] ?? ''} of free air at ${figure(barFromPascal(at))} bar gauge.`,
		list([
			['by physics', flows(leak.freeAir)],
			[
				'by the handbook',
				`${flows(two.handbook.freeAir)} (factor ${figure(two.handbook.factor)}; at site pressure, for the first reading)`
			],
			['factor here', `${figure(two.physicsFactor)} for this fall through a fixed opening`],
			['mass flow', `${figure(leak.massFlow)} kg/s`],
			['uncertainty', `${percent(leak.relativeStandardUncertainty)} (one standard deviation)`],
			['effective area', `${figure(fromSi('area', 'mm2', area))} mm², all leaks as one opening`],
			[
				'law',
				series ? LAW_WORDS[series.law] : 'a fixed opening, taken; a series of readings would tell'
			],
			[
				'choked',
				choked ? 'all the way down, as taken' : 'not all the way down; that part was integrated'
			]
		]),
		'Reckoned with',
		list([
			['volume', `${figure(options.volume)} m³`],
			[
				'stated at',
				`${figure(barFromPascal(at))} bar gauge${written['at'] === undefined ? ' (not given: the first reading)' : ''}`
			],
			...(options['end-temperature'] === undefined
				? [['end temperature', `as the line${notGiven(undefined)}`] as const]
				: [
						[
							'end temperature',
							`${figure(celsiusFromKelvin(options['end-temperature']))} °C`
						] as const
					]),
			...resolutionLines(options),
			...taken
		])
	].join('\n')}\n`;
}
