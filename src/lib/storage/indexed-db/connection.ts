import { openDB } from 'idb';
import { ok, refuse, type Refusal, type Result } from '#lib/core/units/result.ts';
import { DATABASE_NAME, DATABASE_VERSION, upgrade, type Database, type Shape } from './shape.ts';

/** Waits between tries on a connection that was lost; whoever asked may try again later. */
const WAITS_MS = [40, 200, 600];
const OPEN_TIMEOUT_MS = 5_000;
const WORK_TIMEOUT_MS = 10_000;

/**
 * One connection to the database, opened when it is first needed and again when it was lost: a
 * browser may drop it behind the program's back, and then nothing works on the old one any more.
 */
export class Connection {
	#database: Promise<Database> | undefined;
	/** The same once it is open: then work begins at once, before the page draws. */
	#ready: Database | undefined;
	/** A newer program has made it over: it is read as it is, and never written to. */
	#newer = false;
	readonly #waitsMs: readonly number[];

	constructor(waitsMs: readonly number[] = WAITS_MS) {
		this.#waitsMs = waitsMs;
	}

	/**
	 * Does one piece of work, which must be safe to do again: it is tried anew on a new connection
	 * when the old one fails.
	 *
	 * @param otherwise the code of the refusal when the work fails for no better known reason
	 */
	async run<T>(
		otherwise: 'write-failed' | 'read-failed',
		work: (database: Database) => Promise<T>,
		timeoutMs = WORK_TIMEOUT_MS
	): Promise<Result<T>> {
		for (let attempt = 0; ; attempt++) {
			let code: string = 'storage-unavailable';
			try {
				const database = this.#ready ?? (await withTimeout(this.#open(), OPEN_TIMEOUT_MS));
				if (this.#newer && otherwise === 'write-failed') return refuse('storage-newer');
				code = otherwise;
				return ok(await withTimeout(work(database), timeoutMs));
			} catch (error) {
				this.close();
				const refusal = refusalOf(error, code);
				const wait = this.#waitsMs[attempt];
				if (isFinal(error) || wait === undefined) return { ok: false, error: refusal };
				await new Promise((resolve) => setTimeout(resolve, wait));
			}
		}
	}

	close(): void {
		const closing = this.#database;
		this.#database = this.#ready = undefined;
		closing?.then(
			(database) => database.close(),
			() => undefined
		);
	}

	#open(): Promise<Database> {
		if (this.#database) return this.#database;
		const opening = this.#connect();
		this.#database = opening;
		opening.then(
			(database) => {
				if (this.#database === opening) this.#ready = database;
			},
			() => undefined
		);
		return opening;
	}

	async #connect(): Promise<Database> {
		const lost = (): void => {
			this.#database = this.#ready = undefined;
		};
		// A newer program in another tab waits for this connection to go.
		const watch = { blocking: () => this.close(), terminated: lost };
		let database: Database;
		try {
			database = await openDB<Shape>(DATABASE_NAME, DATABASE_VERSION, { upgrade, ...watch });
			this.#newer = false;
		} catch (error) {
			if (nameOf(error) !== 'VersionError') throw error;
			// Without a version it opens as whoever wrote it last has left it.
			database = await openDB<Shape>(DATABASE_NAME, undefined, watch);
			this.#newer = true;
		}
		database.addEventListener('close', lost);
		return database;
	}
}

function refusalOf(error: unknown, code: string): Refusal {
	const name = nameOf(error);
	if (name === 'QuotaExceededError') return { code: 'storage-full' };
	return refuse(code, { cause: name }).error;
}

/** Trying again at once cannot help. */
function isFinal(error: unknown): boolean {
	return ['QuotaExceededError', 'DataCloneError', 'TimeoutError'].includes(nameOf(error));
}

function nameOf(error: unknown): string {
	return error instanceof Error || error instanceof DOMException ? error.name : 'unknown';
}

async function withTimeout<T>(work: Promise<T>, ms: number): Promise<T> {
	let timer: ReturnType<typeof setTimeout> | undefined;
	const late = new Promise<never>((_, reject) => {
		timer = setTimeout(() => reject(new DOMException(`after ${ms} ms`, 'TimeoutError')), ms);
	});
	try {
		return await Promise.race([work, late]);
	} finally {
		clearTimeout(timer);
	}
}
