import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { readPdf } from '../report/read-pdf.ts';
import { freshProfile, launch, PHONE, picture, overflow } from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

test.for([
	[
		'en-GB',
		'How to use Airtally',
		'Walk',
		'Soaping for leaks: field card',
		/prove zero at the gauge/
	],
	[
		'de-AT',
		'So arbeiten Sie mit Airtally',
		'Begehen',
		'Leckagen durch Abseifen finden: Taschenkarte',
		/Drucklosigkeit am Manometer/
	]
] as const)(
	'the guide leads to its parts, and the field card is one sheet with its cautions (%s)',
	async ([locale, guide, part, card, caution]) => {
		const context = await freshProfile(browser, { viewport: PHONE, locale });
		const page = await context.newPage();
		await page.goto(appUrl);
		await page
			.getByRole('link', { name: /Guide and field card|Anleitung und Taschenkarte/ })
			.click();
		await page.getByRole('heading', { level: 1, name: guide }).waitFor();
		await page.getByRole('link', { name: part, exact: true }).click();
		expect(new URL(page.url()).hash).toBe('#walk');
		await page.getByRole('link', { name: /Field card to print|Taschenkarte zum Drucken/ }).click();
		await page.getByRole('heading', { level: 1, name: card }).waitFor();
		expect(await overflow(page)).toBeLessThanOrEqual(0);
		await picture(page, `field-card-${locale}`);
		const { pages } = await readPdf(
			new Uint8Array(await page.pdf({ format: 'A4', preferCSSPageSize: true }))
		);
		expect(pages).toHaveLength(1);
		expect(pages[0]).toMatch(caution);
		await context.close();
	}
);
