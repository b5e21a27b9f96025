import { setTimeout as pause } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { leaksInOrder } from '#lib/core/survey/leak-state.ts';
import { fold, readLog } from '#lib/core/survey/log.ts';
import { blobsNamedBy } from '#lib/storage/file/named-blobs.ts';
import { openDemo, saved } from '../story/browser.ts';
import { BrowserProcess } from './browser-process.ts';
import { tally, times } from './long.ts';

const appUrl = inject('appUrl');
const EACH = times(2, 60);
const process = new BrowserProcess();
let page: Page;
let siteId: string;

beforeAll(async () => {
	page = await process.start();
	await openDemo(page, appUrl);
	await saved(page);
	siteId = new URL(page.url()).searchParams.get('site') ?? '';
});
afterAll(() => process.end());

/** What is on the disk, read past the app: leaks by tag, each with its place and its photos. */
async function onDisk() {
	await page.goto(appUrl, { waitUntil: 'commit' });
	const { commands: entries, whole } = await page.evaluate(readDatabase, siteId);
	const { commands, quarantined } = readLog(entries);
	expect(quarantined).toEqual([]);
	const folded = fold(commands);
	if (!folded.ok) throw new Error(folded.error.code);
	const leaks = leaksInOrder(folded.value.survey);
	return {
		/** Pictures that a command names and that are not there whole. */
		dangling: blobsNamedBy(commands).filter(({ sha256 }) => !whole.includes(sha256)).length,
		count: leaks.length,
		/** Of a pin that is put where it was, only this tells. */
		moves: commands.filter(({ body }) => body.kind === 'move-pin').length,
		places: leaks.map(({ tag, at }) => `${tag}: ${at?.x} ${at?.y}`).join('; '),
		photos: leaks.flatMap(({ photos }) =>
			Object.values(photos ?? {}).filter(({ removed }) => !removed)
		).length
	};
}
type OnDisk = Awaited<ReturnType<typeof onDisk>>;

/** @returns whether a leak was still being entered, which is left then */
async function onWalk(): Promise<boolean> {
	await page.goto(`${appUrl}walk?site=${siteId}`, { waitUntil: 'commit' });
	await page.getByRole('heading', { level: 2, name: /^(\d+ leaks|Leak \d+)$/ }).waitFor();
	// What is kept of a leak half entered is looked for a moment later.
	await pause(150);
	const leave = page.getByRole('button', { name: 'Leave it' });
	const entering = await leave.isVisible();
	if (entering) await leave.click();
	await page.getByRole('heading', { level: 2, name: /^\d+ leaks$/ }).waitFor();
	return entering;
}

/** Something a walk does: what leads up to it, the deed itself, what shows that it was done, and what it changes. */
interface Deed {
	readonly prepare: () => Promise<void>;
	readonly act: () => Promise<void>;
	readonly shown: (before: OnDisk) => Promise<void>;
	readonly changed: (before: OnDisk, after: OnDisk) => boolean;
}

const heading = (name: string) => page.getByRole('heading', { level: 2, name, exact: true });

const DEEDS: Readonly<Record<string, Deed>> = {
	'a leak is pinned with its photo': {
		prepare: async () => {
			await page.getByRole('button', { name: 'Add a leak without the plan' }).click();
			await page.locator('input[capture]').setInputFiles(await photo());
			await page.getByAltText(/^Photo 1/).waitFor();
		},
		act: () => page.getByRole('button', { name: /^Pin leak/ }).click(),
		shown: ({ count }) => heading(`${count + 1} leaks`).waitFor(),
		changed: (before, after) =>
			after.count === before.count + 1 && after.photos === before.photos + 1
	},
	'a photo is added': {
		prepare: async () => {
			await page.goto(`${appUrl}walk?site=${siteId}&leak=${await anyLeak()}`);
			await page.locator('input[capture]').waitFor({ state: 'attached' });
		},
		act: async () => page.locator('input[capture]').setInputFiles(await photo()),
		shown: () => page.getByAltText(/^Photo 1/).waitFor(),
		changed: (before, after) => after.photos === before.photos + 1
	},
	'a pin is moved': {
		prepare: async () => {
			await page.goto(`${appUrl}walk?site=${siteId}&leak=${await anyLeak()}`);
			await page.getByRole('button', { name: 'Move the pin' }).click();
			await page.getByRole('application').focus();
			for (let step = 0; step < 1 + Math.random() * 4; step++)
				await page.keyboard.press(Math.random() < 0.5 ? 'ArrowRight' : 'ArrowDown');
		},
		act: () => page.keyboard.press('Enter'),
		shown: () => page.getByRole('button', { name: 'Move the pin' }).waitFor(),
		changed: (before, after) => after.moves === before.moves + 1 && after.count === before.count
	},
	'a step is taken back': {
		prepare: async () => {
			await page.getByRole('button', { name: 'Add a leak without the plan' }).click();
			await page.getByRole('button', { name: /^Pin leak/ }).click();
			await heading(`${await listed()} leaks`).waitFor();
			await saved(page);
		},
		act: () => page.getByRole('button', { name: 'Undo' }).click(),
		shown: ({ count }) => heading(`${count} leaks`).waitFor(),
		changed: (before, after) => after.count === before.count
	}
};

const listed = () =>
	page
		.getByRole('listitem')
		.getByRole('button', { name: /^Leak \d+/ })
		.count();

async function anyLeak(): Promise<string> {
	const { commands } = await page.evaluate(readDatabase, siteId);
	const folded = fold(readLog(commands).commands);
	if (!folded.ok) throw new Error(folded.error.code);
	const without = leaksInOrder(folded.value.survey).filter(
		({ photos, at }) => at && !Object.values(photos ?? {}).some(({ removed }) => !removed)
	);
	const leak = without[Math.floor(Math.random() * without.length)];
	if (!leak) throw new Error('every leak has a photo');
	return leak.id;
}

test.each(Object.keys(DEEDS))(
	`the browser is killed while %s: before or after, and nothing between`,
	{ timeout: 60_000 + EACH * 20_000 },
	async (name) => {
		const deed = DEEDS[name];
		if (!deed) throw new Error(name);
		let [lost, between, twice] = [0, 0, 0];
		for (let kill = 0; kill < EACH; kill++) {
			await onWalk();
			const before = await onDisk();
			await onWalk();
			await deed.prepare();
			const acknowledged = Promise.all([deed.act(), deed.shown(before)])
				.then(() => saved(page))
				.then(() => true)
				.catch(() => false);
			// Every fourth is let come to its end, so that what was called saved is looked at too.
			const patience = kill % 4 === 1 ? 10_000 : Math.random() * 400;
			const was = await Promise.race([acknowledged, pause(patience, false)]);
			await process.kill();
			page = await process.start();
			const after = await onDisk();
			const same =
				name !== 'a step is taken back' &&
				JSON.stringify({ ...after }) === JSON.stringify({ ...before });
			const undoneNot = name === 'a step is taken back' && after.count === before.count + 1;
			const done = deed.changed(before, after);
			if (was && !done) lost++;
			if (after.dangling > 0 || (!done && !same && !undoneNot)) between++;
			// The app opens what the kill left, and does not offer what was pinned once more.
			const entering = await onWalk();
			if (entering && done) twice++;
		}
		tally(`Browser killed while ${name}`, EACH, lost + between + twice);
		expect({ lost, between, twice }).toEqual({ lost: 0, between: 0, twice: 0 });
	}
);

test(
	`the browser is killed while the camera is open: the leak that was being entered comes back`,
	{ timeout: 60_000 + EACH * 20_000 },
	async () => {
		let lost = 0;
		for (let kill = 0; kill < EACH; kill++) {
			await onWalk();
			await page.getByRole('button', { name: 'Add a leak without the plan' }).click();
			await page.locator('label', { hasText: 'Film tears, a hole stays' }).click();
			await page.getByText(/of free air/).waitFor();
			const chooser = page.waitForEvent('filechooser');
			await page.locator('input[capture]').evaluate((input) => (input as HTMLInputElement).click());
			await chooser;
			await pause(Math.random() * 400);
			await process.kill();
			page = await process.start();
			await page.goto(`${appUrl}walk?site=${siteId}`, { waitUntil: 'commit' });
			const radio = page.getByRole('radio', { name: 'Film tears, a hole stays' });
			await radio.waitFor().catch(() => undefined);
			if ((await radio.count()) === 0 || !(await radio.isChecked())) lost++;
		}
		tally('Browser killed while the camera is open', EACH, lost);
		expect(lost).toBe(0);
	}
);

/** A photo unlike any other, and hard to pack, so that writing it takes its time. */
async function photo(): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
	const base64 = await page.evaluate(async () => {
		const canvas = new OffscreenCanvas(1200, 900);
		const context = canvas.getContext('2d');
		const picture = context?.createImageData(1200, 900);
		if (!context || !picture) throw new Error('no canvas');
		for (let at = 0; at < picture.data.length; at++) picture.data[at] = Math.random() * 256;
		context.putImageData(picture, 0, 0);
		const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.5 });
		const reader = new FileReader();
		reader.readAsDataURL(jpeg);
		await new Promise((resolve) => reader.addEventListener('load', resolve));
		return (reader.result as string).split(',')[1] ?? '';
	});
	return { name: 'IMG_1.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(base64, 'base64') };
}

/** Runs in the page: the commands of a site as they lie there, and the pictures whose bytes have their hash. */
async function readDatabase(site: string): Promise<{ commands: unknown[]; whole: string[] }> {
	const ended = <T>(request: IDBRequest<T>) =>
		new Promise<T>((resolve, reject) => {
			request.onsuccess = () => resolve(request.result);
			request.onerror = () => reject(request.error ?? new Error('no answer'));
		});
	const database = await ended(indexedDB.open('airtally'));
	const transaction = database.transaction(['log', 'blobs']);
	const rows = ended(transaction.objectStore('log').getAll(IDBKeyRange.bound([site], [site, []])));
	const blobs = ended(transaction.objectStore('blobs').getAll());
	const commands = ((await rows) as { command: unknown }[]).map(({ command }) => command);
	const whole: string[] = [];
	for (const { sha256, bytes } of (await blobs) as {
		sha256: string;
		bytes: Uint8Array<ArrayBuffer>;
	}[]) {
		const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
		const hex = [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
		if (hex === sha256) whole.push(sha256);
	}
	database.close();
	return { commands, whole };
}
