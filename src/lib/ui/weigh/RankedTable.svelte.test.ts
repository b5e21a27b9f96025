import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { createFormat } from '#lib/words/format.ts';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Leak, Survey } from '#lib/core/survey/schema.ts';
import type { BulkChange } from './bulk-edit.ts';
import RankedTable from './RankedTable.svelte';
import type { RankedRow } from './ranked-rows.ts';
import { STARTING_VIEW, type TableView } from './table-view.ts';

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
		state: rank === undefined ? 'tight' : 'leaking',
		first: tag === 4,
		spread: { low: cost / 2, median: cost, high: cost * 2, mean: cost * 1.1 },
		places: rank === undefined ? undefined : { low: rank, high: rank + 1 },
		chance: rank === undefined ? undefined : 0.5,
		payback: rank === undefined ? undefined : 1 / rank,
		paybackRange: rank === undefined ? undefined : { low: 0.5 / rank, high: 2 / rank },
		perMinute: rank === undefined ? undefined : rank * 100,
		perMinuteRange: rank === undefined ? undefined : { low: rank * 50, high: rank * 200 }
	};
}

const ROWS = [row(5, 1, 90000, 'Hall'), row(2, 2, 50000, 'Yard'), row(9, undefined, 70000, 'Hall')];

const SURVEY: Survey = {
	...newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' }
	),
	leaks: Object.fromEntries(
		[5, 2, 9].map((tag) => [
			`leak-${tag}`,
			{
				id: `leak-${tag}`,
				tag,
				part: tag === 5 ? 'valve' : 'hose',
				hazards: tag === 5 ? ['at-height'] : [],
				sightings: {},
				mendings: {}
			} satisfies Leak
		])
	)
};

async function show(
	rows: readonly RankedRow[] = ROWS,
	onchange: (leakIds: readonly string[], change: BulkChange) => void = () => undefined
) {
	await page.viewport(1280, 800);
	const screen = await render(RankedTable, {
		rows,
		survey: SURVEY,
		roundId: 'round-1',
		view: STARTING_VIEW,
		onview: (view: TableView) => void screen.rerender({ view }),
		topN: 10,
		ontop: () => undefined,
		onchange,
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

test('narrows by several states and sections at once, and all is cleared at once', async () => {
	const { screen, tags } = await show();
	await screen.getByText('Leaking', { exact: true }).first().click();
	await screen.getByRole('checkbox', { name: /^Tight/ }).click();
	await expect.poll(tags).toEqual(['#leak-5', '#leak-2', '#leak-9']);
	await screen.getByText('All sections').click();
	await screen.getByRole('checkbox', { name: /^Yard/ }).click();
	await expect.poll(tags).toEqual(['#leak-2']);
	await screen.getByRole('checkbox', { name: /^Hall/ }).click();
	await expect.poll(tags).toEqual(['#leak-5', '#leak-2', '#leak-9']);
	await screen.getByRole('button', { name: 'Clear all' }).click();
	await expect.element(screen.getByRole('group', { name: 'Narrowed to' })).not.toBeInTheDocument();
	await expect.poll(tags).toEqual(['#leak-5', '#leak-2', '#leak-9']);
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

test('[P4] what to mend first can be asked by payback and by the minute; what is unsafe stays first', async () => {
	const unsafe = { ...row(4, 3, 100, 'Yard'), first: true };
	const { screen, tags } = await show([...ROWS, unsafe]);
	expect(tags()).toEqual(['#leak-4', '#leak-5', '#leak-2']);
	await expect.element(screen.getByText('First: not safe to wait')).toBeVisible();
	await screen.getByLabelText('Order by').selectOptions('perMinute');
	expect(tags()).toEqual(['#leak-4', '#leak-2', '#leak-5']);
	await screen.getByLabelText('Order by').selectOptions('cost');
	expect(tags()).toEqual(['#leak-5', '#leak-2', '#leak-4']);
});

test('[W9] places and intervals stand beside what a leak costs, in words too', async () => {
	const { screen } = await show();
	await expect.element(screen.getByText('€500–€2,000')).not.toBeInTheDocument();
	await expect.element(screen.getByText('€300–€1,000')).toBeVisible();
	await expect
		.element(screen.getByRole('img', { name: 'With 90 % probability €300 to €1,000' }))
		.toBeVisible();
	await screen.getByLabelText('Order by').selectOptions('chance');
	await expect.element(screen.getByRole('columnheader', { name: 'Among first 10' })).toBeVisible();
	await expect.element(screen.getByLabelText('How many come first')).toHaveValue('10');
});

test('several leaks are changed together; what differs is shown as mixed', async () => {
	const asked: [readonly string[], BulkChange][] = [];
	const { screen } = await show(ROWS, (leakIds, change) => asked.push([leakIds, change]));
	await screen.getByRole('button', { name: 'Change several' }).click();
	await screen.getByRole('button', { name: 'Choose all 2' }).click();
	await expect.element(screen.getByRole('group', { name: 'Applies to 2 leaks' })).toBeVisible();
	await expect.element(screen.getByLabelText('Part of all')).toHaveValue('mixed');
	const height = screen.getByRole('checkbox', { name: 'At height (mixed)' });
	await expect.element(height).toBePartiallyChecked();
	await screen.getByLabelText('Part of all').selectOptions('hose');
	await screen.getByRole('checkbox', { name: 'Choose leak 2' }).click();
	await expect.element(screen.getByRole('group', { name: 'Applies to 1 leak' })).toBeVisible();
	await screen.getByRole('checkbox', { name: 'At height' }).click();
	expect(asked).toEqual([
		[['leak-5', 'leak-2'], { of: 'part', part: 'hose' }],
		[['leak-5'], { of: 'hazard', hazard: 'at-height', there: false }]
	]);
});
