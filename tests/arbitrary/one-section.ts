import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Leak, Survey } from '#lib/core/survey/schema.ts';

const ROUND = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };

/** A leak that blows in the first round, at a pressure of its own where one is given. */
export function leakSeen(
	tag: number,
	evidence: Leak['sightings'][string]['evidence'],
	bar?: number
): Leak {
	return {
		id: `leak-${tag}`,
		tag,
		sectionId: 'section-a',
		part: 'hose',
		hazards: [],
		sightings: {
			[ROUND.id]: {
				state: 'leaking',
				seenAt: '2026-01-05T09:00:00Z',
				...(evidence && { evidence }),
				...(bar !== undefined && { pressureBarGauge: bar })
			}
		},
		mendings: {}
	};
}

/** One section that can be priced by hand: 100 kPa, 20 °C, 6.5 kW per m³/min, 8,000 hours at 7 bar. */
export function siteOfOne(leaks: readonly Leak[]): Survey {
	const empty = newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, ROUND);
	return {
		...empty,
		site: { ...empty.site, barometerKPa: 100 },
		supply: { quick: { specificPowerKwPerM3PerMin: 6.5, source: 'test' } },
		prices: { pricePerKwh: 0.2, carbon: { kgCo2ePerKwh: 0.4, source: 'test', year: 2026 } },
		sections: {
			'section-a': {
				id: 'section-a',
				name: 'A',
				pressureBarGauge: 7,
				pressurisedHoursPerYear: 8000
			}
		},
		leaks: Object.fromEntries(leaks.map((each) => [each.id, each]))
	};
}
