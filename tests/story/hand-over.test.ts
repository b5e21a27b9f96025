import { readFile } from 'node:fs/promises';
import ICAL from 'ical.js';
import Papa from 'papaparse';
import readWorkbook from 'read-excel-file/node';
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { picturesOf, readPdf } from '../report/read-pdf.ts';
import { DESK, goTo, openDemo, PHONE, picture, saved, overflow } from './browser.ts';
import { freshPages } from './fresh-pages.ts';
import { photoWithPlace } from './photo-with-place.ts';

const appUrl = inject('appUrl');
const freshPage = freshPages();

async function onMend(viewport = DESK): Promise<Page> {
	const page = await freshPage({ viewport });
	await openDemo(page, appUrl);
	await goTo(page, 'Mend');
	await page.getByRole('heading', { name: 'Take it along' }).waitFor();
	return page;
}

async function downloadOf(page: Page, button: string): Promise<Uint8Array> {
	const downloading = page.waitForEvent('download', { timeout: 60_000 });
	await page.getByRole('button', { name: button }).click({ timeout: 60_000 });
	return new Uint8Array(await readFile(await (await downloading).path()));
}

const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

test('tables, work orders and tags leave with their cautions, read back by other programs', async () => {
	const page = await onMend();
	await page.getByText('For a spreadsheet or another system').click();
	const book = await readWorkbook(Buffer.from(await downloadOf(page, 'As a workbook (XLSX)')));
	const [jobs, sections, cautions] = book;
	expect(jobs?.sheet).toBe('Jobs');
	expect(jobs?.data.length).toBeGreaterThan(40);
	expect(JSON.stringify(jobs?.data)).toMatch(/prove zero/);
	expect(sections?.data.length).toBeGreaterThan(3);
	expect(cautions?.data.length).toBeGreaterThan(5);

	expect(text(await downloadOf(page, 'As a table (CSV)'))).toMatch(/prove zero/);

	const orders = Papa.parse<Record<string, string>>(
		text(await downloadOf(page, 'As work orders (CSV)')),
		{ header: true, skipEmptyLines: true }
	);
	expect(orders.errors).toEqual([]);
	expect(orders.data.length).toBeGreaterThan(30);
	for (const order of orders.data) expect(order['Description']).toMatch(/prove zero/);

	const calendar = text(await downloadOf(page, 'Windows for a calendar (ICS)'));
	const entries = new ICAL.Component(ICAL.parse(calendar) as unknown[]).getAllSubcomponents(
		'vevent'
	);
	expect(entries.length).toBeGreaterThan(0);
	for (const entry of entries)
		expect(String(entry.getFirstPropertyValue('description'))).toMatch(/prove zero/);

	await page.getByRole('button', { name: 'Print tags to hang (PDF)' }).click();
	const tags = await readPdf(await downloadOf(page, 'Save the tags'));
	expect(tags.title).toMatch(/^Tags/);
	for (const sheet of tags.pages) {
		const hung = sheet.split('Leave on until re-soaped').length - 1;
		expect(hung).toBeGreaterThan(0);
		expect(sheet.split('prove zero at the gauge').length - 1).toBe(hung);
	}
});

test('the print is made beside the page and can be stopped', async () => {
	const page = await onMend();
	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
	await page.getByRole('button', { name: 'Stop' }).click();
	await page.getByRole('button', { name: 'Stop' }).waitFor({ state: 'detached' });
	const again = page.getByRole('button', { name: 'Print the fix list (PDF)' });
	await again.click();
	const { pages } = await readPdf(await downloadOf(page, 'Save the PDF'));
	for (const each of pages) expect(each).toMatch(/prove zero/i);
});

test('work orders take the site’s own headings and words, and refuse what has none', async () => {
	const page = await onMend();
	await page.getByText('For a spreadsheet or another system').click();
	await page.getByRole('link', { name: 'Name its columns' }).click();
	await page.getByRole('heading', { level: 1, name: 'Work orders' }).waitFor();
	await page.getByLabel('Heading 2', { exact: true }).fill('WO purpose');
	await page.getByLabel('High', { exact: true }).fill('');
	await page.getByLabel('Low', { exact: true }).fill('4 - When there is time');
	await page.getByText(/The priority “High” has no word in your list/).waitFor();
	await picture(page, 'work orders at a desk');
	await page.getByLabel('High', { exact: true }).fill('2 - Soon');
	await page.getByLabel('Heading 1', { exact: true }).focus();
	await page.getByText(/has no word in your list/).waitFor({ state: 'detached' });
	await saved(page);
	await page.getByRole('link', { name: 'Back to Mend' }).click();
	await page.getByText('For a spreadsheet or another system').click();
	const table = text(await downloadOf(page, 'As work orders (CSV)'));
	expect(table.split('\r\n')[0]).toBe(
		'"Number","WO purpose","Asset","Location","Type","Priority","Status","Due","Cost","Photo","Description"'
	);
	expect(table).toContain('2 - Soon');
});

test('a tag leads to its job by number or by its code; one of elsewhere is told politely', async () => {
	const page = await onMend(PHONE);
	const field = page.getByLabel('Number on the tag');
	await field.fill('9999');
	await page.getByRole('button', { name: 'Open the job' }).click();
	await page.getByText('No leak of this site has that tag.').waitFor();
	await field.fill('12');
	await page.getByRole('button', { name: 'Open the job' }).click();
	const job = page.getByRole('article', { name: /^Tag 12 / });
	await job.getByLabel('Mended', { exact: true }).waitFor();
	expect(
		await job
			.locator('summary')
			.first()
			.evaluate((row) => row === document.activeElement)
	).toBe(true);
	await job.getByRole('link', { name: 'Leak 12 on Walk' }).click();
	await page.getByRole('heading', { name: 'Leak 12' }).waitFor();
	await goTo(page, 'Weigh');
	await goTo(page, 'Walk');
	await page.getByText('Find by tag').click();
	await page.getByLabel('Number on the tag').fill('007');
	await picture(page, 'a tag sought on walk');
	await page.getByRole('button', { name: 'Open the leak' }).click();
	await page.getByRole('heading', { name: 'Leak 7' }).waitFor();
});

test('what a job took is written down and comes back after a restart', async () => {
	const page = await onMend(PHONE);
	const job = page.getByRole('article').first();
	await job.getByRole('heading').click();
	await job.getByText('What it took').click();
	await job.getByLabel('Minutes').fill('18');
	await job.getByLabel('Part used').fill('Elbow 1/2 in');
	await job.getByLabel('Minutes').focus();
	await saved(page);
	await page.reload();
	const again = page.getByRole('article').first();
	await again.getByRole('heading').click();
	const minutes = again.getByLabel('Minutes');
	await expect.poll(() => minutes.inputValue(), { timeout: 30_000 }).toBe('18');
	expect(await again.getByLabel('Part used').inputValue()).toBe('Elbow 1/2 in');
});

test('a photo taken of a mending goes into the survey file and beside its job in print', async () => {
	const page = await onMend(PHONE);
	const job = page.getByRole('article').first();
	const tag = Number(/Tag (\d+)/.exec(await job.innerText())?.[1]);
	await job.getByRole('heading').click();
	await job
		.locator('input[type="file"]')
		.first()
		.setInputFiles(await photoWithPlace(page));
	await job.getByAltText(/of the mending/).waitFor();
	await job.getByLabel('Mended', { exact: true }).check();
	await saved(page);

	const file = await readSurveyFile(await downloadOf(page, 'To file'));
	if (!file.ok) throw new Error(file.error.code);
	const { survey, blobs } = file.value;
	const leak = Object.values(survey.leaks).find((each) => each.tag === tag);
	const photo = Object.values(leak?.photos ?? {}).find(({ of }) => of === 'mending');
	const kept = blobs.find(({ sha256 }) => sha256 === photo?.image.sha256);
	expect(kept?.bytes.length).toBeGreaterThan(1000);

	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
	const pictures = await picturesOf(await downloadOf(page, 'Save the PDF'));
	// Twice as high as it is wide, red above and blue below, as it was taken.
	const shown = pictures.filter(({ width, height }) => height === 2 * width);
	const [red, , blue] = shown[0]?.colourAt(0.5, 0.2) ?? [];
	expect(red).toBeGreaterThan(150);
	expect(blue).toBeLessThan(100);
	expect(shown[0]?.colourAt(0.5, 0.8)[2]).toBeGreaterThan(150);
	expect(shown).toHaveLength(1);

	await page.getByRole('link', { name: 'As a page to print or read aloud' }).click();
	await page.getByRole('img', { name: `Photo of tag ${tag}` }).waitFor();
});

describe.each([
	['at a desk', DESK],
	['on a phone', PHONE]
])('the page to print %s', (where, viewport) => {
	test('is one that can be read aloud and that prints with the caution on each sheet', async () => {
		const page = await onMend(viewport);
		await page.getByRole('link', { name: 'As a page to print or read aloud' }).click();
		await page.getByRole('heading', { level: 1, name: /^Fix list/ }).waitFor();
		await page
			.getByText(/90 % interval/)
			.first()
			.waitFor();
		expect(await overflow(page)).toBeLessThanOrEqual(0);
		await picture(page, `fix list page ${where}`);
		const { pages } = await readPdf(new Uint8Array(await page.pdf({ format: 'A4' })));
		expect(pages.length).toBeGreaterThan(3);
		for (const sheet of pages) expect(sheet).toMatch(/prove zero/i);
		expect(pages.join(' ')).not.toContain('Print this page');
		expect(pages.join(' ')).not.toContain('To file');
	});
});
