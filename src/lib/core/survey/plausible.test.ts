import { describe, expect, test } from 'vitest';
import { apply } from './apply.ts';
import { checkSurvey } from './checks.ts';
import type { Evidence } from './evidence-schema.ts';
import { newSurvey } from './new-survey.ts';
import { largeSize, likelyPressures, oddPrice } from './plausible.ts';
import type { Survey } from './schema.ts';

describe('a pressure that no works has', () => {
	test.each([
		[0.4, []],
		[7, []],
		[16, []],
		// 65 typed for 6.5; as psi it would be 4.48 bar (derived: 65 / 14.5038)
		[65, [6.5, 4.48]],
		[90, [9, 6.21]],
		// 100 psi typed as bar (derived: 100 / 14.5038 = 6.895)
		[100, [10, 6.89]],
		[700, []]
	])('%s bar: probably meant %s', (bar, likely) => {
		expect(likelyPressures(bar)).toEqual(likely);
	});
});

describe('a size that nobody would have left', () => {
	const edge = 'unknown';
	test.each<[Evidence, number[]]>([
		[{ kind: 'hole', diameterMm: 1.5, edge }, []],
		[{ kind: 'hole', diameterMm: 15, edge }, []],
		[{ kind: 'hole', diameterMm: 20, edge }, [2]],
		// 40 × 5 mm is as much as a hole of 16 mm (derived: √(4 × 200 / π))
		[{ kind: 'slit', lengthMm: 40, widthMm: 5, edge }, [0.5]],
		[{ kind: 'slit', lengthMm: 40, widthMm: 0.5, edge }, []],
		[{ kind: 'thread-gap', threadDiameterMm: 20, gapMm: 4, edge }, [0.4]],
		[{ kind: 'thread-gap', threadDiameterMm: 20, gapMm: 0.1, edge }, []],
		// 600 L/min typed as L/s, or 60.0 without its point
		[{ kind: 'meter', flowLPerS: 600, reference: 'anr' }, [10, 60]],
		[{ kind: 'meter', flowLPerS: 5, reference: 'anr' }, []],
		[{ kind: 'bag', volumeL: 60, seconds: 30 }, []],
		[{ kind: 'soap-response', response: 'film-blown-away' }, []]
	])('%o', (evidence, likely) => {
		const found = largeSize(evidence);
		expect(found === undefined).toBe(likely.length === 0);
		const sizes = found?.likely.map((each) =>
			each.kind === 'hole'
				? each.diameterMm
				: each.kind === 'slit'
					? each.widthMm
					: each.kind === 'thread-gap'
						? each.gapMm
						: each.kind === 'meter' && each.flowLPerS
		);
		expect(sizes ?? []).toEqual(likely);
	});

	test('what was probably meant is itself plausible', () => {
		const evidence = { kind: 'hole', diameterMm: 60, edge } as const;
		const [meant] = largeSize(evidence)?.likely ?? [];
		expect(meant && largeSize(meant)).toBeUndefined();
	});
});

describe('a price that nobody pays', () => {
	test.each([
		['EUR', 0.19, undefined],
		['EUR', 0.02, undefined],
		['EUR', 0, undefined],
		['EUR', 19, [0.19, 0.019]],
		['EUR', 190, [0.19]],
		['EUR', 1.9, [0.019, 0.19]],
		['EUR', 0.0019, [0.19, 0.019]],
		['INR', 8, undefined],
		['INR', 800, [8, 80]],
		['JPY', 25, undefined],
		['IDR', 1500, undefined],
		['IDR', 1.5, [150]],
		// A currency whose worth is not roughly known here is not asked about.
		['XOF', 19_000, undefined]
	])('%s %s a kilowatt-hour: probably meant %s', (currency, price, likely) => {
		expect(oddPrice(price, currency)).toEqual(likely);
	});
});

describe('the checks of a survey', () => {
	const start = newSurvey(
		{ id: 'site-1', name: 'Works', currency: 'EUR' },
		{ id: 'round-1', name: 'First', startedAt: '2026-11-02T08:00:00+01:00' }
	);
	const oddOnes = (survey: Survey) =>
		checkSurvey(survey, 'round-1').filter(({ id }) => id.endsWith('implausible'));
	const done = (survey: Survey, body: Parameters<typeof apply>[1]): Survey => {
		const next = apply(survey, body);
		if (!next.ok) throw new Error(next.error.code);
		return next.value;
	};

	test.each([
		[8760, false],
		[8784, false],
		[8800, true],
		[100, false],
		// 8.760 typed for 8,760
		[8.76, true]
	])('%s hours a year are asked about: %s', (pressurisedHoursPerYear, odd) => {
		const section = { id: 'section-1', name: 'Hall', valve: 'V1', pressurisedHoursPerYear };
		const survey = done(start, { kind: 'add-section', section });
		expect(oddOnes(survey).map(({ id }) => id)).toEqual(odd ? ['section-hours-implausible'] : []);
	});

	test('ask about each, and doing what they offer settles it', () => {
		const peak = { id: 'price-peak', name: 'Peak', pricePerKwh: 31 };
		const base = { id: 'price-base', name: 'Base', pricePerKwh: 0.2 };
		let survey = done(start, { kind: 'set-supply', changes: { setPressureBarGauge: 75 } });
		survey = done(survey, {
			kind: 'set-prices',
			changes: { pricePerKwh: 19, periodPrices: [base, peak] }
		});
		survey = done(survey, {
			kind: 'add-leak',
			leak: {
				id: 'leak-1',
				tag: 1,
				part: 'hose',
				hazards: [],
				sightings: {
					'round-1': {
						state: 'leaking',
						seenAt: '2026-11-02T08:00:00+01:00',
						pressureBarGauge: 65,
						evidence: { kind: 'slit', lengthMm: 50, widthMm: 5, edge: 'sharp' }
					}
				},
				mendings: {}
			}
		});
		const asked = oddOnes(survey);
		expect(asked.map(({ id, detail }) => [id, detail['name']])).toEqual([
			['supply-pressure-implausible', undefined],
			['price-implausible', ''],
			['price-implausible', 'Peak'],
			['leak-pressure-implausible', undefined],
			['leak-size-implausible', undefined]
		]);
		// Nothing was changed by asking.
		expect(survey.supply.setPressureBarGauge).toBe(75);
		for (let left = asked.length; left > 0; left--) {
			const [first] = oddOnes(survey);
			const [fix] = first?.fixes ?? [];
			if (!fix) throw new Error('nothing is offered');
			survey = done(survey, fix);
			expect(oddOnes(survey)).toHaveLength(left - 1);
		}
		expect(survey.prices).toEqual({
			pricePerKwh: 0.19,
			periodPrices: [base, { ...peak, pricePerKwh: 0.31 }]
		});
		expect(survey.supply.setPressureBarGauge).toBe(7.5);
	});
});
