import type { CDPSession, Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { DESK, goTo, openDemo, PHONE, saved } from './browser.ts';
import { freshPages } from './fresh-pages.ts';

const appUrl = inject('appUrl');
const freshPage = freshPages();

async function onWalk(phone = false): Promise<Page> {
	const page = await freshPage(
		phone ? { viewport: PHONE, hasTouch: true, isMobile: true } : { viewport: DESK }
	);
	await openDemo(page, appUrl);
	await goTo(page, 'Walk');
	await page.locator('[data-tag="39"]').waitFor();
	return page;
}

async function openLeak(page: Page, tag: number): Promise<void> {
	await page
		.getByRole('button', { name: new RegExp(`^Leak ${tag}`) })
		.last()
		.click();
	await page.getByRole('heading', { name: `Leak ${tag}` }).waitFor();
}

/** Where the form says that the pin is. */
const placed = (page: Page, words: string) =>
	page.getByText(words, { exact: true }).waitFor({ state: 'attached' });

/** A place on the screen, from shares of the plan's picture. */
async function onPlan(page: Page, x: number, y: number): Promise<[number, number]> {
	const box = await page.locator('.plan-map img.leaflet-image-layer').boundingBox();
	if (!box) throw new Error('no plan is shown');
	return [box.x + x * box.width, box.y + y * box.height];
}

/** The tip of a pin on the screen. */
async function tipOf(page: Page, tag: number): Promise<[number, number]> {
	const box = await page.locator(`[data-tag="${tag}"]`).boundingBox();
	if (!box) throw new Error('the pin is not shown');
	return [box.x + box.width / 2, box.y + box.height];
}

describe('a pin that is to be moved', () => {
	test('goes where the plan is tapped, and no other pin answers meanwhile', async () => {
		const page = await onWalk();
		await openLeak(page, 39);
		await page.getByRole('button', { name: 'Move the pin' }).click();
		await page.mouse.click(...(await onPlan(page, 0.7, 0.92)));
		await placed(page, 'Ground floor: 70% from the left, 92% from the top');
		await page.getByRole('heading', { name: 'Leak 39' }).waitFor();
	});

	test('is dragged to its place, and one that was dragged off the plan goes back', async () => {
		const page = await onWalk();
		await openLeak(page, 39);
		await page.getByRole('button', { name: 'Move the pin' }).click();
		await drag(page, await tipOf(page, 39), await onPlan(page, 0.3, 0.95));
		await placed(page, 'Ground floor: 30% from the left, 95% from the top');
		await page.getByRole('button', { name: 'Move the pin' }).click();
		const [x, y] = await onPlan(page, 0.3, 0);
		await drag(page, await tipOf(page, 39), [x, y - 60]);
		await placed(page, 'Ground floor: 30% from the left, 95% from the top');
	});

	test('goes under the cross that the keys aim with', async () => {
		const page = await onWalk();
		await openLeak(page, 39);
		await page.getByRole('button', { name: 'Move the pin' }).press('Enter');
		const plan = page.getByRole('application', { name: /^Floor plan/ });
		await plan.focus();
		for (const key of ['ArrowLeft', 'ArrowDown']) {
			await plan.press(key);
			await page.waitForTimeout(400);
		}
		const map = await plan.boundingBox();
		if (!map) throw new Error('no plan is shown');
		await plan.press('Enter');
		await page.getByRole('button', { name: 'Move the pin' }).waitFor();
		const [x, y] = await tipOf(page, 39);
		expect(Math.abs(x - (map.x + map.width / 2))).toBeLessThan(2);
		expect(Math.abs(y - (map.y + map.height / 2))).toBeLessThan(2);
	});

	test('goes to another plan, and undo brings it back to the plan that it came from', async () => {
		const page = await onWalk(true);
		await openLeak(page, 39);
		const before = await page.getByText(/^Ground floor: .* from the top$/).textContent();
		await page.getByRole('button', { name: 'Move the pin' }).tap();
		await page.getByLabel('Put it on').selectOption({ label: 'Upper floor' });
		await page.getByAltText('Floor plan: Upper floor').waitFor();
		await page.touchscreen.tap(...(await onPlan(page, 0.4, 0.5)));
		await placed(page, 'Upper floor: 40% from the left, 50% from the top');
		await page.locator('[data-tag="39"]').waitFor();
		await saved(page);
		await page.getByRole('button', { name: /^Undo/ }).tap();
		await placed(page, before ?? '');
		await page.getByAltText('Floor plan: Ground floor').waitFor();
		await page.getByRole('button', { name: /^Redo/ }).tap();
		await placed(page, 'Upper floor: 40% from the left, 50% from the top');
		// Back in the list, the plan that was looked at stays.
		await page.getByRole('button', { name: 'All leaks' }).tap();
		await page.getByAltText('Floor plan: Upper floor').waitFor();
	});
});

describe('a pin that nobody chose to move', () => {
	test('stays where it is under fingers that shake by 1 to 14 px', async () => {
		const page = await onWalk(true);
		const session = await page.context().newCDPSession(page);
		const said = async () => (await page.locator('.pin').evaluateAll(namesAndPlaces)).sort();
		const before = await said();
		for (let jitter = 1; jitter <= 14; jitter++) {
			const [x, y] = await tipOf(page, 39);
			await shakingTouch(session, x, y - 8, jitter);
			await page.waitForTimeout(350);
			// A tap that was still enough opens the leak: back to the list, nothing else happened.
			const back = page.getByRole('button', { name: 'All leaks' });
			if (await back.isVisible()) await back.tap();
		}
		expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
		await page.reload();
		await page.locator('[data-tag="39"]').waitFor();
		expect(await said()).toEqual(before);
	});

	test('does not follow a mouse that drags it', async () => {
		const page = await onWalk();
		const [x, y] = await tipOf(page, 39);
		await drag(page, [x, y], [x + 120, y + 60]);
		expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
	});
});

async function drag(
	page: Page,
	[fromX, fromY]: readonly [number, number],
	[toX, toY]: readonly [number, number]
): Promise<void> {
	// By the middle of its head, so that its tip ends as far from the pointer as it began.
	const GRIP = 20;
	await page.mouse.move(fromX, fromY - GRIP);
	await page.mouse.down();
	await page.mouse.move((fromX + toX) / 2, (fromY + toY) / 2 - GRIP, { steps: 5 });
	await page.mouse.move(toX, toY - GRIP, { steps: 5 });
	await page.mouse.up();
}

async function shakingTouch(session: CDPSession, x: number, y: number, jitter: number) {
	const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', dx = 0, dy = 0) =>
		session.send('Input.dispatchTouchEvent', {
			type,
			touchPoints: type === 'touchEnd' ? [] : [{ x: x + dx, y: y + dy }]
		});
	await touch('touchStart');
	await touch('touchMove', jitter, 0);
	await touch('touchMove', 0, jitter / 2);
	await touch('touchMove', jitter / 2, -jitter / 2);
	await touch('touchEnd');
}

/** Each pin with where its place on the plan is, in the plan's own pixels at the zoom that is shown. */
function namesAndPlaces(pins: (SVGElement | HTMLElement)[]): string[] {
	return pins.map((pin) => {
		const { transform } = (pin.parentElement as HTMLElement).style;
		return `${pin.dataset['tag'] ?? ''} ${transform}`;
	});
}
