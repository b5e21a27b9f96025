import { afterEach, describe, expect, it } from 'vitest';
import { EDGE_COEFFICIENTS, type Edge } from '#lib/core/air/edge-coefficient.ts';
import { effectiveArea, type Evidence } from '#lib/core/air/evidence.ts';
import { REFERENCES } from '#lib/core/air/reference-air.ts';
import { STARTING_CONTROL } from '#lib/core/supply/starting-values.ts';
import {
	STARTING_LOAD_SHARE,
	STARTING_PURGE_SHARE,
	STARTING_RECEIVER_MIN,
	startingSpecificPower
} from '#lib/core/survey/starting-station.ts';
import { as } from '#lib/core/units/quantity.ts';
import { speak } from './language.ts';
import { sourceWords } from './sources.ts';

afterEach(() => speak('en'));

const edges = Object.keys(EDGE_COEFFICIENTS) as Edge[];
const readings: readonly Evidence[] = [
	...edges.map((edge) => ({ kind: 'hole', diameterMm: 2, edge }) as const),
	{ kind: 'hole', diameterMm: 2, edge: 'sharp', coefficient: 0.7 },
	{ kind: 'slit', lengthMm: 10, widthMm: 0.2, edge: 'sharp' },
	{ kind: 'thread-gap', threadDiameterMm: 20, gapMm: 0.05, edge: 'sharp' },
	{ kind: 'bubble-growth', bubbleDiameterMm: 20, seconds: 10 },
	{ kind: 'soap-response', response: 'foam-spits' },
	{ kind: 'bag', volumeL: 5, seconds: 20 },
	...(['iso-1217', 'anr', 'normal', 'site'] as const).map(
		(reference) => ({ kind: 'meter', flowLPerS: 2, reference }) as const
	),
	{ kind: 'catalogue', cDm3PerSBar: 1, b: 0.3 }
] as const;

function citedOf(evidence: Evidence, soapBands = {}): string[] {
	const found = effectiveArea(evidence, {
		site: { pressure: as<'Pa absolute'>(100_000), temperature: as<'K'>(293.15) },
		linePressure: as<'Pa gauge'>(600_000),
		lineTemperature: as<'K'>(293.15),
		soapBands
	});
	if (!found.ok) throw new Error(`${evidence.kind}: ${found.error.code}`);
	return found.value.choices.map(({ source }) => source);
}

/** Whatever the core cites beside a value that it shows. */
const cited = [
	...readings.flatMap((evidence) => citedOf(evidence)),
	...citedOf(
		{ kind: 'soap-response', response: 'foam-spits' },
		{ 'foam-spits': { lowMm: 0.25, highMm: 0.5 } }
	),
	...Object.values(REFERENCES).flatMap(({ label, source }) => [label, source]),
	...Object.values(STARTING_CONTROL).map(({ source }) => source),
	...[STARTING_LOAD_SHARE, STARTING_PURGE_SHARE, STARTING_RECEIVER_MIN].map(({ source }) => source),
	startingSpecificPower(7)?.source ?? '',
	startingSpecificPower(6.5)?.source ?? '',
	'not read: taken as that of the reference',
	'US DOE / Compressed Air Challenge sourcebook, as quoted widely'
];

describe('where a value comes from', () => {
	it('is in English as the core cites it', () => {
		for (const source of cited) expect(sourceWords(source)).toBe(source);
	});

	it('is in German for a German reader: no passage of the core is left in English', async () => {
		await speak('de', 'de-DE');
		for (const source of cited) {
			const german = sourceWords(source).replaceAll(
				/Power characteristics [a-z ]+|Compressor capacity controls/g,
				''
			);
			expect(german).not.toBe(source);
			expect(german, source).not.toMatch(
				/\b(the|of|and|with|from|not|our|starting|judged|between|site|inlet|measured|handbook|dry)\b/i
			);
		}
		expect(sourceWords(startingSpecificPower(6.5)?.source ?? '')).toContain('bei 6,5 bar');
		expect(sourceWords('our starting value: nine in ten between 0.25 and 0.5 mm')).toBe(
			'unser Startwert: neun von zehn zwischen 0,25 und 0,5 mm'
		);
	});

	it('stays as it is where a person wrote it', async () => {
		await speak('de', 'de-DE');
		for (const own of ['the nameplate, read in May', '', 'Rechnung 12/2025'])
			expect(sourceWords(own)).toBe(own);
	});
});
