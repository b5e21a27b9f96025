import { deliveredCapacity } from '#lib/core/air/system-test/pump-up.ts';
import { REFERENCES } from '#lib/core/air/reference-air.ts';
import { barFromPascal, celsiusFromKelvin, fromSi } from '#lib/core/units/convert.ts';
import { ok } from '#lib/core/units/result.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import { may, must, type Given } from '../options.ts';
import { figure, list, percent } from '../plain-text.ts';
import { quantity, seconds } from '../reading.ts';
import {
	around,
	assumed,
	assumedAround,
	blame,
	REFERENCE_OPTION,
	SITE_OPTIONS
} from '../site-options.ts';
import { flows, resolution, RESOLUTION_OPTIONS, resolutionLines } from '../test-options.ts';

const OPTIONS = {
	volume: must('2 m3', 'of the receiver and pipes that are filled', quantity('volume')),
	from: must('0.5 bar', 'gauge pressure at the start', quantity('pressure')),
	to: must('7 bar', 'gauge pressure at the end', quantity('pressure')),
	seconds: must('241', 'time it took, in seconds or with a unit', seconds),
	'tank-temperature': may(
		'40 C',
		'of the air in the receiver at the end; without it the answer is some percent high',
		quantity('temperature')
	),
	'leak-area': may(
		'20 mm2',
		'what leaked meanwhile, as an effective area; from test bleed-down',
		quantity('area')
	),
	...RESOLUTION_OPTIONS,
	...SITE_OPTIONS,
	...REFERENCE_OPTION
};

const JSON_KEYS: readonly JsonKey[] = [
	['massFlowKgPerS', 'what the compressor really delivers, kg/s'],
	['freeAirM3PerS', 'the same as free air at the reference, m³/s'],
	['relativeUncertainty', 'standard uncertainty, as a share'],
	['reference', 'the state that free air is stated at, in words'],
	['leakedMassFlowKgPerS', 'the part that leaked meanwhile and was added back, kg/s'],
	['temperatureCorrected', 'whether the temperature in the receiver was given'],
	[
		'inputs',
		'volumeM3, fromBarGauge, toBarGauge, seconds, tankTemperatureC, leakAreaM2, gaugeBar,'
	],
	['', 'clockS, volumeUncertainty, altitudeM, sitePressureKPa, temperatureC, reference, assumed']
];

export const pumpUp = command({
	name: 'test pump-up',
	summary: 'what a compressor really delivers, from filling a receiver',
	usage: ['test pump-up --volume "2 m3" --from "0.5 bar" --to "7 bar" --seconds 241'],
	notes: ['The receiver is shut off from the system and filled without a pause. METHOD T8 and T9.'],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

function run(given: Given<typeof OPTIONS>): Answer<Outcome> {
	const { options, written } = given;
	const site = around(given);
	if (!site.ok) return site;
	const { air, reference } = site.value;
	const fineness = resolution(options);
	const tankTemperature = options['tank-temperature'];
	const leakArea = options['leak-area'];
	const test = deliveredCapacity(
		{
			volume: options.volume,
			from: options.from,
			to: options.to,
			duration: options.seconds,
			tankTemperature,
			leakArea,
			...fineness
		},
		{ site: air, reference }
	);
	if (!test.ok)
		return complain(
			test.error,
			blame(test.error.code, written, {
				'temperature-out-of-range': 'tank-temperature',
				'pressures-not-apart': 'to',
				'test-pressure-out-of-range': 'to',
				'reading-not-positive': test.error.detail?.['reading'] === 'volume' ? 'volume' : 'seconds'
			})
		);
	const { massFlow, freeAir, leakedMassFlow, temperatureCorrected } = test.value;
	const uncertainty = test.value.relativeStandardUncertainty;
	return ok({
		text: `${[
			`The compressor delivers ${flows(freeAir).split(' = ')[1] ?? ''} of free air.`,
			list([
				['capacity', flows(freeAir)],
				['mass flow', `${figure(massFlow)} kg/s`],
				['uncertainty', `${percent(uncertainty)} (one standard deviation)`],
				[
					'leaked meanwhile',
					`${figure(leakedMassFlow)} kg/s${leakArea === undefined ? ' (not given, taken as none)' : ', added back'}`
				]
			]),
			'Reckoned with',
			list([
				['volume', `${figure(options.volume)} m³`],
				[
					'pressure',
					`from ${figure(barFromPascal(options.from))} to ${figure(barFromPascal(options.to))} bar gauge`
				],
				['time', `${figure(options.seconds)} s`],
				[
					'receiver air',
					tankTemperature === undefined
						? 'as the reference (not given, taken): some percent high'
						: `${figure(celsiusFromKelvin(tankTemperature))} °C`
				],
				...resolutionLines(options),
				...site.value.taken
			])
		].join('\n')}\n`,
		json: {
			massFlowKgPerS: massFlow,
			freeAirM3PerS: freeAir,
			relativeUncertainty: uncertainty,
			reference: REFERENCES[reference].label,
			leakedMassFlowKgPerS: leakedMassFlow,
			temperatureCorrected,
			inputs: {
				volumeM3: options.volume,
				fromBarGauge: barFromPascal(options.from),
				toBarGauge: barFromPascal(options.to),
				seconds: options.seconds,
				tankTemperatureC: tankTemperature === undefined ? null : celsiusFromKelvin(tankTemperature),
				leakAreaM2: leakArea ?? null,
				gaugeBar: fromSi('pressure', 'bar', fineness.gaugeResolution),
				clockS: fineness.clockResolution,
				volumeUncertainty: fineness.volumeRelativeUncertainty,
				...site.value.inputs,
				assumed: [
					...assumed(written, [
						'tank-temperature',
						'leak-area',
						...Object.keys(RESOLUTION_OPTIONS)
					]),
					...assumedAround(written)
				]
			}
		},
		notes: temperatureCorrected
			? []
			: ['Without the temperature in the receiver the capacity is some percent too high.']
	});
}
