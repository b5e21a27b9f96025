import type { Edge } from '#lib/core/air/edge-coefficient.ts';
import type { Evidence } from '#lib/core/air/evidence.ts';
import { effectiveArea } from '#lib/core/air/evidence.ts';
import { flowThrough } from '#lib/core/air/leak-flow.ts';
import { lineAir } from '#lib/core/air/line-air.ts';
import { freeAirFlow, REFERENCES } from '#lib/core/air/reference-air.ts';
import { barFromPascal, fromSi, millimetreFromMetre } from '#lib/core/units/convert.ts';
import { as, type PascalGauge } from '#lib/core/units/quantity.ts';
import { ok, refuse } from '#lib/core/units/result.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import { may, missing, must, typed, type Given } from '../options.ts';
import { figure, list, oneLine, percent } from '../plain-text.ts';
import { choice, joined, number, quantity } from '../reading.ts';
import {
	around,
	assumed,
	assumedAround,
	blame,
	notGiven,
	REFERENCE_OPTION,
	SITE_OPTIONS
} from '../site-options.ts';

const OPTIONS = {
	hole: may('1/4 in', 'diameter of a round hole', quantity('length')),
	slit: may(
		'12 mm x 0.2 mm',
		'length and width of a slit, in place of --hole',
		joined('x', [2], '12 mm x 0.2 mm', quantity('length'))
	),
	pressure: must('100 psi', 'gauge pressure in the line', quantity('pressure')),
	downstream: may(
		'0 bar',
		'gauge pressure that it blows against; 0 when not given',
		quantity('pressure')
	),
	edge: may(
		'sharp',
		'sharp (0.61), rounded (0.97) or unknown; unknown when not given',
		choice(['sharp', 'rounded', 'unknown'])
	),
	coefficient: may(
		'1',
		'a known discharge coefficient, above 0 up to 1, in place of the edge’s; for --hole',
		number
	),
	...SITE_OPTIONS,
	...REFERENCE_OPTION
};

const JSON_KEYS: readonly JsonKey[] = [
	['effectiveAreaM2', 'discharge coefficient × area, m²'],
	['massFlowKgPerS', 'kg/s'],
	['freeAirM3PerS', 'free air at the reference, m³/s'],
	['reference', 'the state that free air is stated at, in words'],
	['regime', 'choked or subsonic'],
	['coefficient', 'discharge coefficient that was used'],
	['relativeUncertainty', 'standard uncertainty of the effective area, as a share'],
	['inputs', 'what was reckoned with: diameterMm or lengthMm and widthMm (null where not used),'],
	['', 'edge (null with a coefficient of your own), pressureBarGauge, downstreamBarGauge,'],
	['', 'altitudeM (null with a barometer), sitePressureKPa, temperatureC, reference, assumed'],
	['inputs.assumed', 'names of the options that were not given and stand at a taken value']
];

export const flow = command({
	name: 'flow',
	summary: 'what an opening loses at a pressure',
	usage: ['flow --hole "1/4 in" --pressure "100 psi"', 'flow --slit "12 mm x 0.2 mm" …'],
	notes: ['Pressures are gauge; --barometer alone is absolute. METHOD A2 to A8 and A15.'],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

type FlowGiven = Given<typeof OPTIONS>;
const ATMOSPHERIC = as<'Pa gauge'>(0);

function run(given: FlowGiven): Answer<Outcome> {
	const { options, written } = given;
	const evidence = evidenceOf(given);
	if (!evidence.ok) return evidence;
	const site = around(given);
	if (!site.ok) return site;
	const { air, temperature, reference } = site.value;
	const downstream: PascalGauge = options.downstream ?? ATMOSPHERIC;
	const conditions = {
		linePressure: options.pressure,
		lineTemperature: temperature,
		site: air,
		downstreamPressure: downstream
	};
	const about = (code: string) =>
		blame(code, written, {
			'pressure-out-of-range': 'pressure',
			'reading-not-positive': options.hole === undefined ? 'slit' : 'hole',
			'opening-out-of-range': options.hole === undefined ? 'slit' : 'hole'
		});
	const line = lineAir(conditions);
	if (!line.ok) return complain(line.error, about(line.error.code));
	const area = effectiveArea(evidence.value, { ...conditions, soapBands: {} });
	if (!area.ok) return complain(area.error, about(area.error.code));

	const { massFlow, regime } = flowThrough(area.value, line.value);
	const freeAir = freeAirFlow(massFlow, reference, air);
	const coefficient = area.value.choices.find(({ name }) => name === 'discharge-coefficient');
	const { relativeStandardUncertainty: uncertainty, areaM2 } = area.value;
	const units = (['L/s', 'm3/min', 'cfm'] as const).map(
		(unit) => `${figure(fromSi('volumeFlow', unit, freeAir))} ${unit.replace('3', '³')}`
	);
	const barGauge = barFromPascal(options.pressure);
	return ok({
		text: `${[
			`${opening(evidence.value)} at ${oneLine(written['pressure'] ?? '')} gauge loses ${units[0] ?? ''} of free air.`,
			list([
				['effective area', `${figure(fromSi('area', 'mm2', areaM2))} mm²`],
				['mass flow', `${figure(massFlow)} kg/s`],
				['free air', units.join(' = ')],
				['regime', regime],
				['uncertainty', `${percent(uncertainty)} (one standard deviation; mostly the eye’s)`]
			]),
			'Reckoned with',
			list([
				['pressure', `${figure(barGauge)} bar gauge`],
				[
					'blows against',
					`${figure(barFromPascal(downstream))} bar gauge${notGiven(options.downstream)}`
				],
				['coefficient', `${figure(coefficient?.value ?? 1)}, ${coefficientFrom(given)}`],
				...site.value.taken
			])
		].join('\n')}\n`,
		json: {
			effectiveAreaM2: areaM2,
			massFlowKgPerS: massFlow,
			freeAirM3PerS: freeAir,
			reference: REFERENCES[reference].label,
			regime,
			coefficient: coefficient?.value ?? null,
			relativeUncertainty: uncertainty,
			inputs: {
				...sizes(evidence.value),
				edge: options.coefficient === undefined ? (options.edge ?? 'unknown') : null,
				pressureBarGauge: barGauge,
				downstreamBarGauge: barFromPascal(downstream),
				...site.value.inputs,
				assumed: [
					...assumed(written, ['downstream']),
					...(options.coefficient === undefined ? assumed(written, ['edge']) : []),
					...assumedAround(written)
				]
			}
		},
		notes:
			options.coefficient !== undefined && options.edge !== undefined
				? ['The coefficient was given, so the edge is not used.']
				: []
	});
}

function evidenceOf({ options, written }: FlowGiven): Answer<Evidence> {
	const { hole, slit, coefficient } = options;
	const edge: Edge = options.edge ?? 'unknown';
	if (hole !== undefined && slit !== undefined)
		return complain(refuse('option-unusable-with', { option: '--slit', other: '--hole' }).error);
	if (hole !== undefined)
		return ok({ kind: 'hole', diameterMm: millimetreFromMetre(hole), edge, coefficient });
	const [length, width] = slit ?? [];
	if (length === undefined || width === undefined) return complain(missing('hole', '1/4 in'));
	if (coefficient !== undefined)
		return complain(
			refuse('option-unusable-with', { option: '--coefficient', other: '--slit' }).error,
			typed('coefficient', written['coefficient'] ?? '')
		);
	return ok({
		kind: 'slit',
		lengthMm: millimetreFromMetre(length),
		widthMm: millimetreFromMetre(width),
		edge
	});
}

function sizes(evidence: Evidence) {
	return {
		diameterMm: evidence.kind === 'hole' ? evidence.diameterMm : null,
		lengthMm: evidence.kind === 'slit' ? evidence.lengthMm : null,
		widthMm: evidence.kind === 'slit' ? evidence.widthMm : null
	};
}

function opening(evidence: Evidence): string {
	const { diameterMm, lengthMm, widthMm } = sizes(evidence);
	if (diameterMm !== null) return `A hole of ${figure(diameterMm)} mm`;
	return `A slit of ${figure(lengthMm ?? 0)} mm × ${figure(widthMm ?? 0)} mm`;
}

function coefficientFrom({ options }: FlowGiven): string {
	if (options.coefficient !== undefined) return 'as given';
	return `edge ${options.edge ?? 'unknown'}${notGiven(options.edge)}`;
}
