import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import {
	axeOn,
	DESK,
	goTo,
	largeLetters,
	openDemo,
	overflow,
	PHONE,
	picture,
	saved
} from './browser.ts';
import { clashingFile } from './clashing-file.ts';
import { freshPages } from './fresh-pages.ts';
import { photoWithPlace } from './photo-with-place.ts';
import { badTargets } from './targets.ts';

const appUrl = inject('appUrl');
const freshPage = freshPages();

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds wrong on the page as it is now, in a form that says where. */
async function violations(page: Page): Promise<string[]> {
	const { violations: found } = await axeOn(page, {
		rules: {
			'target-size': { enabled: true },
			// Text at 7 to 1: the light look is the one for glare. What passes that passes 4.5 to 1.
			'color-contrast-enhanced': { enabled: true },
			'color-contrast': { enabled: false }
		}
	})
		.withTags(TAGS)
		.analyze();
	return found.flatMap(({ id, nodes }) =>
		nodes.map(
			({ target, failureSummary }) => `${id}: ${target.join(' ')} – ${failureSummary ?? ''}`
		)
	);
}

/** Every state of the screens that is looked at, at both widths. */
const STATES = [
	'list of sites, empty',
	'new site being named',
	'file refused',
	'what came of a merge',
	'not kept: in memory only',
	'the disk is full',
	'a merge left something',
	'what the merge left',
	'a plan being taken in',
	'a newer version waits',
	'empty Set up',
	'empty Walk',
	'empty Weigh',
	'empty Mend',
	'empty Prove',
	'Set up',
	'Walk',
	'Weigh',
	'Mend',
	'Prove',
	'capture',
	'capture by numbers',
	'capture brought back',
	'pins now, sizes later',
	'walked and tight',
	'a leak',
	'photo of a leak',
	'compressor room, empty',
	'compressor room',
	'Mend, compressor room alone',
	'savings report',
	'fix list to print',
	'work orders',
	'plan of the site',
	'weigh check',
	'method',
	'written by a newer version',
	'no such page'
] as const;
type State = (typeof STATES)[number];

test('at least 25 states of the screens are looked at', () => {
	expect(new Set(STATES).size).toBeGreaterThanOrEqual(25);
});

describe.each([
	['at a desk', DESK],
	['on a phone', PHONE]
])('%s', (where, viewport) => {
	const looked = new Set<State>();

	const page = () => freshPage({ viewport, reducedMotion: 'reduce' });

	/** A page with a script of its own, which no other story gets. */
	async function altered(script: () => void): Promise<Page> {
		const at = await (await page()).context().newPage();
		await at.addInitScript(script);
		return at;
	}

	async function clean(at: Page, state: State, gloves = false): Promise<void> {
		looked.add(state);
		expect.soft(await violations(at), state).toEqual([]);
		expect.soft(await overflow(at), `${state}: sideways`).toBeLessThanOrEqual(0);
		if (viewport === PHONE)
			await largeLetters(at, async () => {
				expect
					.soft(await overflow(at), `${state}: sideways, letters of twice the size`)
					.toBeLessThanOrEqual(0);
			});
		if (gloves) expect.soft(await badTargets(at), `${state}: hard to hit`).toEqual([]);
		await picture(at, `${state} ${where}`);
	}

	async function start(at: Page): Promise<void> {
		await at.getByRole('button', { name: 'New site' }).click();
		await at.getByRole('textbox').first().fill('A workshop');
		await at.getByRole('combobox', { name: 'Currency' }).selectOption('EUR');
		await at.getByRole('button', { name: 'Start this site' }).click();
		await at.getByRole('navigation', { name: 'Places' }).waitFor();
	}

	test('the list of sites: empty, with a new site being named, after a refusal and after a merge', async () => {
		const at = await page();
		await at.goto(appUrl);
		await at.getByRole('button', { name: 'Open the demo site' }).waitFor();
		await clean(at, 'list of sites, empty', true);
		await at.getByRole('button', { name: 'New site' }).click();
		await clean(at, 'new site being named', true);
		await at.getByRole('button', { name: 'Not now' }).click();
		const file = at.locator('input[type="file"]').first();
		await file.setInputFiles({ name: 'x', mimeType: 'text/plain', buffer: Buffer.from('x') });
		await at.getByRole('alert').waitFor();
		await clean(at, 'file refused');
		await openDemo(at, appUrl);
		await at.goto(appUrl);
		await at.getByRole('button', { name: 'Open the demo site' }).click();
		await at.getByText('the file held nothing new').waitFor();
		await clean(at, 'what came of a merge');
	});

	test('a new site with nothing in it, in every place', async () => {
		const at = await page();
		await at.goto(appUrl);
		await start(at);
		for (const place of ['Set up', 'Walk', 'Weigh', 'Mend', 'Prove'] as const) {
			await goTo(at, place);
			await clean(at, `empty ${place}`);
		}
		await goTo(at, 'Walk');
		await at.getByRole('link', { name: 'Compressor room' }).click();
		await at.getByRole('heading', { level: 1, name: 'Compressor room' }).waitFor();
		await clean(at, 'compressor room, empty', true);
		// Nothing leaks, and the room alone makes a fix list.
		await at.getByRole('textbox', { name: /machine or tank/ }).fill('Workshop compressor');
		await at.getByRole('button', { name: 'Add it' }).click();
		await at
			.getByRole('group', { name: 'Condensate drain: what did you find?' })
			.getByLabel('Rust in the water')
			.check();
		await goTo(at, 'Mend');
		await at.getByText('Workshop compressor').first().waitFor();
		await at.getByRole('button', { name: 'Print the fix list (PDF)' }).waitFor();
		await clean(at, 'Mend, compressor room alone');
	});

	test('the demo site in every place', async () => {
		const at = await page();
		await openDemo(at, appUrl);
		for (const place of ['Weigh', 'Mend', 'Prove', 'Set up', 'Walk'] as const) {
			await goTo(at, place);
			await clean(at, place, place === 'Walk');
		}
	});

	test('the walk: a leak half entered and brought back, pins at once, areas, a leak and its photo', async () => {
		const at = await page();
		await openDemo(at, appUrl);
		await goTo(at, 'Walk');
		await at.getByRole('button', { name: 'Add a leak without the plan' }).click();
		await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
		await clean(at, 'capture', true);
		await at.getByRole('combobox', { name: 'Sized by' }).selectOption('hole');
		await clean(at, 'capture by numbers', true);
		await at.waitForTimeout(300);
		await at.reload();
		await at.getByText(/was not pinned yet when the page closed/).waitFor();
		await clean(at, 'capture brought back', true);
		await at.getByRole('button', { name: 'Leave it' }).click();
		await at.getByText('Pins now, sizes later').click();
		await clean(at, 'pins now, sizes later', true);
		await at.getByRole('button', { name: 'Walked and tight' }).click();
		await at.getByRole('button', { name: 'Mark the whole plan' }).click();
		await at.getByRole('textbox', { name: 'Area 1' }).waitFor();
		await clean(at, 'walked and tight', true);
		await at.getByRole('button', { name: 'Done' }).click();
		await at
			.getByRole('button', { name: /^Leak 45/ })
			.last()
			.click();
		await at.getByRole('button', { name: 'Move the pin' }).waitFor();
		await clean(at, 'a leak', true);
		await at.locator('input[capture]').setInputFiles(await photoWithPlace(at));
		await at.getByAltText(/^Photo 1/).click();
		await at.getByRole('textbox', { name: 'Caption' }).waitFor();
		await clean(at, 'photo of a leak', true);
	});

	test('the pages beside the places', async () => {
		const at = await page();
		await openDemo(at, appUrl);
		const site = new URL(at.url()).searchParams.get('site') ?? '';
		const look = async (path: string, name: string | RegExp, state: State) => {
			await at.goto(`${appUrl}${path}?site=${site}`);
			await at.getByRole('heading', { level: 1, name }).waitFor();
			await clean(at, state);
		};
		await look('walk/room', 'Compressor room', 'compressor room');
		await look('mend/print', /^Fix list/, 'fix list to print');
		await look('mend/work-orders', 'Work orders', 'work orders');
		await look('prove/report', /./, 'savings report');
		await look('method', /./, 'method');
		await look('no-such-page', 'There is no such page', 'no such page');
		await at.goto(`${appUrl}weigh?site=${site}&view=check`);
		await at.getByRole('heading', { level: 1 }).waitFor();
		await clean(at, 'weigh check');
		await at.goto(`${appUrl}set-up?site=${site}`);
		await at
			.getByRole('link', { name: /^Scale, sections, newer drawing/ })
			.first()
			.click();
		await at.getByRole('button', { name: /^Set the scale|^Measure/ }).waitFor();
		await clean(at, 'plan of the site');
		await at.evaluate(newerSite, site);
		await at.goto(`${appUrl}walk?site=${site}`);
		await at.getByRole('button', { name: 'Save it to a file as it is' }).waitFor();
		await clean(at, 'written by a newer version');
	});

	test('what goes on around the work: a full disk, a merge, a plan being taken in', async () => {
		const at = await page();
		await openDemo(at, appUrl);
		await goTo(at, 'Set up');
		const note = at.getByLabel('Note', { exact: true }).first();
		await note.fill('written here');
		await note.blur();
		await saved(at);
		await at.evaluate(() => {
			const { prototype } = IDBObjectStore;
			const put: unknown = Reflect.get(prototype, 'put');
			prototype.put = () => {
				throw new DOMException('made to fail', 'QuotaExceededError');
			};
			window.addEventListener('room-made', () => Object.assign(prototype, { put }));
		});
		await note.fill('only in memory');
		await note.blur();
		await at.getByRole('alert').filter({ hasText: 'The device is full' }).waitFor();
		await clean(at, 'the disk is full');
		await at.evaluate(() => window.dispatchEvent(new Event('room-made')));
		await saved(at);

		const plans = at.locator('#plans input[type=file]');
		const buffer = Buffer.from(await at.evaluate(emptyHall), 'base64');
		await plans.setInputFiles({ name: 'upper floor.png', mimeType: 'image/png', buffer });
		await at.getByRole('dialog').getByRole('button', { name: 'Take this plan' }).waitFor();
		await clean(at, 'a plan being taken in');
		await at.keyboard.press('Escape');

		await at.goto(appUrl);
		const file = await clashingFile('written elsewhere');
		await at
			.locator('input[type="file"]')
			.first()
			.setInputFiles({ name: 'other.zip', mimeType: 'application/zip', buffer: file });
		await at.getByRole('link', { name: 'Go to it' }).click();
		await at.getByRole('link', { name: 'Look through it' }).waitFor();
		await clean(at, 'a merge left something', true);
		await at.getByRole('link', { name: 'Look through it' }).click();
		await at.getByText(/^The site, note, was changed on both sides/).waitFor();
		await clean(at, 'what the merge left');
	});

	test('a newer version that waits', async () => {
		const at = await altered(() => {
			const workers = Object.assign(new EventTarget(), {
				controller: null,
				register: () => Promise.resolve(),
				ready: Promise.resolve(Object.assign(new EventTarget(), { waiting: {}, active: {} }))
			});
			Object.defineProperty(navigator, 'serviceWorker', { value: workers });
		});
		await at.goto(appUrl);
		await at.getByRole('button', { name: 'Use the newer version' }).waitFor();
		await openDemo(at, appUrl);
		await goTo(at, 'Walk');
		await at.getByRole('button', { name: 'Use the newer version' }).waitFor();
		await clean(at, 'a newer version waits', true);
	});

	test('a browser that keeps nothing', async () => {
		const at = await altered(() => {
			IDBFactory.prototype.open = () => {
				throw new DOMException('not allowed', 'SecurityError');
			};
		});
		await at.goto(appUrl);
		await at.getByRole('alert').waitFor({ timeout: 30_000 });
		await start(at);
		await at.getByText('NOT saved').waitFor();
		await clean(at, 'not kept: in memory only');
	});

	test('every state of the list was looked at', () => {
		expect(STATES.filter((state) => !looked.has(state))).toEqual([]);
	});
});

/** Runs in the page: makes a site the work of a later version. */
async function newerSite(siteId: string): Promise<void> {
	const request = indexedDB.open('airtally');
	await new Promise((resolve) => (request.onsuccess = resolve));
	const transaction = request.result.transaction('sites', 'readwrite');
	const row = transaction.objectStore('sites').get(siteId);
	row.onsuccess = () =>
		transaction.objectStore('sites').put({ ...(row.result as object), schemaVersion: 2 });
	await new Promise((resolve) => (transaction.oncomplete = resolve));
	request.result.close();
}

/** Runs in the page: a drawing of a hall, as a PNG in base 64. */
async function emptyHall(): Promise<string> {
	const canvas = new OffscreenCanvas(800, 500);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.fillStyle = '#fff';
	context.fillRect(0, 0, 800, 500);
	context.strokeRect(60, 60, 680, 380);
	const png = await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer();
	return btoa(String.fromCharCode(...new Uint8Array(png)));
}
