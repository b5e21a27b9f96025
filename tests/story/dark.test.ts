import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { DESK, freshProfile, goTo, launch, openDemo, picture, PHONE } from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

const PLACES = ['Set up', 'Walk', 'Weigh', 'Mend', 'Prove'] as const;

/** WCAG 2.2 contrast and the rest of AA, with the plan left to its own colours. */
async function legible(page: Page): Promise<void> {
	const { violations } = await new AxeBuilder({ page })
		.withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
		.exclude('.plan')
		.analyze();
	expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
}

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
	await legible(page);
	await picture(page, `dark-first-${name}`);
	await openDemo(page, appUrl);
	for (const place of PLACES) {
		await goTo(page, place);
		await page.getByRole('main').getByRole('heading').first().waitFor();
		expect((await paper(page))[0]).toBeLessThan(60);
		await legible(page);
		await picture(page, `dark-${place.toLowerCase().replace(' ', '-')}-${name}`);
	}
	// Paper is white whatever the screen is.
	await page.emulateMedia({ media: 'print' });
	expect((await paper(page))[0]).toBeGreaterThan(200);
	await context.close();
});
