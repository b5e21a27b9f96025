import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { createFormat } from '#lib/words/format.ts';
import RankedTable from './RankedTable.svelte';
import type { RankedRow } from './ranked-rows.ts';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
});

function row(tag: number, rank: number | undefined, cost: number, section: string): RankedRow {
	return {
		leakId: `leak-${tag}`,
		rank,
		tag,
		place: `Place ${tag}`,
		part: 'hose',
		sectionId: `section-${section.toLowerCase()}`,
		section,
		flow: 0.001,
		energy: 1000,
		cost,
		state: rank === undefined ? 'tight' : 'leaking'
	};
}

const ROWS = [row(5, 1, 90000, 'Hall'), row(2, 2, 50000, 'Yard'), row(9, undefined, 70000, 'Hall')];

async function show() {
	await page.viewport(1280, 800);
	const screen = await render(RankedTable, {
		rows: ROWS,
		format,
		leakHref: (leakId: string) => `#${leakId}`,
		methodHref: (rule: string) => `#${rule}`,
		workOut: (leakId: string) => ({
			id: 'cost-per-year' as const,
			value: 90000,
			unit: 'minor' as const,
			method: 'M2',
			inputs: [
				{
					id: 'energy-price' as const,
					value: 0.2,
					unit: 'currency/kWh' as const,
					origin: { kind: 'cited' as const, source: `the sheet of ${leakId}` },
					inputs: []
				}
			]
		})
	});
	const tags = () =>
		[...screen.container.querySelectorAll('tbody th a')].map((link) => link.getAttribute('href'));
	return { screen, tags };
}

test('begins with what leaks now, worst first, and adds up what is shown', async () => {
	const { screen, tags } = await show();
	expect(tags()).toEqual(['#leak-5', '#leak-2']);
	await expect.element(screen.getByRole('status')).toHaveTextContent('2 of 3 leaks, €1,400 a year');
});

test('a heading sorts, a second press turns it round, and says so to readers', async () => {
	const { screen, tags } = await show();
	const heading = screen.getByRole('columnheader', { name: 'Tag' });
	await heading.getByRole('button').click();
	expect(tags()).toEqual(['#leak-2', '#leak-5']);
	await expect.element(heading).toHaveAttribute('aria-sort', 'ascending');
	await heading.getByRole('button').click();
	expect(tags()).toEqual(['#leak-5', '#leak-2']);
	await expect.element(heading).toHaveAttribute('aria-sort', 'descending');
});

test('narrows by state and section', async () => {
	const { screen, tags } = await show();
	await screen.getByLabelText('State').selectOptions('');
	expect(tags()).toEqual(['#leak-5', '#leak-2', '#leak-9']);
	await screen.getByLabelText('Section').selectOptions('section-yard');
	expect(tags()).toEqual(['#leak-2']);
});

test('on a phone nothing is wider than the screen', async () => {
	const { screen } = await show();
	await page.viewport(360, 740);
	await expect.element(screen.getByText('Place 5')).toBeVisible();
	expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
});

test('a figure opens to its working, down to where an input came from', async () => {
	const { screen } = await show();
	await screen.getByRole('button', { name: '€900, show the working' }).click();
	const dialog = screen.getByRole('dialog', { name: 'How this was worked out' });
	await expect
		.element(dialog.getByRole('link', { name: 'rule M2' }))
		.toHaveAttribute('href', '#M2');
	await expect.element(dialog.getByText('source: the sheet of leak-5')).toBeVisible();
	await dialog.getByRole('button', { name: 'Close' }).click();
	await expect.element(dialog).not.toBeInTheDocument();
});
