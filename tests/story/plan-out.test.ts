import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { readPdf } from '../report/read-pdf.ts';
import { DESK, freshProfile, goTo, launch, openDemo, picture } from './browser.ts';

/** Plans on their way out of the app: on paper, beside each job, and to another program. */
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

async function onDemo(): Promise<Page> {
	const context = await freshProfile(browser, { viewport: DESK });
	const page = await context.newPage();
	await openDemo(page, inject('appUrl'));
	return page;
}

test('the fix list has a page of the plan with every pin, its scale and its valves, on A4 and A3', async () => {
	const page = await onDemo();
	await goTo(page, 'Mend');
	for (const [paper, widthMm] of [
		['A4', 297],
		['A3', 420]
	] as const) {
		await page.getByText(paper, { exact: true }).click();
		await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
		const downloading = page.waitForEvent('download', { timeout: 60_000 });
		await page.getByRole('button', { name: 'Save the PDF' }).click({ timeout: 60_000 });
		const bytes = await readFile(await (await downloading).path());
		const { pages, sizes } = await readPdf(new Uint8Array(bytes));
		const plan = pages.findIndex((text) => text.includes('The number is the tag on the joint.'));
		expect(sizes[plan]?.[0]).toBeCloseTo(widthMm, 0);
		for (const word of ['20 m', 'North', 'isolating valve', 'V1', ' 1 ', ' 46 '])
			expect(pages[plan]).toContain(word);
		expect(pages[plan]).not.toContain('not in the survey');
	}
	await page.context().close();
});

test('the page to print shows where each job is on its plan', async () => {
	const page = await onDemo();
	await goTo(page, 'Mend');
	await page.getByRole('link', { name: 'As a page to print or read aloud' }).click();
	await page.getByRole('img', { name: /^Where tag 5 is on the plan/ }).waitFor();
	expect(await page.getByRole('img', { name: /^Where tag/ }).count()).toBeGreaterThan(40);
	await page.getByRole('img', { name: /^Where tag 5 is/ }).scrollIntoViewIfNeeded();
	await picture(page, 'job with its place on the plan');
	await page.context().close();
});

test('a plan leaves as GeoJSON whose name and first line say that it is no map', async () => {
	const page = await onDemo();
	await goTo(page, 'Set up');
	await page.getByRole('link', { name: /^Scale, sections, newer drawing of Ground floor/ }).click();
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save as GeoJSON (local metres)' }).click();
	const download = await downloading;
	expect(download.suggestedFilename()).toMatch(
		/Ground-floor-local-metres-not-geographic\.geojson$/
	);
	const text = await readFile(await download.path(), 'utf8');
	const { features } = JSON.parse(text) as { features: unknown[] };
	expect(text.slice(0, 120)).toContain('NOT LONGITUDE AND LATITUDE');
	expect(features.length).toBeGreaterThan(40);
	await picture(page, 'plan out');
	await page.context().close();
});
