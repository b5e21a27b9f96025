import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { readPdf } from '../report/read-pdf.ts';
import { goTo, openDemo, PHONE, picture, saved, overflow } from './browser.ts';
import { freshPages } from './fresh-pages.ts';
import { photoWithPlace } from './photo-with-place.ts';

const appUrl = inject('appUrl');
const freshPage = freshPages();

/** A phone held upright, touched with a finger; `taps` counts how often. */
class Phone {
	taps = 0;
	readonly page: Page;
	#last: [x: number, y: number] = [0, 0];

	constructor(page: Page) {
		this.page = page;
	}

	async tapAt(x: number, y: number): Promise<void> {
		this.taps++;
		await this.page.touchscreen.tap(x, y);
	}

	async tap(target: Locator): Promise<void> {
		await target.scrollIntoViewIfNeeded();
		const box = await resting(target);
		if (!box) throw new Error('what is to be tapped is not on the screen');
		expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(47.9);
		this.#last = [box.x + box.width / 2, box.y + box.height / 2];
		await this.tapAt(...this.#last);
	}

	/** A second tap on the same spot, as quick as a finger's. */
	async tapAgain(): Promise<void> {
		await this.tapAt(...this.#last);
	}

	/** Taps the plan at shares of its picture. */
	async tapPlan(x: number, y: number): Promise<void> {
		const box = await this.page.getByAltText(/^Floor plan/).boundingBox();
		if (!box) throw new Error('the plan is not on the screen');
		await this.tapAt(box.x + x * box.width, box.y + y * box.height);
	}
}

/** Where something lies once the page has come to rest: a finger waits for that too. */
async function resting(target: Locator) {
	let before = await target.boundingBox();
	for (;;) {
		await target.page().waitForTimeout(400);
		const now = await target.boundingBox();
		if (now?.x === before?.x && now?.y === before?.y) return now;
		before = now;
	}
}

async function onWalk(): Promise<Phone> {
	const page = await freshPage({ viewport: PHONE, hasTouch: true, isMobile: true });
	await openDemo(page, appUrl);
	await goTo(page, 'Walk');
	await count(page, 46);
	return new Phone(page);
}

/** Nothing sticks out of the page sideways. */
async function notSideways(page: Page): Promise<void> {
	expect(await overflow(page)).toBeLessThanOrEqual(0);
}

const count = (page: Page, leaks: number) =>
	page.getByRole('heading', { level: 2, name: `${leaks} leaks`, exact: true }).waitFor();
/** A leak in the list beside the plan. */
const inList = (page: Page, tag: number) =>
	page.getByRole('listitem').getByRole('button', { name: new RegExp(`^Leak ${tag}\\b`) });
const soap = (page: Page, name: string) => page.locator('label', { hasText: name });

async function toFile(page: Page) {
	await saved(page);
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'To file' }).click();
	const bytes = new Uint8Array(await readFile(await (await downloading).path()));
	const read = await readSurveyFile(bytes);
	if (!read.ok) throw new Error(read.error.code);
	return { bytes, ...read.value };
}

describe('a leak on a phone', () => {
	test('takes three taps, the last part carried and marked, and Same again takes two', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await phone.tapPlan(0.5, 0.93);
		await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
		await page.getByText('Part, section and pressure are those of leak 46.').waitFor();
		await phone.tap(soap(page, 'Film tears, a hole stays'));
		await page.getByText(/of free air, €\d+ a year/).waitFor();
		await picture(page, 'capture form on a phone');
		await phone.tap(page.getByRole('button', { name: 'Pin leak 47' }));
		await count(page, 47);
		await page.locator('[data-tag="47"]').waitFor();
		expect(phone.taps).toBeLessThanOrEqual(4);
		await picture(page, 'walk after a leak on a phone');
		await notSideways(page);

		phone.taps = 0;
		await phone.tapPlan(0.2, 0.93);
		await phone.tap(page.getByRole('button', { name: 'Same again as leak 47' }));
		await count(page, 48);
		expect(phone.taps).toBe(2);
		const { survey } = await toFile(page);
		const [a, b] = [47, 48].map((tag) => Object.values(survey.leaks).find((l) => l.tag === tag));
		expect(Object.values(b?.sightings ?? {})[0]?.evidence).toEqual(
			Object.values(a?.sightings ?? {})[0]?.evidence
		);
		expect(b?.part).toBe(a?.part);
	});

	test('in the corner of the plan, its ring is not under the buttons', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await phone.tapPlan(0.95, 0.95);
		await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
		const ring = await resting(page.locator('.draft-cross'));
		const buttons = await resting(page.locator('.leaflet-bar'));
		if (!ring || !buttons) throw new Error('ring or buttons are not on the screen');
		const clearX = ring.x + ring.width <= buttons.x || ring.x >= buttons.x + buttons.width;
		const clearY = ring.y + ring.height <= buttons.y || ring.y >= buttons.y + buttons.height;
		expect(clearX || clearY).toBe(true);
	});

	test('on its side, plan, soap and button are seen at once', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await page.setViewportSize({ width: PHONE.height, height: PHONE.width });
		await resting(page.getByAltText(/^Floor plan/));
		await phone.tapPlan(0.5, 0.4);
		await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
		for (const seen of [
			page.locator('.draft-cross'),
			soap(page, 'A cushion of fine foam'),
			page.getByRole('button', { name: /^Pin leak 47/ })
		]) {
			const box = await resting(seen);
			expect(box?.y).toBeGreaterThanOrEqual(0);
			expect((box?.y ?? 0) + (box?.height ?? 0) / 2).toBeLessThan(PHONE.width);
		}
		await notSideways(page);
	});

	test('that was pinned before is taken back while the next is entered, and it is said which', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await page.getByText('Pins now, sizes later').tap();
		await phone.tapPlan(0.2, 0.93);
		await count(page, 47);
		await page.getByRole('button', { name: 'Add a leak without the plan' }).tap();
		await page.getByRole('heading', { name: 'Leak 48' }).waitFor();
		await page.getByRole('button', { name: 'Undo' }).tap();
		const said = page.getByRole('status').filter({ hasText: 'Taken back: the new leak (leak 47)' });
		await said.waitFor();
		await page.getByRole('button', { name: 'Redo' }).tap();
		await page.getByText('Brought again: the new leak (leak 47)').waitFor();
		expect(await said.count()).toBe(0);
		await page.getByRole('button', { name: 'Leave it' }).tap();
		await count(page, 47);
		await goTo(page, 'Weigh');
		expect(await page.getByText('Brought again').count()).toBe(0);
	});

	test('two taps on one picture of the soap choose it and pin the leak', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await phone.tapPlan(0.5, 0.93);
		await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
		await phone.tap(soap(page, 'Foam that spits'));
		await phone.tapAgain();
		await count(page, 47);
		expect(phone.taps).toBe(3);
	});

	test('twenty fast taps on the button make one leak', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await phone.tapPlan(0.5, 0.93);
		await soap(page, 'Foam that spits').tap();
		await page.getByText(/of free air, €\d+ a year/).waitFor();
		const box = await page.getByRole('button', { name: 'Pin leak 47' }).boundingBox();
		if (!box) throw new Error('no button');
		for (let tap = 0; tap < 20; tap++)
			await phone.tapAt(box.x + box.width / 2, box.y + box.height / 2);
		const { survey } = await toFile(page);
		expect(Object.keys(survey.leaks)).toHaveLength(47);
	});

	test('in a section that nobody has named yet names it on the spot', async () => {
		const { page } = await onWalk();
		await page.getByRole('button', { name: 'Add a leak without the plan' }).tap();
		await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
		const section = page.getByRole('combobox', { name: 'Section' });
		await section.selectOption('A new one …');
		// Enter ends the name and pins nothing.
		await page.getByRole('textbox', { name: 'Name of the new section' }).fill('Glaze store');
		await page.keyboard.press('Enter');
		await page
			.getByRole('textbox', { name: 'Name of the new section' })
			.waitFor({ state: 'detached' });
		expect(await section.locator('option:checked').textContent()).toBe('Glaze store');
		await page.getByRole('button', { name: 'Pin leak 47' }).tap();
		await count(page, 47);
		const { survey } = await toFile(page);
		const made = Object.values(survey.sections).find(({ name }) => name === 'Glaze store');
		const leak = Object.values(survey.leaks).find(({ tag }) => tag === 47);
		expect(made?.id).toBeDefined();
		expect(leak?.sectionId).toBe(made?.id);
	});

	test('what was carried can be cleared', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await phone.tapPlan(0.5, 0.93);
		await page.getByRole('button', { name: 'Clear them' }).tap();
		expect(await page.getByRole('combobox', { name: 'Part' }).inputValue()).toBe('threaded-joint');
		expect(await page.getByText(/^As on leak/).count()).toBe(0);
	});

	test('pins now, sizes later: one tap each, marked, and at hand to be sized', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await page.getByText('Pins now, sizes later').tap();
		for (const x of [0.2, 0.4, 0.6]) {
			await phone.tapPlan(x, 0.93);
			await page.waitForTimeout(50);
		}
		await count(page, 49);
		expect(phone.taps).toBe(3);
		// A second touch of a shaking hand at one place is not a second leak.
		await phone.tapPlan(0.6, 0.935);
		const latest = page.getByRole('region', { name: 'Latest leaks' });
		expect(await latest.getByText('to size').count()).toBe(3);
		await picture(page, 'rapid pins on a phone');
		await notSideways(page);
		await phone.tap(latest.getByRole('button', { name: /^Leak 49/ }));
		await page.getByRole('heading', { name: 'Leak 49' }).waitFor();
		await soap(page, 'Foam that spits').tap();
		await page.getByRole('button', { name: 'All leaks' }).tap();
		await count(page, 49);
		expect(await latest.getByText('to size').count()).toBe(2);
	});

	test('half entered, it outlives the page, and is forgotten once it is pinned', async () => {
		const phone = await onWalk();
		const { page } = phone;
		await phone.tapPlan(0.5, 0.93);
		await soap(page, 'Film tears, a hole stays').tap();
		await page.getByRole('combobox', { name: 'Part' }).selectOption('hose');
		await page.locator('input[capture]').setInputFiles(await photoWithPlace(page));
		await page.getByAltText(/^Photo 1/).waitFor();
		await page.waitForTimeout(300);
		await page.reload();
		await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
		await page.getByText(/was not pinned yet when the page closed/).waitFor();
		await picture(page, 'draft brought back on a phone');
		await notSideways(page);
		expect(await page.getByRole('radio', { name: 'Film tears, a hole stays' }).isChecked()).toBe(
			true
		);
		expect(await page.getByRole('combobox', { name: 'Part' }).inputValue()).toBe('hose');
		await page.getByAltText(/^Photo 1/).waitFor();
		await page.getByRole('button', { name: 'Pin leak 47' }).tap();
		await count(page, 47);
		const { survey } = await toFile(page);
		const leak = Object.values(survey.leaks).find(({ tag }) => tag === 47);
		expect(leak?.part).toBe('hose');
		expect(Object.keys(leak?.photos ?? {})).toHaveLength(1);
		await page.reload();
		await count(page, 47);
		expect(await page.getByText(/was not pinned yet/).count()).toBe(0);
	});
});

/** Runs in the page: deletes a picture from the disk behind the back of the app. */
async function forget(sha256: string): Promise<void> {
	const request = indexedDB.open('airtally');
	await new Promise((resolve) => (request.onsuccess = resolve));
	const transaction = request.result.transaction('blobs', 'readwrite');
	transaction.objectStore('blobs').delete(sha256);
	await new Promise((resolve) => (transaction.oncomplete = resolve));
	request.result.close();
}

describe('a photo', () => {
	test('is upright, knows nothing of the place, comes along in the file, and can be taken back', async () => {
		const { page } = await onWalk();
		await inList(page, 12).tap();
		await page.getByRole('heading', { name: 'Leak 12' }).waitFor();
		const taken = await photoWithPlace(page);
		expect(taken.buffer.includes('Exif')).toBe(true);
		await page.locator('input[capture]').setInputFiles(taken);
		const shown = page.getByAltText(/^Photo 1/);
		await shown.waitFor();
		await shown.tap();
		await page.getByRole('textbox', { name: 'Caption' }).fill('Elbow by the column');
		await page.getByRole('radio', { name: 'The mending' }).check();
		await page.getByAltText('Photo 1: Elbow by the column').waitFor();
		await picture(page, 'photo of a leak on a phone');
		await notSideways(page);

		const { survey, blobs, bytes } = await toFile(page);
		const leak = Object.values(survey.leaks).find(({ tag }) => tag === 12);
		const [photo] = Object.values(leak?.photos ?? {});
		if (!photo) throw new Error('the photo is not in the file');
		// 3000 × 1500 turned upright by its orientation and brought to 2000 on the longer side.
		expect(photo.image).toMatchObject({ widthPx: 1000, heightPx: 2000, mediaType: 'image/jpeg' });
		expect(photo).toMatchObject({ caption: 'Elbow by the column', of: 'mending' });
		const kept = blobs.find(({ sha256 }) => sha256 === photo.image.sha256);
		const text = Buffer.from(kept?.bytes ?? []).toString('latin1');
		expect(text.length).toBeGreaterThan(1000);
		expect(text).not.toContain('Exif');
		expect(text).not.toContain('MM\0*');
		expect(text).not.toContain('GPS');
		const colours = await page.evaluate(
			async (base64) => {
				const image = new Image();
				image.src = `data:image/jpeg;base64,${base64}`;
				await image.decode();
				const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
				const context = canvas.getContext('2d');
				context?.drawImage(image, 0, 0);
				const at = (y: number) => Array.from(context?.getImageData(500, y, 1, 1).data ?? []);
				return { top: at(50), bottom: at(1950) };
			},
			Buffer.from(kept?.bytes ?? []).toString('base64')
		);
		// Its left side was red and is now on top, as orientation 6 says.
		expect((colours.top[0] ?? 0) - (colours.top[2] ?? 0)).toBeGreaterThan(150);
		expect((colours.bottom[2] ?? 0) - (colours.bottom[0] ?? 0)).toBeGreaterThan(150);

		const other = await freshPage({ viewport: PHONE });
		await other.goto(appUrl);
		await other
			.locator('input[type="file"]')
			.first()
			.setInputFiles({
				name: 'survey.airtally.zip',
				mimeType: 'application/zip',
				buffer: Buffer.from(bytes)
			});
		await other.getByRole('navigation', { name: 'Places' }).waitFor();
		await goTo(other, 'Walk');
		await inList(other, 12).click();
		await other.getByAltText('Photo 1: Elbow by the column').waitFor();

		// Its bytes gone from under it, on the other device: said in its place, and the rest goes on.
		await other.evaluate(forget, photo.image.sha256);
		await other.reload();
		await other.getByText('Photo 1 is missing on this device').waitFor();
		const without = await toFile(other);
		expect(without.missingBlobs).toEqual([photo.image.sha256]);
		await goTo(other, 'Mend');
		await other.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
		await other.getByRole('button', { name: 'Save the PDF' }).waitFor({ timeout: 60_000 });

		await page.getByRole('button', { name: 'Remove this photo' }).tap();
		await expect.poll(() => page.getByAltText(/^Photo 1/).count()).toBe(0);
		await page.getByRole('button', { name: 'Undo' }).tap();
		await page.getByAltText('Photo 1: Elbow by the column').waitFor();
	});

	test('that this browser cannot open is refused in a sentence that says what to do', async () => {
		const { page } = await onWalk();
		await inList(page, 12).tap();
		const heic = Buffer.concat([
			Buffer.from([0, 0, 0, 24]),
			Buffer.from('ftypheic'),
			Buffer.alloc(40)
		]);
		await page
			.locator('input[capture]')
			.setInputFiles({ name: 'IMG_1.HEIC', mimeType: 'image/heic', buffer: heic });
		await page.getByRole('alert').filter({ hasText: 'cannot open HEIC photos' }).waitFor();
	});
});

test('what was walked and found tight is marked by two taps, listed, named and taken back', async () => {
	const phone = await onWalk();
	const { page } = phone;
	await page.getByRole('button', { name: 'Walked and tight' }).tap();
	await page.getByText('no part marked as walked and tight').waitFor();
	await phone.tapPlan(0.1, 0.1);
	await page.getByText('Now tap the corner across.').waitFor();
	await phone.tapPlan(0.5, 0.6);
	await page.getByText('about 20% marked as walked and tight').waitFor();
	// Of the demo's leaks some are pinned there: both stay, and it is said.
	await page.getByText(/^Leaks [\d, ]+ are pinned in it\./).waitFor();
	await page.getByRole('textbox', { name: 'Area 1' }).fill('Press hall, north');
	await page.getByRole('textbox', { name: 'Area 1' }).blur();
	await page.locator('.area-walked').waitFor();
	await picture(page, 'walked and tight on a phone');
	await notSideways(page);
	const { survey } = await toFile(page);
	const walked = Object.values(survey.areas ?? {}).filter(({ use }) => use.kind === 'walked-tight');
	expect(walked).toMatchObject([{ name: 'Press hall, north', use: { kind: 'walked-tight' } }]);
	await page.getByRole('button', { name: 'Remove area 1' }).tap();
	await page.getByText('no part marked as walked and tight').waitFor();
});

test('a finding in the compressor room comes onto the fix list with its own cautions', async () => {
	const { page } = await onWalk();
	await page.getByRole('link', { name: 'Compressor room' }).tap();
	await page.getByRole('heading', { level: 1, name: 'Compressor room' }).waitFor();
	await page.getByRole('textbox', { name: /machine or tank/ }).fill('Workshop compressor');
	await page.getByRole('button', { name: 'Add it' }).tap();
	await page.getByRole('heading', { level: 2, name: 'Workshop compressor' }).waitFor();
	const at = (name: string) => page.getByRole('group', { name });
	await at('Condensate drain: what did you find?').getByLabel('Rust in the water').check();
	await at('Oil level: what did you find?').getByLabel('In order').check();
	await page.getByRole('textbox', { name: 'Note' }).fill('Brown, about a cup');
	await page.getByRole('textbox', { name: 'Note' }).blur();
	await page.getByText('2 points looked at, 1 found').waitFor();
	await picture(page, 'compressor room on a phone');
	await notSideways(page);

	await saved(page);
	await page.reload();
	await page.getByText('2 points looked at, 1 found').waitFor();
	await goTo(page, 'Mend');
	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
	const downloading = page.waitForEvent('download', { timeout: 60_000 });
	await page.getByRole('button', { name: 'Save the PDF' }).click({ timeout: 60_000 });
	const { pages } = await readPdf(new Uint8Array(await readFile(await (await downloading).path())));
	const printed = pages.find((text) => text.includes('Workshop compressor')) ?? '';
	expect(printed).toContain('rust in the water');
	expect(printed).toContain('Out of service until examined inside');
	expect(printed).toContain('Brown, about a cup');
	for (const id of ['C1 ', 'C3 ', 'C12 ', 'C29 ', 'C30 ']) expect(printed).toContain(id);
	expect(pages[0]).toContain('Compressor room: 1 in order, 1 found, 0 not done.');
});
