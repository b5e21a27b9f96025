import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isFedInCircle, withoutAirToo } from './feeding.ts';
import { newSurvey } from './new-survey.ts';
import type { Section, Survey } from './schema.ts';

const STATION = { kind: 'station' } as const;
const by = (name: string) => ({ kind: 'section', sectionId: `section-${name}` }) as const;

type Feeds = NonNullable<Section['fedFrom']>;

function surveyOf(feeds: Readonly<Record<string, Feeds | undefined>>): Survey {
	const sections = Object.entries(feeds).map(([name, fedFrom]): [string, Section] => [
		`section-${name}`,
		{ id: `section-${name}`, name, ...(fedFrom && { fedFrom }) }
	]);
	return { ...SURVEY, sections: Object.fromEntries(sections) };
}

const SURVEY = newSurvey(
	{ id: 'site-1', name: 'Site', currency: 'EUR' },
	{ id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' }
);
const names = (survey: Survey, name: string) =>
	withoutAirToo(survey, `section-${name}`).map((section) => section.name);

// derived: by hand, from the pipes that the feeds stand for
test('what hangs on a section loses its air with it, and what hangs on that', () => {
	const survey = surveyOf({
		main: [STATION],
		line: [by('main')],
		cell: [by('line')],
		other: [STATION]
	});
	expect(names(survey, 'main')).toEqual(['line', 'cell']);
	expect(names(survey, 'line')).toEqual(['cell']);
	expect(names(survey, 'cell')).toEqual([]);
	expect(names(survey, 'other')).toEqual([]);
});

test('a section on a ring keeps its air from the other side', () => {
	const survey = surveyOf({
		west: [STATION, by('east')],
		east: [STATION, by('west')],
		cell: [by('west'), by('east')],
		end: [by('cell')]
	});
	expect(names(survey, 'west')).toEqual([]);
	expect(names(survey, 'cell')).toEqual(['end']);
});

test('nothing is claimed of a section that nobody spoke of, nor through one that is gone', () => {
	const survey = surveyOf({ main: [STATION], silent: undefined, line: [by('main'), by('gone')] });
	expect(names(survey, 'main')).toEqual(['line']);
	expect(names(surveyOf({ line: [by('gone')], main: [STATION] }), 'main')).toEqual([]);
});

test('sections that feed each other and nothing else are told', () => {
	const survey = surveyOf({ one: [by('two')], two: [by('one')], main: [STATION] });
	expect(isFedInCircle(survey, 'section-one')).toBe(true);
	expect(isFedInCircle(survey, 'section-main')).toBe(false);
	expect(names(survey, 'one')).toEqual([]);
});

// law: a further feed never takes the air from a section
test('one more feed takes the air from nobody', () => {
	const word = fc.constantFrom('a', 'b', 'c', 'd');
	const feed = fc.oneof(fc.constant(STATION), word.map(by));
	const feeds = fc.array(feed, { maxLength: 3 });
	fc.assert(
		fc.property(
			fc.record({ a: feeds, b: feeds, c: feeds, d: feeds }),
			word,
			word,
			(all, shut, at) => {
				const more = { ...all, [at]: [...all[at], STATION] };
				const [before, after] = [names(surveyOf(all), shut), names(surveyOf(more), shut)];
				// What had no feed said at all was taken to be fed: it stays so.
				expect(after.filter((name) => name === at)).toEqual([]);
				expect(after.filter((name) => !before.includes(name) && !isCut(all, name))).toEqual([]);
			}
		)
	);
});

/** Fed by nothing even before anything was shut, and so not named. */
function isCut(all: Readonly<Record<string, Feeds>>, name: string): boolean {
	return isFedInCircle(surveyOf(all), `section-${name}`);
}
