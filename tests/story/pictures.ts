/**
 * Takes the README's pictures of the real app with the demo site in it: `npm run pictures`.
 * The printed page is drawn by Debian's poppler where that is installed.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { build } from '../../src/setup/build.mjs';
import { DESK, freshProfile, goTo, launch, openAutumn, openDemo, PHONE, saved } from './browser.ts';
import { startServer } from './server.ts';

const folder = 'survey-examples/pictures';
/** What the README shows of each. */
const PLACES = { desk: ['Walk', 'Weigh', 'Mend'], phone: ['Walk'] } as const;

if (!build()) throw new Error('the app does not build');
mkdirSync(folder, { recursive: true });
const server = await startServer();
const browser = await launch();
for (const [where, viewport] of [
	['desk', DESK],
	['phone', PHONE]
] as const) {
	const context = await freshProfile(browser, { viewport, reducedMotion: 'reduce' });
	const page = await context.newPage();
	await page.goto(server.url);
	await page.getByRole('button', { name: 'Open the demo site' }).waitFor();
	if (where === 'desk') await take(page, 'sites-desk');
	await openDemo(page, server.url);
	for (const place of PLACES[where]) {
		await goTo(page, place);
		// The figures stand first; how sure they are is drawn a moment later.
		if (place === 'Weigh') await page.getByText('How sure:').waitFor({ timeout: 60_000 });
		await take(page, `${place.toLowerCase()}-${where}`);
	}
	await goTo(page, 'Walk');
	await page.getByRole('button', { name: 'Add a leak without the plan' }).click();
	await page.getByRole('radio', { name: 'Foam that spits' }).check();
	await take(page, `capture-${where}`);
	if (where === 'desk') await printedPage(page);
	await context.close();
}
await proved();
await browser.close();
await server.kill();

/** The same works after its second round, from the autumn file. */
async function proved(): Promise<void> {
	const context = await freshProfile(browser, { viewport: DESK, reducedMotion: 'reduce' });
	const page = await context.newPage();
	await openAutumn(page, server.url);
	await goTo(page, 'Prove');
	await page.getByRole('radio', { name: 'What was saved' }).check();
	await page.getByText('The two agree within their intervals.').waitFor();
	await take(page, 'prove-desk');
	await context.close();
}

async function take(page: Page, name: string): Promise<void> {
	await page.waitForLoadState('networkidle');
	await page.evaluate(() => document.fonts.ready.then(() => undefined));
	await page.screenshot({ path: join(folder, `${name}.png`) });
}

async function printedPage(page: Page): Promise<void> {
	await goTo(page, 'Mend');
	await saved(page);
	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
	const downloading = page.waitForEvent('download', { timeout: 60_000 });
	await page.getByRole('button', { name: 'Save the PDF' }).click({ timeout: 60_000 });
	const pdf = join(folder, 'fix-list.pdf');
	await (await downloading).saveAs(pdf);
	try {
		for (const [number, name] of [
			[1, 'printed-cover'],
			[2, 'printed-jobs']
		] as const)
			execFileSync('pdftoppm', [
				...['-png', '-r', '70', '-singlefile', '-f', String(number), '-l', String(number)],
				pdf,
				join(folder, name)
			]);
	} catch {
		console.error('The printed pages were left out: install "poppler-utils" to draw them.');
	}
	rmSync(pdf);
}
