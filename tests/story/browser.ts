import { mkdirSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { chromiumArgs, findChromium } from '../../src/setup/chromium.mjs';

/** A phone held upright, and a desk. */
export const PHONE = { width: 360, height: 740 };
export const DESK = { width: 1280, height: 800 };

export const AUTUMN = 'survey-examples/ceramics-works-autumn.airtally.zip';

export async function launch(): Promise<Browser> {
	const executablePath = findChromium();
	if (!executablePath) throw new Error('no Chromium was found: set CHROMIUM to the path of one');
	return chromium.launch({ executablePath, args: [...chromiumArgs] });
}

/**
 * A fresh profile: nothing stored, British English, so that texts can be compared. It keeps nothing for
 * use without a network, which takes more work than a story: one about that says `serviceWorkers: 'allow'`.
 */
export async function freshProfile(
	browser: Browser,
	options: Parameters<Browser['newContext']>[0] = {}
): Promise<BrowserContext> {
	const context = await browser.newContext({
		viewport: DESK,
		locale: 'en-GB',
		timezoneId: 'Europe/Vienna',
		serviceWorkers: 'block',
		...options
	});
	context.setDefaultTimeout(15_000);
	return context;
}

/** Opens the demo site from the list of sites, as a newcomer does, and waits until it can be walked. */
export async function openDemo(page: Page, appUrl: string): Promise<void> {
	await page.goto(appUrl);
	await page.getByRole('button', { name: 'Open the demo site' }).click();
	await page.getByRole('navigation', { name: 'Places' }).waitFor();
}

/** Opens the same works after its second round; a file that brings one new site opens it by itself. */
export async function openAutumn(page: Page, appUrl: string): Promise<void> {
	await page.goto(appUrl);
	await page.locator('input[type="file"]').first().setInputFiles(AUTUMN);
	await page.getByRole('navigation', { name: 'Places' }).waitFor();
}

/** Goes to one of the places along the line, at either width. */
export async function goTo(
	page: Page,
	place: 'Set up' | 'Walk' | 'Weigh' | 'Mend' | 'Prove'
): Promise<void> {
	await page
		.getByRole('navigation', { name: 'Places' })
		.getByRole('link', { name: place, exact: true })
		.click();
	const path = `/${place.toLowerCase().replace(' ', '-')}`;
	await page.waitForURL(({ pathname }) => pathname === path);
	await page.getByRole('heading', { level: 1 }).first().waitFor({ state: 'attached' });
}

/** Waits until the app says that everything is on the disk. */
export async function saved(page: Page): Promise<void> {
	await page
		.getByRole('status')
		.filter({ hasText: /^Saved$/ })
		.waitFor();
}

/** By how many pixels the page sticks out sideways. */
export function overflow(page: Page): Promise<number> {
	return page.evaluate(
		() => document.documentElement.scrollWidth - document.documentElement.clientWidth
	);
}

/** Has something looked at while all letters are twice as large. */
export async function largeLetters(page: Page, look: () => Promise<void>): Promise<void> {
	await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
	await look();
	await page.evaluate(() => (document.documentElement.style.fontSize = ''));
}

/**
 * What breaks WCAG 2.2 AA on the page as it is now, or some of its rules: rules, and the elements.
 * The plan keeps its own colours.
 */
export async function breaches(
	page: Page,
	rules?: readonly string[]
): Promise<[rule: string, elements: string[]][]> {
	const axe = axeOn(page).exclude('.plan');
	const { violations } = await (
		rules ? axe.withRules([...rules]) : axe.withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
	).analyze();
	return violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
}

/**
 * Axe in the page itself, which holds no frames and no sound, telling only what breaks a rule: a sixth of
 * its work. What it would fetch once more is there for sounds and for one rule that is not asked.
 */
export function axeOn(page: Page, options: Parameters<AxeBuilder['options']>[0] = {}): AxeBuilder {
	return new AxeBuilder({ page })
		.options({ ...options, resultTypes: ['violations'], preload: false })
		.setLegacyMode(true);
}

/** Keeps a picture for a person to look at, outside the repository's files, when AIRTALLY_PICTURES asks for it. */
export async function picture(page: Page, name: string): Promise<void> {
	if (!process.env['AIRTALLY_PICTURES']) return;
	mkdirSync('test-results/pictures', { recursive: true });
	await page.screenshot({ path: `test-results/pictures/${name}.png`, fullPage: true });
}
