import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ANY_BODY, anyBody, startedSurvey } from '../../../../tests/arbitrary/commands.ts';
import { apply } from './apply.ts';
import { CommandBody } from './command.ts';
import { Survey } from './schema.ts';

function applied(survey: Survey, ...bodies: CommandBody[]): Survey {
	return bodies.reduce((before, body) => {
		const after = apply(before, body);
		if (!after.ok) throw new Error(JSON.stringify({ body, ...after.error }));
		return after.value;
	}, survey);
}

const leak = {
	id: 'leak-1',
	tag: 1,
	part: 'hose',
	hazards: [],
	sightings: {},
	mendings: {}
} as const satisfies Survey['leaks'][string];
const addLeak: CommandBody = { kind: 'add-leak', leak: { ...leak, hazards: [] } };

describe('a command is applied', () => {
	test('changing the fields that it names and no other', () => {
		const survey = applied(startedSurvey(), addLeak, {
			kind: 'set-leak',
			leakId: 'leak-1',
			changes: { note: 'By the door', part: 'valve' }
		});
		expect(survey.leaks['leak-1']).toEqual({ ...leak, note: 'By the door', part: 'valve' });
	});

	test('clearing with null only what may be absent', () => {
		const survey = applied(
			startedSurvey(),
			addLeak,
			{ kind: 'set-leak', leakId: 'leak-1', changes: { note: 'x' } },
			{ kind: 'set-leak', leakId: 'leak-1', changes: { note: null } }
		);
		expect(survey.leaks['leak-1']).toEqual(leak);
		expect(apply(survey, { kind: 'set-leak', leakId: 'leak-1', changes: { tag: null } })).toEqual({
			ok: false,
			error: { code: 'field-invalid', detail: { field: 'tag' } }
		});
	});

	test('marking what is removed, so that an edit made meanwhile stays', () => {
		const survey = applied(
			startedSurvey(),
			addLeak,
			{ kind: 'remove-leak', leakId: 'leak-1' },
			{ kind: 'set-leak', leakId: 'leak-1', changes: { note: 'edited elsewhere' } }
		);
		expect(survey.leaks['leak-1']).toEqual({ ...leak, note: 'edited elsewhere', removed: true });
		const back = applied(survey, { kind: 'restore-leak', leakId: 'leak-1' });
		expect(back.leaks['leak-1']).toEqual({ ...leak, note: 'edited elsewhere' });
	});

	test('to a mending field by field, and an empty mending is none', () => {
		const log = (changes: object): CommandBody => ({
			kind: 'log-mending',
			leakId: 'leak-1',
			roundId: 'round-1',
			changes
		});
		const survey = applied(
			startedSurvey(),
			addLeak,
			log({ isolated: true }),
			log({ vented: true })
		);
		expect(survey.leaks['leak-1']?.mendings).toEqual({
			'round-1': { isolated: true, vented: true }
		});
		const cleared = applied(survey, log({ isolated: null, vented: null }));
		expect(cleared.leaks['leak-1']?.mendings).toEqual({});
	});
});

describe('a command that does not fit is refused', () => {
	test.each<[string, CommandBody]>([
		['site-already-started', { kind: 'start-site', survey: startedSurvey() }],
		['entity-exists', addLeak],
		['entity-unknown', { kind: 'remove-leak', leakId: 'leak-9' }],
		['entity-unknown', { kind: 'set-plan', planId: 'plan-9', changes: {} }],
		['field-invalid', { kind: 'set-site', changes: { name: null } }],
		['field-invalid', { kind: 'set-site', changes: { airTemperatureC: Number.NaN } }]
	])('%s (case %#)', (code, body) => {
		const survey = applied(startedSurvey(), addLeak);
		const before = structuredClone(survey);
		const after = apply(survey, body);
		expect(after.ok ? 'applied' : after.error.code).toBe(code);
		expect(survey).toEqual(before);
	});

	test('also when it names what every object inherits', () => {
		for (const leakId of ['constructor', '__proto__', 'toString']) {
			expect(apply(startedSurvey(), { kind: 'remove-leak', leakId })).toMatchObject({ ok: false });
			expect(CommandBody.safeParse({ kind: 'remove-leak', leakId }).success).toBe(false);
		}
	});
});

test('every kind of command that can be made is one that can be read', () => {
	for (const [kind, body] of Object.entries(ANY_BODY)) {
		fc.assert(
			fc.property(body, (made) => {
				expect(made.kind).toBe(kind);
				expect(CommandBody.parse(JSON.parse(JSON.stringify(made)))).toEqual(made);
			}),
			{ numRuns: 20 }
		);
	}
});

test('whatever is applied, the survey keeps its shape and the one before it is untouched', () => {
	fc.assert(
		fc.property(fc.array(anyBody, { maxLength: 40 }), (bodies) => {
			let survey = startedSurvey();
			for (const body of bodies) {
				const text = JSON.stringify(survey);
				const after = apply(survey, body);
				expect(JSON.stringify(survey)).toBe(text);
				if (after.ok) survey = after.value;
			}
			expect(Survey.parse(JSON.parse(JSON.stringify(survey)))).toEqual(survey);
		}),
		{ numRuns: 200 }
	);
});
