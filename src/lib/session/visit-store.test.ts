import { beforeEach, expect, test } from 'vitest';
import { refuse } from '#lib/core/units/result.ts';
import { MemoryStore } from '#lib/storage/memory/memory-store.ts';
import { VisitStore } from './visit-store.ts';

/** A disk that keeps nothing itself, and does not open while `away`. */
class Disk extends MemoryStore {
	away = false;

	override listSites(): ReturnType<MemoryStore['listSites']> {
		return this.away ? Promise.resolve(refuse('storage-unavailable')) : super.listSites();
	}

	override ownDevice(made: string): ReturnType<MemoryStore['ownDevice']> {
		return this.away ? Promise.resolve(refuse('storage-unavailable')) : super.ownDevice(made);
	}
}

let disk: Disk;
let told: number;
let store: VisitStore;
beforeEach(() => {
	disk = new Disk();
	told = 0;
	store = new VisitStore(disk, () => told++);
});

test('a disk that cannot be opened from the start is done without, for the whole visit', async () => {
	disk.away = true;
	const asked = await Promise.all([store.listSites(), store.ownDevice('device-1')]);
	expect(asked.map(({ ok }) => ok)).toEqual([true, true]);
	expect([store.lasting, told]).toEqual([false, 1]);
	disk.away = false;
	await store.ownDevice('device-2');
	expect(await disk.ownDevice('device-3')).toEqual({ ok: true, value: 'device-3' });
	expect(told).toBe(1);
});

test('a disk that has answered once is never done without: what fails is refused', async () => {
	await store.listSites();
	disk.away = true;
	expect(await store.listSites()).toEqual(refuse('storage-unavailable'));
	expect([store.lasting, told]).toEqual([true, 0]);
});
