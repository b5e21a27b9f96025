import { readFile } from 'node:fs/promises';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { answered } from '../../src/cli/captured-run.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { createFormat } from '#lib/words/format.ts';
import { readPdf } from '../report/read-pdf.ts';
import { scannedPlan } from '../fixtures/scanned-plan.ts';
import { freshProfile, goTo, launch, overflow, PHONE, picture, saved } from './browser.ts';
import { photoWithPlace } from './photo-with-place.ts';
import { startServer } from './server.ts';

let browser: Browser;
beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

/** Where the plan is once it has come to rest: it gives way to what is open beside it. */
async function atRest(plan: Locator): Promise<Box> {
	for (;;) {
		const before = await plan.boundingBox();
		await plan.evaluate(
			() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)))
		);
		const after = await plan.boundingBox();
		if (!before || !after) throw new Error('the plan is not on the screen');
		if (Object.entries(after).every(([key, value]) => before[key as keyof Box] === value))
			return after;
	}
}
type Box = NonNullable<Awaited<ReturnType<Locator['boundingBox']>>>;

/** Touches the plan at shares of its picture. */
async function touch(page: Page, x: number, y: number): Promise<void> {
	const plan = page.getByAltText(/^Floor plan/);
	await plan.scrollIntoViewIfNeeded();
	const box = await atRest(plan);
	await page.touchscreen.tap(box.x + x * box.width, box.y + y * box.height);
}

/** Touches where a corner of the sheet shows in the photograph, after touching the corner itself. */
async function corner(page: Page, name: string, x: number, y: number): Promise<void> {
	await page.getByRole('button', { name: new RegExp(`^${name} corner`) }).tap();
	const photo = await page.getByRole('dialog').locator('canvas, img').first().boundingBox();
	if (!photo) throw new Error('the photograph is not on the screen');
	await page.touchscreen.tap(photo.x + x * photo.width, photo.y + y * photo.height);
}

async function downloaded(page: Page, button: string): Promise<Uint8Array> {
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: button }).tap();
	return new Uint8Array(await readFile(await (await downloading).path()));
}

const LEAKS = 15;

test('an auditor on a phone, offline after the first load, from nothing to a fix list and a file', async () => {
	const server = await startServer();
	const context = await freshProfile(browser, {
		viewport: PHONE,
		hasTouch: true,
		isMobile: true,
		serviceWorkers: 'allow'
	});
	const page = await context.newPage();
	try {
		await page.goto(server.url);
		await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
		await expect
			.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null))
			.toBe(true);
	} finally {
		await server.kill();
	}

	await page.getByRole('button', { name: 'New site' }).tap();
	await page.getByLabel('Name of the site').fill('Mill Lane Joinery');
	await page.getByLabel('Currency').selectOption('GBP');
	await page.getByRole('button', { name: 'Start this site' }).tap();
	await page.getByRole('button', { name: 'It lies at sea level' }).tap();

	// A photograph of the plan on the wall, cut at the corners of the sheet and made straight.
	await page.getByLabel('Add a floor plan').setInputFiles({
		name: 'hall.png',
		mimeType: 'image/png',
		buffer: scannedPlan(1200, 900, 0.5, 0.5)
	});
	await page.getByText('Straighten a photo').tap();
	await corner(page, 'Top left', 0.05, 0.06);
	await corner(page, 'Bottom right', 0.95, 0.9);
	await page.getByLabel('Name of the plan').fill('Hall');
	await page.getByRole('button', { name: 'Take this plan' }).tap();
	await page.getByRole('button', { name: 'Add another plan' }).waitFor();

	await page.getByRole('button', { name: 'Use 6.8 kW per m³/min' }).tap();
	await page.getByLabel('Set pressure').fill('7');
	await page.getByLabel('Electricity, GBP').fill('0.28');
	await page.getByLabel('Electricity, GBP').press('Tab');
	await saved(page);

	// Fifteen leaks, some sized as the one before, one with its photo, before a valve is known.
	await goTo(page, 'Walk');
	const count = (leaks: number) =>
		page
			.getByRole('heading', { level: 2, name: `${leaks} ${leaks === 1 ? 'leak' : 'leaks'}` })
			.waitFor();
	for (let tag = 1; tag <= LEAKS; tag++) {
		await touch(page, 0.12 + 0.145 * ((tag - 1) % 5), 0.2 + 0.24 * Math.floor((tag - 1) / 5));
		await page.getByRole('heading', { name: `Leak ${tag}`, exact: true }).waitFor();
		if (tag === 4) {
			await page.getByLabel('Photos from files').setInputFiles(await photoWithPlace(page));
			await page.getByAltText(/^Photo 1/).waitFor();
		}
		if (tag % 3 === 0)
			await page.getByRole('button', { name: `Same again as leak ${tag - 1}` }).tap();
		else {
			const soap = tag % 3 === 1 ? 'A cushion of fine foam' : 'Foam that spits';
			await page.getByRole('radio', { name: soap }).check();
			await page.getByRole('button', { name: `Pin leak ${tag}`, exact: true }).tap();
		}
		await count(tag);
	}
	await picture(page, 'auditor-walk');

	// The section comes last: drawn round the pins, it takes them all.
	await goTo(page, 'Set up');
	await page.getByRole('button', { name: 'Add a section' }).tap();
	const section = page.getByRole('region', { name: 'Sections', exact: true });
	await section.getByLabel('Name').fill('Joinery');
	await section.getByLabel('Isolating valve').fill('V3, east wall');
	await section.getByLabel('Pressure').fill('6.9');
	await section.getByRole('button', { name: 'Always under pressure: 8,760 h' }).tap();
	await page.getByRole('link', { name: /^Scale, sections, newer drawing/ }).tap();
	await page.getByRole('button', { name: 'Draw it: Joinery' }).tap();
	for (const [x, y] of [
		[0.02, 0.03],
		[0.77, 0.03],
		[0.77, 0.9],
		[0.02, 0.9]
	] as const) {
		const corners = await page.getByRole('application').getByText(/^\d$/).count();
		await touch(page, x, y);
		await expect
			.poll(() => page.getByRole('application').getByText(/^\d$/).count())
			.toBeGreaterThan(corners);
	}
	await page.getByRole('button', { name: 'Finish the outline' }).tap();
	await page.getByText('15 pins lie in it and stand on no section.').waitFor();
	await page.getByRole('button', { name: 'Put them on Joinery' }).tap();
	await page.getByText('15 pins lie in it').waitFor({ state: 'detached' });
	await saved(page);

	// One machine timed against the leaks alone says how much of it was found.
	await goTo(page, 'Weigh');
	const check = page.getByRole('region', { name: 'System check' });
	await check.getByRole('button', { name: 'Load time' }).tap();
	await check.getByLabel('The machine delivers').fill('60');
	for (const [cycle, loaded, unloaded] of [
		[1, '62', '541'],
		[2, '60', '538'],
		[3, '61', '544']
	] as const) {
		const row = check.getByRole('group', { name: `Cycle ${cycle}` });
		await row.getByLabel('Loaded, s', { exact: true }).fill(loaded);
		await row.getByLabel('Unloaded, s', { exact: true }).fill(unloaded);
	}
	await check.getByRole('button', { name: 'Add this test' }).tap();
	await check.getByText('is what the system loses at the set pressure').waitFor();
	await check.getByRole('table').waitFor({ timeout: 60_000 });
	expect(await overflow(page)).toBeLessThanOrEqual(0);
	await picture(page, 'auditor-weigh');

	await goTo(page, 'Mend');
	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).tap();
	await page.getByRole('button', { name: 'Save the PDF' }).waitFor({ timeout: 60_000 });
	const { pages } = await readPdf(await downloaded(page, 'Save the PDF'));
	await saved(page);
	const file = await downloaded(page, 'To file');
	await page.getByText('Saved to Mill-Lane-Joinery.airtally.zip').waitFor();

	// What is handed over: every leak on the list behind its valve, and the sum that the file gives.
	const audit = await answered<{
		totals: { leakCount: number; costPerYear: number };
		leaks: { tag: number; costPerYear: number }[];
	}>(['audit', 'file.zip'], { 'file.zip': file });
	const read = await readSurveyFile(file);
	if (!read.ok) throw new Error(read.error.code);
	const { survey } = read.value;
	expect(audit.totals.leakCount).toBe(LEAKS);
	expect(Object.values(survey.leaks).filter(({ photos }) => photos)).toHaveLength(1);
	expect(Object.values(survey.systemTests)).toHaveLength(1);
	const pounds = createFormat({ locale: 'en-GB', currency: 'GBP', units: survey.site.units });
	const text = pages.join(' ');
	expect(pages[0]).toContain(pounds.money(Math.round(audit.totals.costPerYear * 100)));
	expect(text).toContain('V3, east wall');
	for (const each of pages) expect(each).toMatch(/prove zero/i);
	for (const { tag, costPerYear } of audit.leaks) {
		expect(text).toMatch(new RegExp(`\\b${tag}\\b`));
		expect(text).toContain(pounds.money(Math.round(costPerYear * 100)));
	}

	// Without a network the pages come from the device, each by its own address.
	for (const place of ['Set up', 'Walk', 'Weigh', 'Prove'] as const) {
		await goTo(page, place);
		await page.reload();
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
	}
	await context.close();
});
