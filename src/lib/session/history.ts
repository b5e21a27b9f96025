import type { Command, CommandBody, CommandKind } from '#lib/core/survey/command.ts';

/** A command of this device and the one that takes it back. */
export interface Reversible {
	readonly command: Command;
	readonly inverse: CommandBody;
}

/** What the user did in one go, and takes back in one go. */
interface Step {
	readonly key: string;
	/** What it was when it was first done, for the label of the button. */
	readonly kind: CommandKind;
	readonly parts: readonly { readonly id: string; readonly inverse: CommandBody }[];
}

/** A command to append, and the one that it takes back. */
export interface Reversal {
	readonly of: string;
	readonly body: CommandBody;
}

/**
 * What this device can take back and bring back. It is told of every command of the device in the
 * order of the log, also on opening a site, so that undo outlives a restart.
 */
export class History {
	#undo: Step[] = [];
	#redo: Step[] = [];

	get canUndo(): boolean {
		return this.#undo.length > 0;
	}

	get canRedo(): boolean {
		return this.#redo.length > 0;
	}

	/** The kind of the step that undo would take back. */
	get lastDone(): CommandKind | undefined {
		return this.#undo.at(-1)?.kind;
	}

	/** What to append to take the last step back: its commands' inverses, last first. */
	nextUndo(): readonly Reversal[] {
		return reversals(this.#undo.at(-1));
	}

	nextRedo(): readonly Reversal[] {
		return reversals(this.#redo.at(-1));
	}

	/** Gives up a step that cannot be taken back any more. */
	dropUndo(): void {
		this.#undo.pop();
	}

	dropRedo(): void {
		this.#redo.pop();
	}

	tell({ command, inverse }: Reversible): void {
		const part = { id: command.id, inverse };
		const key = command.step ?? command.id;
		if (command.undoes !== undefined) {
			const kind = takeOut(this.#undo, command.undoes) ?? command.body.kind;
			putOn(this.#redo, key, kind, part);
		} else if (command.redoes !== undefined) {
			const kind = takeOut(this.#redo, command.redoes) ?? command.body.kind;
			putOn(this.#undo, key, kind, part);
		} else {
			this.#redo = [];
			putOn(this.#undo, key, command.body.kind, part);
		}
	}
}

function reversals(step: Step | undefined): readonly Reversal[] {
	return (step?.parts ?? []).toReversed().map(({ id, inverse }) => ({ of: id, body: inverse }));
}

function putOn(steps: Step[], key: string, kind: CommandKind, part: Step['parts'][number]): void {
	const last = steps.at(-1);
	if (last?.key !== key) steps.push({ key, kind, parts: [part] });
	else steps[steps.length - 1] = { ...last, parts: [...last.parts, part] };
}

/** Takes the part with a name out of its step, and the step with its last part. */
function takeOut(steps: Step[], id: string): CommandKind | undefined {
	const index = steps.findLastIndex((step) => step.parts.some((part) => part.id === id));
	const step = steps[index];
	if (!step) return undefined;
	const parts = step.parts.filter((part) => part.id !== id);
	if (parts.length === 0) steps.splice(index, 1);
	else steps[index] = { ...step, parts };
	return step.kind;
}
