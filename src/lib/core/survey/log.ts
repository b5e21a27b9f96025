import { ok, refuse, type Refusal, type Result } from '../units/result.ts';
import { applyTo } from './apply.ts';
import { Command, compareCommands } from './command.ts';
import { Draft } from './draft.ts';
import type { Survey } from './schema.ts';

/** A command that no longer applied when its turn came: kept, and shown. */
export interface Conflict {
	readonly command: Command;
	readonly refusal: Refusal;
}

/** Text of a log line that could not be read as a command: kept as it was, never dropped. */
export interface Quarantined {
	readonly entry: unknown;
	readonly reason: string;
}

export interface Folded {
	readonly survey: Survey;
	readonly conflicts: readonly Conflict[];
}

/**
 * Folds a log, in its one order, into the survey that it describes.
 *
 * @param commands in any order, at least the one that starts the site
 * @returns a refusal `log-without-start` when no command starts the site
 */
export function fold(commands: readonly Command[]): Result<Folded> {
	const ordered = sortLog(commands);
	const start = ordered.findIndex((command) => command.body.kind === 'start-site');
	const first = ordered[start];
	if (!first || first.body.kind !== 'start-site') return refuse('log-without-start');
	const rest = ordered.filter((_, index) => index !== start);
	return ok(foldOnto(first.body.survey, rest));
}

/** Folds further commands, already in order, onto a survey. */
export function foldOnto(survey: Survey, ordered: readonly Command[]): Folded {
	const draft = new Draft(survey);
	const conflicts: Conflict[] = [];
	for (const command of ordered) {
		const applied = applyTo(draft, command.body);
		if (!applied.ok) conflicts.push({ command, refusal: applied.error });
	}
	return { survey: draft.finish(), conflicts };
}

/** The log in its one order; already ordered logs are returned as they are. */
export function sortLog(commands: readonly Command[]): readonly Command[] {
	const ordered = commands.every((command, index) => {
		const before = commands[index - 1];
		return !before || compareCommands(before, command) <= 0;
	});
	return ordered ? commands : commands.toSorted(compareCommands);
}

/**
 * The union of two logs: a command is one by its id, so merging is idempotent and the order in
 * which copies meet does not matter.
 */
export function mergeLogs(a: readonly Command[], b: readonly Command[]): readonly Command[] {
	const known = new Set(a.map((command) => command.id));
	const added = b.filter((command) => !known.has(command.id) && known.add(command.id));
	return added.length === 0 ? sortLog(a) : [...a, ...added].toSorted(compareCommands);
}

/** Reads entries of a log that came from outside; what does not parse is set aside with its reason. */
export function readLog(entries: readonly unknown[]): {
	commands: Command[];
	quarantined: Quarantined[];
} {
	const commands: Command[] = [];
	const quarantined: Quarantined[] = [];
	for (const entry of entries) {
		const parsed = Command.safeParse(entry);
		if (parsed.success) commands.push(parsed.data);
		else {
			const issue = parsed.error.issues[0];
			quarantined.push({
				entry,
				reason: `${issue?.path.join('.') ?? ''}: ${issue?.message ?? ''}`
			});
		}
	}
	return { commands, quarantined };
}

/** The highest logical time in a log; a device's next command gets one more. */
export function latestTime(commands: readonly Command[]): number {
	return commands.reduce((latest, command) => Math.max(latest, command.time), 0);
}
