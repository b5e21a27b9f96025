import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { CommandBody } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { sha256Hex } from '#lib/storage/file/sha256.ts';
import { IndexedDbStore } from '#lib/storage/indexed-db/indexed-db-store.ts';
import { FailingDatabase, type Fault } from '../../../tests/faults/failing-database.ts';
import type { OpenSurvey } from './open-survey.svelte.ts';
import { Sites } from './sites.svelte.ts';

// The fault is moved one operation on, run by run, until the day is over before it strikes.

const bytes = new Uint8Array([137, 80, 78, 71, 1, 2, 3]);
const picture = { sha256: await sha256Hex(bytes), mediaType: 'image/png', bytes };
const at = '2026-03-02T08:15:00+01:00';

const leak = (id: string, tag: number): CommandBody => ({
	kind: 'add-leak',
	leak: { id, tag, part: 'hose', hazards: [], sightings: {}, mendings: {} }
});

/** A small day on site, each act with what the user does next only after it. */
const DAY: readonly ((survey: OpenSurvey) => unknown)[] = [
	(survey) =>
		survey.do(
			{
				kind: 'add-plan',
				plan: {
					id: 'plan-1',
					name: 'Ground floor',
					image: { sha256: picture.sha256, mediaType: 'image/png', widthPx: 8, heightPx: 6 }
				}
			},
			[picture]
		),
	(survey) => survey.do(leak('leak-a', 1)),
	(survey) =>
		survey.do({ kind: 'move-pin', leakId: 'leak-a', planId: 'plan-1', at: { x: 0.5, y: 0.5 } }),
	(survey) => survey.undo(),
	(survey) => survey.doAll([leak('leak-b', 2), { kind: 'set-site', changes: { note: 'done' } }]),
	(survey) =>
		survey.do({
			kind: 'record-sighting',
			leakId: 'leak-b',
			roundId: survey.roundId,
			sighting: { state: 'leaking', seenAt: at }
		})
];

let database: FailingDatabase;
let stores: IndexedDbStore[];

beforeEach(() => {
	database = new FailingDatabase();
	stores = [];
});
afterEach(() => {
	database.end();
	for (const store of stores) store.close();
});

function visit(): Sites {
	const store = new IndexedDbStore([0, 0, 0]);
	stores.push(store);
	return new Sites(store);
}

async function newSite(): Promise<string> {
	globalThis.indexedDB = new IDBFactory();
	for (const store of stores.splice(0)) store.close();
	const made = await visit().create('Tonwerk Nord', 'EUR', 'Round 1');
	if (!made.ok) throw new Error(made.error.code);
	return made.value;
}

/** What is on the disk, read as the program would after a restart. */
async function onDisk(siteId: string): Promise<Survey> {
	const opened = await visit().open(siteId);
	if (!opened.ok) throw new Error(JSON.stringify(opened.error));
	await opened.value.settled();
	expect(opened.value.conflicts).toEqual([]);
	return opened.value.survey;
}

/** Waits until the queue has said how the write went; what it said. */
async function said(survey: OpenSurvey): Promise<string> {
	while (survey.saveState.kind === 'saving') await new Promise((resolve) => setTimeout(resolve));
	return survey.saveState.kind;
}

async function dayWithFault(siteId: string, first: number, count: number, fault: Fault) {
	const opened = await visit().open(siteId);
	if (!opened.ok) throw new Error(opened.error.code);
	const survey = opened.value;
	await survey.settled();
	database.failFrom(first, count, fault);
	let notSaved = 0;
	for (const act of DAY) {
		expect(act(survey)).toEqual({ ok: true, value: null });
		if ((await said(survey)) === 'saved') {
			expect(await database.sparing(() => onDisk(siteId))).toEqual(survey.survey);
			continue;
		}
		notSaved++;
		const file = await readSurveyFile(await survey.toFile());
		if (!file.ok) throw new Error(file.error.code);
		expect(file.value.survey).toEqual(survey.survey);
	}
	const { hits } = database;
	database.heal();
	survey.retry();
	await survey.settled();
	expect(survey.saveState).toEqual({ kind: 'saved' });
	expect(await onDisk(siteId)).toEqual(survey.survey);
	const address = await survey.blobUrl(picture.sha256);
	expect(new Uint8Array(await (await fetch(address ?? '')).arrayBuffer())).toEqual(bytes);
	await survey.close();
	return { hits, notSaved, end: survey.survey };
}

describe('nothing is lost and nothing is called saved that is not', () => {
	const faults: readonly Fault[] = [
		'throws',
		'aborts',
		'aborts-late',
		'connection-lost',
		'disk-full'
	];
	test.each(faults.flatMap((fault) => [1, 60].map((count) => [fault, count] as const)))(
		'with the fault "%s" on %i operations in a row, wherever it begins',
		async (fault, count) => {
			let runs = 0;
			let struck = 0;
			let notSaved = 0;
			for (let first = 1; ; first++, runs++) {
				const siteId = await newSite();
				const day = await dayWithFault(siteId, first, count, fault);
				notSaved += day.notSaved;
				if (day.hits === 0) break;
				struck += day.hits;
			}
			expect(runs).toBeGreaterThan(30);
			expect(struck).toBeGreaterThanOrEqual(runs);
			// One fault is made good unseen; only a full disk, or a long fault, is said.
			expect(notSaved > 0).toBe(count > 1 || fault === 'disk-full');
		},
		60_000
	);
});

test(
	'a site is opened or refused, whatever fails while it opens',
	{ timeout: 30_000 },
	async () => {
		for (const count of [1, 20]) {
			let refused = 0;
			for (let first = 1; ; first++) {
				const siteId = await newSite();
				database.failFrom(first, count, 'throws');
				const opened = await visit().open(siteId);
				const { hits } = database;
				database.heal();
				if (opened.ok) {
					await opened.value.settled();
					expect(Object.keys(opened.value.survey.rounds)).toHaveLength(1);
					await opened.value.close();
				} else {
					refused++;
					expect(['storage-unavailable', 'read-failed', 'write-failed']).toContain(
						opened.error.code
					);
				}
				if (hits === 0) break;
			}
			expect(refused > 0).toBe(count > 1);
		}
	}
);

test('a file is taken in whole or not at all, whatever fails', { timeout: 30_000 }, async () => {
	const siteId = await newSite();
	const opened = await visit().open(siteId);
	if (!opened.ok) throw new Error(opened.error.code);
	for (const act of DAY) act(opened.value);
	const file = await opened.value.toFile();
	await opened.value.settled();
	const whole = opened.value.survey;
	let refused = 0;
	for (let first = 1; ; first++) {
		globalThis.indexedDB = new IDBFactory();
		for (const store of stores.splice(0)) store.close();
		const sites = visit();
		database.failFrom(first, 20, 'throws');
		const taken = await sites.takeFile(file);
		const { hits } = database;
		database.heal();
		if (taken.ok) expect(await onDisk(siteId)).toEqual(whole);
		else {
			refused++;
			await sites.load();
			expect(sites.list).toEqual([]);
		}
		if (hits === 0) break;
	}
	expect(refused).toBeGreaterThan(3);
});

test(
	'a picture that does not fit the disk does not hold up what does',
	{ timeout: 30_000 },
	async () => {
		const siteId = await newSite();
		const store = new IndexedDbStore([0]);
		stores.push(store);
		const write = store.write.bind(store);
		store.write = (id, batch) =>
			batch.blobs.length > 0
				? Promise.resolve({ ok: false, error: { code: 'storage-full' } })
				: write(id, batch);
		const opened = await new Sites(store).open(siteId);
		if (!opened.ok) throw new Error(opened.error.code);
		const survey = opened.value;
		for (const act of DAY.slice(0, 2)) act(survey);
		await said(survey);
		survey.retry();
		await vi.waitFor(
			async () => expect(Object.keys((await onDisk(siteId)).leaks)).toEqual(['leak-a']),
			{ timeout: 10_000 }
		);
		expect(survey.saveState).toEqual({ kind: 'not-saved', refusal: { code: 'storage-full' } });
		const file = await readSurveyFile(await survey.toFile());
		expect(file.ok && file.value.blobs.map(({ sha256 }) => sha256)).toEqual([picture.sha256]);
		store.write = write;
		survey.retry();
		await survey.settled();
		expect(Object.keys((await onDisk(siteId)).plans)).toEqual(['plan-1']);
		await survey.close();
	}
);
