import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { DESK, goTo, openAutumn, overflow, PHONE, picture, saved } from './browser.ts';
import { freshPages } from './fresh-pages.ts';

const appUrl = inject('appUrl');
const freshPage = freshPages();

/** A site whose second round has been walked. */
async function inAutumn(viewport = DESK): Promise<Page> {
	const page = await freshPage({ viewport });
	await openAutumn(page, appUrl);
	return page;
}

describe.each([
	['at a desk', DESK],
	['on a phone', PHONE]
])('a second round %s', (where, viewport) => {
	let page: Page;
	beforeAll(async () => {
		page = await inAutumn(viewport);
	});

	test('Mend says that its figures are those of one round, and leads to what the first saved', async () => {
		await goTo(page, 'Mend');
		await page.getByText(/^Counted here: what “.+” found and mended\./).waitFor();
		expect(await overflow(page)).toBeLessThanOrEqual(0);
		await picture(page, `mend in the second round ${where}`);
		await page.getByRole('link', { name: 'What earlier rounds saved' }).click();
		await page.getByRole('heading', { level: 1, name: 'Prove' }).waitFor();
	});

	test('[V9] what a repair of the first round cost is written down when its bill has come, and pays back', async () => {
		await goTo(page, 'Prove');
		await page.getByRole('radio', { name: 'What was saved' }).check();
		const before = await page
			.getByText(/^Repairs cost €|^What the repairs cost has not/)
			.innerText();
		await page.getByText('What the repairs cost', { exact: true }).click();
		const first = page.getByLabel(/^Leak \d+: /).first();
		await first.fill('1234');
		await first.press('Tab');
		await saved(page);
		const after = page.getByText(/^Repairs cost €/);
		await after.waitFor();
		expect(await after.innerText()).not.toBe(before);
		expect(await overflow(page)).toBeLessThanOrEqual(0);
		await picture(page, `costs of repairs ${where}`);
		await page.reload();
		await page.getByRole('radio', { name: 'What was saved' }).check();
		await page.getByText('What the repairs cost', { exact: true }).click();
		await expect.poll(() => first.inputValue()).toMatch(/^1,?234$/);
	});
});

test('where no leak is known there is no round to prove, and Prove leads to Walk', async () => {
	const page = await freshPage();
	await page.goto(appUrl);
	await page.getByRole('button', { name: 'New site' }).click();
	await page.getByRole('textbox').first().fill('A workshop');
	await page.getByRole('combobox', { name: 'Currency' }).selectOption('EUR');
	await page.getByRole('button', { name: 'Start this site' }).click();
	await goTo(page, 'Prove');
	expect(await page.getByRole('textbox').count()).toBe(0);
	await page.locator('#place').getByRole('link', { name: /Walk/ }).click();
	await page.waitForURL(/\/walk\?/);
});
