import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';
import { DESK, freshProfile, launch } from './browser.ts';

type Options = NonNullable<Parameters<typeof freshProfile>[1]>;

/**
 * One browser for the stories of a file, and for each story a page with nothing stored. Stories that ask
 * for the same kind of page get the same one, emptied: what its browser has compiled stays, which is half
 * of the work of opening the app. A page to which scripts or routes are added is better had from
 * `freshProfile`, as they stay too.
 */
export function freshPages(): (options?: Options) => Promise<Page> {
	const kept = new Map<string, Page>();
	let browser: Browser;
	beforeAll(async () => {
		browser = await launch();
	});
	afterAll(() => browser.close());
	return async (options = {}) => {
		const kind = JSON.stringify(options);
		const used = kept.get(kind);
		if (used && !used.isClosed()) return emptied(used, options);
		const page = await (await freshProfile(browser, options)).newPage();
		kept.set(kind, page);
		return page;
	};
}

async function emptied(page: Page, { viewport = DESK }: Options): Promise<Page> {
	const context = page.context();
	for (const other of context.pages()) if (other !== page) await other.close();
	const { origin } = new URL(inject('appUrl'));
	if (page.url().startsWith(origin)) await page.evaluate(() => sessionStorage.clear());
	await page.goto('about:blank');
	const session = await context.newCDPSession(page);
	await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
	await session.detach();
	await page.emulateMedia({ media: null });
	if (viewport) await page.setViewportSize(viewport);
	return page;
}
