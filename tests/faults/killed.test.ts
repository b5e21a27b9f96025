import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { BrowserProcess } from './browser-process.ts';
import { tally, times } from './long.ts';

const appUrl = inject('appUrl');
const KILLS = times(5, 500);
const process = new BrowserProcess();
let page: Page;

beforeAll(async () => {
	page = await process.start();
});
afterAll(() => process.end());

/** What the note says after so many edits: whoever knows the number knows all of it. */
const noteOf = (edit: number): string => `edit ${edit} ${'·'.repeat(edit % 300)}`.trim();

async function note(siteId: string): Promise<Locator> {
	await page.goto(`${appUrl}set-up?site=${siteId}`, { waitUntil: 'commit' });
	const field = page.getByLabel('Note', { exact: true }).first();
	await field.waitFor();
	return field;
}

test(
	`the browser is killed ${KILLS} times while it writes, and keeps what it had called saved`,
	{ timeout: 60_000 + KILLS * 12_000 },
	async () => {
		await page.goto(appUrl);
		await page.getByRole('button', { name: 'New site' }).click();
		await page.getByRole('textbox').first().fill('Tonwerk Nord');
		await page.getByRole('combobox', { name: 'Currency' }).selectOption('EUR');
		await page.getByRole('button', { name: 'Start this site' }).click();
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
		const siteId = new URL(page.url()).searchParams.get('site') ?? '';
		let last = 0;
		let acknowledged = 0;
		let lost = 0;
		let garbage = 0;
		let struckUnsaved = 0;
		for (let kill = 0; kill < KILLS; kill++) {
			const field = await note(siteId);
			page.on('console', (message) => {
				const [, kind, edit] = /^(made|saved) (\d+)$/.exec(message.text()) ?? [];
				if (kind === 'made') last = Math.max(last, Number(edit));
				if (kind === 'saved') acknowledged = Math.max(acknowledged, Number(edit));
			});
			await field.evaluate(editForEver, last);
			await new Promise((resolve) => setTimeout(resolve, Math.random() * 800));
			await process.kill();
			if (acknowledged < last) struckUnsaved++;
			page = await process.start();
			const kept = await (await note(siteId)).inputValue();
			const edit = Number(/^edit (\d+)/.exec(kept)?.[1] ?? 0);
			if (edit < acknowledged) lost++;
			if (edit > 0 && kept !== noteOf(edit)) garbage++;
			// An edit whose message the kill took with it may have been kept.
			last = Math.max(last, edit);
			acknowledged = Math.max(acknowledged, edit);
		}
		tally('Browser killed while it writes', KILLS, lost + garbage);
		expect({ lost, garbage }).toEqual({ lost: 0, garbage: 0 });
		// The kills have to have come in the middle of something.
		expect(acknowledged).toBeGreaterThan(KILLS);
		if (KILLS > 50) expect(struckUnsaved).toBeGreaterThan(KILLS / 50);
	}
);

/** Runs in the page: edits at uneven moments, and says of each what the header says of it. */
function editForEver(field: HTMLElement | SVGElement, from: number): void {
	const box = field as HTMLTextAreaElement;
	const soon = (next: () => void): unknown => setTimeout(next, Math.random() ** 3 * 60);
	let edit = from;
	const act = (): void => {
		edit++;
		console.info(`made ${edit}`);
		box.value = `edit ${edit} ${'·'.repeat(edit % 300)}`.trim();
		box.dispatchEvent(new Event('change', { bubbles: true }));
		soon(look);
	};
	const look = (): void => {
		const says = document.querySelector('header [role="status"]')?.textContent.trim();
		if (says === 'Saved') console.info(`saved ${edit}`);
		soon(act);
	};
	act();
}
