import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeExamples } from '#examples/make.ts';
import { compareRounds } from '#lib/core/prove/compare.ts';
import { comparisonSpread } from '#lib/core/prove/intervals.ts';
import { measuredSaving } from '#lib/core/prove/measured.ts';
import { startRound } from '#lib/core/prove/new-round.ts';
import { payback } from '#lib/core/prove/payback.ts';
import { apply } from '#lib/core/survey/apply.ts';
import { leakState, leaksInOrder, latestRound } from '#lib/core/survey/leak-state.ts';
import { sectionAt } from '#lib/core/survey/plan-geometry.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { assess, MENDED, mendedLeaks, WASTING } from '#lib/core/weigh/assess.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';

const folder = new URL('../../survey-examples/', import.meta.url);
const bytesOf = (name: string) => new Uint8Array(readFileSync(new URL(name, folder)));
const readMe = readFileSync(new URL('README.md', folder), 'utf8');

async function open(name: string) {
	const opened = await readSurveyFile(bytesOf(name));
	if (!opened.ok) throw new Error(`${name}: ${opened.error.code}`);
	return opened.value;
}

function roundOf(survey: Survey): string {
	const round = latestRound(survey);
	if (!round) throw new Error('the survey has no round');
	return round.id;
}

/** As the examples' README prints numbers: commas between thousands. */
function printed(value: number, digits: number): string {
	const [whole = '', share] = value.toFixed(digits).split('.');
	const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
	return share === undefined ? grouped : `${grouped}.${share}`;
}

describe('the ceramics works', () => {
	it('is, byte for byte, what its data make', async () => {
		const made = await makeExamples();
		expect([...made.keys()]).toEqual([
			'ceramics-works-plan.svg',
			'ceramics-works-upper-floor.pdf',
			'ceramics-works.airtally.zip',
			'ceramics-works-autumn.airtally.zip'
		]);
		for (const [name, bytes] of made)
			expect(Buffer.compare(bytes, bytesOf(name)), `${name}: run npm run examples`).toBe(0);
	});

	it('[W2][V2] a mended leak costs the same on the list of repairs and in the proof', async () => {
		const { survey } = await open('ceramics-works.airtally.zip');
		const before = roundOf(survey);
		const next = { id: 'round-next', name: 'Next', startedAt: '2026-10-01T08:00:00Z' };
		const later = startRound(survey, next).reduce((now, body) => {
			const done = apply(now, body);
			if (!done.ok) throw new Error(done.error.code);
			return done.value;
		}, survey);
		const compared = compareRounds(later, before, next.id);
		if (!compared.ok) throw new Error(compared.error.code);
		const proved = new Map(compared.value.leaks.map((leak) => [leak.tag, leak.before]));
		const mended = mendedLeaks(survey, before);
		expect(mended.length).toBeGreaterThan(3);
		for (const { tag, costMinorPerYear = NaN } of mended)
			expect(proved.get(tag)?.costMinorPerYear, `tag ${tag}`).toBeCloseTo(costMinorPerYear, -1);
	});

	it('opens with nothing set aside, in conflict or missing', async () => {
		const { quarantined, conflicts, missingBlobs, blobs } = await open(
			'ceramics-works.airtally.zip'
		);
		expect({ quarantined, conflicts, missingBlobs }).toEqual({
			quarantined: [],
			conflicts: [],
			missingBlobs: []
		});
		expect(blobs.map(({ mediaType }) => mediaType).sort()).toEqual([
			'application/pdf',
			'image/jpeg',
			'image/svg+xml'
		]);
	});

	it('has enough leaks and sections to make ranking and planning interesting', async () => {
		const { survey } = await open('ceramics-works.airtally.zip');
		const round = roundOf(survey);
		const leaks = leaksInOrder(survey);
		const states = leaks.map((leak) => leakState(leak, round));
		const count = (state: string) => states.filter((each) => each === state).length;
		expect(leaks.map(({ tag }) => tag)).toEqual(leaks.map((_, index) => index + 1));
		expect(new Set(leaks.map(({ sectionId }) => sectionId)).size).toBe(8);
		expect({
			leaking: count('leaking'),
			mended: count('mended'),
			tight: count('tight')
		}).toEqual({ leaking: 41, mended: 1, tight: 4 });
		expect(new Set(leaks.map((leak) => leak.sightings[round]?.evidence?.kind)).size).toBe(8);
	});

	it('has every pin on the plan, and every leak weighed', async () => {
		const { survey } = await open('ceramics-works.airtally.zip');
		for (const leak of leaksInOrder(survey)) {
			expect(survey.plans[leak.planId ?? ''], `tag ${leak.tag}`).toBeDefined();
			expect(leak.at, `tag ${leak.tag}`).toBeDefined();
			if (leak.at && leak.planId)
				expect(sectionAt(survey, leak.planId, leak.at), `tag ${leak.tag}`).toBe(leak.sectionId);
		}
		const { leaks, unweighed, missing } = assess(survey, roundOf(survey), [...WASTING, ...MENDED]);
		expect(leaks).toHaveLength(46);
		expect({ unweighed, missing }).toEqual({ unweighed: [], missing: [] });
	});

	// Expected: plain arithmetic on the readings (derived); the bounds are common practice.
	it('loses a share of its air that a practitioner would believe, most of it found', async () => {
		const { survey } = await open('ceramics-works.airtally.zip');
		const found = assess(survey, roundOf(survey), [...WASTING, ...MENDED]);
		const [test] = Object.values(survey.systemTests);
		if (test?.kind !== 'load-time') throw new Error('no load-time test');
		const loaded = test.cycles.reduce((sum, { loadedS }) => sum + loadedS, 0);
		const all = test.cycles.reduce((sum, cycle) => sum + cycle.loadedS + cycle.unloadedS, 0);
		const measured = (test.capacityM3PerMin * loaded) / all;
		const capacity = (survey.supply.station?.compressors ?? []).reduce(
			(sum, { capacityM3PerMin }) => sum + capacityM3PerMin,
			0
		);
		const foundM3PerMin = found.totals.freeAirM3PerS * 60;
		expect(capacity).toBeCloseTo(22.2, 9);
		for (const leak of [measured, foundM3PerMin]) {
			expect(leak / capacity).toBeGreaterThan(0.15);
			expect(leak / capacity).toBeLessThan(0.25);
		}
		expect(foundM3PerMin / measured).toBeGreaterThan(0.65);
		expect(foundM3PerMin / measured).toBeLessThan(0.8);
		expect(readMe).toContain(`loaded ${loaded} s of ${printed(all, 0)} s`);
		expect(readMe).toContain(`= ${measured.toFixed(2)} m³/min`);
		expect(readMe).toContain(
			`46 leaks found, ${(foundM3PerMin / 0.06).toFixed(1)} L/s of free air (ISO 1217), ` +
				`${foundM3PerMin.toFixed(2)} m³/min: ${((100 * foundM3PerMin) / capacity).toFixed(0)} %`
		);
		expect(readMe).toContain(`about ${((100 * foundM3PerMin) / measured).toFixed(0)} % of it`);
	});

	// Expected: the quick method by plain arithmetic on flow and hours (derived).
	it('comes by the quick method to what its README prints', async () => {
		const { survey } = await open('ceramics-works.airtally.zip');
		const { leaks, totals } = assess(survey, roundOf(survey));
		const kwh = leaks.reduce(
			(sum, { freeAirM3PerS, hoursPerYear }) => sum + freeAirM3PerS * 60 * 6.9 * hoursPerYear,
			0
		);
		expect(readMe).toContain(`41 leak now, ${(totals.freeAirM3PerS * 1000).toFixed(1)} L/s`);
		const sums = `${printed(kwh / 1000, 0)} MWh, ${printed(Math.round((kwh * 0.19) / 1000) * 1000, 0)} EUR and ${printed((kwh * 0.32) / 1000, 0)} t of CO₂`;
		expect(readMe.replaceAll(/\s+/g, ' ')).toContain(sums);
	});
});

describe('the ceramics works in autumn', () => {
	const compared = async () => {
		const { survey } = await open('ceramics-works-autumn.airtally.zip');
		const found = compareRounds(survey, 'round-spring-2026', 'round-autumn-2026');
		if (!found.ok) throw new Error(found.error.code);
		return { survey, comparison: found.value };
	};

	it('goes on where the spring file ends, so that the two merge', async () => {
		const spring = await open('ceramics-works.airtally.zip');
		const autumn = await open('ceramics-works-autumn.airtally.zip');
		expect(autumn.commands.slice(0, spring.commands.length)).toEqual(spring.commands);
		expect(autumn.survey.site.id).toBe(spring.survey.site.id);
		const { quarantined, conflicts, missingBlobs } = autumn;
		expect([quarantined, conflicts, missingBlobs]).toEqual([[], [], []]);
	});

	it('[V1] tells of something that came back, something new and something not reached', async () => {
		const { comparison } = await compared();
		expect(comparison.counts).toEqual({
			held: 15,
			claimed: 1,
			still: 26,
			'not-reached': 2,
			again: 2,
			new: 3
		});
		expect(comparison.failedClaims).toBe(1);
		expect(comparison.notCompared).toEqual([]);
		expect(comparison.routine.map(({ what }) => what)).toEqual(['tariff']);
	});

	it('[V3][V7] comes to what its README prints, and the system test agrees', async () => {
		const { survey, comparison } = await compared();
		const { terms } = comparison;
		const euro = (minor: number | undefined) => printed((minor ?? NaN) / 100, 0);
		const of = (term: keyof typeof terms) => euro(terms[term].costMinorPerYear);
		const flowing = readMe.replaceAll(/\s+/g, ' ');
		expect(flowing).toContain(
			`${of('before')} − ${of('mended')} + ${of('again')} + ${of('new')} − ${euro(-(terms.changed.costMinorPerYear ?? NaN))} = ${of('after')} EUR a year`
		);
		expect(flowing).toContain(`proved by soap is ${of('held')} EUR a year`);
		const spread = comparisonSpread(survey, comparison);
		if (!spread.ok) throw new Error(spread.error.code);
		const { spent } = payback(survey, comparison, spread.value) ?? {};
		expect(flowing).toContain(`cost ${euro(spent?.minor)} EUR`);
		expect([spent?.repairs, spent?.priced]).toEqual([20, 19]);
		const measured = measuredSaving(survey, comparison, spread.value);
		expect(measured.ok ? measured.value.agreement : measured.error.code).toBe('agree');
	});
});

describe('three leaks, worked by hand', () => {
	// Expected: the README's lines in plain arithmetic, with no code of ours (derived).
	const density = 100_000 / (287.05 * 293.15);
	const choked = Math.sqrt(1.4 / 287.05) * (2 / 2.4) ** 3;
	const throughHole = (diameterM: number, pascal: number) =>
		(choked * 0.97 * (Math.PI / 4) * diameterM ** 2 * pascal) / Math.sqrt(293.15);
	const massFlow = {
		1: throughHole(0.001, 800_000),
		2: throughHole(0.002, 700_000),
		3: 0.0025 * density
	};

	it('opens with nothing set aside', async () => {
		const { quarantined, conflicts, survey } = await open('three-leaks.json');
		expect({ quarantined, conflicts }).toEqual({ quarantined: [], conflicts: [] });
		expect(leaksInOrder(survey)).toHaveLength(3);
	});

	it('[A3][A5][W1] each flow is what the hand comes to', async () => {
		const { survey } = await open('three-leaks.json');
		const { leaks } = assess(survey, roundOf(survey));
		for (const [tag, expected] of Object.entries(massFlow)) {
			const leak = leaks.find((each) => each.tag === Number(tag));
			expect(leak?.massFlowKgPerS).toBeCloseTo(expected, 12);
			expect(leak?.freeAirM3PerS).toBeCloseTo(expected / density, 12);
		}
		expect(leaks.map(({ tag }) => tag)).toEqual([2, 3, 1]);
	});

	it('[W2][S1] the totals are what the hand comes to, and what the README prints', async () => {
		const { survey } = await open('three-leaks.json');
		const { totals, method } = assess(survey, roundOf(survey));
		const kilograms = massFlow[1] + massFlow[2] + massFlow[3];
		const kwh = (kilograms / density) * 60 * 6.5 * 8000;
		expect(method).toBe('quick');
		expect(totals.massFlowKgPerS).toBeCloseTo(kilograms, 12);
		expect(totals.energyKwhPerYear).toBeCloseTo(kwh, 6);
		expect(totals.costMinorPerYear).toBe(Math.round(kwh * 20));
		expect(totals.co2KgPerYear).toBeCloseTo(kwh * 0.4, 6);
		const sums = `${printed(kwh, 1)} kWh, ${printed(kwh * 0.2, 2)} EUR and ${printed(kwh * 0.4, 1)} kg`;
		expect(readMe.replaceAll(/\s+/g, ' ')).toContain(`${kilograms.toFixed(7)} kg/s, ${sums}`);
	});
});
