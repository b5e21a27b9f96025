import { ok, refuse, type Result } from '../units/result.ts';
import type { CommandBody } from './command.ts';
import { entityCommand, removal, type EntityCommand, type EntityKind } from './entities.ts';
import { find } from './ids.ts';
import type { Leak, Survey } from './schema.ts';

/**
 * The command that takes another back: applied after it, the survey is as it was before, and what
 * others changed meanwhile in other fields stays.
 *
 * @param before the survey just before `body` was applied
 * @returns a refusal `not-undoable` for the command that starts a site, `entity-unknown` when the
 * command did not fit the survey
 */
export function invert(before: Survey, body: CommandBody): Result<CommandBody> {
	const command = entityCommand(body);
	if (command) return invertEntity(before, body, command);
	return invertOther(before, body as Exclude<CommandBody, { kind: EntityKind }>);
}

function invertEntity(
	before: Survey,
	body: CommandBody,
	command: EntityCommand
): Result<CommandBody> {
	if (command.verb === 'add') return ok(removal(command, 'remove'));
	const entity = find<{ removed?: boolean }>(
		(before[command.table] ?? {}) as Record<string, { removed?: boolean }>,
		command.id
	);
	if (!entity) return refuse('entity-unknown', { id: command.id });
	if (command.verb === 'set')
		return ok({ ...body, changes: previous(entity, command.changes) } as CommandBody);
	return ok(removal(command, entity.removed ? 'remove' : 'restore'));
}

function invertOther(
	before: Survey,
	body: Exclude<CommandBody, { kind: EntityKind }>
): Result<CommandBody> {
	switch (body.kind) {
		case 'start-site':
			return refuse('not-undoable', { kind: body.kind });
		case 'set-site':
			return ok({ ...body, changes: previous(before.site, body.changes) });
		case 'set-supply':
			return ok({ ...body, changes: previous(before.supply, body.changes) });
		case 'set-prices':
			return ok({ ...body, changes: previous(before.prices, body.changes) });
		case 'set-starting-values':
			return ok({ ...body, changes: previous(before.startingValues, body.changes) });
		case 'set-mend-plan':
			return ok({ ...body, changes: previous(before.mendPlan ?? {}, body.changes) });
		case 'move-pin':
			return ofLeak(before, body.leakId, ({ planId, at }) => ({
				kind: 'set-leak',
				leakId: body.leakId,
				changes: { planId: planId ?? null, at: at ?? null }
			}));
		case 'record-sighting':
			return ofLeak(before, body.leakId, (leak) => ({
				...body,
				sighting: find(leak.sightings, body.roundId) ?? null
			}));
		case 'log-mending':
			return ofLeak(before, body.leakId, (leak) => ({
				...body,
				changes: previous(find(leak.mendings, body.roundId) ?? {}, body.changes)
			}));
		case 'add-photo':
			return ok({ kind: 'remove-photo', leakId: body.leakId, photoId: body.photo.id });
		case 'set-photo': {
			const photo = find(find(before.leaks, body.leakId)?.photos ?? {}, body.photoId);
			if (!photo) return refuse('entity-unknown', { id: body.photoId });
			return ok({ ...body, changes: previous(photo, body.changes) });
		}
		case 'remove-photo':
		case 'restore-photo': {
			const photo = find(find(before.leaks, body.leakId)?.photos ?? {}, body.photoId);
			if (!photo) return refuse('entity-unknown', { id: body.photoId });
			return ok({ ...body, kind: photo.removed ? 'remove-photo' : 'restore-photo' });
		}
	}
}

/** The fields that the changes name, with the values they had; absent ones become `null`. */
function previous<C extends object>(entity: object, changes: C): C {
	const had = entity as Readonly<Record<string, unknown>>;
	return Object.fromEntries(
		Object.entries(changes)
			.filter(([, value]) => value !== undefined)
			.map(([field]) => [field, Object.hasOwn(had, field) ? had[field] : null])
	) as C;
}

function ofLeak(
	survey: Survey,
	id: string,
	inverse: (leak: Leak) => CommandBody
): Result<CommandBody> {
	const leak = find(survey.leaks, id);
	return leak ? ok(inverse(leak)) : refuse('entity-unknown', { id });
}
