import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { CommandBody } from '#lib/core/survey/command.ts';
import type { Leak, Survey } from '#lib/core/survey/schema.ts';
import type { Result } from '#lib/core/units/result.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { sha256Hex } from '#lib/storage/file/sha256.ts';
import { IndexedDbStore } from '#lib/storage/indexed-db/indexed-db-store.ts';
import { anyBody } from '../../../tests/arbitrary/commands.ts';
import type { OpenSurvey } from './open-survey.svelte.ts';
import { Sites } from './sites.svelte.ts';

const bytes = new Uint8Array([137, 80, 78, 71, 1, 2, 3]);
const picture = { sha256: await sha256Hex(bytes), mediaType: 'image/png', bytes };

/** A machine with much else to do still gets there. */
const SLOW = { timeout: 20_000 };

let stores: IndexedDbStore[];
let held: OpenSurvey[];
beforeEach(() => {
	globalThis.indexedDB = new IDBFactory();
	stores = [];
	held = [];
});
afterEach(async () => {
	for (const survey of held) await survey.close();
	for (const store of stores) store.close();
});

/** A visit: what a tab, or the program after a restart, has in memory. */
function visit(): Sites {
	const store = new IndexedDbStore([0, 0, 0]);
	stores.push(store);
	return new Sites(store);
}

async function given<T>(result: Result<T> | Promise<Result<T>>): Promise<T> {
	const settled = await result;
	if (!settled.ok) throw new Error(JSON.stringify(settled.error));
	return settled.value;
}

async function open(sites: Sites, siteId: string): Promise<OpenSurvey> {
	const survey = await given(sites.open(siteId));
	held.push(survey);
	return survey;
}

function leak(number: number): CommandBody {
	const made: Leak = {
		id: `leak-${number}`,
		tag: number,
		part: 'hose',
		hazards: [],
		sightings: {},
		mendings: {}
	};
	return { kind: 'add-leak', leak: made };
}

const note = (text: string): CommandBody => ({ kind: 'set-site', changes: { note: text } });

const addPlan: CommandBody = {
	kind: 'add-plan',
	plan: {
		id: 'plan-1',
		name: 'Ground floor',
		image: { sha256: picture.sha256, mediaType: 'image/png', widthPx: 8, heightPx: 6 }
	}
};

async function newSite(sites = visit()) {
	return { sites, siteId: await given(sites.create('Tonwerk Nord', 'EUR', 'Round 1')) };
}

describe('what is done', () => {
	test('shows at once, is saved behind it, and is there after a restart', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		expect(survey.do(leak(1))).toEqual({ ok: true, value: null });
		expect(Object.keys(survey.survey.leaks)).toEqual(['leak-1']);
		expect(survey.saveState).toEqual({ kind: 'saving' });
		await survey.settled();
		expect(survey.saveState).toEqual({ kind: 'saved' });
		const again = await open(visit(), siteId);
		expect(again.survey).toEqual(survey.survey);
		expect(again.commandCount).toBe(2);
		expect(again.roundId).toBe(Object.keys(again.survey.rounds)[0]);
	});

	test('is refused, and changes nothing, when it does not fit', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		const before = survey.survey;
		expect(survey.do({ kind: 'remove-leak', leakId: 'leak-9' })).toMatchObject({
			error: { code: 'entity-unknown' }
		});
		const wrong = { ...leak(1), leak: { id: 'leak-1', tag: 'one' } } as unknown as CommandBody;
		expect(survey.do(wrong)).toEqual({
			ok: false,
			error: { code: 'field-invalid', detail: { field: 'leak.tag' } }
		});
		expect(survey.doAll([leak(1), leak(1)])).toMatchObject({ error: { code: 'entity-exists' } });
		expect(survey.survey).toBe(before);
		expect(survey.canUndo).toBe(false);
	});

	test('keeps a picture with the command that names it, and gives it an address', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		survey.do(addPlan, [picture]);
		const address = survey.blobUrl(picture.sha256);
		expect(survey.blobUrl(picture.sha256)).toBe(address);
		const shown = await fetch((await address) ?? '');
		expect(new Uint8Array(await shown.arrayBuffer())).toEqual(bytes);
		expect(await survey.blobUrl('0'.repeat(64))).toBeUndefined();
		await survey.settled();
		const again = await open(visit(), siteId);
		expect(await again.blobUrl(picture.sha256)).toMatch(/^blob:/);
	});

	test('is in the list of sites, with its counts', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		const seenAt = '2026-03-02T08:15:00Z';
		survey.doAll([leak(1), leak(2)]);
		survey.do({
			kind: 'record-sighting',
			leakId: 'leak-1',
			roundId: survey.roundId,
			sighting: { state: 'leaking', seenAt }
		});
		await survey.settled();
		await sites.load();
		expect(sites.list).toMatchObject([
			{
				id: siteId,
				name: 'Tonwerk Nord',
				currency: 'EUR',
				roundName: 'Round 1',
				counts: { leaks: 2, leaking: 1, mended: 0, tight: 0 },
				commandCount: 4
			}
		]);
	});
});

describe('undo and redo', () => {
	test('take back and bring back step by step, also after a restart', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		survey.do(leak(1));
		survey.doAll([note('a'), leak(2), { kind: 'remove-leak', leakId: 'leak-1' }]);
		expect(survey.lastDone).toBe('set-site');
		const full = survey.survey;
		survey.undo();
		expect(visible(survey.survey).leaks).toEqual(['leak-1']);
		expect(survey.survey.site.note).toBeUndefined();
		expect(survey.lastDone).toBe('add-leak');
		await survey.settled();

		const again = await open(visit(), siteId);
		expect([again.canUndo, again.canRedo, again.lastDone]).toEqual([true, true, 'add-leak']);
		again.redo();
		expect(again.survey).toEqual(full);
		expect(again.lastDone).toBe('set-site');
		again.undo();
		again.undo();
		expect(visible(again.survey)).toEqual({ leaks: [], note: undefined });
		expect([again.canUndo, again.canRedo]).toEqual([false, true]);
		expect(again.undo()).toEqual({ ok: false, error: { code: 'nothing-to-undo' } });
		again.do(note('new'));
		expect(again.redo()).toEqual({ ok: false, error: { code: 'nothing-to-redo' } });
	});

	test('of any day: all back is the beginning, all forth the end, and a restart between matters not', async () => {
		await fc.assert(
			fc.asyncProperty(
				fc.array(fc.oneof({ weight: 3, arbitrary: anyBody }, fc.constant('undo' as const)), {
					maxLength: 30
				}),
				async (acts) => {
					globalThis.indexedDB = new IDBFactory();
					const { sites, siteId } = await newSite();
					const survey = await given(sites.open(siteId));
					for (const act of acts) {
						if (act === 'undo') survey.undo();
						else survey.do(act);
					}
					await survey.settled();
					const other = visit();
					const again = await given(other.open(siteId));
					expect(again.survey).toEqual(survey.survey);
					expect([again.canUndo, again.canRedo, again.lastDone]).toEqual([
						survey.canUndo,
						survey.canRedo,
						survey.lastDone
					]);
					const end = again.survey;
					let steps = 0;
					while (again.canUndo) {
						expect(again.undo().ok).toBe(true);
						steps++;
					}
					expect(visible(again.survey)).toEqual({ leaks: [], note: undefined });
					for (let step = 0; step < steps; step++) expect(again.redo().ok).toBe(true);
					expect(again.survey).toEqual(end);
					await survey.close();
					await again.close();
					for (const store of stores.splice(0)) store.close();
				}
			),
			{ numRuns: 25 }
		);
	}, 30_000);

	test('leave alone what another device has done', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		survey.do(leak(1));
		const file = await survey.toFile();
		await survey.settled();

		globalThis.indexedDB = new IDBFactory();
		const tablet = visit();
		await given(tablet.takeFile(file));
		const there = await open(tablet, siteId);
		expect(there.survey).toEqual(survey.survey);
		expect(there.canUndo).toBe(false);
		there.do(note('mine'));
		there.undo();
		expect(visible(there.survey)).toEqual({ leaks: ['leak-1'], note: undefined });
		await there.settled();
	});
});

function visible(survey: Survey) {
	const leaks = Object.values(survey.leaks).filter(({ removed }) => !removed);
	return { leaks: leaks.map(({ id }) => id), note: survey.site.note };
}

describe('two tabs with one site', { timeout: 30_000 }, () => {
	test('come to the same survey, whatever they do by turns, and overwrite nothing', async () => {
		const { sites, siteId } = await newSite();
		const tabs = [await open(sites, siteId), await open(visit(), siteId)] as const;
		const acts = fc.sample(fc.tuple(fc.boolean(), anyBody, fc.boolean()), 150);
		let accepted = 0;
		for (const [first, body, wait] of acts) {
			const done = (first ? tabs[0] : tabs[1]).do(body);
			if (done.ok) accepted++;
			if (wait) await tabs[first ? 0 : 1].settled();
		}
		for (const tab of tabs) await tab.settled();
		await vi.waitFor(() => expect(tabs[0].commandCount).toBe(accepted + 1), SLOW);
		await vi.waitFor(() => expect(tabs[1].commandCount).toBe(accepted + 1), SLOW);
		expect(tabs[0].survey).toEqual(tabs[1].survey);
		expect(tabs[0].conflicts).toEqual(tabs[1].conflicts);
		const again = await open(visit(), siteId);
		expect(again.survey).toEqual(tabs[0].survey);
		expect(accepted).toBeGreaterThan(20);
	});
});

describe('a long log', { timeout: 60_000 }, () => {
	test('is not replayed on opening, and the last fifty steps can still be taken back', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		for (let number = 1; number <= 700; number++) {
			survey.do(leak(number));
			if (number % 100 === 0) await survey.settled();
		}
		await survey.settled();
		const store = stores[0];
		await vi.waitFor(async () => {
			const site = store && (await given(store.openSite(siteId)));
			expect(site?.checkpoint).toBeDefined();
			expect(site?.tail.length).toBeLessThan(300);
		}, SLOW);
		const again = await open(visit(), siteId);
		expect(again.survey).toEqual(survey.survey);
		for (let step = 0; step < 50; step++) expect(again.undo().ok).toBe(true);
		expect(visible(again.survey).leaks).toHaveLength(650);
		const opened = await given(readSurveyFile(await again.toFile()));
		expect(opened.commands).toHaveLength(751);
		expect(opened.survey).toEqual(again.survey);
	});

	test('from a file is opened from its checkpoint too', async () => {
		const { sites, siteId } = await newSite();
		const survey = await open(sites, siteId);
		survey.doAll(Array.from({ length: 400 }, (_, index) => leak(index + 1)));
		const file = await survey.toFile();
		await survey.settled();
		globalThis.indexedDB = new IDBFactory();
		const tablet = visit();
		await given(tablet.takeFile(file));
		const site = await given((stores.at(-1) ?? new IndexedDbStore()).openSite(siteId));
		expect(site.tail).toHaveLength(50);
		expect((await open(tablet, siteId)).survey).toEqual(survey.survey);
	});
});
