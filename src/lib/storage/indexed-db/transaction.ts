import type { IDBPTransaction, StoreNames } from 'idb';
import type { Database, Shape } from './shape.ts';

/**
 * Does work in one transaction that is over when it is on the disk, not only handed to the system
 * (a flat battery takes the rest). Whatever goes wrong on the way, none of it is written.
 */
export async function transact<Names extends StoreNames<Shape>[], T>(
	database: Database,
	names: Names,
	work: (transaction: IDBPTransaction<Shape, Names, 'readwrite'>) => Promise<T>
): Promise<T> {
	const transaction = database.transaction(names, 'readwrite', { durability: 'strict' });
	inTransaction(transaction.done);
	try {
		const result = await work(transaction);
		commit(transaction);
		await transaction.done;
		return result;
	} catch (error) {
		abort(transaction);
		throw transaction.error ?? error;
	}
}

/** A request that is not awaited by itself: its failure fails the transaction, which is awaited. */
export function inTransaction(request: Promise<unknown>): void {
	request.catch(() => undefined);
}

/** Says that no more comes: the disk need not wait until the page has heard of every request. */
function commit(transaction: { commit: () => void }): void {
	try {
		transaction.commit();
	} catch {
		// It was over already, or goes by itself where a browser cannot be told.
	}
}

function abort(transaction: { abort: () => void }): void {
	try {
		transaction.abort();
	} catch {
		// It was over already, which is what was wanted.
	}
}
