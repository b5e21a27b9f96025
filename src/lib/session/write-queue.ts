import type { Command } from '#lib/core/survey/command.ts';
import { refuse, type Refusal, type Result } from '#lib/core/units/result.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import type { SiteBatch, SurveyStore } from '#lib/storage/port.ts';

/** Whether what the user did is on the disk. */
export type SaveState =
	| { readonly kind: 'saved' }
	| { readonly kind: 'saving' }
	| { readonly kind: 'not-saved'; readonly refusal: Refusal };

interface Item {
	readonly commands: readonly Command[];
	readonly blobs: readonly StoredBlob[];
}

/** A disk that has not answered for so long is said not to have: what it was given may be lost. */
const SLOW_MS = 2_000;
const FIRST_WAIT_MS = 500;
const LONGEST_WAIT_MS = 15_000;

/**
 * Writes what the user did, in order, and keeps it until it is on the disk: a write that fails is
 * tried again, more and more slowly, for as long as the program runs.
 */
export class WriteQueue {
	readonly #store: Pick<SurveyStore, 'write'>;
	readonly #siteId: string;
	readonly #about: () => SiteBatch['about'];
	readonly #onState: (state: SaveState) => void;
	readonly #onSaved: (commands: readonly Command[]) => void;
	#waiting: Item[] = [];
	#running: Promise<void> | undefined;
	#wake: (() => void) | undefined;

	constructor(
		store: Pick<SurveyStore, 'write'>,
		siteId: string,
		hooks: {
			/** What the list of sites shows, at the time of writing. */
			readonly about: () => SiteBatch['about'];
			readonly onState: (state: SaveState) => void;
			readonly onSaved: (commands: readonly Command[]) => void;
		}
	) {
		this.#store = store;
		this.#siteId = siteId;
		this.#about = hooks.about;
		this.#onState = hooks.onState;
		this.#onSaved = hooks.onSaved;
	}

	add(item: Item): void {
		this.#waiting.push(item);
		if (this.#running) return;
		this.#onState({ kind: 'saving' });
		this.#running = this.#run();
	}

	/** Tries again now. */
	retry(): void {
		this.#wake?.();
	}

	/** Pictures that are not on the disk yet. */
	blob(sha256: string): StoredBlob | undefined {
		return this.#waiting.flatMap(({ blobs }) => blobs).find((blob) => blob.sha256 === sha256);
	}

	/** Settles when nothing waits any more. */
	async idle(): Promise<void> {
		while (this.#running) await this.#running;
	}

	async #run(): Promise<void> {
		let wait = FIRST_WAIT_MS;
		while (this.#waiting.length > 0) {
			const refusal = await this.#writeAll();
			if (!refusal) {
				wait = FIRST_WAIT_MS;
				continue;
			}
			this.#onState({ kind: 'not-saved', refusal });
			await this.#pause(wait);
			wait = Math.min(wait * 2, LONGEST_WAIT_MS);
		}
		this.#running = undefined;
		this.#onState({ kind: 'saved' });
	}

	/** On a full disk each is tried by itself: a picture that does not fit must not hold up the rest. */
	async #writeAll(): Promise<Refusal | undefined> {
		const items = [...this.#waiting];
		const together = await this.#write(items);
		if (together.ok) return undefined;
		if (together.error.code !== 'storage-full' || items.length === 1) return together.error;
		let refusal: Refusal | undefined;
		for (const item of items) {
			const alone = await this.#write([item]);
			if (!alone.ok) refusal = alone.error;
		}
		return refusal;
	}

	async #write(items: readonly Item[]): Promise<Result<null>> {
		const commands = items.flatMap((item) => item.commands);
		const blobs = items.flatMap((item) => item.blobs);
		const slow = setTimeout(
			() => this.#onState({ kind: 'not-saved', refusal: { code: 'write-slow' } }),
			SLOW_MS
		);
		const written = await this.#store
			.write(this.#siteId, { commands, blobs, about: this.#about() })
			.catch(() => refuse('write-failed', { cause: 'unknown' }));
		clearTimeout(slow);
		if (!written.ok) return written;
		this.#waiting = this.#waiting.filter((item) => !items.includes(item));
		this.#onSaved(commands);
		return written;
	}

	#pause(ms: number): Promise<void> {
		return new Promise((resolve) => {
			const timer = setTimeout(resolve, ms);
			this.#wake = () => {
				clearTimeout(timer);
				resolve();
			};
		});
	}
}
