import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { answered } from '../../src/cli/captured-run.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { createFormat } from '#lib/words/format.ts';
import { readPdf } from '../report/read-pdf.ts';
import { freshProfile, goTo, launch, PHONE, saved } from './browser.ts';

const HANDED_OVER = 'survey-examples/ceramics-works.airtally.zip';

async function downloaded(page: Page, button: string): Promise<Uint8Array> {
	const downloading = page.waitForEvent('download', { timeout: 60_000 });
	await page.getByRole('button', { name: button }).click({ timeout: 60_000 });
	return new Uint8Array(await readFile(await (await downloading).path()));
}

/**
 * A manager at a desk opens what the auditor handed over, weighs it, has two stops, one fitter and a
 * budget: what goes where, moved by hand and taken back, taken again, and printed.
 */
describe('a manager', () => {
	let browser: Browser;
	let page: Page;
	beforeAll(async () => {
		browser = await launch();
		const context = await freshProfile(browser);
		page = await context.newPage();
		await page.goto(inject('appUrl'));
		await page.getByLabel('Open a survey file').setInputFiles(HANDED_OVER);
		// A file that brings one new site opens it by itself.
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
	});
	afterAll(() => browser.close());

	it('weighs what was handed over: the sum is that of the file', async () => {
		const file = new Uint8Array(await readFile(HANDED_OVER));
		const { totals } = await answered<{ totals: { costPerYear: number } }>(['audit', 'a.zip'], {
			'a.zip': file
		});
		const read = await readSurveyFile(file);
		if (!read.ok) throw new Error(read.error.code);
		const { units } = read.value.survey.site;
		const euros = createFormat({ locale: 'en-GB', currency: 'EUR', units });
		await goTo(page, 'Weigh');
		await page
			.getByRole('button', { name: euros.money(Math.round(totals.costPerYear * 100)) })
			.first()
			.waitFor();
	});

	it('gives two windows of their own, a week apart, and a budget', async () => {
		await goTo(page, 'Mend');
		for (const old of ['Saturday stop', 'Whitsun stop']) {
			const remove = page.getByRole('button', { name: `Remove ${old}` });
			if (!(await remove.isVisible())) await page.getByText(old).first().click();
			await remove.click();
		}
		const plan = page.getByRole('region', { name: 'Plan the mending' });
		for (const [add, name, minutes] of [
			['Add a window', 'Saturday stop', '240'],
			['Add another window', 'Whitsun stop', '360']
		] as const) {
			await plan.getByRole('button', { name: add }).click();
			await plan.getByLabel('Name', { exact: true }).last().fill(name);
			await plan.getByLabel('Length').last().fill(minutes);
			if (name === 'Whitsun stop') await plan.getByText('Air may stay off').last().click();
			const starts = await plan.getByLabel('Starts').last().inputValue();
			expect(new Date(starts).getDay()).toBe(6);
		}
		await plan.getByLabel('Budget for parts').fill('150');
		await plan.getByLabel('Budget for parts').press('Tab');
		await plan.getByText('2 windows, €150 for parts').waitFor();
		await saved(page);
	});

	it('proves a plan that is better than one made job by job', async () => {
		await page.getByRole('button', { name: 'Make the plan', exact: true }).click();
		const plan = page.getByRole('region', { name: 'Proposed plan' });
		await plan.getByText(/^Proved:/).waitFor({ timeout: 60_000 });
		expect(await plan.getByText(/The plan saves/).innerText()).toMatch(
			/The plan saves €[\d,]+ in 1 year, €[\d,]+ better than taking the best job/
		);
		// The budget that was given, and what the parts of both stops come to.
		await plan
			.getByText(/^Parts €[\d,]+ of the €[\d,]+ given for them: €[\d,.]+ left\.$/)
			.waitFor();
		await plan
			.getByText(/^€75 more for parts would save €\d+ more\.$/)
			.waitFor({ timeout: 60_000 });
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
		await page.getByText(/^2 windows\. Parts €[\d,]+ of the €[\d,]+/).waitFor();
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
		await page.getByRole('heading', { name: 'Sections, unsafe first, then by cost' }).waitFor();
		await page.getByRole('button', { name: 'Redo' }).click();
		await page.getByRole('heading', { name: 'Windows, in walking order' }).waitFor();
		await saved(page);
	});

	it('prints the list by window, each with its cautions, and hands the plan on in the file', async () => {
		await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
		const { pages, title } = await readPdf(await downloaded(page, 'Save the PDF'));
		expect(title).toMatch(/Fix list/);
		for (const each of pages) expect(each).toMatch(/prove zero/i);
		const text = pages.join(' ');
		expect(text.indexOf('Saturday stop')).toBeGreaterThan(0);
		expect(text.indexOf('Whitsun stop')).toBeGreaterThan(text.indexOf('Saturday stop'));

		const read = await readSurveyFile(await downloaded(page, 'To file'));
		if (!read.ok) throw new Error(read.error.code);
		const { windows = {}, mendPlan } = read.value.survey;
		const standing = Object.values(windows).filter(({ removed }) => !removed);
		const [first, second] = standing
			.map(({ startsAt }) => Date.parse(startsAt))
			.sort((a, b) => a - b);
		expect(((second ?? 0) - (first ?? 0)) / 86_400_000).toBeCloseTo(7, 0);
		const planned = Object.values(mendPlan?.windows ?? {});
		for (const { id } of standing) expect(planned).toContain(id);
		expect(mendPlan?.budget).toBe(150);
	});
});
