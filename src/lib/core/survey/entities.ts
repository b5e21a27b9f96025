import type { z } from 'zod';
import type { CommandBody, CommandKind } from './command.ts';
import {
	Adjustment,
	Area,
	Leak,
	Plan,
	RoomCheck,
	Round,
	Section,
	ShutdownWindow,
	type Survey
} from './schema.ts';
import { SystemTest } from './system-test-schema.ts';

/** The tables of a survey: entities by id. */
export type TableName =
	| 'plans'
	| 'sections'
	| 'rounds'
	| 'leaks'
	| 'systemTests'
	| 'areas'
	| 'roomChecks'
	| 'windows'
	| 'adjustments';
export type Entity<T extends TableName> = NonNullable<Survey[T]>[string];

/** The kinds of entity that commands add, change, mark as removed and bring back, by their noun. */
export const ENTITIES = {
	plan: { table: 'plans', field: 'plan', idField: 'planId', schema: Plan },
	section: { table: 'sections', field: 'section', idField: 'sectionId', schema: Section },
	round: { table: 'rounds', field: 'round', idField: 'roundId', schema: Round },
	leak: { table: 'leaks', field: 'leak', idField: 'leakId', schema: Leak },
	'system-test': {
		table: 'systemTests',
		field: 'test',
		idField: 'testId',
		schema: SystemTest
	},
	area: { table: 'areas', field: 'area', idField: 'areaId', schema: Area },
	'room-check': {
		table: 'roomChecks',
		field: 'roomCheck',
		idField: 'roomCheckId',
		schema: RoomCheck
	},
	window: { table: 'windows', field: 'window', idField: 'windowId', schema: ShutdownWindow },
	adjustment: {
		table: 'adjustments',
		field: 'adjustment',
		idField: 'adjustmentId',
		schema: Adjustment
	}
} as const satisfies Record<
	string,
	{ table: TableName; field: string; idField: string; schema: z.ZodType }
>;

type Noun = keyof typeof ENTITIES;
type Verb = 'add' | 'set' | 'remove' | 'restore';
export type EntityKind = Extract<CommandKind, `${Verb}-${Noun}`>;

/** A command on one entity, taken apart into what is done to what. */
export type EntityCommand = {
	readonly noun: Noun;
	readonly table: TableName;
	readonly schema: z.ZodType;
	readonly id: string;
} & (
	| { readonly verb: 'add'; readonly entity: { readonly id: string } }
	| { readonly verb: 'set'; readonly changes: Readonly<Record<string, unknown>> }
	| { readonly verb: 'remove' | 'restore' }
);

const VERB_AND_NOUN = /^(add|set|remove|restore)-(.+)$/;

/** Takes an entity's command apart; every other command gives nothing. */
export function entityCommand(body: CommandBody): EntityCommand | undefined {
	const [, verb, noun] = VERB_AND_NOUN.exec(body.kind) ?? [];
	if (verb === undefined || noun === undefined || !Object.hasOwn(ENTITIES, noun)) return undefined;
	const { table, field, idField, schema } = ENTITIES[noun as Noun];
	// The schema of commands has shaped these fields; their names are the table's above.
	const fields = body as unknown as Readonly<Record<string, unknown>>;
	const about = { noun: noun as Noun, table, schema };
	if (verb === 'add') {
		const entity = fields[field] as { readonly id: string };
		return { ...about, verb, entity, id: entity.id };
	}
	const id = fields[idField] as string;
	if (verb === 'set')
		return { ...about, verb, id, changes: fields['changes'] as Readonly<Record<string, unknown>> };
	return { ...about, verb: verb as 'remove' | 'restore', id };
}

/** The body of a command that marks an entity as removed, or brings it back. */
export function removal(command: EntityCommand, verb: 'remove' | 'restore'): CommandBody {
	const { idField } = ENTITIES[command.noun];
	return {
		kind: `${verb}-${command.noun}`,
		[idField]: command.id
	} as unknown as CommandBody;
}
