import type { DBSchema, IDBPDatabase } from 'idb';
import type { Command } from '#lib/core/survey/command.ts';
import type { Quarantined } from '#lib/core/survey/log.ts';
import type { StoredBlob } from '../file/write-survey-file.ts';
import type { Checkpoint, LogPosition, SiteSummary } from '../port.ts';

export const DATABASE_NAME = 'airtally';
/** Goes up by one with each change of the stores below; `upgrade` brings an older one up to it. */
export const DATABASE_VERSION = 1;

/** What stands in the stores. A site's survey stands apart, so that listing sites reads none. */
export interface Shape extends DBSchema {
	sites: { key: string; value: SiteRow };
	checkpoints: { key: string; value: Checkpoint & { siteId: string } };
	log: {
		key: [siteId: string, time: number, device: string, id: string];
		value: { siteId: string; command: Command };
	};
	quarantined: { key: [siteId: string, hash: string]; value: QuarantinedRow };
	blobs: { key: string; value: StoredBlob };
	/** Which sites name a picture: it may go when none does. */
	blobRefs: { key: [siteId: string, sha256: string]; value: { siteId: string; sha256: string } };
	device: { key: string; value: DeviceRow };
}

/** The row of `device` that says since when pictures are known that nothing names. */
export const STRAYS = 'strays';

interface DeviceRow {
	readonly key: string;
	readonly id: string;
	/** By hash; in the row of strays only. */
	readonly since?: Readonly<Record<string, string>>;
}

export interface SiteRow extends SiteSummary {
	readonly schemaVersion: number;
	readonly checkpointUpTo?: LogPosition | undefined;
}

export interface QuarantinedRow {
	readonly siteId: string;
	/** Of the entry: one that comes in twice is kept once. */
	readonly hash: string;
	readonly quarantined: Quarantined;
}

export type Database = IDBPDatabase<Shape>;

export function upgrade(database: Database, oldVersion: number): void {
	if (oldVersion < 1) {
		database.createObjectStore('sites', { keyPath: 'id' });
		database.createObjectStore('checkpoints', { keyPath: 'siteId' });
		database.createObjectStore('log', {
			keyPath: ['siteId', 'command.time', 'command.device', 'command.id']
		});
		database.createObjectStore('quarantined', { keyPath: ['siteId', 'hash'] });
		database.createObjectStore('blobs', { keyPath: 'sha256' });
		database.createObjectStore('blobRefs', { keyPath: ['siteId', 'sha256'] });
		database.createObjectStore('device', { keyPath: 'key' });
	}
}

/** All keys of a site in a store whose key starts with the site. */
export function ofSite(siteId: string): IDBKeyRange {
	return IDBKeyRange.bound([siteId], [siteId, []]);
}

export function keyOf(siteId: string, position: LogPosition): Shape['log']['key'] {
	return [siteId, position.time, position.device, position.id];
}
