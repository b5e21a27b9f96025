import { compareCommands, type Command, type CommandBody } from './command.ts';
import { ENTITIES } from './entities.ts';
import type { Survey } from './schema.ts';

/** One thing that two copies of a survey changed, each in its own way, before they met. */
export interface Clash {
	/** What kind of thing: `leak`, `section` …, `site`. */
	readonly noun: string;
	/** Its tag number or name; empty where there is only one. */
	readonly name: string;
	/** The field; `removed` when one copy removed what the other changed. */
	readonly field: string;
	readonly kept: unknown;
	/** The value that does not show any more; it stays in the log. */
	readonly lost: unknown;
	readonly lostFrom: 'here' | 'file';
}

/** A place in the survey that holds one value. */
interface Slot {
	readonly noun: string;
	readonly id: string;
	readonly field: string;
	readonly value: unknown;
}

interface Written extends Slot {
	readonly command: Command;
}

/**
 * What two logs of one site both changed since they were last the same, where their values differ.
 * The later one in the order of the log is kept.
 *
 * @param merged names the things
 */
export function clashesBetween(
	here: readonly Command[],
	file: readonly Command[],
	merged: Survey
): readonly Clash[] {
	const onlyHere = lastWritten(without(here, file));
	const onlyFile = lastWritten(without(file, here));
	const clashes: Clash[] = [];
	for (const [key, mine] of onlyHere) {
		const theirs = onlyFile.get(key);
		if (!theirs || JSON.stringify(mine.value) === JSON.stringify(theirs.value)) continue;
		const keepsMine = compareCommands(mine.command, theirs.command) > 0;
		const [kept, lost] = keepsMine ? [mine, theirs] : [theirs, mine];
		clashes.push(clashOf(kept, lost, merged, keepsMine ? 'file' : 'here'));
	}
	return [
		...clashes,
		...removedButChanged(onlyHere, onlyFile, merged, 'file'),
		...removedButChanged(onlyFile, onlyHere, merged, 'here')
	];
}

function without(log: readonly Command[], other: readonly Command[]): readonly Command[] {
	const known = new Set(other.map(({ id }) => id));
	return log.filter(({ id }) => !known.has(id)).toSorted(compareCommands);
}

function lastWritten(ordered: readonly Command[]): ReadonlyMap<string, Written> {
	const written = new Map<string, Written>();
	for (const command of ordered) {
		for (const slot of slotsOf(command.body)) {
			written.set(`${slot.noun}\n${slot.id}\n${slot.field}`, { ...slot, command });
		}
	}
	return written;
}

/** Each thing that one copy removed and the other changed: it stays removed, the change is kept in it. */
function removedButChanged(
	removing: ReadonlyMap<string, Written>,
	changing: ReadonlyMap<string, Written>,
	merged: Survey,
	lostFrom: Clash['lostFrom']
): Clash[] {
	const gone = [...removing.values()].filter(({ field, value }) => field === 'removed' && value);
	return gone.flatMap((removal) => {
		const change = [...changing.values()].find(
			({ noun, id, field }) => noun === removal.noun && id === removal.id && field !== 'removed'
		);
		return change ? [clashOf(removal, { ...removal, value: false }, merged, lostFrom)] : [];
	});
}

function clashOf(kept: Slot, lost: Slot, merged: Survey, lostFrom: Clash['lostFrom']): Clash {
	const { noun, id, field } = kept;
	return {
		noun,
		name: nameOf(merged, noun, id),
		field,
		kept: kept.value,
		lost: lost.value,
		lostFrom
	};
}

function nameOf(survey: Survey, noun: string, id: string): string {
	const entity = Object.entries(ENTITIES).find(([key]) => key === noun)?.[1];
	if (!entity) return '';
	const table: Readonly<Record<string, object>> = survey[entity.table] ?? {};
	const { tag, name } = (table[id] ?? {}) as { tag?: unknown; name?: unknown };
	if (typeof tag === 'number') return String(tag);
	return typeof name === 'string' ? name : '';
}

function slotsOf(body: CommandBody): readonly Slot[] {
	if (body.kind === 'move-pin') {
		const { leakId: id, planId, at } = body;
		return [{ noun: 'leak', id, field: 'pin', value: { planId, at } }];
	}
	if (body.kind === 'record-sighting') {
		const { leakId: id, roundId, sighting } = body;
		return [{ noun: 'leak', id, field: `sighting ${roundId}`, value: sighting }];
	}
	const [, verb, noun] = /^(set|log|remove|restore)-(.+)$/.exec(body.kind) ?? [];
	if (verb === undefined || noun === undefined) return [];
	if (body.kind === 'log-mending') {
		return Object.entries(body.changes).map(([field, value]) => ({
			noun: 'leak',
			id: body.leakId,
			field: `mending ${body.roundId} ${field}`,
			value
		}));
	}
	const id = idIn(body, noun);
	if (verb === 'set' && 'changes' in body) {
		const changes: Readonly<Record<string, unknown>> = body.changes;
		return Object.entries(changes).map(([field, value]) => ({ noun, id, field, value }));
	}
	return [{ noun, id, field: 'removed', value: verb === 'remove' }];
}

function idIn(body: CommandBody, noun: string): string {
	const fields: Readonly<Record<string, unknown>> = body;
	const idField = Object.entries(ENTITIES).find(([key]) => key === noun)?.[1].idField ?? 'photoId';
	const id = fields[idField];
	return typeof id === 'string' ? id : '';
}
