import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore, IDBDatabase } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Command } from '#lib/core/survey/command.ts';
import { fold } from '#lib/core/survey/log.ts';
import type { Result } from '#lib/core/units/result.ts';
import { asCommands, startCommand } from '../../../../tests/arbitrary/commands.ts';
import { sha256Hex } from '../file/sha256.ts';
import type { Checkpoint, SiteBatch } from '../port.ts';
import { IndexedDbStore } from './indexed-db-store.ts';

const bytes = new Uint8Array([1, 2, 3]);
const picture = { sha256: await sha256Hex(bytes), mediaType: 'image/png', bytes };
const about = {
	name: 'Tonwerk Nord',
	currency: 'EUR',
	counts: { leaks: 0, leaking: 0, mended: 0, tight: 0 },
	updatedAt: '2026-03-02T08:15:00Z'
};
const log: Command[] = [
	startCommand(),
	...asCommands([
		{
			kind: 'add-plan',
			plan: {
				id: 'plan-1',
				name: 'Ground floor',
				image: {
					sha256: picture.sha256,
					mediaType: picture.mediaType,
					widthPx: 8,
					heightPx: 6
				}
			}
		},
		...Array.from({ length: 8 }, (_, index) => ({
			kind: 'set-site' as const,
			changes: { note: `note ${index}` }
		}))
	])
];
const batch = (commands: readonly Command[] = log): SiteBatch => ({
	commands,
	blobs: [picture],
	about
});

let store: IndexedDbStore;
beforeEach(() => {
	globalThis.indexedDB = new IDBFactory();
	store = new IndexedDbStore();
});
afterEach(() => {
	store.close();
	vi.restoreAllMocks();
});

async function given<T>(result: Promise<Result<T>>): Promise<T> {
	const settled = await result;
	if (!settled.ok) throw new Error(JSON.stringify(settled.error));
	return settled.value;
}

function checkpointAt(count: number, commands: readonly Command[] = log): Checkpoint {
	const folded = fold(commands.slice(0, count));
	const upTo = commands[count - 1];
	if (!folded.ok || !upTo) throw new Error('no such point');
	return {
		...folded.value,
		upTo: { time: upTo.time, device: upTo.device, id: upTo.id },
		commandCount: count
	};
}

describe('what was written', () => {
	test('is there in another visit, commands in their order, pictures byte for byte', async () => {
		await given(store.write('site-1', batch(log.toReversed())));
		store.close();
		const other = new IndexedDbStore();
		const site = await given(other.openSite('site-1'));
		expect(site).toEqual({
			summary: { ...about, id: 'site-1', commandCount: log.length },
			checkpoint: undefined,
			tail: log
		});
		expect(await given(other.readBlob(picture.sha256))).toEqual(picture);
		expect(await given(other.listSites())).toEqual([site.summary]);
		other.close();
	});

	test('a picture that came as a part of a file is kept without the file', async () => {
		const file = new Uint8Array(10_000);
		file.set(bytes, 5000);
		const cut = { ...picture, bytes: file.subarray(5000, 5000 + bytes.length) };
		await given(store.write('site-1', { ...batch(), blobs: [cut] }));
		const kept = await given(store.readBlob(picture.sha256));
		expect(kept).toEqual(picture);
		expect(kept?.bytes.buffer.byteLength).toBe(bytes.length);
	});

	test('twice is there once', async () => {
		await given(store.write('site-1', batch()));
		await given(store.write('site-1', batch()));
		await given(store.write('site-1', batch(log.slice(3, 5))));
		const site = await given(store.openSite('site-1'));
		expect(site.tail).toEqual(log);
		expect(site.summary.commandCount).toBe(log.length);
	});

	test('of one site is not in another, though one name begins with the other', async () => {
		await given(store.write('site-1', batch()));
		await given(store.write('site-10', batch(log.slice(0, 2))));
		expect(await given(store.readLog('site-1'))).toEqual(log);
		expect(await given(store.readLog('site-10'))).toEqual(log.slice(0, 2));
	});

	test('went through transactions that wait for the disk', async () => {
		const opened = vi.spyOn(IDBDatabase.prototype, 'transaction');
		await given(store.ownDevice('device-x'));
		await given(store.write('site-1', batch()));
		await given(store.saveCheckpoint('site-1', checkpointAt(4)));
		await given(store.markSite('site-1', { removed: true }));
		const writes = opened.mock.calls.filter(([, mode]) => mode === 'readwrite');
		expect(writes).toHaveLength(4);
		for (const [, , options] of writes) expect(options).toEqual({ durability: 'strict' });
	});

	test('is on its way before the page can draw: its transaction begins at once', async () => {
		await given(store.write('site-1', batch(log.slice(0, 4))));
		const opened = vi.spyOn(IDBDatabase.prototype, 'transaction');
		const writing = store.write('site-1', batch(log.slice(4)));
		expect(opened).toHaveBeenCalledTimes(1);
		await given(writing);
		expect(await given(store.readLog('site-1'))).toEqual(log);
	});

	test('includes what could not be read, once', async () => {
		const quarantined = [{ entry: { odd: true }, reason: 'id: missing' }];
		await given(store.write('site-1', { ...batch(), quarantined }));
		await given(store.write('site-1', { ...batch(), quarantined }));
		expect(await given(store.readQuarantined('site-1'))).toEqual(quarantined);
	});

	test('of this device, its name, stays the one that was kept first', async () => {
		expect(await given(store.ownDevice('device-a'))).toBe('device-a');
		const opened = vi.spyOn(IDBDatabase.prototype, 'transaction');
		expect(await given(store.ownDevice('device-b'))).toBe('device-a');
		// Only looked up: every opening of a site asks for it.
		expect(opened.mock.calls.some(([, mode]) => mode === 'readwrite')).toBe(false);
	});

	test('is marked removed and comes back', async () => {
		await given(store.write('site-1', batch()));
		await given(store.markSite('site-1', { removed: true }));
		await given(store.write('site-1', batch(log.slice(0, 1))));
		expect((await given(store.openSite('site-1'))).summary.removed).toBe(true);
		await given(store.write('site-1', { ...batch([]), restore: true }));
		expect((await given(store.openSite('site-1'))).summary.removed).toBeUndefined();
	});
});

describe('a checkpoint', () => {
	test('spares the commands that it covers', async () => {
		await given(store.write('site-1', batch()));
		expect(await given(store.saveCheckpoint('site-1', checkpointAt(4)))).toBe(true);
		const { checkpoint, tail } = await given(store.openSite('site-1'));
		expect(checkpoint).toMatchObject(checkpointAt(4));
		expect(tail).toEqual(log.slice(4));
		expect(await given(store.readLog('site-1', checkpoint?.upTo))).toEqual(log.slice(0, 4));
	});

	test('is not kept when another tab has written into what it covers', async () => {
		await given(store.write('site-1', batch()));
		const other = asCommands([{ kind: 'set-site', changes: { note: 'b' } }], 'device-b', 2);
		const mine = checkpointAt(6);
		await given(store.write('site-1', batch(other)));
		expect(await given(store.saveCheckpoint('site-1', mine))).toBe(false);
		expect((await given(store.openSite('site-1'))).checkpoint).toBeUndefined();
	});

	test('goes when a command comes in that sorts into it, and stays for one that does not', async () => {
		await given(store.write('site-1', batch()));
		await given(store.saveCheckpoint('site-1', checkpointAt(4)));
		const note = { kind: 'set-site' as const, changes: { note: 'b' } };
		await given(store.write('site-1', batch(asCommands([note], 'device-b', 5))));
		expect((await given(store.openSite('site-1'))).checkpoint).toBeDefined();
		await given(store.write('site-1', batch(asCommands([note], 'device-b', 2))));
		const site = await given(store.openSite('site-1'));
		expect(site.checkpoint).toBeUndefined();
		expect(site.tail).toHaveLength(log.length + 2);
	});
});

describe('when the database fails', { timeout: 30_000 }, () => {
	const fail = (name: string) => () => {
		throw new DOMException('made to fail', name);
	};

	test('a connection that was lost is opened anew and the work done', async () => {
		await given(store.write('site-1', batch()));
		vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(
			fail('InvalidStateError')
		);
		expect(await given(store.readLog('site-1'))).toEqual(log);
	});

	test('one that fails again and again is refused, and nothing of it is written', async () => {
		await given(store.write('site-1', batch(log.slice(0, 2))));
		const put = Reflect.get(IDBObjectStore.prototype, 'put') as (...value: unknown[]) => unknown;
		vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
			this: IDBObjectStore,
			...value
		) {
			if (this.name === 'sites') throw new DOMException('made to fail', 'UnknownError');
			return Reflect.apply(put, this, value) as IDBRequest<IDBValidKey>;
		});
		expect(await store.write('site-1', batch())).toEqual({
			ok: false,
			error: { code: 'write-failed', detail: { cause: 'UnknownError' } }
		});
		vi.restoreAllMocks();
		expect(await given(store.readLog('site-1'))).toEqual(log.slice(0, 2));
	});

	test('a full disk is said to be full, at once', async () => {
		const put = vi
			.spyOn(IDBObjectStore.prototype, 'put')
			.mockImplementation(fail('QuotaExceededError'));
		expect(await store.write('site-1', batch())).toEqual({
			ok: false,
			error: { code: 'storage-full' }
		});
		expect(put).toHaveBeenCalledTimes(1);
	});

	test('one that does not open at all is refused for reading and for writing', async () => {
		vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(fail('UnknownError'));
		for (const result of [await store.listSites(), await store.write('site-1', batch())]) {
			expect(result).toMatchObject({ ok: false, error: { code: 'storage-unavailable' } });
		}
	});

	test('one that a newer program has written is left alone', async () => {
		const newer = await openDB('airtally', 99);
		newer.close();
		expect(await store.write('site-1', batch())).toEqual({
			ok: false,
			error: { code: 'storage-newer' }
		});
	});

	test('a site that a newer program has written is left alone', async () => {
		await given(store.write('site-1', batch()));
		const database = await openDB('airtally');
		const row = (await database.get('sites', 'site-1')) as object;
		await database.put('sites', { ...row, schemaVersion: 2 });
		database.close();
		expect(await store.openSite('site-1')).toEqual({
			ok: false,
			error: { code: 'site-newer', detail: { version: 2, newest: 1 } }
		});
	});

	test('and what it wrote can still be read, as it is', async () => {
		await given(store.write('site-1', batch()));
		store.close();
		(await openDB('airtally', 99)).close();
		expect(await given(store.aboutVersion('site-1'))).toMatchObject({ schemaVersion: 1 });
		expect(await given(store.readLog('site-1'))).toEqual(log);
		expect(await store.write('site-1', batch())).toMatchObject({
			error: { code: 'storage-newer' }
		});
		expect(await store.markSite('site-1', { removed: true })).toMatchObject({
			error: { code: 'storage-newer' }
		});
	});

	test('a site that is not there is unknown', async () => {
		const unknown = { ok: false, error: { code: 'site-unknown', detail: { siteId: 'site-9' } } };
		expect(await store.openSite('site-9')).toEqual(unknown);
		expect(await store.markSite('site-9', { removed: true })).toEqual(unknown);
	});
});
