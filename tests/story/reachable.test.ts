import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { readPdf } from '../report/read-pdf.ts';
import {
	freshProfile,
	goTo,
	largeLetters,
	launch,
	openDemo,
	overflow,
	picture,
	saved
} from './browser.ts';
import { badTargets, clipped, tabTo } from './targets.ts';

const appUrl = inject('appUrl');
let browser: Browser;
let context: BrowserContext | undefined;

beforeAll(async () => {
	browser = await launch();
});
afterEach(async () => {
	await context?.close();
	context = undefined;
});
afterAll(() => browser.close());

describe('on a small phone and on a tablet, held upright', () => {
	test.each([
		['phone', { width: 360, height: 640 }],
		['tablet', { width: 768, height: 1024 }]
	])('every target of the walk is 48 px with 8 px between: %s', async (_, viewport) => {
		context = await freshProfile(browser, { viewport, hasTouch: true, isMobile: true });
		const at = await context.newPage();
		await openDemo(at, appUrl);
		await goTo(at, 'Walk');
		const fits = async (state: string) => {
			expect.soft(await badTargets(at), state).toEqual([]);
			// Letters of twice the size: nothing is cut off, nothing sticks out.
			await largeLetters(at, async () => {
				expect.soft(await clipped(at), `${state}, letters of twice the size`).toEqual([]);
				expect.soft(await overflow(at), `${state}: sideways`).toBeLessThanOrEqual(0);
				await picture(at, `large letters, ${state} ${viewport.width}`);
			});
		};
		await fits('Walk');
		await at.getByRole('button', { name: 'Add a leak without the plan' }).tap();
		await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
		await fits('capture');
		// The one clear action is larger still, and where the thumb is.
		const main = await at.getByRole('button', { name: /^Pin leak/ }).boundingBox();
		expect(main?.height).toBeGreaterThanOrEqual(55.9);
		expect((main?.y ?? 0) + (main?.height ?? 0)).toBeGreaterThan(viewport.height * 0.8);
		await at.getByRole('button', { name: 'Leave it' }).tap();
		await at
			.getByRole('button', { name: /^Leak 45/ })
			.last()
			.tap();
		await at.getByRole('button', { name: 'Move the pin' }).waitFor();
		await fits('a leak');
		await at.getByRole('button', { name: 'All leaks' }).tap();
		await at.getByRole('link', { name: 'Compressor room' }).tap();
		await at.getByRole('heading', { level: 1, name: 'Compressor room' }).waitFor();
		await fits('compressor room');
	});
});

test('by keys alone, from the first page to the print: a leak is made, edited, moved, found, ranked and printed', async () => {
	context = await freshProfile(browser);
	const at = await context.newPage();
	await at.goto(appUrl);
	await at.getByRole('button', { name: 'Open the demo site' }).waitFor();
	await tabTo(at, 'Open the demo site', 'button');
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { level: 2, name: '46 leaks' }).waitFor();

	// The place under the cross in the middle of the plan.
	await tabTo(at, /./, 'application');
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
	await tabTo(at, 'A bubble now and then', 'radio');
	for (let down = 0; down < 4; down++) await at.keyboard.press('ArrowDown');
	await at.getByText(/of free air, €/).waitFor();
	await tabTo(at, 'Pin leak 47', 'button');
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { name: '47 leaks' }).waitFor();

	await tabTo(at, /^Leak 47/, 'button');
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
	await tabTo(at, 'Part', 'combobox');
	await at.keyboard.type('Flange');
	await tabTo(at, 'Place', 'textbox');
	await at.keyboard.type('By the north door');
	// Where it is: by figures, and by the arrows on the plan.
	const onPlan = at.locator('.placed');
	const before = await onPlan.textContent();
	await tabTo(at, 'Move the pin', 'button');
	await at.keyboard.press('Enter');
	await tabTo(at, /./, 'application');
	const left = async () =>
		Number(/(\d+)% from the left/.exec((await onPlan.textContent()) ?? '')?.[1]);
	for (let step = 0; step < 3; step++) await at.keyboard.press('ArrowRight');
	await at.keyboard.press('Enter');
	await expect.poll(() => onPlan.textContent()).not.toBe(before);
	const three = await left();
	// Keys that come quickly one after the other each count.
	await tabTo(at, 'Move the pin', 'button');
	await at.keyboard.press('Enter');
	await tabTo(at, /./, 'application');
	for (let step = 0; step < 2; step++) await at.keyboard.press('ArrowLeft');
	await at.keyboard.press('Enter');
	await expect.poll(left).toBeLessThan(three);
	await tabTo(at, 'All leaks', 'button');
	await at.keyboard.press('Enter');
	await at
		.getByRole('button', { name: /^Leak 47.*Flange.*By the north door/ })
		.first()
		.waitFor();

	await tabTo(at, /^Leak 47/, 'button');
	await at.keyboard.press('Enter');
	await tabTo(at, 'Delete leak 47', 'button');
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { name: '46 leaks' }).waitFor();
	await at.keyboard.press('Control+z');
	await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
	await saved(at);

	await tabTo(at, 'Weigh', 'link');
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { level: 1, name: 'Weigh' }).waitFor({ state: 'attached' });
	await at.getByText('By the north door').first().waitFor();
	await tabTo(at, 'Mend', 'link');
	await at.keyboard.press('Enter');
	await tabTo(at, 'Print the fix list (PDF)', 'button');
	await at.keyboard.press('Enter');
	await at.getByRole('button', { name: 'Save the PDF' }).waitFor({ timeout: 60_000 });
	await tabTo(at, 'Save the PDF', 'button');
	const downloading = at.waitForEvent('download');
	await at.keyboard.press('Enter');
	const { pages } = await readPdf(new Uint8Array(await readFile(await (await downloading).path())));
	expect(pages.join('\n')).toContain('By the north door');
});
