import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import type { Command } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { writeSurveyFile } from '#lib/storage/file/write-survey-file.ts';
import { syntheticSurvey } from '../bench/synthetic.ts';
import { DESK, freshProfile, goTo, launch, openDemo } from './browser.ts';

const appUrl = inject('appUrl');
const AT = '2026-01-05T08:00:00Z';
/** What the browser itself calls a long task: a tap that comes meanwhile is felt to wait. */
const LONG_MS = 50;
/** So much more than the demo's machines must deliver to feed a thousand leaks. */
const LARGER = 30;
let browser: Browser;
const open: BrowserContext[] = [];

beforeAll(async () => {
	browser = await launch();
});
afterEach(async () => {
	for (const context of open.splice(0)) await context.close();
});
afterAll(() => browser.close());

async function newPage(): Promise<Page> {
	// As it is used: what is kept for use without a network is fetched meanwhile.
	const context = await freshProfile(browser, { viewport: DESK, serviceWorkers: 'allow' });
	open.push(context);
	const page = await context.newPage();
	await page.addInitScript(() => {
		const tasks: number[] = [];
		Object.assign(globalThis, { longTasks: tasks });
		new PerformanceObserver((list) => {
			for (const { duration } of list.getEntries()) tasks.push(duration);
		}).observe({ type: 'longtask', buffered: true });
	});
	return page;
}

/** A site of a thousand leaks behind the demo's compressor station, the heaviest year to work out. */
async function largeSite(): Promise<Buffer> {
	const demo = await readSurveyFile(
		new Uint8Array(readFileSync('survey-examples/ceramics-works.airtally.zip'))
	);
	if (!demo.ok) throw new Error(demo.error.code);
	const { supply, prices } = demo.value.survey;
	const station = supply.station && {
		...supply.station,
		compressors: supply.station.compressors.map((machine) => ({
			...machine,
			capacityM3PerMin: machine.capacityM3PerMin * LARGER,
			loadedKw: machine.loadedKw * LARGER
		}))
	};
	const survey: Survey = {
		...syntheticSurvey(1000),
		supply: { ...supply, ...(station && { station }) },
		prices
	};
	const start: Command = {
		id: 'command-start',
		device: 'device-a',
		time: 0,
		at: AT,
		body: { kind: 'start-site', survey }
	};
	return Buffer.from(await writeSurveyFile({ commands: [start], survey, blobs: [], savedAt: AT }));
}

const longTasks = (page: Page) =>
	page.evaluate(() => (globalThis as unknown as { longTasks: number[] }).longTasks.splice(0));

/** Drags both sliders, types a price and goes back to today; each answer is waited for. */
async function tryThings(page: Page): Promise<void> {
	const answer = page.locator('.answer');
	const answered = () =>
		answer.and(page.locator('[aria-busy="false"]')).waitFor({ timeout: 20_000 });
	const row = answer.locator('tbody tr').first();
	await answered();
	const today = await row.textContent();
	const pressure = page.getByLabel(/^Set pressure/);
	for (const step of ['-0.3', '-0.6', '-1']) await pressure.fill(step);
	await answered();
	const lower = await row.textContent();
	const first = page.getByLabel(/^Mend the first .* by rank/);
	for (const count of ['3', '7', '10']) await first.fill(count);
	await answered();
	const mended = await row.textContent();
	await page.getByLabel('Price of a kWh').fill('0.4');
	await page.getByLabel('Price of a kWh').press('Tab');
	await answered();
	const dearer = await row.textContent();
	expect(new Set([today, lower, mended, dearer]).size).toBe(4);
	await page.getByRole('button', { name: 'Back to today' }).click();
	await answered();
	expect(await row.textContent()).toBe(today);
}

test('[W15] what if never holds the page on the demo site', { retry: 2 }, async () => {
	const page = await newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Weigh');
	await page.getByText('How sure:').waitFor({ timeout: 60_000 });
	await longTasks(page);
	await tryThings(page);
	const held = await longTasks(page);
	expect(Math.max(0, ...held)).toBeLessThanOrEqual(LONG_MS);
});

test('[W15] nor on a site of a thousand leaks and a station', { retry: 2 }, async () => {
	const page = await newPage();
	await page.goto(appUrl);
	await page
		.locator('input[type=file]')
		.first()
		.setInputFiles({
			name: 'large.airtally.zip',
			mimeType: 'application/zip',
			buffer: await largeSite()
		});
	// A file that brings one new site opens it by itself.
	await page.getByRole('navigation', { name: 'Places' }).waitFor();
	await goTo(page, 'Weigh');
	await page.getByText('How sure:').waitFor({ timeout: 60_000 });
	await longTasks(page);
	await tryThings(page);
	const held = await longTasks(page);
	expect(Math.max(0, ...held)).toBeLessThanOrEqual(LONG_MS);
});
