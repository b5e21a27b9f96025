import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	AFTER,
	BEFORE,
	leakOfTwo,
	leaksOfTwo,
	sighting,
	siteOfTwo
} from '../../../../tests/arbitrary/two-rounds.ts';
import type { Leak, Survey } from '../survey/schema.ts';
import { startingStation } from '../survey/starting-station.ts';
import { assess, MENDED, WASTING } from './assess.ts';

/** What a survey may meet between two looks at its figures. */
const edits = fc.array(
	fc.oneof(
		fc.record({
			kind: fc.constant('leak' as const),
			at: fc.nat(),
			with: leaksOfTwo.filter((leaks) => leaks.length > 0)
		}),
		fc.record({ kind: fc.constant('remove' as const), at: fc.nat() }),
		fc.record({ kind: fc.constant('price' as const), price: fc.constantFrom(0.1, 0.2, 0.3) }),
		fc.record({ kind: fc.constant('pressure' as const), bar: fc.constantFrom(5, 6, 7) }),
		fc.record({ kind: fc.constant('air' as const), kPa: fc.constantFrom(95, 100) })
	),
	{ minLength: 1, maxLength: 8 }
);
type Edit = (typeof edits extends fc.Arbitrary<infer T> ? T : never)[number];

function edited(survey: Survey, edit: Edit): Survey {
	const ids = Object.keys(survey.leaks);
	const one = 'at' in edit ? survey.leaks[ids[edit.at % ids.length] ?? ''] : undefined;
	const put = (leak: Leak): Survey => ({ ...survey, leaks: { ...survey.leaks, [leak.id]: leak } });
	switch (edit.kind) {
		case 'leak':
			return one ? put({ ...edit.with[0]!, id: one.id, tag: one.tag }) : survey;
		case 'remove':
			return one ? put({ ...one, removed: true }) : survey;
		case 'price':
			return { ...survey, prices: { ...survey.prices, pricePerKwh: edit.price } };
		case 'pressure': {
			const section = { ...survey.sections['section-a']!, pressureBarGauge: edit.bar };
			return { ...survey, sections: { ...survey.sections, 'section-a': section } };
		}
		case 'air':
			return { ...survey, site: { ...survey.site, barometerKPa: edit.kPa } };
	}
}

const MACHINE = {
	id: 'machine-1',
	name: '',
	capacityM3PerMin: 10,
	loadedKw: 65,
	ratedPressureBarGauge: 7,
	choice: 'load-unload'
} as const;

const withStation = (survey: Survey): Survey => ({
	...survey,
	supply: { ...survey.supply, station: startingStation(MACHINE, 'period-always') }
});

/** The same values in new objects: nothing can be remembered of them. */
const unknown = (survey: Survey) => structuredClone(survey);

describe('weighing again after an edit', () => {
	// Expected: a whole pass over the same values, to the last bit (derived).
	it('[W1][W3] gives what weighing everything anew gives, whichever rooms ask in between', () => {
		fc.assert(
			fc.property(leaksOfTwo, edits, fc.boolean(), (leaks, steps, byStation) => {
				const site = siteOfTwo(leaks);
				let survey: Survey = byStation ? withStation(site) : site;
				for (const step of steps) {
					survey = edited(survey, step);
					for (const [round, states] of [
						[BEFORE, WASTING],
						[BEFORE, MENDED],
						[AFTER, WASTING]
					] as const)
						expect(assess(survey, round, states)).toEqual(assess(unknown(survey), round, states));
				}
			}),
			{ numRuns: 80 }
		);
	});

	it('[W1] keeps the figures of a leak that did not change as the same object', () => {
		const survey = siteOfTwo(
			[0.5, 2, 1, 3].map((diameterMm, index) =>
				leakOfTwo(index + 1, [
					sighting(BEFORE, 'leaking', { kind: 'hole', diameterMm, edge: 'sharp' })
				])
			)
		);
		const first = assess(survey, BEFORE);
		expect(first.leaks).toHaveLength(4);
		const second = assess({ ...survey, leaks: { ...survey.leaks } }, BEFORE);
		for (const [at, leak] of second.leaks.entries()) expect(leak).toBe(first.leaks[at]);
	});
});
