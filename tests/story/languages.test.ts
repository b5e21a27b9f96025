import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { DESK, freshProfile, launch, PHONE, picture } from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

const inGerman = (viewport = PHONE) => freshProfile(browser, { locale: 'de-DE', viewport });

async function openDemoInGerman(page: Page): Promise<void> {
	await page.goto(appUrl);
	await page.getByRole('button', { name: 'Beispielstandort öffnen' }).click();
	await page.getByRole('navigation', { name: 'Bereiche' }).waitFor();
}

test('a German browser gets German; the choice is kept on the device and can be taken back', async () => {
	const context = await inGerman(DESK);
	const page = await context.newPage();
	await page.goto(appUrl);
	await page.getByText('Jedes Zischen hat seinen Preis.').waitFor();
	expect(await page.getAttribute('html', 'lang')).toBe('de');
	await picture(page, 'german-list-empty');
	await page.getByRole('button', { name: 'English' }).click();
	await page.getByText('Every hiss has a price.').waitFor();
	expect(await page.getAttribute('html', 'lang')).toBe('en');
	await page.reload();
	await page.getByRole('button', { name: 'Deutsch', pressed: false }).click();
	await page.getByText('Jedes Zischen hat seinen Preis.').waitFor();
	await context.close();
});

test('the demo opens in German on a phone, and the list says how it stands', async () => {
	const context = await inGerman();
	const page = await context.newPage();
	await openDemoInGerman(page);
	await picture(page, 'german-walk');
	await page.goto(appUrl);
	await page.getByText(/^geändert /).waitFor();
	await picture(page, 'german-list');
	await context.close();
});
