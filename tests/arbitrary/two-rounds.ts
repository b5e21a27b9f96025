import fc from 'fast-check';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Evidence } from '#lib/core/survey/evidence-schema.ts';
import type { Leak, Mending, Sighting, Survey } from '#lib/core/survey/schema.ts';

export const BEFORE = 'round-one';
export const AFTER = 'round-two';
const DAY = (round: string) => (round === BEFORE ? '2026-04-01' : '2026-10-01');

export const sighting = (
	round: string,
	state: Sighting['state'],
	evidence?: Evidence
): Sighting => ({ state, seenAt: `${DAY(round)}T08:00:00Z`, ...(evidence && { evidence }) });

export const mended = (reSoaped?: 'tight' | 'still-leaking'): Mending => ({
	mendedAt: '2026-04-10T08:00:00Z',
	...(reSoaped && { reSoaped })
});

/** A leak of two rounds; what is left out was not seen or not done. */
export function leakOfTwo(
	tag: number,
	[before, after]: readonly [(Sighting | undefined)?, (Sighting | undefined)?],
	mending?: Mending,
	section = 'section-a'
): Leak {
	return {
		id: `leak-${tag}`,
		tag,
		sectionId: section,
		part: 'hose',
		hazards: [],
		sightings: { ...(before && { [BEFORE]: before }), ...(after && { [AFTER]: after }) },
		mendings: mending ? { [BEFORE]: mending } : {}
	};
}

/** A site that can be priced by hand: 100 kPa, 20 °C, 6.5 kW per m³/min, 8,000 hours at 7 bar. */
export function siteOfTwo(leaks: readonly Leak[], pricePerKwh = 0.25): Survey {
	const empty = newSurvey(
		{ id: 'site-two', name: 'Two rounds', currency: 'EUR' },
		{ id: BEFORE, name: 'One', startedAt: '2026-04-01T06:00:00Z' }
	);
	return {
		...empty,
		site: { ...empty.site, barometerKPa: 100 },
		supply: {
			setPressureBarGauge: 7,
			quick: { specificPowerKwPerM3PerMin: 6.5, source: 'by hand' }
		},
		prices: { pricePerKwh, carbon: { kgCo2ePerKwh: 0.4, year: 2026, source: 'by hand' } },
		rounds: {
			...empty.rounds,
			[AFTER]: { id: AFTER, name: 'Two', startedAt: '2026-10-01T06:00:00Z' }
		},
		sections: {
			'section-a': {
				id: 'section-a',
				name: 'A',
				pressureBarGauge: 7,
				pressurisedHoursPerYear: 8000
			},
			'section-b': {
				id: 'section-b',
				name: 'B',
				pressureBarGauge: 6,
				pressurisedHoursPerYear: 8000
			}
		},
		leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
	};
}

const evidence = fc.oneof(
	fc.record({
		kind: fc.constant('hole' as const),
		diameterMm: fc.double({ min: 0.2, max: 4, noNaN: true }),
		edge: fc.constantFrom('sharp' as const, 'rounded' as const, 'unknown' as const)
	}),
	fc.record({
		kind: fc.constant('soap-response' as const),
		response: fc.constantFrom('now-and-then', 'foam-cushion', 'foam-spits', 'film-tears')
	}),
	fc.record({
		kind: fc.constant('meter' as const),
		flowLPerS: fc.double({ min: 0.1, max: 6, noNaN: true }),
		reference: fc.constant('iso-1217' as const)
	})
);

const seen = (round: string) =>
	fc.oneof(
		fc.constant(undefined),
		fc.constant(sighting(round, 'tight')),
		fc.constant(sighting(round, 'not-reached')),
		evidence.map((each) => sighting(round, 'leaking', each))
	);

/** Leaks with every history that two rounds can give them. */
export const leaksOfTwo = fc
	.array(
		fc.tuple(
			seen(BEFORE),
			seen(AFTER),
			fc.constantFrom(undefined, mended(), mended('tight'), mended('still-leaking')),
			fc.constantFrom('section-a', 'section-b'),
			fc.boolean()
		),
		{ minLength: 0, maxLength: 25 }
	)
	.map((rows) =>
		rows.map(([before, after, mending, section, again], index) =>
			leakOfTwo(
				index + 1,
				// Some are confirmed by the same reading.
				[
					before,
					again && before?.state === 'leaking' && after
						? { ...before, seenAt: after.seenAt }
						: after
				],
				mending,
				section
			)
		)
	);
