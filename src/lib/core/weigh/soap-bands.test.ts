import { describe, expect, it } from 'vitest';
import { STARTING_SOAP_BANDS } from '../air/evidence/soap-response.ts';
import { apply } from '../survey/apply.ts';
import type { Evidence } from '../survey/evidence-schema.ts';
import { invert } from '../survey/invert.ts';
import { newSurvey } from '../survey/new-survey.ts';
import type { Leak, Survey } from '../survey/schema.ts';
import { assess } from './assess.ts';
import {
	soapBandFits,
	takeBackSoapBands,
	takeSoapBands,
	totalsWithSoapBands
} from './soap-bands.ts';

const ROUND = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };
const RESPONSE = 'foam-spits';

function leak(tag: number, evidence: Evidence): Leak {
	return {
		id: `leak-${tag}`,
		tag,
		part: 'hose',
		hazards: [],
		sightings: {
			[ROUND.id]: { state: 'leaking', seenAt: ROUND.startedAt, pressureBarGauge: 7, evidence }
		},
		mendings: {}
	};
}

const bag = (seconds: number, soapResponse?: string): Evidence => ({
	kind: 'bag',
	volumeL: 10,
	seconds,
	...(soapResponse !== undefined && { soapResponse })
});

function survey(evidence: readonly Evidence[]): Survey {
	const empty = newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, ROUND);
	const leaks = evidence.map((each, index) => leak(index + 1, each));
	return {
		...empty,
		site: { ...empty.site, barometerKPa: 100 },
		supply: { quick: { specificPowerKwPerM3PerMin: 6.5, source: 'test' } },
		prices: { pricePerKwh: 0.2 },
		sections: {
			'section-a': { id: 'section-a', name: 'A', pressurisedHoursPerYear: 8000 }
		},
		leaks: Object.fromEntries(leaks.map((each) => [each.id, { ...each, sectionId: 'section-a' }]))
	};
}

function changed(before: Survey, changes: ReturnType<typeof takeSoapBands>): Survey {
	const next = apply(before, { kind: 'set-starting-values', changes });
	if (!next.ok) throw new Error(next.error.code);
	return next.value;
}
const fitOf = (of: Survey) => soapBandFits(of).fits.find(({ response }) => response === RESPONSE);

const SOAP: Evidence = { kind: 'soap-response', response: RESPONSE };
/** 10 L in 8 s is 1.25 L/s, a hole of about 1 mm at 7 bar: far above the band of 0.2 to 0.5 mm. */
const MEASURED = [bag(8, RESPONSE), bag(10, RESPONSE), bag(12, RESPONSE)];

describe('soap bands of this site', () => {
	it('[W13] a leak counts when its soap and its flow are known, and not otherwise', () => {
		const of = survey([...MEASURED, bag(5), SOAP, bag(9, 'film-tears')]);
		const leaks = soapBandFits(of).fits.filter((fit) => fit.leaks > 0);
		expect(leaks.map(({ response, leaks: count }) => [response, count])).toEqual([
			[RESPONSE, 3],
			['film-tears', 1]
		]);
		expect(leaks.map(({ refitted }) => refitted !== undefined)).toEqual([true, false]);
	});

	it('[W13] a leak that was measured in two rounds counts once, by the newest', () => {
		const of = survey(MEASURED);
		const again = { id: 'round-2', name: 'Second', startedAt: '2026-06-05T08:00:00Z' };
		const first = of.leaks['leak-1'];
		if (!first) throw new Error('no leak');
		const seen = {
			state: 'leaking' as const,
			seenAt: again.startedAt,
			pressureBarGauge: 7,
			evidence: bag(1, 'film-tears')
		};
		const both = {
			...of,
			rounds: { ...of.rounds, [again.id]: again },
			leaks: {
				...of.leaks,
				[first.id]: { ...first, sightings: { ...first.sightings, [again.id]: seen } }
			}
		};
		expect(
			soapBandFits(both).fits.flatMap((fit) => (fit.leaks > 0 ? [[fit.response, fit.leaks]] : []))
		).toEqual([
			[RESPONSE, 2],
			['film-tears', 1]
		]);
	});

	it('[W13] the band moves towards the measured holes; taken over, it is what the leaks weigh by', () => {
		const of = survey([...MEASURED, SOAP]);
		const fit = fitOf(of);
		const { lowMm, highMm } = STARTING_SOAP_BANDS[RESPONSE];
		expect(fit?.today).toEqual({ lowMm, highMm });
		expect(fit?.refitted?.lowMm).toBeGreaterThan(lowMm);
		expect(fit?.refitted?.highMm).toBeGreaterThan(highMm);
		const told = totalsWithSoapBands(of, ROUND.id);
		const taken = changed(of, takeSoapBands(of));
		expect(told.today).toEqual(assess(of, ROUND.id).totals);
		expect(told.then).toEqual(assess(taken, ROUND.id).totals);
		expect(told.then.freeAirM3PerS).toBeGreaterThan(told.today.freeAirM3PerS);
	});

	it('[W13] derived: taken over and fitted anew it stays where it is, since no leak counts twice', () => {
		const of = survey(MEASURED);
		const taken = changed(of, takeSoapBands(of));
		expect(fitOf(taken)).toEqual({
			...fitOf(of),
			today: fitOf(of)?.refitted,
			taken: { before: fitOf(of)?.today, leaks: 3 }
		});
		expect(takeSoapBands(taken)).toEqual(takeSoapBands(of));
	});

	it('[W13] taken back, and undone, everything is as it was', () => {
		const own = {
			[RESPONSE]: { lowMm: 0.3, highMm: 0.9 },
			'film-tears': { lowMm: 0.5, highMm: 2 }
		};
		for (const soapBands of [{}, own]) {
			const base = survey(MEASURED);
			const of = { ...base, startingValues: { ...base.startingValues, soapBands } };
			const body = { kind: 'set-starting-values' as const, changes: takeSoapBands(of) };
			const taken = changed(of, body.changes);
			expect(taken.startingValues).not.toEqual(of.startingValues);
			expect(changed(taken, takeBackSoapBands(taken)).startingValues).toEqual(of.startingValues);
			const back = invert(of, body);
			if (!back.ok) throw new Error(back.error.code);
			const undone = apply(taken, back.value);
			expect(undone.ok && undone.value.startingValues).toEqual(of.startingValues);
		}
	});

	it('[W13] a band that was set by hand after the re-fit is left as it is', () => {
		const of = survey(MEASURED);
		const taken = changed(of, takeSoapBands(of));
		const byHand = { ...taken.startingValues.soapBands, [RESPONSE]: { lowMm: 1, highMm: 2 } };
		const set = {
			...taken,
			startingValues: { ...taken.startingValues, soapBands: byHand }
		};
		expect(fitOf(set)?.taken).toBeUndefined();
		expect(takeBackSoapBands(set).soapBands).toEqual(byHand);
	});

	it('[W13] without the pressure of a leak or of the site nothing is fitted', () => {
		const of = survey(MEASURED);
		const { barometerKPa: _, ...site } = of.site;
		expect(fitOf({ ...of, site })?.leaks).toBe(0);
	});
});
