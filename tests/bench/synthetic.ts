import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Command } from '#lib/core/survey/command.ts';
import { PARTS } from '#lib/core/survey/parts.ts';
import type { Leak, Section, Survey } from '#lib/core/survey/schema.ts';

/** Surveys of any size for measuring with: numbers without meaning, the same on every run. */
const AT = '2026-01-05T08:00:00Z';
const ROUND = { id: 'round-1', name: 'Bench', startedAt: AT };
const RESPONSES = [
	'now-and-then',
	'bubble-after-bubble',
	'foam-cushion',
	'foam-spits',
	'film-tears',
	'film-blown-away'
];

export function syntheticLeak(tag: number): Leak {
	return {
		id: `leak-${tag}`,
		tag,
		sectionId: `section-${tag % 40}`,
		part: PARTS[tag % PARTS.length] ?? 'other',
		place: `Machine ${tag % 97}, side ${tag % 4}`,
		hazards: tag % 9 === 0 ? ['at-height'] : [],
		sightings: {
			[ROUND.id]: {
				state: 'leaking',
				seenAt: AT,
				evidence:
					tag % 3 === 0
						? { kind: 'hole', diameterMm: 0.3 + (tag % 31) / 10, edge: 'unknown' }
						: { kind: 'soap-response', response: RESPONSES[tag % RESPONSES.length] ?? '' }
			}
		},
		mendings: {}
	};
}

export function syntheticSurvey(leakCount: number): Survey {
	const empty = newSurvey({ id: 'site-bench', name: 'Bench', currency: 'EUR' }, ROUND);
	const sections: Section[] = Array.from({ length: 40 }, (_, index) => ({
		id: `section-${index}`,
		name: `Section ${index}`,
		valve: `V${index}`,
		pressureBarGauge: 6 + (index % 10) / 10,
		pressurisedHoursPerYear: 5000 + index * 90
	}));
	const leaks = Array.from({ length: leakCount }, (_, index) => syntheticLeak(index + 1));
	return {
		...empty,
		site: { ...empty.site, altitudeM: 200 },
		supply: { quick: { specificPowerKwPerM3PerMin: 6.7, source: 'bench' } },
		prices: { pricePerKwh: 0.2, carbon: { kgCo2ePerKwh: 0.3, source: 'bench', year: 2026 } },
		sections: Object.fromEntries(sections.map((section) => [section.id, section])),
		leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
	};
}

/** As `syntheticSurvey`, walked twice: a third tight by then, a third sized again, the rest as before. */
export function twoRounds(leakCount: number): Survey {
	const survey = syntheticSurvey(leakCount);
	const startedAt = '2026-06-05T08:00:00Z';
	const later = { id: LATER_ROUND, name: 'Later', startedAt };
	const leaks = Object.values(survey.leaks).map((leak): Leak => {
		const seen = leak.sightings[BENCH_ROUND]!;
		const again = [
			{ ...seen, seenAt: startedAt },
			{ state: 'tight', seenAt: startedAt },
			{ ...seen, seenAt: startedAt, evidence: { kind: 'hole', diameterMm: 1, edge: 'unknown' } }
		] as const;
		const sightings = { ...leak.sightings, [LATER_ROUND]: again[leak.tag % 3]! };
		return { ...leak, sightings };
	});
	return {
		...survey,
		rounds: { ...survey.rounds, [LATER_ROUND]: later },
		leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
	};
}

/** The log that makes such a survey, a command for each leak. */
export function syntheticLog(leakCount: number): Command[] {
	return logOf(syntheticSurvey(leakCount));
}

export function logOf({ leaks, ...rest }: Survey): Command[] {
	const command = (time: number, body: Command['body']): Command => ({
		id: `cmd-${time}`,
		device: 'device-bench',
		time,
		at: AT,
		body
	});
	return [
		command(0, { kind: 'start-site', survey: { ...rest, leaks: {} } }),
		...Object.values(leaks).map((leak, index) => command(index + 1, { kind: 'add-leak', leak }))
	];
}

export const BENCH_ROUND = ROUND.id;
export const LATER_ROUND = 'round-2';
