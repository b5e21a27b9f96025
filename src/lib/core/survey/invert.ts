import { ok, refuse, type Result } from '../units/result.ts';
import type { CommandBody } from './command.ts';
import { find } from './ids.ts';
import type { Survey } from './schema.ts';

/**
 * The command that takes another back: applied after it, the survey is as it was before, and what
 * others changed meanwhile in other fields stays.
 *
 * @param before the survey just before `body` was applied
 * @returns a refusal `not-undoable` for the command that starts a site, `entity-unknown` when the
 * command did not fit the survey
 */
export function invert(before: Survey, body: CommandBody): Result<CommandBody> {
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
		case 'add-plan':
			return ok({ kind: 'remove-plan', planId: body.plan.id });
		case 'remove-plan':
		case 'restore-plan':
			return of(before.plans, body.planId, ({ removed }) => ({
				kind: removed ? 'remove-plan' : 'restore-plan',
				planId: body.planId
			}));
		case 'set-plan':
			return of(before.plans, body.planId, (plan) => ({
				...body,
				changes: previous(plan, body.changes)
			}));
		case 'add-section':
			return ok({ kind: 'remove-section', sectionId: body.section.id });
		case 'remove-section':
		case 'restore-section':
			return of(before.sections, body.sectionId, ({ removed }) => ({
				kind: removed ? 'remove-section' : 'restore-section',
				sectionId: body.sectionId
			}));
		case 'set-section':
			return of(before.sections, body.sectionId, (section) => ({
				...body,
				changes: previous(section, body.changes)
			}));
		case 'add-round':
			return ok({ kind: 'remove-round', roundId: body.round.id });
		case 'remove-round':
		case 'restore-round':
			return of(before.rounds, body.roundId, ({ removed }) => ({
				kind: removed ? 'remove-round' : 'restore-round',
				roundId: body.roundId
			}));
		case 'set-round':
			return of(before.rounds, body.roundId, (round) => ({
				...body,
				changes: previous(round, body.changes)
			}));
		case 'add-leak':
			return ok({ kind: 'remove-leak', leakId: body.leak.id });
		case 'remove-leak':
		case 'restore-leak':
			return of(before.leaks, body.leakId, ({ removed }) => ({
				kind: removed ? 'remove-leak' : 'restore-leak',
				leakId: body.leakId
			}));
		case 'set-leak':
			return of(before.leaks, body.leakId, (leak) => ({
				...body,
				changes: previous(leak, body.changes)
			}));
		case 'move-pin':
			return of(before.leaks, body.leakId, ({ planId, at }) => ({
				kind: 'set-leak',
				leakId: body.leakId,
				changes: { planId: planId ?? null, at: at ?? null }
			}));
		case 'record-sighting':
			return of(before.leaks, body.leakId, (leak) => ({
				...body,
				sighting: find(leak.sightings, body.roundId) ?? null
			}));
		case 'log-mending':
			return of(before.leaks, body.leakId, (leak) => ({
				...body,
				changes: previous(find(leak.mendings, body.roundId) ?? {}, body.changes)
			}));
		case 'add-system-test':
			return ok({ kind: 'remove-system-test', testId: body.test.id });
		case 'remove-system-test':
		case 'restore-system-test':
			return of(before.systemTests, body.testId, ({ removed }) => ({
				kind: removed ? 'remove-system-test' : 'restore-system-test',
				testId: body.testId
			}));
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

function of<T>(
	table: Readonly<Record<string, T>>,
	id: string,
	inverse: (entity: T) => CommandBody
): Result<CommandBody> {
	const entity = find(table, id);
	return entity ? ok(inverse(entity)) : refuse('entity-unknown', { id });
}
