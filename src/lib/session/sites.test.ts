import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { CommandBody } from '#lib/core/survey/command.ts';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Result } from '#lib/core/units/result.ts';
import { writeSurveyJson } from '#lib/storage/file/plain-survey.ts';
import { sha256Hex } from '#lib/storage/file/sha256.ts';
import { IndexedDbStore } from '#lib/storage/indexed-db/indexed-db-store.ts';
import { withOffset } from './identity.ts';
import type { OpenSurvey } from './open-survey.svelte.ts';
import { Sites } from './sites.svelte.ts';

const bytes = new Uint8Array([137, 80, 78, 71, 1, 2, 3]);
const picture = { sha256: await sha256Hex(bytes), mediaType: 'image/png', bytes };
const at = '2026-03-02T08:15:00+01:00';

/** Devices by name, each with a database of its own. */
let devices: Map<string, { indexedDB: IDBFactory; store: IndexedDbStore; sites: Sites }>;
let held: OpenSurvey[];

beforeEach(() => {
	devices = new Map();
	held = [];
});
afterEach(async () => {
	for (const survey of held) await survey.close();
	for (const { store } of devices.values()) store.close();
});

function onDevice(name: string): Sites {
	let device = devices.get(name);
	if (!device) {
		const store = new IndexedDbStore([0]);
		device = { indexedDB: new IDBFactory(), store, sites: new Sites(store) };
		devices.set(name, device);
	}
	globalThis.indexedDB = device.indexedDB;
	return device.sites;
}

async function given<T>(result: Promise<Result<T>>): Promise<T> {
	const settled = await result;
	if (!settled.ok) throw new Error(JSON.stringify(settled.error));
	return settled.value;
}

async function open(sites: Sites, siteId: string): Promise<OpenSurvey> {
	const survey = await given(sites.open(siteId));
	held.push(survey);
	return survey;
}

const addPlan: CommandBody = {
	kind: 'add-plan',
	plan: {
		id: 'plan-1',
		name: 'Ground floor',
		image: { sha256: picture.sha256, mediaType: 'image/png', widthPx: 8, heightPx: 6 }
	}
};

function leak(id: string, tag: number): CommandBody {
	return {
		kind: 'add-leak',
		leak: { id, tag, part: 'hose', hazards: [], sightings: {}, mendings: {} }
	};
}

test('a file opened on an empty device is the survey that was saved, pictures and all', async () => {
	const desk = onDevice('desk');
	const siteId = await given(desk.create('Tonwerk Nord', 'EUR', 'Round 1'));
	const survey = await open(desk, siteId);
	survey.do(addPlan, [picture]);
	survey.do(leak('leak-a', 1));
	const file = await survey.toFile();
	await survey.settled();
	expect(survey.lastFile?.commandCount).toBe(survey.commandCount);

	const phone = onDevice('phone');
	expect(await given(phone.takeFile(file))).toEqual({
		siteId,
		siteName: 'Tonwerk Nord',
		isNew: true,
		addedCommands: 3,
		conflicts: [],
		clashes: [],
		tagsTwice: [],
		quarantined: [],
		missingBlobs: []
	});
	expect(phone.list).toMatchObject([{ id: siteId, lastFile: { commandCount: 3 } }]);
	const there = await open(phone, siteId);
	expect(there.survey).toEqual(survey.survey);
	expect(await there.blobUrl(picture.sha256)).toMatch(/^blob:/);
	await there.settled();

	const again = await given(phone.takeFile(file));
	expect(again).toMatchObject({ isNew: false, addedCommands: 0 });
	expect(there.commandCount).toBe(3);
});

test('pictures that are shown no more make room once a file holds them, and come back with it', async () => {
	const sites = onDevice('a');
	const siteId = await given(sites.create('Tonwerk Nord', 'EUR', 'Round 1'));
	const survey = await open(sites, siteId);
	survey.do(addPlan, [picture]);
	expect(await survey.pictures()).toMatchObject({ count: 1, unused: [] });
	survey.do({ kind: 'remove-plan', planId: 'plan-1' });
	await survey.settled();
	expect(await survey.releasePictures()).toMatchObject({ error: { code: 'pictures-in-no-file' } });
	const file = await survey.toFile();
	survey.undo();
	survey.redo();
	await survey.settled();
	expect(await survey.releasePictures()).toMatchObject({ error: { code: 'pictures-in-no-file' } });
	expect(await survey.pictures()).toMatchObject({ count: 1, unused: [picture.sha256] });
	await survey.toFile();
	await expect.poll(() => survey.releasePictures()).toEqual({ ok: true, value: 1 });
	expect(await survey.pictures()).toMatchObject({ count: 0, missing: 0 });
	survey.undo();
	expect(await survey.pictures()).toMatchObject({ count: 0, missing: 1 });
	await survey.settled();
	await given(sites.takeFile(file));
	expect(await survey.pictures()).toMatchObject({ count: 1, unused: [], missing: 0 });
});

test('two devices that walked a site apart agree after exchanging files, in either order', async () => {
	const a = onDevice('a');
	const siteId = await given(a.create('Tonwerk Nord', 'EUR', 'Round 1'));
	const onA = await open(a, siteId);
	onA.do(leak('leak-shared', 1));
	const first = await onA.toFile();
	await onA.settled();
	onA.do(leak('leak-of-a', 2));
	onA.do({ kind: 'remove-leak', leakId: 'leak-shared' });
	const fromA = await onA.toFile();
	await onA.settled();

	const b = onDevice('b');
	await given(b.takeFile(first));
	const onB = await open(b, siteId);
	onB.do({ kind: 'set-leak', leakId: 'leak-shared', changes: { note: 'behind the press' } });
	onB.do(leak('leak-of-b', 2));
	const fromB = await onB.toFile();
	await onB.settled();
	await given(b.takeFile(fromA));
	await b.open(siteId).then(async (held) => held.ok && held.value.refresh());

	onDevice('a');
	await given(a.takeFile(fromB));
	await onA.refresh();
	expect(onA.survey).toEqual(onB.survey);
	expect(Object.keys(onA.survey.leaks).sort()).toEqual(['leak-of-a', 'leak-of-b', 'leak-shared']);
	expect(onA.survey.leaks['leak-shared']).toMatchObject({
		note: 'behind the press',
		removed: true
	});
	expect(onA.canUndo).toBe(true);

	// What the merge left stays with the site until somebody has dealt with it; a second time leaves nothing.
	await given(a.takeFile(fromB));
	await a.load();
	const [left, ...more] = a.list[0]?.merges ?? [];
	expect(more).toEqual([]);
	expect(left).toMatchObject({ tagsTwice: [2], addedCommands: 2, conflicts: 0, quarantined: 0 });
	expect(left?.clashes).toMatchObject([{ noun: 'leak', name: '1', field: 'removed', kept: true }]);
	await onA.close();
	const again = await open(a, siteId);
	expect(again.merges).toEqual([left]);
	await given(again.settleMerges());
	await a.load();
	expect([again.merges, a.list[0]?.merges]).toEqual([[], []]);
});

test('a file that is refused leaves the site as it was', async () => {
	const sites = onDevice('desk');
	const siteId = await given(sites.create('Tonwerk Nord', 'EUR', 'Round 1'));
	const survey = await open(sites, siteId);
	const file = await survey.toFile();
	await survey.settled();
	const before = JSON.stringify(sites.list);
	expect(await sites.takeFile(file.slice(0, -40))).toMatchObject({
		ok: false,
		error: { code: 'file-truncated' }
	});
	await sites.load();
	expect(sites.list.map(({ commandCount }) => commandCount)).toEqual([1]);
	expect(JSON.parse(before)).toHaveLength(1);
});

test('plain JSON opened twice is one site, and does not undo what was done since', async () => {
	const sites = onDevice('desk');
	const json = writeSurveyJson(
		newSurvey(
			{ id: 'site-plain', name: 'Three leaks', currency: 'EUR' },
			{ id: 'round-1', name: 'Round 1', startedAt: at }
		)
	);
	const file = new TextEncoder().encode(json);
	await given(sites.takeFile(file));
	const survey = await open(sites, 'site-plain');
	survey.do({ kind: 'set-site', changes: { name: 'Three leaks, seen' } });
	await survey.settled();
	expect(await given(sites.takeFile(file))).toMatchObject({ isNew: false, addedCommands: 0 });
	expect(sites.list).toMatchObject([{ id: 'site-plain', name: 'Three leaks, seen' }]);
});

test('a removed site leaves the list, and comes back whole', async () => {
	const sites = onDevice('desk');
	const siteId = await given(sites.create('Tonwerk Nord', 'EUR', 'Round 1'));
	await given(sites.remove(siteId));
	expect(sites.list).toEqual([]);
	await given(sites.restore(siteId));
	expect(sites.list.map(({ id }) => id)).toEqual([siteId]);
});

test('a site is not made with a currency that is none', async () => {
	const sites = onDevice('desk');
	expect(await sites.create('Tonwerk Nord', 'euro', 'Round 1')).toEqual({
		ok: false,
		error: { code: 'field-invalid', detail: { field: 'site.currency' } }
	});
	await sites.load();
	expect(sites.list).toEqual([]);
});

test('a survey that is asked for again before it was written is the same one', async () => {
	const sites = onDevice('desk');
	const siteId = await given(sites.create('Tonwerk Nord', 'EUR', 'Round 1'));
	const survey = await given(sites.open(siteId));
	survey.do(leak('leak-a', 1));
	const closing = survey.close();
	const again = await given(sites.open(siteId));
	expect(again).toBe(survey);
	await closing;
	again.do(leak('leak-b', 2));
	await again.close();
	const fresh = await given(sites.open(siteId));
	expect(fresh).not.toBe(survey);
	expect(Object.keys(fresh.survey.leaks)).toEqual(['leak-a', 'leak-b']);
	await fresh.close();
});

test('a time says the local day and its offset', () => {
	const date = new Date('2026-03-02T23:30:00Z');
	expect(new Date(withOffset(date))).toEqual(date);
	expect(withOffset(date)).toMatch(/^2026-03-0[23]T\d\d:\d\d:00\.000[+-]\d\d:\d\d$/);
});
