import { flushSync } from 'svelte';
import { expect, test } from 'vitest';
import type { CommandBody } from '#lib/core/survey/command.ts';
import { IndexedDbStore } from '#lib/storage/indexed-db/indexed-db-store.ts';
import { openSite, sites, Sites } from './sites.svelte.ts';

const leak: CommandBody = {
	kind: 'add-leak',
	leak: { id: 'leak-1', tag: 1, part: 'hose', hazards: [], sightings: {}, mendings: {} }
};

async function newSite(): Promise<string> {
	const made = await sites.create('Tonwerk Nord', 'EUR', 'Round 1');
	if (!made.ok) throw new Error(made.error.code);
	return made.value;
}

test('a screen sees each change at once, and how the saving goes', async () => {
	const opened = await openSite(await newSite());
	if (!opened.ok) throw new Error(opened.error.code);
	const survey = opened.value;
	const seen: unknown[] = [];
	const stop = $effect.root(() => {
		$effect(() => {
			seen.push([Object.keys(survey.survey.leaks).length, survey.canUndo, survey.saveState.kind]);
		});
	});
	flushSync();
	survey.do(leak);
	flushSync();
	await survey.settled();
	flushSync();
	survey.undo();
	flushSync();
	stop();
	expect(seen).toEqual([
		[0, false, 'saved'],
		[1, true, 'saving'],
		[1, true, 'saved'],
		[1, false, 'saving']
	]);
	await survey.close();
});

test('what a screen has made reactive reaches the disk as plain data', async () => {
	const siteId = await newSite();
	const opened = await openSite(siteId);
	if (!opened.ok) throw new Error(opened.error.code);
	const form = $state({ body: leak, blobs: [] });
	expect(opened.value.do(form.body, form.blobs)).toEqual({ ok: true, value: null });
	await opened.value.settled();
	expect(opened.value.saveState).toEqual({ kind: 'saved' });
	form.body = { ...leak, leak: { ...leak.leak, tag: 9 } };

	const store = new IndexedDbStore();
	const again = await new Sites(store).open(siteId);
	expect(again.ok && again.value.survey).toEqual(opened.value.survey);
	expect(again.ok && again.value.survey.leaks['leak-1']?.tag).toBe(1);
	if (again.ok) await again.value.close();
	store.close();
	await opened.value.close();
});

test('a file goes out and comes in again with the browser’s own database', async () => {
	const siteId = await newSite();
	const opened = await openSite(siteId);
	if (!opened.ok) throw new Error(opened.error.code);
	opened.value.do(leak);
	const file = await opened.value.toFile();
	await opened.value.close();
	await sites.remove(siteId);
	expect(sites.list.some(({ id }) => id === siteId)).toBe(false);
	expect(await sites.takeFile(file)).toMatchObject({
		ok: true,
		value: { siteId, addedCommands: 0 }
	});
	expect(sites.list.find(({ id }) => id === siteId)?.counts.leaks).toBe(1);
});
