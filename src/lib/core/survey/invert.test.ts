import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ANY_BODY, anyBody, startedSurvey } from '../../../../tests/arbitrary/commands.ts';
import { apply } from './apply.ts';
import type { CommandBody } from './command.ts';
import { entityCommand } from './entities.ts';
import { invert } from './invert.ts';
import type { Survey } from './schema.ts';

/** A survey after random commands; those that do not fit are passed over. */
const anySurvey = fc
	.array(anyBody, { maxLength: 40 })
	.map((bodies) => bodies.reduce((survey, body) => next(survey, body) ?? survey, startedSurvey()));

/** Of one kind, so that one of them is likely to fit: a photo fits only a leak that is there. */
function severalOf(kind: keyof typeof ANY_BODY) {
	return fc.array(ANY_BODY[kind], { minLength: 30, maxLength: 30 });
}

function next(survey: Survey, body: CommandBody): Survey | undefined {
	const applied = apply(survey, body);
	return applied.ok ? applied.value : undefined;
}

interface Marked {
	readonly removed?: boolean;
}

/** What was added stays, marked as removed, so that others who know it can bring it back. */
function withoutAdded(survey: Survey, body: CommandBody, before: Survey): Survey {
	if (body.kind === 'add-photo') {
		const leak = survey.leaks[body.leakId];
		const { [body.photo.id]: photo, ...photos } = leak?.photos ?? {};
		expect(photo?.removed).toBe(true);
		const had = before.leaks[body.leakId]?.photos !== undefined;
		const { photos: _, ...rest } = leak as NonNullable<typeof leak>;
		return {
			...survey,
			leaks: { ...survey.leaks, [body.leakId]: had ? { ...rest, photos } : rest }
		};
	}
	const command = entityCommand(body);
	if (command?.verb !== 'add') return survey;
	const { table, id } = command;
	const { [id]: entity, ...rest } = survey[table] as Readonly<Record<string, Marked>>;
	expect(entity?.removed).toBe(true);
	const { [table]: _, ...others } = survey;
	return (before[table] === undefined ? others : { ...survey, [table]: rest }) as Survey;
}

describe('a command taken back leaves the survey as it was before', () => {
	test.each(Object.keys(ANY_BODY) as (keyof typeof ANY_BODY)[])('%s', (kind) => {
		let taken = 0;
		fc.assert(
			fc.property(anySurvey, severalOf(kind), (before, bodies) => {
				const body = bodies.find((one) => next(before, one) !== undefined);
				fc.pre(body !== undefined);
				const after = next(before, body) as Survey;
				const inverse = invert(before, body);
				if (!inverse.ok) throw new Error(JSON.stringify(inverse.error));
				const back = apply(after, inverse.value);
				if (!back.ok) throw new Error(JSON.stringify(back.error));
				expect(withoutAdded(back.value, body, before)).toEqual(before);

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
	const kept = <T extends Marked>(table: Readonly<Record<string, T>> = {}) =>
		Object.fromEntries(Object.entries(table).filter(([, entity]) => !entity.removed));
	return {
		...survey,
		plans: kept(survey.plans as Record<string, Marked>),
		sections: kept(survey.sections as Record<string, Marked>),
		rounds: kept(survey.rounds as Record<string, Marked>),
		leaks: kept(survey.leaks as Record<string, Marked>),
		systemTests: kept(survey.systemTests as Record<string, Marked>),
		areas: kept(survey.areas as Record<string, Marked>),
		roomChecks: kept(survey.roomChecks as Record<string, Marked>),
		windows: kept(survey.windows as Record<string, Marked>),
		adjustments: kept(survey.adjustments as Record<string, Marked>)
	};
}
