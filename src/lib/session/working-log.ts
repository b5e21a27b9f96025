import { applyTo } from '#lib/core/survey/apply.ts';
import { compareCommands, type Command } from '#lib/core/survey/command.ts';
import { Draft } from '#lib/core/survey/draft.ts';
import { invert } from '#lib/core/survey/invert.ts';
import { fold, foldOnto, latestTime, mergeLogs, type Conflict } from '#lib/core/survey/log.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { Checkpoint, LogPosition } from '#lib/storage/port.ts';
import type { Reversible } from './history.ts';

/** So many commands stay after a checkpoint, at least, so that they can be taken back after a restart. */
export const KEPT_AFTER_CHECKPOINT = 50;
/** So many steps of this device stay after it, unless they lie further back than is worth replaying. */
const KEPT_STEPS = 20;
const LOOK_BACK = 300;
/** A checkpoint is made when so many more have come. */
export const CHECKPOINT_EVERY = 200;

/** A survey in memory: a checkpoint, and the commands since. */
export class WorkingLog {
	#base: Checkpoint;
	/** The commands in the checkpoint; not known until they were read. */
	#older: readonly Command[] | undefined;
	#tail: readonly Command[];
	readonly #ids = new Set<string>();
	#latestTime: number;
	survey: Survey;
	conflicts: readonly Conflict[];

	private constructor(
		base: Checkpoint,
		older: readonly Command[] | undefined,
		tail: readonly Command[]
	) {
		this.#base = base;
		this.#older = older;
		this.#tail = tail;
		for (const { id } of [...(older ?? []), ...tail]) this.#ids.add(id);
		this.#latestTime = Math.max(base.upTo.time, latestTime(tail));
		({ survey: this.survey, conflicts: this.conflicts } = this.#folded());
	}

	/** @returns a refusal `log-without-start` when there is neither a checkpoint nor a start */
	static from(checkpoint: Checkpoint | undefined, tail: readonly Command[]): Result<WorkingLog> {
		return checkpoint ? ok(new WorkingLog(checkpoint, undefined, tail)) : WorkingLog.fromLog(tail);
	}

	/** @param commands the whole log, in order */
	static fromLog(commands: readonly Command[]): Result<WorkingLog> {
		const start = commands.find(({ body }) => body.kind === 'start-site');
		if (start?.body.kind !== 'start-site') return refuse('log-without-start');
		const { survey } = start.body;
		const base = { survey, conflicts: [], upTo: positionOf(start), commandCount: 1 };
		const tail = commands.filter((command) => command !== start);
		return ok(new WorkingLog(base, [start], tail));
	}

	get commandCount(): number {
		return this.#base.commandCount + this.#tail.length;
	}

	get nextTime(): number {
		return this.#latestTime + 1;
	}

	/** The commands that the checkpoint covers, up to this one, have still to be read. */
	get olderThan(): LogPosition | undefined {
		return this.#older ? undefined : this.#base.upTo;
	}

	/** Says which commands the checkpoint covers, as they were read. */
	readOlder(commands: readonly Command[]): void {
		if (this.#older) return;
		this.#older = commands;
		for (const { id } of commands) this.#ids.add(id);
	}

	/** All commands in order; nothing as long as the older ones were not read. */
	get commands(): readonly Command[] | undefined {
		return this.#older && mergeLogs(this.#older, this.#tail);
	}

	/** What is in memory whatever was read: the survey of the checkpoint, and the commands since. */
	get sinceCheckpoint(): { readonly survey: Survey; readonly tail: readonly Command[] } {
		return { survey: this.#base.survey, tail: this.#tail };
	}

	/** Appends commands that were applied already, and that sort after every other. */
	append(commands: readonly Command[], survey: Survey): void {
		this.#tail = [...this.#tail, ...commands];
		for (const { id, time } of commands) {
			this.#ids.add(id);
			this.#latestTime = Math.max(this.#latestTime, time);
		}
		this.survey = survey;
	}

	/**
	 * Takes in commands from elsewhere, wherever in the order they belong.
	 *
	 * @returns whether they could be: `false` when they may belong before the checkpoint and the
	 * older commands were not read
	 */
	merge(incoming: readonly Command[]): boolean {
		const fresh = incoming.filter(({ id }) => !this.#ids.has(id));
		if (fresh.length === 0) return true;
		const covered = fresh.some((command) => !isAfter(command, this.#base.upTo));
		if (covered && !this.#older) return false;
		for (const { id } of fresh) this.#ids.add(id);
		this.#latestTime = Math.max(this.#latestTime, latestTime(fresh));
		if (covered && this.#older) this.#restart(mergeLogs([...this.#older, ...this.#tail], fresh));
		else this.#tail = mergeLogs(this.#tail, fresh);
		({ survey: this.survey, conflicts: this.conflicts } = this.#folded());
		return true;
	}

	/** The commands of a device since the checkpoint, each with the one that takes it back. */
	reversible(device: string): Reversible[] {
		const draft = new Draft(this.#base.survey);
		const reversible: Reversible[] = [];
		for (const command of this.#tail) {
			const inverse = invert(draft.survey, command.body);
			const applied = applyTo(draft, command.body);
			if (command.device === device && inverse.ok && applied.ok) {
				reversible.push({ command, inverse: inverse.value });
			}
		}
		return reversible;
	}

	/** A checkpoint worth keeping, when there is one, that leaves this device its last steps to undo. */
	nextCheckpoint(device: string): Checkpoint | undefined {
		if (!this.#older) return undefined;
		const covered = coverable(this.#tail, device);
		const last = covered.at(-1);
		if (!last) return undefined;
		const { survey, conflicts } = foldOnto(this.#base.survey, covered);
		return {
			survey,
			conflicts: [...this.#base.conflicts, ...conflicts],
			upTo: positionOf(last),
			commandCount: this.#base.commandCount + covered.length
		};
	}

	/** Goes on from a checkpoint of `nextCheckpoint` that was kept. */
	adopt(checkpoint: Checkpoint): void {
		const covered = this.#tail.filter((command) => !isAfter(command, checkpoint.upTo));
		if (!this.#older) return;
		if (this.#base.commandCount + covered.length !== checkpoint.commandCount) return;
		this.#older = mergeLogs(this.#older, covered);
		this.#tail = this.#tail.slice(covered.length);
		this.#base = checkpoint;
	}

	#restart(commands: readonly Command[]): void {
		const whole = WorkingLog.fromLog(commands);
		if (!whole.ok) return;
		this.#base = whole.value.#base;
		this.#older = whole.value.#older;
		this.#tail = whole.value.#tail;
	}

	#folded(): { survey: Survey; conflicts: readonly Conflict[] } {
		const { survey, conflicts } = foldOnto(this.#base.survey, this.#tail);
		return { survey, conflicts: [...this.#base.conflicts, ...conflicts] };
	}
}

/** A checkpoint for a log that came in whole, such as from a file; nothing when it is short. */
export function checkpointOf(commands: readonly Command[], device: string): Checkpoint | undefined {
	const covered = coverable(commands, device);
	const folded = fold(covered);
	const last = covered.at(-1);
	if (!folded.ok || !last) return undefined;
	return { ...folded.value, upTo: positionOf(last), commandCount: covered.length };
}

/**
 * The commands to make a checkpoint of: none while they are few. Enough steps of the device stay
 * after it, and none of them is cut in two.
 */
function coverable(commands: readonly Command[], device: string): readonly Command[] {
	const few: readonly Command[] = [];
	if (commands.length < KEPT_AFTER_CHECKPOINT + CHECKPOINT_EVERY) return few;
	const begins = new Map<string, number>();
	for (const [index, { step }] of commands.entries()) {
		if (step !== undefined && !begins.has(step)) begins.set(step, index);
	}
	const mine = commands.slice(-LOOK_BACK).filter((command) => command.device === device);
	const wanted = Math.min(KEPT_STEPS, new Set(mine.map(stepOf)).size);
	const kept = new Set<string>();
	let end = commands.length;
	let whole = end;
	while (end > 0) {
		const enough = kept.size >= wanted && commands.length - end >= KEPT_AFTER_CHECKPOINT;
		if (enough && whole >= end) break;
		const command = commands[--end];
		if (!command) break;
		if (command.device !== device) continue;
		whole = Math.min(whole, begins.get(stepOf(command)) ?? end);
		kept.add(stepOf(command));
	}
	return end < CHECKPOINT_EVERY ? few : commands.slice(0, end);
}

function stepOf(command: Command): string {
	return command.step ?? command.id;
}

function positionOf({ time, device, id }: Command): LogPosition {
	return { time, device, id };
}

function isAfter(command: Command, position: LogPosition): boolean {
	return compareCommands(command, { ...command, ...position }) > 0;
}
