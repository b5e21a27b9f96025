import { readFile } from 'node:fs/promises';
import { strFromU8, unzipSync } from 'fflate';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { photoWithPlace } from '../story/photo-with-place.ts';
import { freshProfile, goTo, launch, openDemo, picture, saved } from '../story/browser.ts';
import { tally, times } from './long.ts';

const appUrl = inject('appUrl');
const SLOW = { timeout: 20_000 };
let browser: Browser;
let context: BrowserContext;

beforeAll(async () => {
	browser = await launch();
});
afterEach(() => context.close());
afterAll(() => browser.close());

const noteOf = (page: Page) => page.getByLabel('Note', { exact: true }).first();

async function write(page: Page, text: string): Promise<void> {
	await noteOf(page).fill(text);
	await noteOf(page).blur();
}

async function newSite(page: Page): Promise<void> {
	await page.goto(appUrl);
	await startSite(page);
}

async function startSite(page: Page): Promise<void> {
	await page.getByRole('button', { name: 'New site' }).click();
	await page.getByRole('textbox').first().fill('Tonwerk Nord');
	await page.getByRole('combobox', { name: 'Currency' }).selectOption('EUR');
	await page.getByRole('button', { name: 'Start this site' }).click();
	await page.getByRole('navigation', { name: 'Places' }).waitFor();
}

async function fileFrom(page: Page, button: string) {
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: button }).click();
	const read = await readSurveyFile(
		new Uint8Array(await readFile(await (await downloading).path()))
	);
	if (!read.ok) throw new Error(read.error.code);
	return read.value;
}

test('a full disk is said, the file from memory holds everything, and room made is used', async () => {
	context = await freshProfile(browser);
	const page = await context.newPage();
	await newSite(page);
	await write(page, 'kept on the disk');
	await saved(page);
	// The quota that Chromium's debugger can set has no effect on a database here, so the database
	// is made to answer as it does on a full disk.
	await page.evaluate(() => {
		const { prototype } = IDBObjectStore;
		const put: unknown = Reflect.get(prototype, 'put');
		prototype.put = () => {
			throw new DOMException('made to fail', 'QuotaExceededError');
		};
		window.addEventListener('room-made', () => Object.assign(prototype, { put }));
	});
	const long = 'only in memory '.repeat(250).trim();
	await write(page, long);
	await page.getByText('NOT saved').waitFor();
	await page.getByRole('alert').filter({ hasText: 'The device is full' }).waitFor();
	const rescued = await fileFrom(page, 'Save everything to a file now');
	expect(rescued.survey.site.note).toBe(long);
	await page.evaluate(() => window.dispatchEvent(new Event('room-made')));
	await saved(page);
	expect(await page.getByRole('alert').count()).toBe(0);
	await page.reload();
	await noteOf(page).waitFor();
	expect(await noteOf(page).inputValue()).toBe(long);
});

describe('a browser that keeps nothing', () => {
	test.each([
		['throws when it is asked', 'throws'],
		['never answers', 'hangs'],
		['has no database at all', 'absent']
	])('and %s says so plainly, and serves for a visit that ends in a file', async (_, how) => {
		context = await freshProfile(browser);
		await context.addInitScript((fault: string) => {
			if (fault === 'absent') {
				Object.defineProperty(window, 'indexedDB', { value: undefined });
				return;
			}
			IDBFactory.prototype.open = () => {
				if (fault === 'throws') throw new DOMException('not allowed', 'SecurityError');
				return new EventTarget() as IDBOpenDBRequest;
			};
		}, how);
		const page = await context.newPage();
		const faults: string[] = [];
		page.on('pageerror', (error) => faults.push(error.message));
		await page.goto(appUrl);
		await page
			.getByRole('alert')
			.filter({ hasText: 'leave private browsing' })
			.waitFor({ timeout: 30_000 });
		await startSite(page);
		await page.getByText('NOT saved').waitFor();
		await write(page, 'only in memory');
		await goTo(page, 'Walk');
		await page.getByRole('button', { name: 'Add a leak without the plan' }).click();
		await page.locator('input[capture]').setInputFiles(await photoWithPlace(page));
		await page.getByAltText(/^Photo 1/).waitFor();
		await page.getByRole('button', { name: 'Pin leak 1, size it later' }).click();
		await page.getByRole('heading', { level: 2, name: '1 leak' }).waitFor();
		// The list and the places share what is in memory.
		await page.getByRole('link', { name: /^All sites/ }).click();
		await page.getByText('Tonwerk Nord').first().waitFor();
		await page
			.getByRole('link', { name: /Tonwerk/ })
			.first()
			.click();
		const { survey, missingBlobs } = await fileFrom(page, 'Save everything to a file now');
		expect(survey.site.note).toBe('only in memory');
		expect(Object.values(Object.values(survey.leaks)[0]?.photos ?? {})).toHaveLength(1);
		expect(missingBlobs).toEqual([]);
		await page.goto(`${appUrl}walk?site=site-gone`);
		await page.getByRole('heading', { name: 'This site cannot be opened' }).waitFor(SLOW);
		await page.goto(`${appUrl}method`);
		await page.getByRole('heading', { level: 1 }).waitFor();
		expect(faults).toEqual([]);
	});

	test.each(['throws', 'absent'])('a storage manager that %s changes nothing else', async (how) => {
		context = await freshProfile(browser);
		await context.addInitScript((fault: string) => {
			const fail = () => {
				throw new DOMException('no', 'InvalidStateError');
			};
			const value =
				fault === 'absent' ? undefined : { estimate: fail, persist: fail, persisted: fail };
			Object.defineProperty(navigator, 'storage', { value });
			// What a browser says of a tab that keeps its surveys apart from the Home screen's.
			Object.defineProperty(navigator, 'standalone', { value: fault === 'absent' ? false : true });
		}, how);
		const page = await context.newPage();
		await newSite(page);
		await write(page, 'kept all the same');
		await saved(page);
		await page.goto(appUrl);
		await page.getByText('does not say how safely it keeps').waitFor();
		const homeFirst = page.getByText('put Airtally on the Home screen before the first survey');
		if (how === 'absent') await homeFirst.waitFor();
		else expect(await homeFirst.count()).toBe(0);
	});
});

test.each(['site', 'database'])(
	'what a newer version wrote, its %s, is not shown, not changed, and handed on as it is',
	async (what) => {
		context = await freshProfile(browser);
		const page = await context.newPage();
		await openDemo(page, appUrl);
		await saved(page);
		const siteId = new URL(page.url()).searchParams.get('site') ?? '';
		await page.goto(`${appUrl}method`);
		const lying = await page.evaluate(laterVersion, { siteId, what });
		await page.goto(`${appUrl}walk?site=${siteId}`);
		await page.getByText('written by a newer version').waitFor(SLOW);
		await picture(page, `written by a newer version, its ${what}`);
		const downloading = page.waitForEvent('download');
		await page.getByRole('button', { name: 'Save it to a file as it is' }).click();
		const bytes = new Uint8Array(await readFile(await (await downloading).path()));
		const parts = unzipSync(bytes);
		const written = strFromU8(parts['log.jsonl'] ?? new Uint8Array());
		const records = written
			.trim()
			.split('\n')
			.map((line) => JSON.parse(line) as unknown);
		expect(records).toEqual(lying);
		expect(records.at(-1)).toMatchObject({ body: { kind: 'of-the-next-version' } });
		expect(Object.keys(parts).filter((path) => path.startsWith('blobs/')).length).toBeGreaterThan(
			0
		);
		// This version says of the file what it says of the site, and touches neither.
		if (what === 'site') {
			await page.goto(appUrl);
			await page
				.locator('input[type="file"]')
				.first()
				.setInputFiles({ name: 'a', mimeType: 'application/zip', buffer: Buffer.from(bytes) });
			await page.getByRole('alert').filter({ hasText: 'written by a newer version' }).waitFor();
		}
		await page.goto(`${appUrl}method`);
		expect(await page.evaluate(laterVersion, { siteId, what: 'look' })).toEqual(lying);
	}
);

/** Runs in the page: makes what is stored the work of a later version, and gives the log as it then lies there. */
async function laterVersion({
	siteId,
	what
}: {
	siteId: string;
	what: string;
}): Promise<unknown[]> {
	const ended = <T>(request: IDBRequest<T>) =>
		new Promise<T>((resolve, reject) => {
			request.onsuccess = () => resolve(request.result);
			request.onerror = () => reject(request.error ?? new Error('no answer'));
		});
	const database = await ended(indexedDB.open('airtally', what === 'database' ? 7 : undefined));
	const transaction = database.transaction(['sites', 'log'], 'readwrite');
	const [sites, log] = [transaction.objectStore('sites'), transaction.objectStore('log')];
	if (what !== 'look') {
		const row = (await ended(sites.get(siteId))) as object;
		if (what === 'site') sites.put({ ...row, schemaVersion: 2 });
		const body = { kind: 'of-the-next-version', means: ['something', 'else'] };
		const command = { id: 'command-9', device: 'device-9', time: 1e6, at: '2027-01-01', body };
		log.put({ siteId, command });
	}
	const rows = (await ended(log.getAll(IDBKeyRange.bound([siteId], [siteId, []])))) as {
		command: unknown;
	}[];
	database.close();
	return rows.map(({ command }) => command);
}

const ROUNDS = times(8, 100);

test(
	'two tabs edit one survey in turns, one is closed in the middle, and no edit is lost',
	{ timeout: 80_000 + ROUNDS * 2000 },
	async () => {
		context = await freshProfile(browser);
		const first = await context.newPage();
		await openDemo(first, appUrl);
		await goTo(first, 'Set up');
		const second = await context.newPage();
		await second.goto(first.url());
		await noteOf(second).waitFor();
		const name = first.getByLabel('Name of the site').first();
		for (let round = 0; round < ROUNDS; round++) {
			await write(second, `note ${round}`);
			await name.fill(`Works ${round}`);
			await name.blur();
		}
		await saved(first);
		await expect.poll(() => noteOf(first).inputValue(), SLOW).toBe(`note ${ROUNDS - 1}`);
		// One that is put to sleep in the background holds nobody up, and has it all when it wakes.
		const debug = await context.newCDPSession(second);
		await debug.send('Page.setWebLifecycleState', { state: 'frozen' });
		await name.fill('Works while it slept');
		await name.blur();
		await saved(first);
		await debug.send('Page.setWebLifecycleState', { state: 'active' });
		await expect
			.poll(() => second.getByLabel('Name of the site').first().inputValue(), SLOW)
			.toBe('Works while it slept');
		await name.fill(`Works ${ROUNDS - 1}`);
		await name.blur();
		await write(second, 'the last of the second tab');
		await saved(second);
		await second.close();
		await write(first, 'and the first goes on');
		await saved(first);
		await first.reload();
		await noteOf(first).waitFor();
		expect(await noteOf(first).inputValue()).toBe('and the first goes on');
		expect(await name.inputValue()).toBe(`Works ${ROUNDS - 1}`);
		const { commands, conflicts } = await fileFrom(first, 'To file');
		expect(conflicts).toEqual([]);
		const texts = commands.map(({ body }) => JSON.stringify(body));
		for (let round = 0; round < ROUNDS; round++) {
			expect(texts.some((text) => text.includes(`"note ${round}"`))).toBe(true);
			expect(texts.some((text) => text.includes(`"Works ${round}"`))).toBe(true);
		}
		tally('Edits in two tabs in turns', 2 * ROUNDS + 2, 0);
	}
);

test('the last twenty steps are taken back after a restart', async () => {
	context = await freshProfile(browser);
	const page = await context.newPage();
	await newSite(page);
	for (let step = 1; step <= 21; step++) await write(page, `step ${step}`);
	await saved(page);
	await page.reload();
	await noteOf(page).waitFor();
	for (let step = 20; step >= 1; step--) {
		await page.getByRole('button', { name: 'Undo' }).click();
		await expect.poll(() => noteOf(page).inputValue(), SLOW).toBe(`step ${step}`);
	}
	await saved(page);
});

describe('a clock that is wrong', () => {
	test.each([
		['an hour behind', -3_600_000, true],
		['a day ahead', 86_400_000, false],
		['in 1970', -Date.now() + 600_000, true]
	])('%s: what was done last still stands last', async (_, by, doubted) => {
		context = await freshProfile(browser);
		const page = await context.newPage();
		await newSite(page);
		await write(page, 'at the right time');
		await saved(page);
		await page.clock.setFixedTime(new Date(Date.now() + by));
		await page.reload();
		await noteOf(page).waitFor();
		const said = page.getByText('The clock of this device says');
		expect(await said.count()).toBe(doubted ? 1 : 0);
		await write(page, 'at the wrong time');
		await saved(page);
		await page.clock.setFixedTime(new Date());
		await page.reload();
		await noteOf(page).waitFor();
		expect(await noteOf(page).inputValue()).toBe('at the wrong time');
	});
});
