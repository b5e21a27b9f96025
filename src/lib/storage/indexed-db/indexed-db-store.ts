import { compareCommands, type Command } from '#lib/core/survey/command.ts';
import { sortLog, type Quarantined } from '#lib/core/survey/log.ts';
import { SCHEMA_VERSION } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { blobsNamedBy } from '../file/named-blobs.ts';
import { sha256Hex } from '../file/sha256.ts';
import type { StoredBlob } from '../file/write-survey-file.ts';
import type {
	Checkpoint,
	LogPosition,
	SiteBatch,
	SiteMarks,
	SiteSummary,
	StoredSite,
	SurveyStore
} from '../port.ts';
import { Connection } from './connection.ts';
import { keyOf, ofSite, type Database, type QuarantinedRow, type SiteRow } from './shape.ts';
import { inTransaction, transact } from './transaction.ts';

const WRITTEN = ['sites', 'checkpoints', 'log', 'quarantined', 'blobs', 'blobRefs'] as const;
const WRITE_TIMEOUT_MS = 10_000;
const MS_PER_RECORD = 5;

/** Keeps surveys in the browser's database. Every write is one transaction, over when it is on disk. */
export class IndexedDbStore implements SurveyStore {
	readonly lasting = true;
	readonly #connection: Connection;

	/** @param waitsMs before each new try on a connection that was lost */
	constructor(waitsMs?: readonly number[]) {
		this.#connection = new Connection(waitsMs);
	}

	async ownDevice(made: string): Promise<Result<string>> {
		// Looked up first: to write is to wait for the disk, and every opening would.
		const known = await this.#connection.run('write-failed', (database) =>
			database.get('device', 'own')
		);
		if (!known.ok) return known;
		if (known.value) return ok(known.value.id);
		return this.#connection.run('write-failed', (database) =>
			transact(database, ['device'], async (transaction) => {
				const devices = transaction.objectStore('device');
				const kept = await devices.get('own');
				if (!kept) inTransaction(devices.put({ key: 'own', id: made }));
				return kept?.id ?? made;
			})
		);
	}

	listSites(): Promise<Result<readonly SiteSummary[]>> {
		return this.#connection.run('read-failed', async (database) =>
			(await database.getAll('sites')).map(summaryOf)
		);
	}

	async openSite(siteId: string): Promise<Result<StoredSite>> {
		const read = await this.#connection.run('read-failed', async (database) => {
			const transaction = database.transaction(['sites', 'checkpoints', 'log']);
			const row = await transaction.objectStore('sites').get(siteId);
			const checkpoint = row?.checkpointUpTo
				? await transaction.objectStore('checkpoints').get(siteId)
				: undefined;
			const rows = await transaction.objectStore('log').getAll(after(siteId, checkpoint?.upTo));
			return { row, checkpoint, tail: rows.map(({ command }) => command) };
		});
		if (!read.ok) return read;
		const { row, checkpoint, tail } = read.value;
		if (!row) return refuse('site-unknown', { siteId });
		if (row.schemaVersion > SCHEMA_VERSION) {
			return refuse('site-newer', { version: row.schemaVersion, newest: SCHEMA_VERSION });
		}
		return ok({ summary: summaryOf(row), checkpoint, tail });
	}

	async aboutVersion(siteId: string): ReturnType<SurveyStore['aboutVersion']> {
		const read = await this.#connection.run('read-failed', (database) =>
			database.get('sites', siteId)
		);
		if (!read.ok) return read;
		if (!read.value) return refuse('site-unknown', { siteId });
		const { name, schemaVersion } = read.value;
		return ok({ name, schemaVersion });
	}

	readLog(siteId: string, upTo?: LogPosition): Promise<Result<readonly Command[]>> {
		const range = upTo ? IDBKeyRange.bound([siteId], keyOf(siteId, upTo)) : ofSite(siteId);
		return this.#connection.run('read-failed', async (database) =>
			(await database.getAll('log', range)).map(({ command }) => command)
		);
	}

	readQuarantined(siteId: string): Promise<Result<readonly Quarantined[]>> {
		return this.#connection.run('read-failed', async (database) =>
			(await database.getAll('quarantined', ofSite(siteId))).map((row) => row.quarantined)
		);
	}

	readBlob(sha256: string): Promise<Result<StoredBlob | undefined>> {
		return this.#connection.run('read-failed', (database) => database.get('blobs', sha256));
	}

	async write(siteId: string, batch: SiteBatch): Promise<Result<null>> {
		const records = batch.commands.length + batch.blobs.length;
		const { quarantined = [] } = batch;
		// Nothing is waited for without need: the transaction begins before the page draws the change.
		const setAside =
			quarantined.length > 0 ? await Promise.all(quarantined.map(setAsideRow(siteId))) : [];
		return this.#connection.run(
			'write-failed',
			(database) => writeBatch(database, siteId, batch, setAside),
			WRITE_TIMEOUT_MS + records * MS_PER_RECORD
		);
	}

	saveCheckpoint(siteId: string, checkpoint: Checkpoint): Promise<Result<boolean>> {
		const covered = IDBKeyRange.bound([siteId], keyOf(siteId, checkpoint.upTo));
		return this.#connection.run('write-failed', (database) =>
			transact(database, ['sites', 'checkpoints', 'log'], async (transaction) => {
				const sites = transaction.objectStore('sites');
				const row = await sites.get(siteId);
				const count = await transaction.objectStore('log').count(covered);
				if (!row || count !== checkpoint.commandCount) return false;
				inTransaction(transaction.objectStore('checkpoints').put({ siteId, ...checkpoint }));
				inTransaction(sites.put({ ...row, checkpointUpTo: checkpoint.upTo }));
				return true;
			})
		);
	}

	async markSite(siteId: string, marks: SiteMarks): Promise<Result<null>> {
		const marked = await this.#connection.run('write-failed', (database) =>
			transact(database, ['sites'], async (transaction) => {
				const sites = transaction.objectStore('sites');
				const row = await sites.get(siteId);
				if (row) inTransaction(sites.put({ ...row, ...marks }));
				return row !== undefined;
			})
		);
		if (!marked.ok) return marked;
		return marked.value ? ok(null) : refuse('site-unknown', { siteId });
	}

	async sweepStrays(at: string): Promise<Result<number>> {
		const { sweepStrays } = await import('./picture-room.ts');
		return this.#connection.run('write-failed', (database) => sweepStrays(database, at));
	}

	async releasePictures(
		siteId: string,
		sha256s: readonly string[],
		commandCount: number
	): Promise<Result<number | undefined>> {
		const { releasePictures } = await import('./picture-room.ts');
		return this.#connection.run('write-failed', (database) =>
			releasePictures(database, siteId, sha256s, commandCount)
		);
	}

	close(): void {
		this.#connection.close();
	}
}

function writeBatch(
	database: Database,
	siteId: string,
	batch: SiteBatch,
	setAside: readonly QuarantinedRow[]
): Promise<null> {
	return transact(database, [...WRITTEN], async (transaction) => {
		const log = transaction.objectStore('log');
		const sites = transaction.objectStore('sites');
		// Asked for at once: each answer has to wait until the page has time for it.
		const site = sites.get(siteId);
		inTransaction(site);
		const keys = log.getAllKeys(spanOf(siteId, batch));
		inTransaction(keys);
		const before = await site;
		const known = new Set((await keys).map(String));
		const fresh = batch.commands.filter((command) => !known.has(String(keyOf(siteId, command))));
		for (const command of fresh) inTransaction(log.put({ siteId, command }));
		for (const blob of batch.blobs) {
			inTransaction(transaction.objectStore('blobs').put(withOwnBytes(blob)));
		}
		for (const { sha256 } of blobsNamedBy(fresh)) {
			inTransaction(transaction.objectStore('blobRefs').put({ siteId, sha256 }));
		}
		for (const row of setAside) inTransaction(transaction.objectStore('quarantined').put(row));
		// A command that sorts into what the checkpoint covers makes it untrue.
		const upTo = before?.checkpointUpTo;
		const untrue = upTo !== undefined && fresh.some((command) => !isAfter(command, upTo));
		if (untrue) inTransaction(transaction.objectStore('checkpoints').delete(siteId));
		const row: SiteRow = {
			...before,
			...batch.about,
			id: siteId,
			schemaVersion: SCHEMA_VERSION,
			commandCount: (before?.commandCount ?? 0) + fresh.length,
			removed: batch.restore ? undefined : before?.removed,
			...(batch.merge && { merges: [...(before?.merges ?? []), batch.merge] }),
			checkpointUpTo: untrue ? undefined : upTo
		};
		inTransaction(sites.put(row));
		return null;
	});
}

/** What is stored takes the whole buffer along that its bytes are a part of: of a file, all of it. */
function withOwnBytes(blob: StoredBlob): StoredBlob {
	const { bytes } = blob;
	return bytes.byteLength === bytes.buffer.byteLength ? blob : { ...blob, bytes: bytes.slice() };
}

/** The keys from the first command of a batch to its last. */
function spanOf(siteId: string, batch: SiteBatch): IDBKeyRange {
	const ordered = sortLog(batch.commands);
	const [first, last] = [ordered[0], ordered.at(-1)];
	if (!first || !last) return IDBKeyRange.only([siteId]);
	return IDBKeyRange.bound(keyOf(siteId, first), keyOf(siteId, last));
}

function setAsideRow(siteId: string) {
	return async (quarantined: Quarantined): Promise<QuarantinedRow> => {
		const text = JSON.stringify(quarantined.entry) ?? '';
		return { siteId, hash: await sha256Hex(new TextEncoder().encode(text)), quarantined };
	};
}

function after(siteId: string, position: LogPosition | undefined): IDBKeyRange {
	return position ? IDBKeyRange.bound(keyOf(siteId, position), [siteId, []], true) : ofSite(siteId);
}

function isAfter(command: Command, position: LogPosition): boolean {
	return compareCommands(command, { ...command, ...position }) > 0;
}

function summaryOf(row: SiteRow): SiteSummary {
	const { schemaVersion: _, checkpointUpTo: __, ...summary } = row;
	return summary;
}
