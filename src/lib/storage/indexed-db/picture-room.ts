import { inTransaction, transact } from './transaction.ts';
import { STRAYS, type Database } from './shape.ts';

/** So long a picture that nothing names is left alone: who is about to name it has the time. */
const GRACE_MS = 7 * 86_400_000;

const NAMING = ['log', 'quarantined', 'checkpoints', 'blobs', 'blobRefs', 'device'] as const;

/**
 * Deletes pictures that no site names and that were not named a week ago either, such as those that
 * a file held and its survey did not. What any record names, set aside ones too, is never deleted:
 * before a picture goes, every record is read once more, in the transaction that deletes it.
 *
 * @param at the clock now; by a wrong one a stray goes sooner or later, and nothing else does
 * @returns how many were deleted
 */
export function sweepStrays(database: Database, at: string): Promise<number> {
	return transact(database, [...NAMING], async (transaction) => {
		const referred = new Set(
			(await transaction.objectStore('blobRefs').getAllKeys()).map(([, sha256]) => sha256)
		);
		const held = await transaction.objectStore('blobs').getAllKeys();
		const strays = held.filter((sha256) => !referred.has(sha256));
		const devices = transaction.objectStore('device');
		const seen = await devices.get(STRAYS);
		if (strays.length === 0) {
			if (seen) inTransaction(devices.delete(STRAYS));
			return 0;
		}
		const since = new Map(strays.map((sha256) => [sha256, seen?.since?.[sha256] ?? at]));
		const due = strays.filter(
			(sha256) => Date.parse(at) - Date.parse(since.get(sha256) ?? at) >= GRACE_MS
		);
		const texts = due.length > 0 ? await allRecords(transaction) : [];
		const gone = due.filter((sha256) => !texts.some((text) => text.includes(sha256)));
		for (const sha256 of gone) {
			inTransaction(transaction.objectStore('blobs').delete(sha256));
			since.delete(sha256);
		}
		inTransaction(devices.put({ key: STRAYS, id: STRAYS, since: Object.fromEntries(since) }));
		return gone.length;
	});
}

/** Every record of every site, as text: a hash is found in it wherever it stands. */
async function allRecords(
	transaction: Parameters<Parameters<typeof transact<(typeof NAMING)[number][], number>>[2]>[0]
): Promise<readonly string[]> {
	const texts: string[] = [];
	for (const name of ['log', 'quarantined', 'checkpoints'] as const) {
		for (const row of await transaction.objectStore(name).getAll()) texts.push(JSON.stringify(row));
	}
	return texts;
}

/**
 * Deletes pictures that a site has in its last survey file and does not show any more; what another
 * site names stays.
 *
 * @param commandCount of the survey that says what is shown; with another one nothing is deleted
 * @returns how many were deleted; nothing when the site has changed, or not all of it is in a file
 */
export function releasePictures(
	database: Database,
	siteId: string,
	sha256s: readonly string[],
	commandCount: number
): Promise<number | undefined> {
	return transact(database, ['sites', 'blobs', 'blobRefs'], async (transaction) => {
		const row = await transaction.objectStore('sites').get(siteId);
		if (row?.commandCount !== commandCount || row.lastFile?.commandCount !== commandCount) {
			return undefined;
		}
		const refs = transaction.objectStore('blobRefs');
		const elsewhere = new Set(
			(await refs.getAllKeys()).flatMap(([site, sha256]) => (site === siteId ? [] : [sha256]))
		);
		const own = sha256s.filter((sha256) => !elsewhere.has(sha256));
		for (const sha256 of own) inTransaction(transaction.objectStore('blobs').delete(sha256));
		return own.length;
	});
}
