import { newSurvey } from '../../src/lib/core/survey/new-survey.ts';
import { PARTS, HAZARDS, ACTIONS } from '../../src/lib/core/survey/parts.ts';
import { FINDINGS_AT, ROOM_POINTS } from '../../src/lib/core/survey/room-points.ts';
import type { Leak, RoomCheck, Section, Survey } from '../../src/lib/core/survey/schema.ts';
import { assess } from '../../src/lib/core/weigh/assess.ts';
import { fixListModel } from '../../src/lib/report/fix-list-model.ts';
import type { ReportModel } from '../../src/lib/report/model.ts';
import { createFormat } from '../../src/lib/words/format.ts';

export const PLAN_SHA = 'a'.repeat(64);
const ROUND = 'round-1';

/** A survey of so many leaks over a few sections, every part, hazard and state among them. */
export function sampleSurvey(leakCount: number): Survey {
	const sections: Section[] = ['Section A', 'Section B', 'Section C, Łódź side'].map(
		(name, index): Section => ({
			id: `section-${String(index + 1)}`,
			name,
			...(index < 2 && {
				valve: `BV${String(index + 1)}, ball valve by column ${String(index + 4)}`
			}),
			...(index === 0 && { volumeL: 850, note: 'Second valve at the far end is stiff.' }),
			pressureBarGauge: 6.5 + index * 0.5,
			pressurisedHoursPerYear: 8760
		})
	);
	const survey = newSurvey(
		{ id: 'site-sample', name: 'Sample works', currency: 'EUR' },
		{ id: ROUND, name: 'Round 1', startedAt: '2026-03-02T08:00:00Z' }
	);
	const leaks = Array.from({ length: leakCount }, (_, index) => sampleLeak(index, sections.length));
	return {
		...survey,
		site: { ...survey.site, altitudeM: 150 },
		supply: { quick: { specificPowerKwPerM3PerMin: 6.6, source: 'our starting value' } },
		prices: { pricePerKwh: 0.21, carbon: { kgCo2ePerKwh: 0.35, source: 'sample', year: 2026 } },
		sections: Object.fromEntries(sections.map((section) => [section.id, section])),
		plans: {
			'plan-1': {
				id: 'plan-1',
				name: 'Ground floor',
				image: { sha256: PLAN_SHA, mediaType: 'image/jpeg', widthPx: 1600, heightPx: 1000 }
			}
		},
		leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
	};
}

/** The same with a finding at every point of one machine, and one on a rotary screw machine. */
export function withRoom(survey: Survey): Survey {
	const check = (index: number, more: Pick<RoomCheck, 'machine' | 'point'>): RoomCheck => ({
		id: `room-${String(index)}`,
		roundId: ROUND,
		outcome: 'finding',
		checkedAt: '2026-03-02T09:30:00Z',
		...more,
		finding: FINDINGS_AT[more.point][0]
	});
	const checks = [
		...ROOM_POINTS.map((point, index) => check(index, { machine: 'Piston machine', point })),
		{ ...check(9, { machine: 'Screw machine', point: 'timed-drain' }), rotaryScrew: true }
	];
	return { ...survey, roomChecks: Object.fromEntries(checks.map((each) => [each.id, each])) };
}

/** The same with two windows, and most leaks planned into one of them. */
export function planned(survey: Survey): Survey {
	const window = (id: string, name: string, startsAt: string) => ({
		id,
		name,
		startsAt,
		minutes: 240,
		people: 2,
		overnightOff: id === 'window-2'
	});
	return {
		...survey,
		windows: {
			'window-1': window('window-1', 'Saturday', '2026-03-14T06:00:00+01:00'),
			'window-2': window('window-2', 'Łódź; stop, “half day”', '2026-03-28T22:00:00+01:00')
		},
		mendPlan: {
			windows: Object.fromEntries(
				Object.values(survey.leaks)
					.filter(({ tag }) => tag % 4 !== 0)
					.map(({ id, tag }) => [id, `window-${String((tag % 2) + 1)}`])
			)
		}
	};
}

function sampleLeak(index: number, sectionCount: number): Leak {
	const tag = index + 1;
	const hazard = HAZARDS[index % 9];
	const action = index % 5 === 3 ? ACTIONS[index % ACTIONS.length] : undefined;
	return {
		id: `leak-${String(tag)}`,
		tag,
		...(index % 8 !== 7 && { sectionId: `section-${String((index % sectionCount) + 1)}` }),
		part: PARTS[index % PARTS.length] ?? 'other',
		...(action && { action }),
		place: `Place ${String(tag)}, bay ${String((index * 7) % 23)}`,
		...(index % 11 === 4 && {
			note: 'Thread looks worn; bring a spare nipple and the long spanner.'
		}),
		hazards: hazard ? [hazard] : [],
		...(index % 13 !== 12 && {
			planId: 'plan-1',
			at: { x: ((index * 0.37) % 0.9) + 0.05, y: ((index * 0.23) % 0.9) + 0.05 }
		}),
		sightings: {
			[ROUND]: {
				state: 'leaking',
				seenAt: '2026-03-02T09:00:00Z',
				...(index % 10 !== 9 && {
					evidence: { kind: 'hole', diameterMm: 0.4 + ((index * 7) % 12) * 0.2, edge: 'unknown' }
				})
			}
		},
		mendings:
			index % 7 === 5
				? { [ROUND]: { isolated: true, vented: true, mendedAt: '2026-03-09T10:00:00Z' } }
				: {}
	};
}

export function sampleModel(survey: Survey, locale = 'en-GB'): ReportModel {
	return fixListModel(survey, assess(survey, ROUND), {
		format: createFormat({ locale, currency: survey.site.currency, units: survey.site.units }),
		printedAt: '2026-03-10T07:30:00Z'
	});
}
