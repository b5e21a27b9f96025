import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { breaches, DESK, freshProfile, goTo, launch, openDemo, picture, PHONE } from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

/** What the dark look can break; all other rules hold in the light one. */
const COLOURS = ['color-contrast', 'link-in-text-block'];

const PLACES = ['Set up', 'Walk', 'Weigh', 'Mend', 'Prove'] as const;

const paper = (page: Page) =>
	page.evaluate(() => getComputedStyle(document.body).backgroundColor.match(/\d+/g)!.map(Number));

test.for([
	['phone', PHONE],
	['desk', DESK]
] as const)('dark is chosen once, kept, and legible in every place (%s)', async ([name, size]) => {
	const context = await freshProfile(browser, { viewport: size });
	const page = await context.newPage();
	await page.goto(appUrl);
	expect((await paper(page))[0]).toBeGreaterThan(200);
	await page.getByRole('button', { name: 'Dark, for the office' }).click();
	expect((await paper(page))[0]).toBeLessThan(60);
	expect(await breaches(page, COLOURS)).toEqual([]);
	await picture(page, `dark-first-${name}`);
	await openDemo(page, appUrl);
	for (const place of PLACES) {
		await goTo(page, place);
		await page.getByRole('main').getByRole('heading').first().waitFor();
		expect((await paper(page))[0]).toBeLessThan(60);
		expect(await breaches(page, COLOURS)).toEqual([]);
		await picture(page, `dark-${place.toLowerCase().replace(' ', '-')}-${name}`);
	}
	// Paper is white whatever the screen is.
	await page.emulateMedia({ media: 'print' });
	expect((await paper(page))[0]).toBeGreaterThan(200);
	await context.close();
});
