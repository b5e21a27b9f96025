import type { z } from 'zod';
import { ok, refuse, type Result } from '../units/result.ts';
import type { Changes, CommandBody } from './command.ts';
import { Draft, type Entity, type TableName } from './draft.ts';
import {
	Leak,
	Mending,
	Plan,
	Round,
	Section,
	Site,
	StartingValues,
	type Survey
} from './schema.ts';
import { Prices, Supply } from './supply-schema.ts';

/**
 * Applies one command to a survey and gives the new survey; the old one is not touched.
 *
 * @returns a refusal `entity-unknown`, `entity-exists`, `site-already-started` or `field-invalid`
 * when the command does not fit the survey
 */
export function apply(survey: Survey, body: CommandBody): Result<Survey> {
	const draft = new Draft(survey);
	const applied = applyTo(draft, body);
	return applied.ok ? ok(draft.finish()) : applied;
}

/** Applies one command to a draft; a refused command leaves the draft as it was. */
export function applyTo(draft: Draft, body: CommandBody): Result<null> {
	switch (body.kind) {
		case 'start-site':
			return refuse('site-already-started', { site: body.survey.site.id });
		case 'set-site':
			return setRoot(draft, 'site', Site, body.changes);
		case 'set-supply':
			return setRoot(draft, 'supply', Supply, body.changes);
		case 'set-prices':
			return setRoot(draft, 'prices', Prices, body.changes);
		case 'set-starting-values':
			return setRoot(draft, 'startingValues', StartingValues, body.changes);
		case 'add-plan':
			return add(draft, 'plans', body.plan);
		case 'set-plan':
			return set(draft, 'plans', Plan, body.planId, body.changes);
		case 'remove-plan':
			return setRemoved(draft, 'plans', body.planId, true);
		case 'restore-plan':
			return setRemoved(draft, 'plans', body.planId, false);
		case 'add-section':
			return add(draft, 'sections', body.section);
		case 'set-section':
			return set(draft, 'sections', Section, body.sectionId, body.changes);
		case 'remove-section':
			return setRemoved(draft, 'sections', body.sectionId, true);
		case 'restore-section':
			return setRemoved(draft, 'sections', body.sectionId, false);
		case 'add-round':
			return add(draft, 'rounds', body.round);
		case 'set-round':
			return set(draft, 'rounds', Round, body.roundId, body.changes);
		case 'remove-round':
			return setRemoved(draft, 'rounds', body.roundId, true);
		case 'restore-round':
			return setRemoved(draft, 'rounds', body.roundId, false);
		case 'add-leak':
			return add(draft, 'leaks', body.leak);
		case 'set-leak':
			return set(draft, 'leaks', Leak, body.leakId, body.changes);
		case 'move-pin':
			return set(draft, 'leaks', Leak, body.leakId, { planId: body.planId, at: body.at });
		case 'remove-leak':
			return setRemoved(draft, 'leaks', body.leakId, true);
		case 'restore-leak':
			return setRemoved(draft, 'leaks', body.leakId, false);
		case 'record-sighting':
			return change(draft, 'leaks', body.leakId, (leak) => ({
				...leak,
				sightings: withEntry(leak.sightings, body.roundId, body.sighting ?? undefined)
			}));
		case 'log-mending':
			return logMending(draft, body.leakId, body.roundId, body.changes);
		case 'add-system-test':
			return add(draft, 'systemTests', body.test);
		case 'remove-system-test':
			return setRemoved(draft, 'systemTests', body.testId, true);
		case 'restore-system-test':
			return setRemoved(draft, 'systemTests', body.testId, false);
	}
}

type RootName = 'site' | 'supply' | 'prices' | 'startingValues';

function setRoot<Name extends RootName>(
	draft: Draft,
	name: Name,
	schema: z.ZodType<Survey[Name]>,
	changes: Changes<Survey[Name]>
): Result<null> {
	const changed = withChanges(schema, draft.survey[name], changes);
	if (!changed.ok) return changed;
	draft.replace({ ...draft.survey, [name]: changed.value });
	return ok(null);
}

function add<T extends TableName>(draft: Draft, table: T, entity: Entity<T>): Result<null> {
	if (draft.get(table, entity.id)) return refuse('entity-exists', { table, id: entity.id });
	draft.set(table, entity);
	return ok(null);
}

function set<T extends TableName>(
	draft: Draft,
	table: T,
	schema: z.ZodType<Entity<T>>,
	id: string,
	changes: Changes<Entity<T>>
): Result<null> {
	const before = draft.get(table, id);
	if (!before) return refuse('entity-unknown', { table, id });
	const changed = withChanges(schema, before, changes);
	if (!changed.ok) return changed;
	draft.set(table, changed.value);
	return ok(null);
}

function change<T extends TableName>(
	draft: Draft,
	table: T,
	id: string,
	next: (before: Entity<T>) => Entity<T>
): Result<null> {
	const before = draft.get(table, id);
	if (!before) return refuse('entity-unknown', { table, id });
	draft.set(table, next(before));
	return ok(null);
}

/** What is removed is only marked, so that an edit made elsewhere meanwhile is kept and can come back. */
function setRemoved(draft: Draft, table: TableName, id: string, removed: boolean): Result<null> {
	return change(draft, table, id, (before) => {
		const { removed: _, ...rest } = before;
		return removed ? { ...rest, removed } : rest;
	});
}

function logMending(
	draft: Draft,
	leakId: string,
	roundId: string,
	changes: Changes<Mending>
): Result<null> {
	const leak = draft.get('leaks', leakId);
	if (!leak) return refuse('entity-unknown', { table: 'leaks', id: leakId });
	const before = Object.hasOwn(leak.mendings, roundId) ? leak.mendings[roundId] : undefined;
	const changed = withChanges(Mending, before ?? {}, changes);
	if (!changed.ok) return changed;
	const kept = Object.keys(changed.value).length > 0 ? changed.value : undefined;
	draft.set('leaks', { ...leak, mendings: withEntry(leak.mendings, roundId, kept) });
	return ok(null);
}

function withEntry<V>(table: Record<string, V>, key: string, value: V | undefined) {
	const { [key]: _, ...rest } = table;
	return value === undefined ? rest : { ...rest, [key]: value };
}

function withChanges<T extends object>(
	schema: z.ZodType<T>,
	before: T,
	changes: Changes<T>
): Result<T> {
	const next = { ...before } as Record<string, unknown>;
	for (const [field, value] of Object.entries(changes)) {
		if (value === null) delete next[field];
		else if (value !== undefined) next[field] = value;
	}
	const parsed = schema.safeParse(next);
	if (parsed.success) return ok(parsed.data);
	return refuse('field-invalid', { field: parsed.error.issues[0]?.path.join('.') ?? '' });
}
