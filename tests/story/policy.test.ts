import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { freshProfile, launch, openDemo } from './browser.ts';

const appUrl = inject('appUrl');
let browser: Browser;
let stranger: Server;
let asked: string[];

beforeAll(async () => {
	browser = await launch();
	stranger = createServer((request, response) => {
		asked.push(request.url ?? '');
		response.setHeader('Access-Control-Allow-Origin', '*');
		response.end('x');
	});
	await new Promise<void>((listening) => stranger.listen(0, '127.0.0.1', listening));
});
afterAll(async () => {
	await browser.close();
	stranger.close();
});

/** What the page's policy stopped while something was tried. */
const stopped = (page: Page, attempt: string): Promise<string[]> =>
	page.evaluate(`(async () => {
		const broken = [];
		document.addEventListener('securitypolicyviolation', (event) => {
			broken.push(event.effectiveDirective);
		});
		${attempt}
		await new Promise((resolve) => setTimeout(resolve, 200));
		return broken;
	})()`);

test('the content policy stops what was smuggled in, and nothing calls home', async () => {
	asked = [];
	const context = await freshProfile(browser);
	const page = await context.newPage();
	await openDemo(page, appUrl);
	const home = `http://127.0.0.1:${(stranger.address() as AddressInfo).port}`;
	const attempts: Readonly<Record<string, string>> = {
		'script-src-elem': `const s = document.createElement('script'); s.textContent = 'window.hit = 1'; document.body.append(s);`,
		'script-src-attr': `const d = document.createElement('div'); document.body.append(d); d.setAttribute('onclick', 'window.hit = 2'); d.click();`,
		'img-src': `const i = new Image(); i.src = '${home}/img'; document.body.append(i);`,
		'connect-src': `await fetch('${home}/fetch').catch(() => undefined);`,
		'style-src-elem': `const s = document.createElement('style'); s.textContent = 'body { display: none }'; document.body.append(s);`,
		'object-src': `const o = document.createElement('object'); o.data = '${home}/object'; document.body.append(o);`,
		'base-uri': `const b = document.createElement('base'); b.href = '${home}/'; document.head.append(b);`,
		'form-action': `const f = document.createElement('form'); f.action = '${home}/form'; document.body.append(f); f.submit();`
	};
	for (const [directive, attempt] of Object.entries(attempts))
		expect(await stopped(page, attempt), attempt).toContain(directive);
	expect(await page.evaluate(() => (window as { hit?: number }).hit)).toBeUndefined();
	expect(asked).toEqual([]);
	await context.close();
});
