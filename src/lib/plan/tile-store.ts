import { openDB, type IDBPDatabase } from 'idb';

const NAME = 'airtally-tiles';
const TABLE = 'tiles';
/** About a hundred megabytes of JPEG; when there are more, all are given up and cut again. */
const MOST_TILES = 3000;
const FINEST = 'finest';

type Kept = readonly [tile: string, picture: Blob];

/**
 * Keeps tiles that were cut, on this device only: they can be cut again from the original at any
 * time, so nothing here is ever missed, and a full disk is no fault.
 */
export class TileStore {
	readonly #of: string;
	#opened: Promise<IDBPDatabase | undefined> | undefined;

	/** @param of names the original and how the plan was cut from it */
	constructor(of: string) {
		this.#of = of;
	}

	async read(tile: string): Promise<Blob | undefined> {
		const found = await this.#get(tile);
		return found instanceof Blob ? found : undefined;
	}

	/** The finest zoom that has tiles, once it was found out. */
	async finest(): Promise<number | undefined> {
		const found = await this.#get(FINEST);
		return typeof found === 'number' ? found : undefined;
	}

	/** @returns whether they are kept */
	keep(tiles: readonly Kept[]): Promise<boolean> {
		return this.#put(tiles);
	}

	keepFinest(zoom: number): Promise<boolean> {
		return this.#put([[FINEST, zoom]]);
	}

	/** Lets go of the database; it is opened again when it is needed. */
	async close(): Promise<void> {
		const opened = this.#opened;
		this.#opened = undefined;
		(await opened)?.close();
	}

	async #get(name: string): Promise<unknown> {
		const database = await this.#database();
		const found: unknown = await database?.get(TABLE, `${this.#of} ${name}`).catch(() => undefined);
		return found;
	}

	async #put(entries: readonly (readonly [name: string, value: unknown])[]): Promise<boolean> {
		const database = await this.#database();
		if (!database) return false;
		try {
			if ((await database.count(TABLE)) >= MOST_TILES) await database.clear(TABLE);
			const write = database.transaction(TABLE, 'readwrite');
			const puts = entries.map(([name, value]) => write.store.put(value, `${this.#of} ${name}`));
			await Promise.all([...puts, write.done]);
			return true;
		} catch {
			return false; // A full disk: they are drawn again when they are looked at.
		}
	}

	#database(): Promise<IDBPDatabase | undefined> {
		this.#opened ??= openDB(NAME, 1, {
			upgrade: (database) => void database.createObjectStore(TABLE)
		}).catch(() => undefined);
		return this.#opened;
	}
}
