import type { z } from 'zod';
import { ok, refuse, type Result } from '../units/result.ts';
import type { Changes, CommandBody } from './command.ts';
import { Draft } from './draft.ts';
import {
	entityCommand,
	type Entity,
	type EntityCommand,
	type EntityKind,
	type TableName
} from './entities.ts';
import { find } from './ids.ts';
import {
	Mending,
	MendPlan,
	Photo,
	Site,
	StartingValues,
	type Leak,
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
	const command = entityCommand(body);
	if (command) return applyToEntity(draft, command);
	return applyOther(draft, body as Exclude<CommandBody, { kind: EntityKind }>);
}

function applyToEntity(draft: Draft, command: EntityCommand): Result<null> {
	const { table, id } = command;
	const before = draft.get(table, id);
	if (command.verb === 'add') {
		if (before) return refuse('entity-exists', { table, id });
		draft.set(table, command.entity as Entity<TableName>);
		return ok(null);
	}
	if (!before) return refuse('entity-unknown', { table, id });
	if (command.verb === 'set') {
		const schema = command.schema as z.ZodType<Entity<TableName>>;
		const changed = withChanges(schema, before, command.changes);
		if (!changed.ok) return changed;
		draft.set(table, changed.value);
	} else draft.set(table, marked(before, command.verb === 'remove'));
	return ok(null);
}

function applyOther(draft: Draft, body: Exclude<CommandBody, { kind: EntityKind }>): Result<null> {
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
		case 'set-mend-plan':
			return setRoot(draft, 'mendPlan', MendPlan, body.changes);
		case 'move-pin':
			return changeLeak(draft, body.leakId, (leak) =>
				ok({ ...leak, planId: body.planId, at: body.at })
			);
		case 'record-sighting':
			return changeLeak(draft, body.leakId, (leak) =>
				ok({
					...leak,
					sightings: withEntry(leak.sightings, body.roundId, body.sighting ?? undefined)
				})
			);
		case 'log-mending':
			return changeLeak(draft, body.leakId, (leak) => {
				const before = find(leak.mendings, body.roundId) ?? {};
				const mending = withChanges(Mending, before, body.changes);
				if (!mending.ok) return mending;
				const kept = Object.keys(mending.value).length > 0 ? mending.value : undefined;
				return ok({ ...leak, mendings: withEntry(leak.mendings, body.roundId, kept) });
			});
		case 'add-photo':
			return changeLeak(draft, body.leakId, (leak) =>
				find(leak.photos ?? {}, body.photo.id)
					? refuse('entity-exists', { table: 'photos', id: body.photo.id })
					: ok({ ...leak, photos: { ...leak.photos, [body.photo.id]: body.photo } })
			);
		case 'set-photo':
			return changePhoto(draft, body, (photo) => withChanges<Photo>(Photo, photo, body.changes));
		case 'remove-photo':
		case 'restore-photo':
			return changePhoto(draft, body, (photo) => ok(marked(photo, body.kind === 'remove-photo')));
	}
}

type RootName = 'site' | 'supply' | 'prices' | 'startingValues' | 'mendPlan';

function setRoot<Name extends RootName>(
	draft: Draft,
	name: Name,
	schema: z.ZodType<NonNullable<Survey[Name]>>,
	changes: Changes<NonNullable<Survey[Name]>>
): Result<null> {
	const before = draft.survey[name] ?? {};
	const changed = withChanges(schema, before as NonNullable<Survey[Name]>, changes);
	if (!changed.ok) return changed;
	const { [name]: _, ...others } = draft.survey;
	// A value that a survey of the first days does not have is absent again when it is empty.
	const absent = name === 'mendPlan' && Object.keys(changed.value).length === 0;
	draft.replace((absent ? others : { ...others, [name]: changed.value }) as Survey);
	return ok(null);
}

function changeLeak(
	draft: Draft,
	id: string,
	change: (before: Leak) => Result<Leak>
): Result<null> {
	const before = draft.get('leaks', id);
	if (!before) return refuse('entity-unknown', { table: 'leaks', id });
	const next = change(before);
	if (!next.ok) return next;
	draft.set('leaks', next.value);
	return ok(null);
}

function changePhoto(
	draft: Draft,
	{ leakId, photoId }: { readonly leakId: string; readonly photoId: string },
	change: (before: Photo) => Result<Photo>
): Result<null> {
	return changeLeak(draft, leakId, (leak) => {
		const before = find(leak.photos ?? {}, photoId);
		if (!before) return refuse('entity-unknown', { table: 'photos', id: photoId });
		const next = change(before);
		if (!next.ok) return next;
		return ok({ ...leak, photos: { ...leak.photos, [photoId]: next.value } });
	});
}

/** What is removed is only marked, so that an edit made elsewhere meanwhile is kept and can come back. */
function marked<T extends { removed?: boolean | undefined }>(before: T, removed: boolean): T {
	const { removed: _, ...rest } = before;
	return (removed ? { ...rest, removed } : rest) as T;
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
