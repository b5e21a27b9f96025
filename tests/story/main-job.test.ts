import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { readPdf } from '../report/read-pdf.ts';
import { freshProfile, goTo, launch, openDemo, picture, saved } from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;
const open: BrowserContext[] = [];

beforeAll(async () => {
	browser = await launch();
});
afterEach(async () => {
	for (const context of open.splice(0)) await context.close();
});
afterAll(() => browser.close());

async function newPage(options?: Parameters<Browser['newContext']>[0]): Promise<Page> {
	const context = await freshProfile(browser, options);
	open.push(context);
	return context.newPage();
}

const leakHeading = (page: Page) => page.getByRole('heading', { level: 2, name: /\d+ leaks?$/ });

/** Taps the plan at shares of its picture, wherever it lies on the screen. */
async function tapPlan(page: Page, x: number, y: number): Promise<void> {
	const box = await page.getByAltText(/^Floor plan/).boundingBox();
	if (!box) throw new Error('the plan is not on the screen');
	await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
}

test('from the demo site to a printed fix list at a desk', async () => {
	const page = await newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Walk');
	await leakHeading(page).filter({ hasText: '46 leaks' }).waitFor();
	expect(await page.locator('[data-tag]').count()).toBe(46);
	await picture(page, 'walk at a desk');

	// One more: tap the plan, say what the soap does, confirm.
	await tapPlan(page, 0.5, 0.95);
	await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
	await page.getByRole('radio', { name: 'Film tears, a hole stays' }).check();
	await page.getByText(/of free air, €\d+ a year/).waitFor();
	await picture(page, 'capture at a desk');
	await page.getByRole('button', { name: 'Pin leak 47' }).click();
	await leakHeading(page).filter({ hasText: '47 leaks' }).waitFor();
	await page.locator('[data-tag="47"]').waitFor();
	await saved(page);

	await goTo(page, 'Weigh');
	await page.getByRole('heading', { level: 1, name: 'Weigh' }).waitFor();
	await picture(page, 'weigh at a desk');
	expect(
		await page
			.getByText(/€3\d,\d{3}/)
			.first()
			.textContent()
	).toBeTruthy();

	await goTo(page, 'Mend');
	await page
		.getByText(/prove zero/i)
		.first()
		.waitFor();
	await picture(page, 'mend at a desk');
	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
	const downloading = page.waitForEvent('download', { timeout: 60_000 });
	await page.getByRole('button', { name: 'Save the PDF' }).click({ timeout: 60_000 });
	const file = await (await downloading).path();
	const { pages, title } = await readPdf(new Uint8Array(await readFile(file)));
	expect(pages.length).toBeGreaterThan(5);
	for (const each of pages) expect(each).toMatch(/prove zero/i);
	expect(title).toMatch(/Fix list/);
	expect(pages.join('\n')).toMatch(/Brackmoor Ceramics Works/);
	expect(pages.join('\n')).toMatch(/\b47\b/);
	await goTo(page, 'Set up');
	await picture(page, 'set up at a desk');
});

test('what was done is taken back and brought back, and a restart forgets none of it', async () => {
	const page = await newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Walk');
	await tapPlan(page, 0.5, 0.92);
	await page.getByRole('button', { name: 'Pin leak 47, size it later' }).click();
	await leakHeading(page).filter({ hasText: '47 leaks' }).waitFor();
	await page.getByText('Leak 47 is pinned').waitFor();
	await page.getByRole('button', { name: 'Undo' }).click();
	await leakHeading(page).filter({ hasText: '46 leaks' }).waitFor();
	// It is not pinned any more, so nothing says that it is.
	await expect.poll(() => page.getByText('Leak 47 is pinned').count()).toBe(0);
	await page.getByRole('button', { name: 'Redo' }).click();
	await leakHeading(page).filter({ hasText: '47 leaks' }).waitFor();

	await page.locator('[data-tag="39"]').click();
	await page.getByRole('button', { name: 'Move the pin' }).click();
	const before = await page.locator('[data-tag="39"]').boundingBox();
	await tapPlan(page, 0.7, 0.92);
	await expect
		.poll(async () => (await page.locator('[data-tag="39"]').boundingBox())?.x)
		.not.toBe(before?.x);
	await page.getByRole('button', { name: 'Delete leak 39' }).click();
	await leakHeading(page).filter({ hasText: '46 leaks' }).waitFor();
	await saved(page);

	await page.reload();
	await leakHeading(page).filter({ hasText: '46 leaks' }).waitFor();
	await page.getByRole('button', { name: 'Undo' }).click();
	// What came back is open again, to be corrected.
	await page.getByRole('heading', { name: 'Leak 39' }).waitFor();
	await page.locator('[data-tag="39"]').waitFor();
});

test('a survey saved to a file opens in an empty profile, the same to the last leak', async () => {
	const page = await newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Walk');
	await tapPlan(page, 0.5, 0.92);
	await page.getByRole('radio', { name: 'Foam that spits' }).check();
	await page.getByRole('button', { name: 'Pin leak 47' }).click();
	await saved(page);
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'To file' }).click();
	const file = await (await downloading).path();
	const bytes = new Uint8Array(await readFile(file));
	const read = await readSurveyFile(bytes);
	if (!read.ok) throw new Error(read.error.code);
	expect(Object.keys(read.value.survey.leaks)).toHaveLength(47);

	const other = await newPage();
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
	await leakHeading(other).filter({ hasText: '47 leaks' }).waitFor();
	await other.locator('[data-tag="47"]').waitFor();
	const again = other.waitForEvent('download');
	await other.getByRole('button', { name: 'To file' }).click();
	const second = await readSurveyFile(new Uint8Array(await readFile(await (await again).path())));
	if (!second.ok) throw new Error(second.error.code);
	expect(second.value.survey).toEqual(read.value.survey);
	expect(second.value.commands).toEqual(read.value.commands);
});

test.each([
	['a picture', 'plan.png', Buffer.from('89504e470d0a1a0a', 'hex')],
	['a cut-off survey', 'survey.zip', undefined]
])(
	'%s in place of a survey is refused in a sentence, and nothing changes',
	async (_, name, buffer) => {
		const page = await newPage();
		await page.goto(appUrl);
		const whole = await readFile('survey-examples/ceramics-works.airtally.zip');
		await page
			.locator('input[type="file"]')
			.first()
			.setInputFiles({
				name,
				mimeType: 'application/octet-stream',
				buffer: buffer ?? whole.subarray(0, 9000)
			});
		const alert = page.getByRole('alert');
		await alert.waitFor();
		expect(await alert.textContent()).toMatch(/\w+ .*\./);
		expect(await page.getByRole('link', { name: /Brackmoor/ }).count()).toBe(0);
	}
);
