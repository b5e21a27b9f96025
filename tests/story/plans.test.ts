import { mkdirSync } from 'node:fs';
import { jsPDF } from 'jspdf';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { DESK, freshProfile, goTo, launch, openDemo, PHONE, saved } from './browser.ts';

const appUrl = inject('appUrl');
/** A page of a PDF is drawn at sixteen megapixels: machines with much else to do take their time. */
const SLOW_MS = 40_000;
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

/** A hall with a cross-hair at a place given in shares. */
function hallPdf(x: number, y: number, pages = 1): Buffer {
	const pdf = new jsPDF({ unit: 'pt', format: 'a3', orientation: 'l' });
	for (let page = 1; page <= pages; page++) {
		if (page > 1) pdf.addPage('a3', 'l');
		const [width, height] = [pdf.internal.pageSize.getWidth(), pdf.internal.pageSize.getHeight()];
		pdf.rect(40, 40, width - 80, height - 80);
		pdf.text(`Upper floor, sheet ${page}`, 60, 70);
		pdf.line(x * width - 20, y * height, x * width + 20, y * height);
		pdf.line(x * width, y * height - 20, x * width, y * height + 20);
	}
	return Buffer.from(pdf.output('arraybuffer'));
}

async function addPlan(page: Page, name: string, buffer: Buffer) {
	await page
		.locator('#plans input[type=file]')
		.setInputFiles({ name, mimeType: 'application/pdf', buffer });
}

/** Keeps what is on the screen, a dialogue before its page included, for a person to look at. */
async function look(page: Page, name: string): Promise<void> {
	mkdirSync('test-results/pictures', { recursive: true });
	await page.screenshot({ path: `test-results/pictures/${name}.png` });
}

/** Taps the plan at a place given in shares of its picture. */
async function tapPlan(page: Page, x: number, y: number) {
	const image = page.locator('.plan-map img.leaflet-image-layer');
	const box = await image.boundingBox();
	if (!box) throw new Error('no plan is shown');
	await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
}

for (const [width, viewport] of [
	['phone', PHONE],
	['desk', DESK]
] as const)
	test(`a PDF of several pages becomes plans that can be measured and drawn on (${width})`, async () => {
		const context = await freshProfile(browser, { viewport });
		context.setDefaultTimeout(SLOW_MS);
		const page = await context.newPage();
		const complaints: string[] = [];
		page.on('pageerror', (error) => complaints.push(error.message));
		page.on('console', (message) => {
			if (/content security policy/i.test(message.text())) complaints.push(message.text());
		});
		await openDemo(page, appUrl);
		await goTo(page, 'Set up');
		await addPlan(page, 'upper floor.pdf', hallPdf(0.25, 0.5, 12));
		const dialog = page.getByRole('dialog');
		await dialog.getByLabel('Page 2', { exact: true }).check();
		await dialog.getByLabel('Page 7', { exact: true }).check();
		await look(page, `plan pages ${width}`);
		await dialog.getByRole('button', { name: 'Go on with 2 pages' }).click();
		await dialog.getByRole('button', { name: 'Turn by 90°' }).click();
		await dialog.getByRole('button', { name: 'Top left corner' }).press('ArrowRight');
		await look(page, `plan cut ${width}`);
		await dialog.getByRole('button', { name: 'Take this plan' }).click();
		await dialog.getByText('Plan 2 of 2').waitFor();
		await dialog.getByRole('button', { name: 'Take this plan' }).click();
		await dialog.waitFor({ state: 'detached' });
		await saved(page);

		await page
			.getByRole('link', { name: 'Scale, sections, newer drawing of upper floor, page 7' })
			.click();
		await page.getByRole('heading', { level: 1, name: 'upper floor, page 7' }).waitFor();
		await page.getByRole('button', { name: 'Set the scale by a known distance' }).click();
		await tapPlan(page, 0.25, 0.5);
		await tapPlan(page, 0.75, 0.5);
		await page.getByLabel('Length').fill('30');
		await page.getByLabel('Length').press('Enter');
		// derived: half the width is 30 m; A3 is 420 mm × 297 mm (ISO 216)
		await page.getByText(/The plan is 60(\.\d)? m wide and 42\.\d m high/).waitFor();

		const draw = page.getByRole('button', { name: /^Draw / }).first();
		const section = ((await draw.getAttribute('aria-label')) ?? '').replace('Draw it: ', '');
		await draw.click();
		for (const [x, y] of [
			[0.1, 0.2],
			[0.6, 0.2],
			[0.6, 0.8],
			[0.1, 0.8]
		] as const)
			await tapPlan(page, x, y);
		await look(page, `plan outline ${width}`);
		await page.getByRole('button', { name: 'Finish the outline' }).click();
		await page.getByText(/drawn, 76\d m²/).waitFor();
		await page.getByRole('button', { name: `Place valve of ${section}` }).click();
		await tapPlan(page, 0.15, 0.3);
		await page.getByText(', valve shown').waitFor();
		await look(page, `plan desk ${width}`);
		await saved(page);

		// A pin in the drawn section takes it.
		await goTo(page, 'Walk');
		await page.getByLabel('Plan', { exact: true }).selectOption({ label: 'upper floor, page 7' });
		await tapPlan(page, 0.25, 0.5);
		await expect
			.poll(async () => page.getByLabel('Section').locator('option:checked').textContent())
			.toContain(section);
		expect(complaints).toEqual([]);
		await context.close();
	});

test('a newer drawing comes under the pins by two matching points, and undo takes it back', async () => {
	const context = await freshProfile(browser);
	context.setDefaultTimeout(SLOW_MS);
	const page = await context.newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Set up');
	await addPlan(page, 'hall.pdf', hallPdf(0.25, 0.5));
	await page.getByRole('dialog').getByRole('button', { name: 'Take this plan' }).click();
	await page.getByRole('dialog').waitFor({ state: 'detached' });
	const desk = page.getByRole('link', { name: /newer drawing of hall$/ });
	await desk.click();
	// The newer drawing is the same hall, cut differently: its cross-hair is elsewhere on the sheet.
	await page.locator('.panel input[type=file]').setInputFiles({
		name: 'newer.pdf',
		mimeType: 'application/pdf',
		buffer: hallPdf(0.5, 0.4)
	});
	await page.getByRole('dialog').getByRole('button', { name: 'Use this drawing' }).click();
	for (const [from, to] of [
		[
			[0.25, 0.5],
			[0.5, 0.4]
		],
		[
			[0.65, 0.5],
			[0.9, 0.4]
		]
	] as const) {
		await page.getByText(/on the older drawing|a place on the older/).waitFor();
		await tapPlan(page, from[0], from[1]);
		await page.getByText('tap the same place on the newer drawing').waitFor();
		await tapPlan(page, to[0], to[1]);
	}
	await page.getByRole('button', { name: 'Show where everything goes' }).click();
	await look(page, 'plan newer drawing');
	await page.getByRole('button', { name: 'Use the newer drawing' }).click();
	await page.getByRole('heading', { name: 'Newer drawing' }).waitFor();
	await saved(page);
	await page.getByRole('button', { name: /^Undo/ }).click();
	await saved(page);
	await context.close();
});

test('a PDF that is cut short is refused by name, and nothing is changed', async () => {
	const context = await freshProfile(browser);
	context.setDefaultTimeout(SLOW_MS);
	const page = await context.newPage();
	await openDemo(page, appUrl);
	await goTo(page, 'Set up');
	const whole = hallPdf(0.25, 0.5);
	await addPlan(page, 'cut.pdf', whole.subarray(0, whole.length / 2));
	await page.getByText('This PDF is damaged or cut short').waitFor();
	expect(await page.getByRole('dialog').count()).toBe(0);
	await context.close();
});
