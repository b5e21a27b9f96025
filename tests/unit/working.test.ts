import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { TestConditions } from '#lib/core/air/system-test/readings.ts';
import { latestRound } from '#lib/core/survey/leak-state.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { gaugeFromBar, kelvinFromCelsius } from '#lib/core/units/convert.ts';
import { as } from '#lib/core/units/quantity.ts';
import type { Result } from '#lib/core/units/result.ts';
import { assess, mendedLeaks } from '#lib/core/weigh/assess.ts';
import { workingOfLeak, workingOfTotals } from '#lib/core/weigh/working.ts';
import {
	workingOfBleedDown,
	workingOfBleedSeries,
	workingOfLoadTime,
	workingOfPumpUp
} from '#lib/core/weigh/working/system-test.ts';
import type { QuantityId, Working } from '#lib/core/weigh/working/tree.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { Inputs, RULES } from './recompute.ts';

const folder = new URL('../../survey-examples/', import.meta.url);
async function open(name: string): Promise<Survey> {
	const opened = await readSurveyFile(new Uint8Array(readFileSync(new URL(name, folder))));
	if (!opened.ok) throw new Error(opened.error.code);
	return opened.value.survey;
}
const demo = await open('ceramics-works.airtally.zip');

function roundOf(survey: Survey): string {
	const round = latestRound(survey);
	if (!round) throw new Error('no round');
	return round.id;
}

function must<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

/** What one may look up as it is: no rule of plain arithmetic makes it from its inputs. */
const NOT_PLAIN: readonly QuantityId[] = [
	'delivered-with-leaks',
	'delivered-without-leaks',
	'machine-power',
	'machine-flow',
	'work-factor',
	'bleed-integral'
];

/** Every node must follow from its inputs; returns the quantities that were recomputed. */
function recompute(node: Working, seen = new Set<QuantityId>()): Set<QuantityId> {
	for (const part of [...node.inputs, ...(node.beside ?? [])]) recompute(part, seen);
	if (node.inputs.length === 0) {
		expect(node.origin !== undefined || node.method !== undefined, node.id).toBe(true);
		return seen;
	}
	const rule = RULES[node.id];
	if (!rule) {
		expect(NOT_PLAIN, node.id).toContain(node.id);
		return seen;
	}
	const value = rule(new Inputs(node.inputs));
	// A coin may move where a total is shared out to the cent.
	if (node.unit === 'minor') expect(Math.abs(node.value - value), node.id).toBeLessThanOrEqual(1);
	else
		expect(Math.abs(node.value - value) / Math.max(1e-30, Math.abs(value)), node.id).toBeLessThan(
			1e-7
		);
	seen.add(node.id);
	return seen;
}

/** As the demo, with everything that money can depend on. */
const dear: Survey = {
	...demo,
	site: { ...demo.site, reference: 'anr' },
	prices: {
		...demo.prices,
		periodPrices: [{ id: 'price-night', name: 'Night', pricePerKwh: 0.11 }],
		demandCharge: { pricePerKw: 9, per: 'month' },
		costPerM3: 0.001
	},
	supply: {
		...demo.supply,
		quick: { specificPowerKwPerM3PerMin: 6.9, source: 'a bill' },
		station: demo.supply.station && {
			...demo.supply.station,
			demandIs: 'process',
			purge: { kind: 'share-of-flow', fraction: 0.1 },
			heatRecovery: {
				recoveredFraction: 0.7,
				usefulFraction: 0.4,
				fuelPricePerKwh: 0.06,
				boilerEfficiency: 0.9
			},
			schedule: {
				...demo.supply.station.schedule,
				periods: demo.supply.station.schedule.periods.map((period) =>
					period.id === 'period-night' ? { ...period, priceId: 'price-night' } : period
				)
			}
		}
	}
};
const { station: _station, ...noStation } = demo.supply;
const quickOnly: Survey = {
	...dear,
	supply: { ...noStation, quick: { specificPowerKwPerM3PerMin: 6.9, source: '' } }
};
const lowSet: Survey = {
	...demo,
	supply: {
		...demo.supply,
		station: demo.supply.station && {
			...demo.supply.station,
			schedule: {
				...demo.supply.station.schedule,
				closed: { state: 'on', demandM3PerMin: 5.2, setPressureBarGauge: 5 }
			}
		}
	}
};
const SURVEYS: readonly [name: string, survey: Survey][] = [
	['the demo', demo],
	['the demo with every kind of cost', dear],
	['the demo by the quick method', quickOnly],
	['the demo at a low pressure while closed', lowSet],
	[
		'the demo scaled to a system test',
		{
			...demo,
			startingValues: {
				...demo.startingValues,
				scaling: { factor: 0.8, systemTestId: 'test-1' }
			}
		}
	],
	['three leaks', await open('three-leaks.json')]
];

describe.each(SURVEYS)('the working of %s', (_name, survey) => {
	const round = roundOf(survey);

	it('[W5] starts, for every leak, from the very figure of the assessment', () => {
		const leaks = [...assess(survey, round).leaks, ...mendedLeaks(survey, round)];
		expect(leaks.length).toBeGreaterThan(2);
		for (const leak of leaks) {
			const working = must(workingOfLeak(survey, round, leak.leakId));
			expect(working.id).toBe('cost-per-year');
			expect(working.value, `tag ${leak.tag}`).toBe(leak.costMinorPerYear);
		}
	});

	it('[W2] starts, for the totals, from the very figures of the assessment', () => {
		const { totals, quickTotals } = assess(survey, round);
		const { cost, energy, air, carbon } = must(workingOfTotals(survey, round));
		expect(cost?.value).toBe(totals.costMinorPerYear);
		expect(energy?.value).toBe(totals.energyKwhPerYear);
		expect(air.value).toBeCloseTo(totals.freeAirM3PerS, 12);
		expect(carbon?.value).toBe(totals.co2KgPerYear);
		expect(cost?.beside?.[0]?.value).toBe(quickTotals?.costMinorPerYear);
		expect(energy?.beside?.[0]?.value).toBe(quickTotals?.energyKwhPerYear);
	});

	it('[W4] derived: each step follows from its inputs in plain arithmetic', () => {
		const seen = new Set<QuantityId>();
		for (const { leakId } of assess(survey, round).leaks)
			recompute(must(workingOfLeak(survey, round, leakId)), seen);
		const { cost, energy, air, carbon } = must(workingOfTotals(survey, round));
		for (const tree of [cost, energy, air, carbon]) if (tree) recompute(tree, seen);
		const always: QuantityId[] = [
			'cost-before-rounding',
			'energy-cost',
			'mass-flow',
			'line-pressure'
		];
		expect([...seen]).toEqual(expect.arrayContaining(always));
	});
});

describe('what a working shows', () => {
	it('[A14] every kind of evidence of the demo, down to what was read', () => {
		const kinds = new Set<string>();
		for (const leak of Object.values(demo.leaks)) {
			const result = workingOfLeak(demo, roundOf(demo), leak.id);
			if (!result.ok) continue;
			const evidence = leak.sightings[roundOf(demo)]?.evidence;
			const nodes = flat(result.value);
			expect(
				nodes.some(({ id }) => id === 'effective-area'),
				`tag ${leak.tag}`
			).toBe(true);
			if (evidence && evidence.kind !== 'soap-response')
				expect(nodes.some(({ origin }) => origin?.kind === 'reading')).toBe(true);
			kinds.add(evidence?.kind ?? '');
		}
		expect(kinds.size).toBe(8);
	});

	it('[A10] a soap response names its band as our starting value, or as the site’s own', () => {
		const soap = Object.values(demo.leaks).find(
			(leak) => leak.sightings[roundOf(demo)]?.evidence?.kind === 'soap-response'
		);
		const bandOf = (survey: Survey) =>
			flat(must(workingOfLeak(survey, roundOf(demo), soap?.id ?? ''))).find(
				({ id }) => id === 'band-low'
			);
		expect(bandOf(demo)?.origin).toEqual({ kind: 'cited', source: 'our starting value' });
		const evidence = soap?.sightings[roundOf(demo)]?.evidence;
		const response = evidence?.kind === 'soap-response' ? evidence.response : '';
		const own = { soapBands: { [response]: { lowMm: 0.21, highMm: 0.7 } } };
		expect(bandOf({ ...demo, startingValues: own })?.value).toBe(0.21);
		expect(bandOf({ ...demo, startingValues: own })?.origin).toEqual({
			kind: 'cited',
			source: "the site's own band"
		});
	});

	it('[W1] a leak that is not in the round, or cannot be weighed, is refused by name', () => {
		const round = roundOf(demo);
		const refused = (survey: Survey, id: string) => {
			const result = workingOfLeak(survey, round, id);
			return result.ok ? 'accepted' : result.error.code;
		};
		expect(refused(demo, 'leak-nowhere')).toBe('leak-not-in-round');
		const [first] = assess(demo, round).leaks;
		const leak = demo.leaks[first?.leakId ?? ''];
		const sighting = leak?.sightings[round];
		if (!leak || !sighting) throw new Error('no leak');
		const { evidence: _evidence, ...bare } = sighting;
		const unsized = { ...leak, sightings: { ...leak.sightings, [round]: bare } };
		expect(refused({ ...demo, leaks: { ...demo.leaks, [leak.id]: unsized } }, leak.id)).toBe(
			'evidence-missing'
		);
	});

	it('[W2] without prices it starts from energy, without a supply from air', () => {
		const round = roundOf(demo);
		const id = assess(demo, round).leaks[0]?.leakId ?? '';
		expect(must(workingOfLeak({ ...demo, prices: {} }, round, id)).id).toBe('energy-per-year');
		const bare = { ...demo, prices: {}, supply: { setPressureBarGauge: 7 } };
		expect(must(workingOfLeak(bare, round, id)).id).toBe('free-air-flow');
	});

	it('[W5] is plain data', () => {
		const { cost } = must(workingOfTotals(dear, roundOf(dear)));
		expect(JSON.parse(JSON.stringify(cost))).toEqual(cost);
	});
});

function flat(node: Working): Working[] {
	return [node, ...[...node.inputs, ...(node.beside ?? [])].flatMap(flat)];
}

describe('the working of a system test', () => {
	const site = { pressure: as<'Pa absolute'>(99_000), temperature: kelvinFromCelsius(18) };
	const conditions: TestConditions = {
		site,
		lineTemperature: kelvinFromCelsius(22),
		setPressure: gaugeFromBar(7),
		reference: 'iso-1217'
	};
	const fine = {
		gaugeResolution: 5000,
		clockResolution: as<'s'>(1),
		volumeRelativeUncertainty: 0.05
	};
	const volume = as<'m³'>(8);
	const duration = as<'s'>(600);

	it('[T1] load time: each step follows from its inputs (derived)', () => {
		const tree = must(
			workingOfLoadTime(
				{
					cycles: [
						{ loaded: as<'s'>(60), unloaded: as<'s'>(200) },
						{ loaded: as<'s'>(64), unloaded: as<'s'>(190), off: as<'s'>(10) }
					],
					capacity: as<'m³/s'>(0.12),
					capacityRelativeUncertainty: 0.05,
					meanPressure: gaugeFromBar(7.3),
					clockResolution: as<'s'>(1)
				},
				conditions
			)
		);
		expect([...recompute(tree)]).toContain('flux-ratio');
		// By hand: 0.12·124/524·(7e5 + 99 000)/(7.3e5 + 99 000).
		expect(tree.value).toBeCloseTo((0.12 * 124 * 799) / 524 / 829, 12);
	});

	it.each([
		['choked', 6, 'T3'],
		['not choked at the end', 0.4, 'T5']
	])('[T3] bleed-down, %s: each step follows, the handbook beside (derived)', (_, to, rule) => {
		const tree = must(
			workingOfBleedDown(
				{
					...fine,
					volume,
					from: gaugeFromBar(7),
					to: gaugeFromBar(to),
					duration,
					endTemperature: kelvinFromCelsius(20)
				},
				conditions
			)
		);
		recompute(tree);
		expect(tree.inputs[0]?.method).toBe(rule);
		const handbook = tree.beside?.[0];
		expect(handbook?.method).toBe('T4');
		expect(handbook?.value).toBeCloseTo(((8 * (7 - to) * 1e5) / (600 * 99_000)) * 1.25, 12);
	});

	it('[T6] a series: by the opening or by the line, whichever fits (derived)', () => {
		const series = (bars: readonly number[]) => ({
			...fine,
			volume,
			readings: bars.map((bar, index) => ({ at: as<'s'>(index * 60), pressure: gaugeFromBar(bar) }))
		});
		const byOpening = must(workingOfBleedSeries(series([7, 6.2, 5.5, 4.9, 4.35]), conditions));
		expect([...recompute(byOpening)]).toContain('flux-at-set');
		const falling = [7, 5.5, 4.38, 3.52, 2.88, 2.4, 2.04, 1.77, 1.56];
		const byLine = must(workingOfBleedSeries(series(falling), conditions));
		recompute(byLine);
		expect(flat(byLine).map(({ id }) => id)).toContain('line-slope');
	});

	it('[T8] pump-up: each step follows from its inputs (derived)', () => {
		const readings = { ...fine, volume, duration, from: gaugeFromBar(0), to: gaugeFromBar(7) };
		const cold = must(workingOfPumpUp(readings, conditions));
		recompute(cold);
		// By hand: V·Δp/(p_ref·t) at the reference's own temperature.
		expect(cold.value).toBeCloseTo((8 * 7) / 600, 12);
		const warm = must(
			workingOfPumpUp({ ...readings, tankTemperature: kelvinFromCelsius(45) }, conditions)
		);
		recompute(warm);
		expect(warm.value).toBeCloseTo(((8 * 7) / 600) * (293.15 / 318.15), 12);
	});
});
