import { IDBDatabase, IDBFactory, IDBObjectStore } from 'fake-indexeddb';

/** How an operation of the database goes wrong; `aborts-late` does so when it seemed to have gone well. */
export type Fault = 'throws' | 'aborts' | 'aborts-late' | 'connection-lost' | 'disk-full';

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
		for (const name of STORE_OPERATIONS) this.#wrap(IDBObjectStore.prototype, name);
		this.#wrap(IDBDatabase.prototype, 'transaction');
		this.#wrap(IDBFactory.prototype, 'open');
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

	#wrap<T extends object>(prototype: T, name: keyof T & string): void {
		const original = Reflect.get(prototype, name) as (...given: unknown[]) => unknown;
		const operate = (self: T, given: unknown[]): unknown => this.#operate(self, original, given);
		Reflect.set(prototype, name, function (this: T, ...given: unknown[]) {
			return operate(this, given);
		});
		this.#undo.push(() => Reflect.set(prototype, name, original));
	}

	#operate(self: object, original: (...given: unknown[]) => unknown, given: unknown[]): unknown {
		// Making the stores is the database's own transaction, inside `open`.
		const spared = this.#sparing || given[1] === 'versionchange';
		if (!spared) this.#done++;
		if (spared || this.#done < this.#from || this.#done >= this.#until) {
			return Reflect.apply(original, self, given);
		}
		this.hits++;
		const transaction = self instanceof IDBObjectStore ? self.transaction : undefined;
		if (this.#fault === 'aborts-late' && transaction) {
			const request = Reflect.apply(original, self, given) as EventTarget;
			request.addEventListener('success', () => transaction.abort());
			return request;
		}
		if (this.#fault === 'aborts') transaction?.abort();
		if (this.#fault === 'connection-lost') {
			(self instanceof IDBDatabase ? self : transaction?.db)?.close();
		}
		const name = this.#fault === 'disk-full' ? 'QuotaExceededError' : 'UnknownError';
		throw new DOMException('made to fail', name);
	}
}
