import { STARTING_RESOLUTION } from '#lib/core/air/system-test/readings.ts';
import { loadTimeLeak } from '#lib/core/air/system-test/load-time.ts';
import { barFromPascal, fromSi, gaugeFromBar } from '#lib/core/units/convert.ts';
import { ok } from '#lib/core/units/result.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import { many, may, missing, must, type Given } from '../options.ts';
import { figure, list, percent } from '../plain-text.ts';
import { joined, quantity, seconds, share } from '../reading.ts';
import {
	around,
	assumed,
	assumedAround,
	blame,
	notGiven,
	REFERENCE_OPTION,
	SITE_OPTIONS
} from '../site-options.ts';
import { CLOCK, flows, LEAK_KEYS, leakJson, testConditions } from '../test-options.ts';

const OPTIONS = {
	capacity: must(
		'10 m3/min',
		'what the machine delivers when loaded, as free air at the reference',
		quantity('volumeFlow')
	),
	cycle: many(
		'60 s/240 s',
		'loaded/unloaded time of a cycle, or loaded/unloaded/stopped',
		joined('/', [2, 3], '60 s/240 s', quantity('time'))
	),
	pressure: may('7 bar', 'mean gauge pressure during the test', quantity('pressure')),
	at: may(
		'7 bar',
		'gauge pressure to state the leak at; that of the test when not given',
		quantity('pressure')
	),
	'capacity-uncertainty': may(
		'5 %',
		'standard uncertainty of the capacity; 5 % when not given',
		share
	),
	clock: may('1 s', 'smallest step of the clock; 1 s when not given', seconds),
	...SITE_OPTIONS,
	...REFERENCE_OPTION
};

/** Where no pressure is given the leak is not carried to another: any one in range serves for both. */
const ANY_PRESSURE = gaugeFromBar(7);

const JSON_KEYS: readonly JsonKey[] = [
	...LEAK_KEYS,
	['loadFraction', 'loaded time over all time: the leak’s share of the capacity'],
	['loadFractionUncertainty', 'its standard uncertainty, from scatter and clock'],
	['scatterKnown', 'false for a single cycle'],
	['cycles', 'how many were given'],
	['atBarGauge', 'the pressure the leak is stated at; null: that of the test, not given'],
	['inputs', 'capacityM3PerS, testBarGauge, capacityUncertainty, clockS, altitudeM,'],
	['', 'sitePressureKPa, temperatureC, reference, assumed (options that were not given)']
];

export const loadTime = command({
	name: 'test load-time',
	summary: 'the system’s leak from the share of time a machine loads',
	usage: ['test load-time --capacity "10 m3/min" --cycle "60 s/240 s" --cycle "58 s/251 s"'],
	notes: ['One machine cycles against the leak alone, with no production. METHOD T1 and T9.'],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

function run(given: Given<typeof OPTIONS>): Answer<Outcome> {
	const { options, written } = given;
	const site = around(given);
	if (!site.ok) return site;
	if (options.at !== undefined && options.pressure === undefined)
		return complain(missing('pressure', '7 bar'), '--at');
	if (options.cycle.length === 0) return complain(missing('cycle', '60 s/240 s'));
	const clock = options.clock ?? CLOCK;
	const capacityUncertainty =
		options['capacity-uncertainty'] ?? STARTING_RESOLUTION.capacityRelativeUncertainty;
	const testPressure = options.pressure ?? ANY_PRESSURE;
	const at = options.at ?? testPressure;
	const test = loadTimeLeak(
		{
			capacity: options.capacity,
			capacityRelativeUncertainty: capacityUncertainty,
			clockResolution: clock,
			meanPressure: testPressure,
			cycles: options.cycle.map(([loaded, unloaded, off]) => ({
				loaded: loaded ?? CLOCK,
				unloaded: unloaded ?? CLOCK,
				off
			}))
		},
		testConditions(site.value, at)
	);
	if (!test.ok)
		return complain(
			test.error,
			blame(test.error.code, written, {
				'pressure-out-of-range': written['at'] === undefined ? 'pressure' : 'at',
				'reading-not-positive': 'capacity',
				'reading-negative': 'clock'
			})
		);
	const { leak, loadFraction, loadFractionUncertainty, cycles, scatterKnown } = test.value;
	const atText =
		options.pressure === undefined
			? 'the pressure of the test'
			: `${figure(barFromPascal(at))} bar gauge`;
	return ok({
		text: `${[
			`The system loses ${flows(leak.freeAir).split(' = ')[0] ?? ''} of free air at ${atText}.`,
			list([
				['leak', flows(leak.freeAir)],
				['mass flow', `${figure(leak.massFlow)} kg/s`],
				['uncertainty', `${percent(leak.relativeStandardUncertainty)} (one standard deviation)`],
				[
					'share of capacity',
					`${percent(loadFraction, 3)} ± ${percent(loadFractionUncertainty)} over ${cycles} ${cycles === 1 ? 'cycle' : 'cycles'}`
				]
			]),
			'Reckoned with',
			list([
				['capacity', flows(options.capacity)],
				[
					'capacity known to',
					`${percent(capacityUncertainty)}${notGiven(options['capacity-uncertainty'])}`
				],
				['clock step', `${figure(clock)} s${notGiven(options.clock)}`],
				...site.value.taken
			])
		].join('\n')}\n`,
		json: {
			...leakJson(leak),
			loadFraction,
			loadFractionUncertainty,
			scatterKnown,
			cycles,
			atBarGauge: options.pressure === undefined ? null : barFromPascal(at),
			inputs: {
				capacityM3PerS: fromSi('volumeFlow', 'm3/s', options.capacity),
				testBarGauge: options.pressure === undefined ? null : barFromPascal(testPressure),
				capacityUncertainty,
				clockS: clock,
				...site.value.inputs,
				assumed: [...assumed(written, ['capacity-uncertainty', 'clock']), ...assumedAround(written)]
			}
		},
		notes: scatterKnown
			? []
			: ['One cycle says nothing of its scatter: time several for an uncertainty to rely on.']
	});
}
