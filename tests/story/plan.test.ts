import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { freshProfile, goTo, launch, openDemo, PHONE, saved } from './browser.ts';

/** A manager has two stops and one fitter: what goes where, taken, moved by hand and taken back. */
describe('the mending is planned', () => {
	let browser: Browser;
	let page: Page;
	beforeAll(async () => {
		browser = await launch();
		const context = await freshProfile(browser);
		page = await context.newPage();
		await openDemo(page, inject('appUrl'));
		await goTo(page, 'Mend');
	});
	afterAll(() => browser.close());

	it('proves a plan that is better than one made job by job', async () => {
		await page.getByRole('button', { name: 'Make the plan', exact: true }).click();
		const plan = page.getByRole('region', { name: 'Proposed plan' });
		await plan.getByText(/^Proved:/).waitFor({ timeout: 60_000 });
		expect(await plan.getByText(/The plan saves/).innerText()).toMatch(
			/The plan saves €[\d,]+ in 1 year, €[\d,]+ better than taking the best job/
		);
		await plan.getByText('One more hour').first().waitFor({ timeout: 60_000 });
		const [saturday, whitsun] = await plan.getByRole('article').allInnerTexts();
		expect(saturday).toContain('Saturday stop');
		expect(saturday).toContain('Take out of service');
		// Compound cures overnight: only after the stop that leaves the air off.
		expect(saturday).not.toContain('Remake the thread');
		expect(whitsun).toContain('Whitsun stop');
	});

	it('is taken over: the list stands by window, cautions and all', async () => {
		await page.getByRole('button', { name: 'Take this plan' }).click();
		await page.getByRole('heading', { name: 'Windows, in walking order' }).waitFor();
		await saved(page);
		const first = page.getByRole('region', { name: /^Saturday stop.*Compressor house$/ });
		await first.getByText(/^Isolate, lock, vent, prove zero at the gauge/).waitFor();
		await page.setViewportSize(PHONE);
		const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
		expect(over).toBeLessThanOrEqual(0);
		await page.setViewportSize({ width: 1280, height: 800 });
	});

	it('moves a job to another window by hand, and takes all of it back', async () => {
		const job = page.getByRole('article', { name: /^Tag 45/ });
		await page.getByRole('heading', { name: /^Saturday stop.*Pallet line$/ }).click();
		await job.getByRole('heading').click();
		await job.getByText(/^What it takes/).click();
		await job.getByLabel('Window', { exact: true }).selectOption({ label: 'Whitsun stop' });
		await page.getByRole('heading', { name: /^Whitsun stop.*Pallet line$/ }).click();
		await page
			.getByRole('region', { name: /^Whitsun stop.*Pallet line$/ })
			.getByRole('article', { name: /^Tag 45/ })
			.waitFor();
		await page.getByRole('button', { name: 'Undo' }).click();
		await page.getByRole('heading', { name: /^Saturday stop.*Pallet line$/ }).waitFor();
		await page.getByRole('button', { name: 'Undo' }).click();
		await page.getByRole('heading', { name: 'Sections, worst first' }).waitFor();
		await saved(page);
	});
});
