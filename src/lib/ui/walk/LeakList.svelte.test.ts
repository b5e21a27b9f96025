import { expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import LeakList from './LeakList.svelte';
import type { LeakRow } from './leak-row.ts';

const ROWS = Array.from({ length: 130 }, (_, index): LeakRow => ({
	id: `leak-${130 - index}`,
	tag: 130 - index,
	state: 'leaking',
	title: 'Hose',
	about: `Place ${130 - index}`,
	waste: '–',
	toSize: false,
	doubtful: false
}));

const tags = () => page.getByRole('button', { name: /^Leak \d/ });

test('draws the newest leaks of a long list, the rest when asked', async () => {
	await render(LeakList, { rows: ROWS, onopen: vi.fn() });
	await expect.poll(() => tags().elements().length).toBe(60);
	expect(tags().elements()[0]?.textContent).toContain('Place 130');
	await page.getByRole('button', { name: 'Show 60 more' }).click();
	await expect.poll(() => tags().elements().length).toBe(120);
	await page.getByRole('button', { name: 'Show 10 more' }).click();
	await expect.poll(() => tags().elements().length).toBe(130);
	await expect.element(page.getByRole('button', { name: /^Show/ })).not.toBeInTheDocument();
});

test('finds a leak that is not drawn yet', async () => {
	const onopen = vi.fn();
	await render(LeakList, { rows: ROWS, onopen });
	await page.getByRole('searchbox').fill(' PLACE 7 ');
	await expect.poll(() => tags().elements().length).toBe(11);
	await tags().last().click();
	expect(onopen).toHaveBeenCalledWith('leak-7');
});
