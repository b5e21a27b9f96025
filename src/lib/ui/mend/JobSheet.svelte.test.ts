import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { depressuriseFirst } from '#lib/core/mend/cautions.ts';
import type { FixJob } from '#lib/core/mend/fix-list.ts';
import { createFormat } from '#lib/words/format.ts';
import { cautionInShort } from '#lib/words/in-short.ts';
import { aJob } from './a-job.ts';
import JobSheet from './JobSheet.svelte';
import { printing } from './printing.svelte.ts';
import type { Sought } from './sought.ts';

const format = createFormat({
	locale: 'en-GB',
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
});

function job(ticks: FixJob['ticks'], more: Partial<FixJob> = {}): FixJob {
	return { ...aJob(), ticks, ...more };
}

async function show(of: FixJob, opened = true, sought?: Sought) {
	const log = {
		step: vi.fn(),
		mended: vi.fn(),
		reSoaped: vi.fn(),
		couldNot: vi.fn(),
		minutes: vi.fn(),
		cost: vi.fn(),
		note: vi.fn()
	};
	const screen = await render(JobSheet, {
		job: of,
		savedMinorPerYear: undefined,
		logged: { median: 12.5, count: 2 },
		format,
		href: '#leak',
		log,
		sought
	});
	if (opened) screen.container.querySelector('summary')?.click();
	return { screen, log };
}

test('[C1] the row names every caution in short; opened, each stands whole before anything can be ticked', async () => {
	const { screen } = await show(job({}), false);
	const { cautions } = job({});
	expect(cautions.length).toBeGreaterThan(2);
	const row = screen.getByRole('article').element();
	for (const caution of cautions) expect(row.textContent).toContain(cautionInShort(caution));
	expect(screen.container.querySelector('input')).toBeNull();
	await screen.getByRole('heading').click();
	for (const { text } of cautions) await expect.element(screen.getByText(text)).toBeVisible();
	const last = screen.getByText(cautions.at(-1)?.text ?? '').element();
	const tick = screen.getByLabelText('Mended', { exact: true }).element();
	expect(last.compareDocumentPosition(tick)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
});

test('[C1] on paper a folded job is open, with every caution whole', async () => {
	const { screen } = await show(job({}), false);
	printing.set(true);
	for (const { text } of job({}).cautions) expect(screen.container.textContent).toContain(text);
	printing.set(false);
	expect(screen.container.textContent).not.toContain(job({}).cautions[0]?.text);
});

test('a job that somebody looks for opens itself', async () => {
	const { screen } = await show(job({}), false, { leakId: 'leak-7' });
	await expect.element(screen.getByLabelText('Mended', { exact: true })).toBeVisible();
});

test('mended can be ticked before the line is proved safe: the record is never held up', async () => {
	const { screen, log } = await show(job({}));
	await screen.getByLabelText('Mended', { exact: true }).click();
	expect(log.mended).toHaveBeenCalledExactlyOnceWith('leak-7', true);
});

test('what was not ticked is named beside the tick, with the caution', async () => {
	const { screen } = await show(job({ mendedAt: '2026-05-01T10:00:00Z', isolated: true }));
	const said = screen.getByText('Not ticked: vented, zero proved.').element().parentElement;
	expect(said?.textContent).toContain(depressuriseFirst().text);
	const safe = { isolated: true, vented: true, zeroProved: true };
	const { screen: other } = await show(job({ mendedAt: '2026-05-01T10:00:00Z', ...safe }));
	expect(other.container.textContent).not.toContain('Not ticked');
});

test('the soap is asked for once it is mended, and an answer can be taken back', async () => {
	const { screen, log } = await show(job({ mendedAt: '2026-05-01T10:00:00Z', reSoaped: 'tight' }));
	await expect.element(screen.getByLabelText('Tight')).toBeChecked();
	await screen.getByLabelText('Still leaking').click();
	await screen.getByLabelText('Not re-soaped yet').click();
	expect(log.reSoaped.mock.calls).toEqual([
		['leak-7', 'still-leaking'],
		['leak-7', undefined]
	]);
});

test('less than the smallest coin a day is said to be so', async () => {
	const { screen } = await show(
		job({}, { costMinorPerYear: 200, costOfWaitingMinorPerDay: 200 / 365 })
	);
	await expect.element(screen.getByText('under €0.01')).toBeVisible();
});

test('what it took is written down beside what such repairs took before', async () => {
	const { screen, log } = await show(job({ mendedAt: '2026-05-01T10:00:00Z' }));
	await screen.getByText('What it took').click();
	await expect.element(screen.getByText(/Here it took 12\.5 min, the middle of 2\./)).toBeVisible();
	await screen.getByRole('textbox', { name: /^Minutes/ }).fill('18');
	await screen.getByRole('textbox', { name: 'Part used' }).fill('Elbow');
	await screen.getByRole('textbox', { name: /^Minutes/ }).fill('-4');
	await screen.getByRole('textbox', { name: 'Part used' }).click();
	expect(log.minutes.mock.calls).toEqual([['leak-7', 18]]);
	expect(log.note).toHaveBeenCalledExactlyOnceWith('leak-7', 'Elbow');
});
