import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { freshProfile, goTo, launch, openDemo, saved } from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

/** Gzipped kilobytes of JavaScript that a page asks for while it is loaded. */
async function scriptsOf(page: Page, load: () => Promise<unknown>): Promise<number> {
	// What was asked before is not counted: nothing of it may still be under way.
	await page.waitForLoadState('networkidle');
	const asked = new Set<string>();
	page.on('request', (request) => {
		const url = request.url();
		if (/\.m?js$/.test(new URL(url).pathname)) asked.add(url);
	});
	await load();
	await page.waitForLoadState('networkidle');
	expect(asked.size).toBeGreaterThan(2);
	const sizes = await Promise.all(
		[...asked].map(async (url) => gzipSync(await (await fetch(url)).arrayBuffer()).byteLength)
	);
	return sizes.reduce((sum, size) => sum + size, 0) / 1000;
}

test('the first load of the list takes at most 120 kB of JavaScript', async () => {
	const context = await freshProfile(browser);
	const page = await context.newPage();
	const total = await scriptsOf(page, async () => {
		await page.goto(appUrl);
		await page.getByText('Open the demo site').first().waitFor();
	});
	await context.close();
	expect(total).toBeLessThanOrEqual(120);
});

test('the first load of Walk takes at most 220 kB of JavaScript', async () => {
	// Its site is opened first, in the same profile, then the page is loaded anew.
	const context = await freshProfile(browser);
	const page = await context.newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Walk');
	const pin = page.locator('[data-tag="12"]');
	await pin.waitFor();
	const total = await scriptsOf(page, async () => {
		await page.reload();
		await pin.waitFor();
	});
	await context.close();
	expect(total).toBeLessThanOrEqual(220);
});

test('in use nothing is asked of any other machine, and nothing breaks the content policy', async () => {
	const context = await freshProfile(browser, { serviceWorkers: 'allow' });
	const page = await context.newPage();
	const strangers: string[] = [];
	const complaints: string[] = [];
	context.on('request', (request) => {
		const url = new URL(request.url());
		if (url.protocol.startsWith('http') && url.origin !== new URL(appUrl).origin)
			strangers.push(request.url());
	});
	page.on('console', (message) => {
		if (message.type() === 'error' || /content security policy/i.test(message.text()))
			complaints.push(message.text());
	});
	page.on('pageerror', (error) => complaints.push(error.message));
	await openDemo(page, appUrl);
	for (const place of ['Walk', 'Weigh', 'Mend', 'Set up'] as const) await goTo(page, place);
	await goTo(page, 'Mend');
	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
	await page.getByRole('button', { name: 'Save the PDF' }).waitFor({ timeout: 60_000 });
	// Left alone it rests, so that the battery lasts: nothing is drawn, nothing is asked.
	await goTo(page, 'Walk');
	await saved(page);
	let asked = 0;
	context.on('request', () => asked++);
	expect(await page.evaluate(framesIn, 2_000)).toBe(0);
	expect(asked).toBe(0);
	await context.close();
	expect(strangers).toEqual([]);
	expect(complaints).toEqual([]);
});

/** Runs in the page: how often it asks to draw or sets a clock going that repeats, in so many milliseconds. */
async function framesIn(ms: number): Promise<number> {
	const rest = () => new Promise((resolve) => setTimeout(resolve, 500));
	await rest();
	let count = 0;
	const draw = window.requestAnimationFrame.bind(window);
	const repeat = window.setInterval.bind(window);
	window.requestAnimationFrame = (next) => {
		count++;
		return draw(next);
	};
	Object.assign(window, {
		setInterval: (...given: Parameters<typeof repeat>) => {
			count++;
			return repeat(...given);
		}
	});
	await new Promise((resolve) => setTimeout(resolve, ms));
	return count;
}

test('what a hostile name holds is text wherever it is shown', async () => {
	const context = await freshProfile(browser);
	const page = await context.newPage();
	const hostile = '<img src=x onerror="window.broken=1"><script>window.broken=1</script>';
	await page.goto(appUrl);
	await page.getByRole('button', { name: 'New site' }).click();
	await page.getByRole('textbox').first().fill(hostile);
	await page.getByRole('combobox', { name: 'Currency' }).selectOption('EUR');
	await page.getByRole('button', { name: 'Start this site' }).click();
	await page.getByRole('navigation', { name: 'Places' }).waitFor();
	for (const place of ['Walk', 'Weigh', 'Mend', 'Set up'] as const) await goTo(page, place);
	await page.goto(appUrl);
	await page.getByText(hostile).first().waitFor();
	expect(await page.evaluate(() => 'broken' in window)).toBe(false);
	await context.close();
});
