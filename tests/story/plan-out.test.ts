import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { readPdf } from '../report/read-pdf.ts';
import { DESK, freshProfile, goTo, launch, openDemo, picture, saved } from './browser.ts';
import { hexOf, onPaper, onShownPlan, type Seen } from './seen-colours.ts';

/** Plans on their way out of the app: on paper, beside each job, and to another program. */
let browser: Browser;

beforeAll(async () => {
	browser = await launch();
});
afterAll(() => browser.close());

async function onDemo(): Promise<Page> {
	const context = await freshProfile(browser, { viewport: DESK });
	const page = await context.newPage();
	await openDemo(page, inject('appUrl'));
	return page;
}

test('the fix list has a page of the plan with every pin, its scale and its valves, on A4 and A3', async () => {
	const page = await onDemo();
	await goTo(page, 'Mend');
	for (const [paper, widthMm] of [
		['A4', 297],
		['A3', 420]
	] as const) {
		await page.getByText(paper, { exact: true }).click();
		await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
		const downloading = page.waitForEvent('download', { timeout: 60_000 });
		await page.getByRole('button', { name: 'Save the PDF' }).click({ timeout: 60_000 });
		const bytes = await readFile(await (await downloading).path());
		const { pages, sizes } = await readPdf(new Uint8Array(bytes));
		const plan = pages.findIndex((text) => text.includes('The number is the tag on the joint.'));
		expect(sizes[plan]?.[0]).toBeCloseTo(widthMm, 0);
		for (const word of ['20 m', 'North', 'isolating valve', 'V1', ' 1 ', ' 46 '])
			expect(pages[plan]).toContain(word);
		expect(pages[plan]).not.toContain('not in the survey');
	}
	await page.context().close();
});

test('the page to print shows where each job is on its plan', async () => {
	const page = await onDemo();
	await goTo(page, 'Mend');
	await page.getByRole('link', { name: 'As a page to print or read aloud' }).click();
	await page.getByRole('img', { name: /^Where tag 5 is on the plan/ }).waitFor();
	expect(await page.getByRole('img', { name: /^Where tag/ }).count()).toBeGreaterThan(40);
	await page.getByRole('img', { name: /^Where tag 5 is/ }).scrollIntoViewIfNeeded();
	await picture(page, 'job with its place on the plan');
	await page.context().close();
});

test('a plan leaves as GeoJSON whose name and first line say that it is no map', async () => {
	const page = await onDemo();
	await goTo(page, 'Set up');
	await page.getByRole('link', { name: /^Scale, sections, newer drawing of Ground floor/ }).click();
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save as GeoJSON (local metres)' }).click();
	const download = await downloading;
	expect(download.suggestedFilename()).toMatch(
		/Ground-floor-local-metres-not-geographic\.geojson$/
	);
	const text = await readFile(await download.path(), 'utf8');
	const { features } = JSON.parse(text) as { features: unknown[] };
	expect(text.slice(0, 120)).toContain('NOT LONGITUDE AND LATITUDE');
	expect(features.length).toBeGreaterThan(40);
	await picture(page, 'plan out');
	await page.context().close();
});

/** Three squares that both drawings show, and a cross-hair that is pinned, in shares of the sheet. */
const MARKS = { blue: [0.15, 0.8], green: [0.8, 0.75], pink: [0.7, 0.2] } as const;
const CROSS = [0.3, 0.4] as const;
const LANDMARKS = ['blue', 'green', 'pink'] as const;

/** A hall on a sheet of 1000 × 700, drawn smaller on it by `scale` and shifted to the right and down. */
function hall(scale: number, shift: number): string {
	const at = ([x, y]: readonly [number, number]) => `${x * 1000} ${y * 700}`;
	const squares = LANDMARKS.map(
		(colour) => `<path fill="${hexOf(colour)}" d="M${at(MARKS[colour])}m-9-9h18v18h-18z"/>`
	).join('');
	return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 700" width="1000" height="700">
		<rect width="1000" height="700" fill="#fff"/>
		<g transform="translate(${shift} ${shift}) scale(${scale})">
		<path fill="none" stroke="#999" stroke-width="3" d="M60 60H940V640H60ZM60 420H620M500 60V300"/>${squares}
		<path fill="none" stroke="${hexOf('red')}" stroke-width="3" d="M${at(CROSS)}m-50 0h100m-50-50v100"/></g></svg>`;
}

/** The sheet as it hangs on a wall, taken from the side; and where its corners are in the picture. */
async function photographed(sheet: string): Promise<{ png: Buffer; corners: [number, number][] }> {
	const viewport = { width: 1200, height: 900 };
	const context = await browser.newContext({ viewport, deviceScaleFactor: 2 });
	const page = await context.newPage();
	await page.setContent(`<style>body{margin:0;background:#777}
		main{position:absolute;left:100px;top:100px;width:1000px;height:700px;
		transform:perspective(2200px) rotateX(16deg) rotateY(-13deg) rotateZ(2deg)}
		i{position:absolute}</style><main>${sheet}
		<i style="left:0;top:0"></i><i style="right:0;top:0"></i>
		<i style="right:0;bottom:0"></i><i style="left:0;bottom:0"></i></main>`);
	const places = await page.locator('i').evaluateAll((corners) =>
		corners.map((corner) => {
			const { x, y } = corner.getBoundingClientRect();
			return [x / innerWidth, y / innerHeight] as [number, number];
		})
	);
	const png = await page.screenshot();
	await context.close();
	return { png, corners: places };
}

async function printed(sheet: string): Promise<Buffer> {
	const page = await browser.newPage();
	await page.setContent(
		`<style>@page{size:1000px 700px;margin:0}body{margin:0}svg{display:block}</style>${sheet}`
	);
	const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, pageRanges: '1' });
	await page.close();
	return pdf;
}

/** Taps a place that is given in shares of a picture on the screen. */
async function tapOn(page: Page, what: string, { x, y }: Pick<Seen, 'x' | 'y'>): Promise<void> {
	const box = await page.locator(what).boundingBox();
	if (!box) throw new Error(`${what} is not shown`);
	await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
}
const PLAN = '.plan-map img.leaflet-image-layer';

test('a pin on a printed cross-hair stays on it through turning, cutting, a straightened newer drawing, and print', async () => {
	const page = await onDemo();
	page.context().setDefaultTimeout(60_000);
	await goTo(page, 'Set up');
	const pdf = { name: 'hall.pdf', mimeType: 'application/pdf', buffer: await printed(hall(1, 0)) };
	await page.locator('#plans input[type=file]').setInputFiles(pdf);
	const dialog = page.getByRole('dialog');
	await dialog.getByRole('button', { name: 'Turn by 90°' }).click();
	for (const [corner, keys] of [
		['Top left', 'ArrowRight ArrowRight ArrowDown'],
		['Bottom right', 'ArrowUp ArrowUp ArrowUp ArrowLeft']
	] as const)
		for (const key of keys.split(' '))
			await dialog.getByRole('button', { name: `${corner} corner` }).press(key);
	await dialog.getByRole('button', { name: 'Take this plan' }).click();
	await dialog.waitFor({ state: 'detached' });
	await saved(page);

	await goTo(page, 'Walk');
	await page.getByLabel('Plan', { exact: true }).selectOption({ label: 'hall' });
	await page.getByAltText('Floor plan: hall').waitFor();
	const [cross] = await onShownPlan(page, ['red']);
	if (!cross) throw new Error('no cross-hair');
	await tapOn(page, PLAN, cross);
	await page.getByRole('button', { name: 'Pin leak 47, size it later' }).click();
	await page.locator('[data-tag="47"]').waitFor();
	await saved(page);

	await goTo(page, 'Set up');
	await page.getByRole('link', { name: /newer drawing of hall$/ }).click();
	await page.getByAltText('Floor plan: hall').waitFor();
	const older = await onShownPlan(page, LANDMARKS);
	const { png, corners } = await photographed(hall(0.8, 70));
	await page
		.locator('.panel input[type=file]')
		.setInputFiles({ name: 'wall.png', mimeType: 'image/png', buffer: png });
	await dialog.getByText('Straighten a photo').click();
	for (const [index, corner] of [
		'Top left',
		'Top right',
		'Bottom right',
		'Bottom left'
	].entries()) {
		await dialog.getByRole('button', { name: `${corner} corner` }).focus();
		const [x = 0, y = 0] = corners[index] ?? [];
		await tapOn(page, 'dialog .frame canvas', { x, y });
	}
	await picture(page, 'plan straightened');
	await dialog.getByRole('button', { name: 'Use this drawing' }).click();
	await dialog.waitFor({ state: 'detached' });
	for (const [index, colour] of LANDMARKS.entries()) {
		const from = older[index];
		if (!from) throw new Error(`no ${colour} mark`);
		await page.getByText(/a place on the older drawing/).waitFor();
		await tapOn(page, PLAN, from);
		await page.getByText('tap the same place on the newer drawing').waitFor();
		const [to] = await onShownPlan(page, [colour]);
		if (to) await tapOn(page, PLAN, to);
	}
	await page.getByRole('button', { name: 'Show where everything goes' }).click();
	await picture(page, 'plan newer drawing, where everything goes');
	await page.getByRole('button', { name: 'Use the newer drawing' }).click();
	await page.getByRole('heading', { name: 'Newer drawing' }).waitFor();
	await saved(page);

	await goTo(page, 'Mend');
	await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'Save the PDF' }).click();
	const bytes = new Uint8Array(await readFile(await (await downloading).path()));
	const { pages, sizes } = await readPdf(bytes);
	// The other plan with pins on it has all sections drawn.
	const isHall = (text: string) =>
		text.includes('The number is the tag on the joint.') && !text.includes('Press hall');
	const number = 1 + pages.findIndex(isHall);
	expect(number).toBeGreaterThan(0);
	const [hair, pin] = await onPaper(page.context(), bytes, number, ['red', 'black']);
	if (!hair || !pin) throw new Error('nothing was found on paper');
	// The hall's 1000 wide sheet shows the cross-hair 80 wide: what one width of the plan is on paper.
	const planWidth = hair.width / 0.08;
	// The target of the plan's own promise: half a hundredth of its width.
	const [wide = 0, high = 0] = sizes[number - 1] ?? [];
	const off = Math.hypot(pin.x - hair.x, (pin.y - hair.y) * (high / wide)) / planWidth;
	console.log(`pin off its cross-hair on paper: ${(100 * off).toFixed(2)} % of the plan's width`);
	expect(off).toBeLessThan(0.005);
	await page.context().close();
});
