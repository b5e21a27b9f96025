import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { answered } from '../../src/cli/captured-run.ts';
import { createFormat } from '#lib/words/format.ts';
import { readPdf } from '../report/read-pdf.ts';
import {
	breaches,
	overflow,
	freshProfile,
	goTo,
	launch,
	openAutumn,
	openDemo,
	picture,
	PHONE,
	saved
} from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

const answer = (page: Page, tag: number, text: string) =>
	page
		.getByRole('group', { name: `Leak ${tag} now` })
		.getByRole('button', { name: text, exact: true })
		.click();

test('a second round on a phone: start, soap again, take back, open for sizing, read what was saved', async () => {
	const context = await freshProfile(browser, { viewport: PHONE, hasTouch: true });
	const page = await context.newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Prove');
	await page.getByLabel('Name of the round').fill('Summer');
	await page.getByRole('button', { name: 'Start the next round' }).click();
	const progress = page.getByRole('status').filter({ hasText: 'looked at' });
	await progress.filter({ hasText: '0 of 46' }).waitFor();

	// Proved tight in spring: one tap says that it holds, one that it leaks again.
	await answer(page, 6, 'Tight');
	await answer(page, 20, 'Leaking');
	await page.getByText('It leaks again.').waitFor();
	await answer(page, 33, 'Not reached');
	await progress.filter({ hasText: /2 of 46.*1 not reached.*43 left/s }).waitFor();
	await page.getByText('History of leak 20').click();
	await page.getByText('Soaped after mending: tight').waitFor();
	expect(await overflow(page)).toBeLessThanOrEqual(0);
	expect(await breaches(page)).toEqual([]);
	await picture(page, 'prove-stops-phone');

	// An answer is taken back by the same button.
	await answer(page, 33, 'Not reached');
	await progress.filter({ hasText: '0 not reached' }).waitFor();
	await page.getByRole('button', { name: 'Undo' }).click();
	await progress.filter({ hasText: '1 not reached' }).waitFor();

	// Sized again where the walk sizes leaks: this round's evidence, the last round's stays in the history.
	await page.getByRole('link', { name: 'Size leak 20 again' }).click();
	await page.getByRole('heading', { name: 'Leak 20' }).waitFor();
	await page.getByRole('radio', { name: 'Leaking', exact: true }).waitFor();
	await page.getByLabel(/^Diameter/).fill('1.5');
	await page.getByLabel(/^Diameter/).press('Tab');
	await saved(page);

	// A new leak takes the next tag.
	await goTo(page, 'Walk');
	const plan = await page.getByAltText(/^Floor plan/).boundingBox();
	if (!plan) throw new Error('the plan is not on the screen');
	await page.touchscreen.tap(plan.x + 0.5 * plan.width, plan.y + 0.93 * plan.height);
	await page.getByRole('heading', { name: 'Leak 47' }).waitFor();
	await page.getByRole('radio', { name: 'Foam that spits' }).check();
	await page.getByRole('button', { name: 'Pin leak 47' }).click();
	await page.locator('[data-tag="47"]').waitFor();

	// A system test of this round, to stand beside that of the last.
	await goTo(page, 'Weigh');
	const check = page.getByRole('region', { name: 'System check' });
	await check.getByRole('button', { name: 'Bleed-down' }).click();
	await check.getByLabel('Volume, L').fill('9000');
	await check.getByRole('group', { name: 'Reading 1' }).getByLabel('Gauge').fill('7');
	const second = check.getByRole('group', { name: 'Reading 2' });
	await second.getByLabel('After').fill('400');
	await second.getByLabel('Gauge').fill('3.5');
	await check.getByRole('button', { name: 'Add this test' }).click();
	await check.getByText(/By the handbook/).waitFor();

	await goTo(page, 'Prove');
	await page.getByRole('radio', { name: 'What was saved' }).check();
	await page.getByText('Proved by soap', { exact: true }).waitFor();
	await page.getByText('Claimed', { exact: true }).waitFor();
	await page.getByText('Measured by system test', { exact: true }).waitFor();
	expect(await overflow(page)).toBeLessThanOrEqual(0);
	expect(await breaches(page)).toEqual([]);
	await picture(page, 'prove-saved-phone');
	await saved(page);

	// The report that is handed over tells the same story.
	await page.getByRole('link', { name: /Savings report/ }).click();
	await page.getByRole('button', { name: 'Make the PDF' }).click();
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save the PDF' }).click();
	const { pages } = await readPdf(new Uint8Array(await readFile(await (await downloading).path())));
	const text = pages.join(' ');
	expect(pages[0]).toContain('Summer');
	expect(text).toMatch(/Leaking again: 1\b/);
	expect(text).toMatch(/New: 1\b/);
	// Two of them were soaped tight in spring, and stand so until they are looked at again.
	expect(text).toMatch(/Mended and tight: 3\b/);
	expect(text).toContain('Leak 33');

	// Three strengths: the report says what a script makes of the file that is handed over with it.
	const filing = page.waitForEvent('download');
	await page.getByRole('button', { name: 'To file' }).click();
	const handed = new Uint8Array(await readFile(await (await filing).path()));
	type Saved = { readonly costPerYear: number };
	const { terms } = await answered<{ terms: { claimed: Saved; held: Saved } }>(
		['compare', 'handed.zip'],
		{ 'handed.zip': handed }
	);
	const units = { pressure: 'bar', flow: 'L/s', length: 'mm' } as const;
	const euros = createFormat({ locale: 'en-GB', currency: 'EUR', units });
	for (const { costPerYear } of [terms.claimed, terms.held])
		expect(pages[0]).toContain(euros.money(Math.round(costPerYear * 100)));
	await context.close();
});

test('the autumn file tells what was saved, on the screen, as a page and as a PDF', async () => {
	const context = await freshProfile(browser);
	const page = await context.newPage();
	await openAutumn(page, appUrl);
	await goTo(page, 'Prove');
	await page.getByRole('radio', { name: 'What was saved' }).check();
	await page.getByText('The two agree within their intervals.').waitFor();
	await page.getByText('€16,623').first().waitFor();
	await page.getByRole('radio', { name: 'Spring 2026' }).check();
	await page.locator('[data-tag="12"]').waitFor();
	await picture(page, 'prove-saved-desk');
	await page.getByRole('link', { name: /Savings report/ }).click();
	await page.getByRole('heading', { level: 1, name: 'Savings report' }).waitFor();
	expect(await breaches(page)).toEqual([]);
	await picture(page, 'savings-report-desk');
	await page.getByRole('button', { name: 'Make the PDF' }).click();
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save the PDF' }).click();
	const file = await (await downloading).path();
	const { pages } = await readPdf(new Uint8Array(await readFile(file)));
	const [first = ''] = pages;
	for (const text of [
		'Claimed',
		'Proved by soap',
		'Measured by system test',
		'€16,623',
		'Before',
		'After'
	])
		expect(first).toContain(text);
	expect(pages.join(' ')).toContain('Not reached');
	await context.close();
});
