import { IDBDatabase, IDBFactory, IDBObjectStore } from 'fake-indexeddb';

/** How an operation of the database goes wrong. */
export type Fault = 'throws' | 'aborts' | 'connection-lost' | 'disk-full';

const STORE_OPERATIONS = ['get', 'getAll', 'getAllKeys', 'count', 'put', 'delete'] as const;

/**
 * Makes operations of the database fail, counted over all that are done on it: the first to fail,
 * and how many from there on. Moving the first one on, run by run, until none fails any more, puts
 * the fault at every place that there is.
 */
export class FailingDatabase {
	#done = 0;
	#from = Infinity;
	#until = Infinity;
	#fault: Fault = 'throws';
	#sparing = false;
	readonly #undo: (() => void)[] = [];

	/** How many operations were made to fail since `failFrom`. */
	hits = 0;

	constructor() {
		for (const name of STORE_OPERATIONS) {
			this.#wrap(IDBObjectStore.prototype, name, (store: IDBObjectStore) => {
				if (this.#fault === 'aborts') store.transaction.abort();
				if (this.#fault === 'connection-lost') store.transaction.db.close();
			});
		}
		this.#wrap(IDBDatabase.prototype, 'transaction', (database: IDBDatabase) => {
			if (this.#fault === 'connection-lost') database.close();
		});
		this.#wrap(IDBFactory.prototype, 'open', () => undefined);
	}

	failFrom(first: number, count: number, fault: Fault): void {
		this.#done = 0;
		this.hits = 0;
		this.#from = first;
		this.#until = first + count;
		this.#fault = fault;
	}

	heal(): void {
		this.#from = Infinity;
	}

	/** Does something whose operations neither count nor fail. */
	async sparing<T>(work: () => Promise<T>): Promise<T> {
		this.#sparing = true;
		try {
			return await work();
		} finally {
			this.#sparing = false;
		}
	}

	/** Puts the database back as it was. */
	end(): void {
		for (const undo of this.#undo) undo();
	}

	#wrap<T extends object>(prototype: T, name: keyof T & string, before: (self: T) => void): void {
		const original = Reflect.get(prototype, name) as (...given: unknown[]) => unknown;
		const strikes = (): boolean => {
			if (this.#sparing) return false;
			this.#done++;
			const strikes = this.#done >= this.#from && this.#done < this.#until;
			if (strikes) this.hits++;
			return strikes;
		};
		const errorName = (): string =>
			this.#fault === 'disk-full' ? 'QuotaExceededError' : 'UnknownError';
		Reflect.set(prototype, name, function (this: T, ...given: unknown[]) {
			// Making the stores is the database's own transaction, inside `open`.
			if (given[1] !== 'versionchange' && strikes()) {
				before(this);
				throw new DOMException('made to fail', errorName());
			}
			return Reflect.apply(original, this, given);
		});
		this.#undo.push(() => Reflect.set(prototype, name, original));
	}
}
