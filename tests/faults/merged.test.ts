import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { freshProfile, goTo, launch, openDemo, picture, saved } from '../story/browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

async function tablet(note: string): Promise<Page> {
	const context = await freshProfile(browser);
	const page = await context.newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Set up');
	await page.getByLabel('Note', { exact: true }).first().fill(note);
	await page.keyboard.press('Tab');
	await goTo(page, 'Walk');
	await page.getByRole('button', { name: 'Add a leak without the plan' }).click();
	await page.getByRole('button', { name: 'Pin leak 47, size it later' }).click();
	await saved(page);
	return page;
}

test('two tablets walk one site apart: the merge says what it did not keep, and mends a tag used twice', async () => {
	const one = await tablet('written on the first');
	const other = await tablet('written on the second');
	const downloading = other.waitForEvent('download');
	await other.getByRole('button', { name: 'To file' }).click();
	const file = await readFile(await (await downloading).path());
	await one.goto(appUrl);
	const take = async () =>
		one
			.locator('input[type="file"]')
			.first()
			.setInputFiles({ name: 'other.airtally.zip', mimeType: 'application/zip', buffer: file });
	await take();
	await one.getByText(/changes were taken into/).waitFor();
	await one.getByText(/^The site, note, was changed on both sides/).waitFor();
	await one.getByText('Tag numbers used twice: 47.').waitFor();
	// The same file once more changes nothing.
	await take();
	await one.getByText('the file held nothing new').waitFor();

	await one.getByRole('link', { name: 'Go to it' }).click();
	await one.getByRole('heading', { level: 2, name: '48 leaks' }).waitFor();
	// What it said stays with the site, also after a restart, until somebody has dealt with it.
	await one.getByText(/left something to look through/).waitFor();
	await one.reload();
	await one.getByRole('link', { name: 'Look through it' }).click();
	const left = one.getByRole('heading', { name: 'Left by files that were taken in' });
	await left.waitFor();
	await one.getByText(/^The site, note, was changed on both sides/).waitFor();
	await one.getByText('Tag numbers used twice: 47.').waitFor();
	await picture(one, 'what a merge left to look through');
	await one.getByRole('button', { name: 'It is dealt with' }).click();
	await left.waitFor({ state: 'detached' });
	await one.reload();
	await goTo(one, 'Walk');
	await one.getByRole('heading', { level: 2, name: '48 leaks' }).waitFor();
	expect(await one.getByText(/left something to look through/).count()).toBe(0);
	const doubled = one.getByRole('button', { name: /^Leak 47/ });
	const fix = one.getByRole('button', { name: 'Give this one 48' });
	expect(await doubled.count()).toBeGreaterThan(1);
	await doubled.last().click();
	await one.getByRole('heading', { name: 'Leak 47' }).waitFor();
	if ((await fix.count()) === 0) {
		await one.getByRole('button', { name: 'All leaks' }).click();
		await doubled.first().click();
	}
	await fix.click();
	await one.getByRole('heading', { name: 'Leak 48' }).waitFor();
	await saved(one);
	await one.context().close();
	await other.context().close();
});
