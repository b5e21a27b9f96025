import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { times } from '../faults/long.ts';
import { scannedPlan } from '../fixtures/scanned-plan.ts';
import { freshProfile, goTo, launch, openDemo, saved } from './browser.ts';
import { lookAnew, seen, watchCanvases } from './canvas-watch.ts';

const LOOKS = times(4, 10);
const appUrl = inject('appUrl');
/** Decoding a hundred megapixels takes its time on a machine with much else to do. */
const SLOW_MS = 120_000;
/** What one canvas may hold on the smallest devices, px: 4096 × 4096 (common practice). */
const MOST_CANVAS = 16_777_216;
/** The largest and the plainest are for the long form. */
const LONG = times(0, 1) > 0;
let browser: Browser;
const open: BrowserContext[] = [];

beforeAll(async () => {
	browser = await launch();
});
afterEach(async () => {
	for (const context of open.splice(0)) await context.close();
});
afterAll(() => browser.close());

async function onSetUp(): Promise<Page> {
	// Without the service worker the worker's own script can be watched too.
	const context = await freshProfile(browser);
	open.push(context);
	context.setDefaultTimeout(SLOW_MS);
	await watchCanvases(context);
	const page = await context.newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Set up');
	return page;
}

async function choose(page: Page, buffer: Buffer): Promise<void> {
	await page
		.locator('#plans input[type=file]')
		.setInputFiles({ name: 'scan.png', mimeType: 'image/png', buffer });
}

const take = (page: Page) => page.getByRole('button', { name: 'Take this plan' });

async function openDesk(page: Page): Promise<void> {
	await page.getByRole('link', { name: /newer drawing of scan$/ }).click();
	await page.getByRole('heading', { level: 1, name: 'scan' }).waitFor();
	await page.getByAltText('Floor plan: scan').waitFor();
}

/** As near as tiles are needed for. */
async function lookCloser(page: Page): Promise<void> {
	const tiles = page.locator('.plan-map .leaflet-tile-loaded');
	for (let times = 0; times < 12 && (await tiles.count()) === 0; times++) {
		await page.getByRole('button', { name: 'Zoom in' }).click();
		await page.waitForTimeout(250);
	}
	await expect.poll(() => tiles.count(), { timeout: SLOW_MS }).toBeGreaterThan(0);
}

describe('a scan', () => {
	for (const [width, height] of [
		[1250, 800],
		[6000, 4000],
		[20_000, 1000],
		...(LONG
			? ([
					[4000, 4000],
					[8000, 6000],
					[12_000, 9000]
				] as const)
			: [])
	] as const)
		test(
			`of ${width} × ${height} px is taken in beside the page's own thread and shown in tiles`,
			{ timeout: 3 * SLOW_MS },
			async () => {
				const page = await onSetUp();
				const scan = scannedPlan(width, height, 0.9, 0.4);
				await lookAnew(page);
				const began = performance.now();
				await choose(page, scan);
				await take(page).waitFor();
				const opened = performance.now();
				await take(page).click();
				const large = width * height > MOST_CANVAS || Math.max(width, height) > 8192;
				if (large) await page.getByText('Cutting it for closer looks').waitFor();
				await page.getByRole('dialog').waitFor({ state: 'detached' });
				const taken = performance.now();
				const { largestCanvas, longestTaskMs } = await seen(page);
				console.log(
					`${((width * height) / 1e6).toFixed(1)} megapixels: opened in ${((opened - began) / 1000).toFixed(1)} s, taken in ${((taken - opened) / 1000).toFixed(1)} s, longest task ${longestTaskMs.toFixed(0)} ms, largest canvas ${(largestCanvas / 1e6).toFixed(1)} megapixels`
				);
				expect(largestCanvas).toBeLessThanOrEqual(MOST_CANVAS);
				// Decoding it here would hold up the page for seconds.
				expect(longestTaskMs).toBeLessThan(1000);
				await saved(page);
				await openDesk(page);
				if (large) await lookCloser(page);
				expect((await seen(page)).largestCanvas).toBeLessThanOrEqual(MOST_CANVAS);
			}
		);

	test('that is stopped while it is opened or cut changes nothing', async () => {
		const page = await onSetUp();
		const scan = scannedPlan(6000, 4000, 0.5, 0.5);
		const plans = await page.locator('#plans li').count();
		await choose(page, scan);
		await page.locator('#plans').getByRole('button', { name: 'Stop' }).click();
		await page.getByText('Add another plan').waitFor();
		expect(await page.getByRole('dialog').count()).toBe(0);
		await choose(page, scan);
		await take(page).click();
		await page.getByRole('dialog').getByRole('button', { name: 'Stop' }).click();
		await page.getByRole('dialog').waitFor({ state: 'detached' });
		expect(await page.locator('#plans li').count()).toBe(plans);
		expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
		expect((await seen(page)).openPictures).toBe(0);
	});
});

test(
	`a plan that is opened and closed ${LOOKS} times leaves nothing behind`,
	{ timeout: 2 * SLOW_MS },
	async () => {
		const page = await onSetUp();
		await choose(page, scannedPlan(6000, 4000, 0.5, 0.5));
		await take(page).click();
		await page.getByRole('dialog').waitFor({ state: 'detached' });
		await saved(page);
		const session = await page.context().newCDPSession(page);
		const held = async () => {
			await page.waitForTimeout(500);
			for (let times = 0; times < 3; times++) await session.send('HeapProfiler.collectGarbage');
			const { usedSize } = await session.send('Runtime.getHeapUsage');
			const { nodes, jsEventListeners } = await session.send('Memory.getDOMCounters');
			const { openPictures, heldPixels } = await seen(page);
			return { heap: usedSize, nodes, listeners: jsEventListeners, openPictures, heldPixels };
		};
		const look = async () => {
			await openDesk(page);
			await lookCloser(page);
			await page.getByRole('link', { name: 'Back to Set up' }).click();
			await page.locator('#plans input[type=file]').waitFor({ state: 'attached' });
		};
		await look(); // Code that is loaded once stays.
		const before = await held();
		for (let looks = 0; looks < LOOKS; looks++) await look();
		const after = await held();
		console.log(JSON.stringify({ before, after }));
		expect(after.openPictures).toBe(0);
		expect(after.heldPixels).toBe(0);
		// A small part of what so many plans would keep: a picture's elements, and the listeners of its map.
		expect(after.nodes - before.nodes).toBeLessThan(100);
		expect(after.listeners - before.listeners).toBeLessThan(50);
		expect(after.heap - before.heap).toBeLessThan(3e6);
	}
);
