import { openDB, type IDBPDatabase } from 'idb';

const DATABASE = 'airtally-drafts';
const DRAFTS = 'drafts';

/**
 * Keeps what is half entered apart from the survey, one draft for each site, because a phone may end the
 * page while its camera is open.
 *
 * @param draft plain data and bytes; nothing takes away what was kept
 * @returns whether it is on the disk
 */
export async function keepDraft(siteId: string, draft: unknown): Promise<boolean> {
	try {
		const database = await drafts();
		const transaction = database.transaction(DRAFTS, 'readwrite', { durability: 'strict' });
		if (draft === undefined) await transaction.store.delete(siteId);
		else await transaction.store.put(draft, siteId);
		await transaction.done;
		return true;
	} catch {
		return false;
	}
}

/** The draft that was kept for a site, as it was; whoever reads it checks its shape. */
export async function keptDraft(siteId: string): Promise<unknown> {
	try {
		return await (await drafts()).get(DRAFTS, siteId);
	} catch {
		return undefined;
	}
}

let opened: Promise<IDBPDatabase> | undefined;

function drafts(): Promise<IDBPDatabase> {
	opened ??= openDB(DATABASE, 1, {
		upgrade: (database) => void database.createObjectStore(DRAFTS),
		terminated: () => (opened = undefined)
	}).catch((reason: unknown) => {
		opened = undefined;
		throw reason;
	});
	return opened;
}
