import { openDB, type IDBPDatabase } from 'idb';

const NAME = 'airtally-tiles';
const TABLE = 'tiles';
/** About a hundred megabytes of JPEG; when there are more, all are given up and cut again. */
const MOST_TILES = 3000;

/**
 * Keeps tiles that were cut, on this device only: they can be cut again from the original at any
 * time, so nothing here is ever missed, and a full disk is no fault.
 */
export class TileStore {
	readonly #opened: Promise<IDBPDatabase | undefined>;
	readonly #of: string;

	/** @param of names the original and how the plan was cut from it */
	constructor(of: string) {
		this.#of = of;
		this.#opened = openDB(NAME, 1, {
			upgrade: (database) => void database.createObjectStore(TABLE)
		}).catch(() => undefined);
	}

	async read(tile: string): Promise<Blob | undefined> {
		const found: unknown = await (
			await this.#opened
		)
			?.get(TABLE, `${this.#of} ${tile}`)
			.catch(() => undefined);
		return found instanceof Blob ? found : undefined;
	}

	async keep(tile: string, picture: Blob): Promise<void> {
		const database = await this.#opened;
		if (!database) return;
		try {
			if ((await database.count(TABLE)) >= MOST_TILES) await database.clear(TABLE);
			await database.put(TABLE, picture, `${this.#of} ${tile}`);
		} catch {
			// A full disk: the tile is drawn again the next time.
		}
	}

	async close(): Promise<void> {
		(await this.#opened)?.close();
	}
}
