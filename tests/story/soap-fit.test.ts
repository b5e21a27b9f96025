import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { DESK, freshProfile, goTo, launch, openDemo, picture, PHONE, saved } from './browser.ts';

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

/** Says what the soap does at a leak, then fills a bag of ten litres there. */
async function soapThenBag(page: Page, tag: number, seconds: number): Promise<void> {
	await page
		.getByRole('button', { name: new RegExp(`^Leak ${tag} (?!\\d)`) })
		.last()
		.click();
	await page.getByRole('heading', { name: `Leak ${tag}`, exact: true }).waitFor();
	await page.getByLabel('Sized by').selectOption('soap-response');
	await page.getByRole('radio', { name: 'Foam that spits' }).check();
	await page.getByLabel('Sized by').selectOption('bag');
	expect(await page.getByLabel('What the soap did there').inputValue()).toBe('foam-spits');
	await page.getByLabel('Bag volume').fill('10');
	await page.getByLabel('Time to fill').fill(String(seconds));
	await page.getByLabel('Time to fill').press('Tab');
	await saved(page);
	await page.getByRole('button', { name: 'All leaks' }).click();
}

describe.each([
	['at a desk', DESK],
	['on a phone', PHONE]
])('soap bands of this site %s', (where, viewport) => {
	test('[W13] measured leaks re-fit a band: shown, taken over, undone, taken back', async () => {
		const context = await freshProfile(browser, { viewport });
		open.push(context);
		const page = await context.newPage();
		await openDemo(page, appUrl);
		await goTo(page, 'Weigh');
		const fit = page.getByRole('region', { name: 'What the soap says here' });
		// The demo has three measured leaks of one response, which is just enough, and one of another.
		await fit
			.getByRole('row', { name: /^Film is blown away/ })
			.getByText('3 leaks')
			.waitFor();
		await fit
			.getByRole('row', { name: /^Film tears/ })
			.getByText('2 more needed')
			.waitFor();
		const told = fit.getByText(/at face value goes from/);
		const offered = await told.textContent();
		expect(await fit.getByRole('link', { name: 'rule W13' }).getAttribute('href')).toMatch(/#W13$/);

		await goTo(page, 'Walk');
		for (const [tag, seconds] of [
			[2, 9],
			[3, 10],
			[4, 12]
		] as const)
			await soapThenBag(page, tag, seconds);
		await goTo(page, 'Weigh');
		const row = fit.getByRole('row', { name: /^Foam that spits/ });
		await row.getByText('3 leaks').waitFor();
		await row.getByText('0.2\u202fmm to 0.5\u202fmm').waitFor();
		await row.getByRole('img', { name: /today .* re-fitted / }).waitFor();
		await expect.poll(() => told.textContent(), { timeout: 30_000 }).not.toBe(offered);
		const wanted = /to (€[\d,]+)/.exec((await told.textContent()) ?? '')?.[1] ?? '';
		const faceValue = page.locator('.headline .cost').getByText('At face value');
		const before = await faceValue.textContent({ timeout: 60_000 });
		expect(before).not.toContain(wanted);
		await fit.scrollIntoViewIfNeeded();
		await picture(page, `soap bands offered ${where}`);

		await fit.getByRole('button', { name: 'Use the re-fitted bands' }).click();
		await fit.getByText('The re-fitted bands are in use for 2 responses').waitFor();
		await expect.poll(() => faceValue.textContent(), { timeout: 60_000 }).toContain(wanted);
		await picture(page, `soap bands taken ${where}`);
		await page.getByRole('button', { name: 'Undo' }).click();
		await fit.getByRole('button', { name: 'Use the re-fitted bands' }).click();
		await saved(page);
		await page.reload();
		await fit.getByRole('button', { name: 'Take the re-fit back' }).click();
		await fit.getByRole('button', { name: 'Use the re-fitted bands' }).waitFor();
		await expect.poll(() => faceValue.textContent(), { timeout: 60_000 }).toBe(before);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
			viewport.width
		);
	});
});
