import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ANY_BODY, anyBody, startedSurvey } from '../../../../tests/arbitrary/commands.ts';
import { apply } from './apply.ts';
import type { CommandBody } from './command.ts';
import type { TableName } from './draft.ts';
import { invert } from './invert.ts';
import type { Survey } from './schema.ts';

const ADDED: Readonly<Record<string, (body: CommandBody) => [TableName, string] | undefined>> = {
	'add-plan': (body) => (body.kind === 'add-plan' ? ['plans', body.plan.id] : undefined),
	'add-section': (body) =>
		body.kind === 'add-section' ? ['sections', body.section.id] : undefined,
	'add-round': (body) => (body.kind === 'add-round' ? ['rounds', body.round.id] : undefined),
	'add-leak': (body) => (body.kind === 'add-leak' ? ['leaks', body.leak.id] : undefined),
	'add-system-test': (body) =>
		body.kind === 'add-system-test' ? ['systemTests', body.test.id] : undefined
};

/** A survey after random commands; those that do not fit are passed over. */
const anySurvey = fc
	.array(anyBody, { maxLength: 40 })
	.map((bodies) => bodies.reduce((survey, body) => next(survey, body) ?? survey, startedSurvey()));

function next(survey: Survey, body: CommandBody): Survey | undefined {
	const applied = apply(survey, body);
	return applied.ok ? applied.value : undefined;
}

/** What was added stays, marked as removed, so that others who know it can bring it back. */
function withoutAdded(survey: Survey, body: CommandBody): Survey {
	const added = ADDED[body.kind]?.(body);
	if (!added) return survey;
	const [table, id] = added;
	const { [id]: entity, ...rest } = survey[table] as Record<string, { removed?: boolean }>;
	expect(entity?.removed).toBe(true);
	return { ...survey, [table]: rest };
}

describe('a command taken back leaves the survey as it was before', () => {
	test.each(Object.keys(ANY_BODY) as (keyof typeof ANY_BODY)[])('%s', (kind) => {
		let taken = 0;
		fc.assert(
			fc.property(anySurvey, ANY_BODY[kind], (before, body) => {
				const after = next(before, body);
				fc.pre(after !== undefined);
				const inverse = invert(before, body);
				if (!inverse.ok) throw new Error(JSON.stringify(inverse.error));
				const back = apply(after, inverse.value);
				if (!back.ok) throw new Error(JSON.stringify(back.error));
				expect(withoutAdded(back.value, body)).toEqual(before);

				const again = invert(after, inverse.value);
				if (!again.ok) throw new Error(JSON.stringify(again.error));
				expect(apply(back.value, again.value)).toEqual({ ok: true, value: after });
				taken++;
			}),
			{ numRuns: 60 }
		);
		expect(taken).toBeGreaterThan(0);
	});
});

test('all of a random day taken back, last first, is the survey that the day began with', () => {
	fc.assert(
		fc.property(fc.array(anyBody, { maxLength: 60 }), (bodies) => {
			const first = startedSurvey();
			let survey = first;
			const inverses: CommandBody[] = [];
			for (const body of bodies) {
				const after = next(survey, body);
				if (!after) continue;
				const inverse = invert(survey, body);
				if (!inverse.ok) throw new Error(JSON.stringify(inverse.error));
				inverses.push(inverse.value);
				survey = after;
			}
			for (const inverse of inverses.toReversed()) survey = next(survey, inverse) ?? survey;
			expect(visible(survey)).toEqual(visible(first));
		}),
		{ numRuns: 200 }
	);
});

test('the start of a site cannot be taken back', () => {
	const survey = startedSurvey();
	expect(invert(survey, { kind: 'start-site', survey })).toEqual({
		ok: false,
		error: { code: 'not-undoable', detail: { kind: 'start-site' } }
	});
});

test('a command that never fitted has nothing to take back', () => {
	const inverse = invert(startedSurvey(), { kind: 'remove-leak', leakId: 'leak-9' });
	expect(inverse.ok ? '' : inverse.error.code).toBe('entity-unknown');
});

test('what another changed meanwhile in another field stays', () => {
	const leak = { id: 'leak-1', tag: 1, part: 'hose', hazards: [], sightings: {}, mendings: {} };
	const before = next(startedSurvey(), { kind: 'add-leak', leak } as unknown as CommandBody);
	if (!before) throw new Error('the leak was not added');
	const mine: CommandBody = { kind: 'set-leak', leakId: 'leak-1', changes: { note: 'mine' } };
	const inverse = invert(before, mine);
	const after = [mine, { ...mine, changes: { tag: 7 } }].reduce(
		(survey, body) => next(survey, body) ?? survey,
		before
	);
	const back = inverse.ok ? next(after, inverse.value) : undefined;
	expect(back?.leaks['leak-1']).toEqual({ ...leak, tag: 7 });
});

function visible(survey: Survey): unknown {
	const kept = (table: Record<string, { removed?: boolean | undefined }>) =>
		Object.fromEntries(Object.entries(table).filter(([, entity]) => !entity.removed));
	return {
		...survey,
		plans: kept(survey.plans),
		sections: kept(survey.sections),
		rounds: kept(survey.rounds),
		leaks: kept(survey.leaks),
		systemTests: kept(survey.systemTests)
	};
}
