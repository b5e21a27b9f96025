import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { AxeBuilder } from '@axe-core/playwright';
import { freshProfile, goTo, launch, openDemo, PHONE, picture, saved } from './browser.ts';
import { readPdf } from '../report/read-pdf.ts';

/** A fitter with a phone: the list folded small, the cautions where the hand is, and nothing folded on paper. */
describe('the list of work in the hand', () => {
	let browser: Browser;
	let page: Page;
	beforeAll(async () => {
		browser = await launch();
		const context = await freshProfile(browser, { viewport: PHONE });
		page = await context.newPage();
		await openDemo(page, inject('appUrl'));
	});
	afterAll(() => browser.close());

	it('[C1] names every job’s cautions in its row and has them whole, before the tick, when it is opened', async () => {
		await goTo(page, 'Mend');
		await page.getByRole('link', { name: /^To the jobs/ }).click();
		const section = page.getByRole('region', { name: 'Press hall' });
		await section.getByRole('heading', { name: 'Press hall' }).click();
		const rows = section.getByRole('article');
		const open = rows.filter({ hasText: 'Leaking' });
		expect(await open.count()).toBeGreaterThan(4);
		for (const text of await open.allInnerTexts())
			expect(text).toContain('Isolate, lock, vent, prove zero');
		expect(await section.getByText(/^Isolate, lock, vent, prove zero at the gauge/).count()).toBe(
			1
		);
		await open.first().getByRole('heading').click();
		const caution = open.first().getByText(/^Isolate, lock, vent, prove zero at the gauge/);
		const tick = open.first().getByLabel('Mended', { exact: true });
		const [above, below] = [await caution.boundingBox(), await tick.boundingBox()];
		expect(above?.y).toBeLessThan(below?.y ?? 0);
		await picture(page, 'mend in the hand');
		const { violations } = await new AxeBuilder({ page }).analyze();
		expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html ?? ''}`)).toEqual([]);
	});

	it('[C1] puts the whole screen on paper unfolded: each job with its cautions in full', async () => {
		const { pages } = await readPdf(new Uint8Array(await page.pdf({ format: 'A4' })));
		const text = pages.join(' ');
		const jobs = text.match(/Tag \d+ /g)?.length ?? 0;
		expect(jobs).toBeGreaterThan(40);
		expect(
			text.split('Isolate, lock, vent, prove zero at the gauge, then loosen.').length - 1
		).toBeGreaterThanOrEqual(jobs);
	});

	it('takes a finding of the compressor room as a job with cautions of its own, and writes down why it was left', async () => {
		await goTo(page, 'Walk');
		await page.getByRole('link', { name: /compressor room/i }).click();
		await page.getByRole('heading', { level: 1, name: 'Compressor room' }).waitFor();
		await page
			.getByRole('textbox', { name: /machine or tank/ })
			.fill('Piston machine in the workshop');
		await page.getByRole('button', { name: 'Add it' }).click();
		await page.getByRole('heading', { level: 2, name: 'Piston machine in the workshop' }).waitFor();
		await page.getByRole('radio', { name: 'Dirty', exact: true }).check();
		await page.getByRole('radio', { name: 'Rust in the water', exact: true }).check();
		await saved(page);
		await goTo(page, 'Mend');
		const room = page.getByRole('region', { name: 'Compressor room' });
		await room.getByText('2 of 2 to do').waitFor();
		const rust = room.getByRole('article', { name: /Out of service until examined inside/ });
		expect(await rust.innerText()).toContain('Do this first');
		await rust.getByRole('heading').click();
		await rust.getByText(/goes out of service now/).waitFor();
		await rust.getByLabel('Could not be done: why not').fill('Examiner comes on Tuesday');
		const filter = room.getByRole('article', { name: /Change the filter/ });
		await filter.getByRole('heading').click();
		await filter.getByText(/The intake is opened only with the machine stopped/).waitFor();
		await filter.getByLabel('Put right').check();
		await room.getByText('1 of 2 to do').waitFor();
		await rust.getByText('Could not: Examiner comes on Tuesday').waitFor();
		await saved(page);
		await page.getByRole('link', { name: 'As a page to print or read aloud' }).click();
		await page.getByText('Could not: Examiner comes on Tuesday').waitFor();
		await picture(page, 'fix list page with the compressor room');
	});
});
