import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { DESK, freshProfile, goTo, launch, openDemo, PHONE } from './browser.ts';

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

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds wrong on the page as it is now, in a form that says where. */
async function violations(page: Page): Promise<string[]> {
	const { violations: found } = await new AxeBuilder({ page })
		.withTags(TAGS)
		.options({ rules: { 'target-size': { enabled: true } } })
		.analyze();
	return found.flatMap(({ id, nodes }) =>
		nodes.map(
			({ target, failureSummary }) => `${id}: ${target.join(' ')} – ${failureSummary ?? ''}`
		)
	);
}

/** Nothing on the page sticks out of it sideways. */
async function overflow(page: Page): Promise<number> {
	return page.evaluate(
		() => document.documentElement.scrollWidth - document.documentElement.clientWidth
	);
}

describe.each([
	['at a desk', DESK],
	['on a phone', PHONE]
])('%s', (_, viewport) => {
	async function page(): Promise<Page> {
		context = await freshProfile(browser, { viewport, reducedMotion: 'reduce' });
		return context.newPage();
	}

	async function clean(at: Page, state: string): Promise<void> {
		expect(await violations(at), state).toEqual([]);
		expect(await overflow(at), `${state}: sideways`).toBeLessThanOrEqual(0);
	}

	test('the list of sites, empty, with a new site being named, and after a refusal', async () => {
		const at = await page();
		await at.goto(appUrl);
		await at.getByRole('button', { name: 'Open the demo site' }).waitFor();
		await clean(at, 'empty list');
		await at.getByRole('button', { name: 'New site' }).click();
		await clean(at, 'new site');
		await at.getByRole('button', { name: 'Not now' }).click();
		await at
			.locator('input[type="file"]')
			.first()
			.setInputFiles({ name: 'x', mimeType: 'text/plain', buffer: Buffer.from('x') });
		await at.getByRole('alert').waitFor();
		await clean(at, 'refusal');
	});

	test('a new site with nothing in it, in every place', async () => {
		const at = await page();
		await at.goto(appUrl);
		await at.getByRole('button', { name: 'New site' }).click();
		await at.getByRole('textbox').first().fill('A workshop');
		await at.getByRole('combobox', { name: 'Currency' }).selectOption('EUR');
		await at.getByRole('button', { name: 'Start this site' }).click();
		await at.getByRole('navigation', { name: 'Places' }).waitFor();
		for (const place of ['Set up', 'Walk', 'Weigh', 'Mend'] as const) {
			await goTo(at, place);
			await clean(at, `empty ${place}`);
		}
	});

	test('the demo site in every place, a leak being pinned and one open', async () => {
		const at = await page();
		await openDemo(at, appUrl);
		for (const place of ['Walk', 'Weigh', 'Mend', 'Set up'] as const) {
			await goTo(at, place);
			await clean(at, place);
		}
		await goTo(at, 'Walk');
		await at.getByRole('button', { name: 'Add a leak without the plan' }).click();
		await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
		await clean(at, 'capture');
		await at.getByRole('combobox', { name: 'Sized by' }).selectOption('hole');
		await clean(at, 'capture by numbers');
		await at.getByRole('button', { name: 'Leave it' }).click();
		await at
			.getByRole('button', { name: /^Leak 45/ })
			.last()
			.click();
		await at.getByRole('button', { name: 'Move the pin' }).waitFor();
		await clean(at, 'a leak');
	});
});

test('by keys alone: a leak is added, sized, found again and deleted', async () => {
	context = await freshProfile(browser);
	const at = await context.newPage();
	await openDemo(at, appUrl);
	await goTo(at, 'Walk');
	const press = async (name: string, role: 'button' | 'radio' = 'button') => {
		await at.getByRole(role, { name }).first().focus();
		await at.keyboard.press(role === 'radio' ? 'Space' : 'Enter');
	};
	// The place under the cross in the middle of the plan.
	await at.getByRole('application').focus();
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
	await press('Foam that spits', 'radio');
	await press('Pin leak 47');
	await at.getByRole('heading', { name: '47 leaks' }).waitFor();
	await at
		.getByRole('button', { name: /^Leak 47/ })
		.last()
		.focus();
	await at.keyboard.press('Enter');
	await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
	await press('Delete leak 47');
	await at.getByRole('heading', { name: '46 leaks' }).waitFor();
	await at.keyboard.press('Control+z');
	await at.getByRole('heading', { name: 'Leak 47' }).waitFor();
});
