import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { civilText, daysFromCivil } from '#lib/core/logger/time-stamps.ts';
import { METRO_NIGHT, record } from '../logger/rebuild.ts';
import { goTo, openDemo, picture, PHONE, saved } from './browser.ts';
import { freshPages } from './fresh-pages.ts';

const appUrl = inject('appUrl');
/** The draws take their time on a busy machine. */
const PATIENT = { timeout: 40_000 };
const folder = mkdtempSync(join(tmpdir(), 'airtally-logger-'));
const freshPage = freshPages();

/** The MetroPT-3 night (CC BY 4.0, verified) on a night after the demo's walk. */
const night = record({
	cycles: METRO_NIGHT,
	start: daysFromCivil(2026, 5, 1) * 86_400,
	stepS: 10,
	jitterS: 1.5,
	noise: 0.004,
	lost: 0.02,
	seed: 5
});
const rows = (write: (seconds: number, bar: number) => string, head: string) =>
	`${head}\n${[...night.times].map((time, at) => write(time, night.values[at] ?? 0)).join('\n')}\n`;
const iso = (seconds: number) => civilText(seconds);
const dotted = (seconds: number) => iso(seconds).slice(0, 10).split('-').reverse().join('.');
/** As a clock on the wall is read here: day first, with slashes. */
const slashed = (seconds: number) => {
	const [year = '', month = '', day = ''] = iso(seconds).slice(0, 10).split('-');
	return `${day}/${month}/${year} ${iso(seconds).slice(11, 19)}`;
};
const comma = (bar: number) => bar.toFixed(3).replace('.', ',');

const DIALECTS: readonly (readonly [string, string])[] = [
	[
		'iso.csv',
		rows((t, p) => `${iso(t)},12,${p.toFixed(3)}`, 'timestamp,Oil_temperature,Reservoirs bar')
	],
	[
		'semicolon.csv',
		rows((t, p) => `${dotted(t)} ${iso(t).slice(11)};${comma(p)}`, 'Logger 7\nZeit;Druck [bar]')
	],
	['comma-local.csv', rows((t, p) => `${slashed(t)},${p.toFixed(3)}`, 'Local time,bar')],
	['semicolon-dot.csv', rows((t, p) => `${iso(t)};${p.toFixed(3)}`, '').trimStart()],
	['tab-comma.txt', rows((t, p) => `${iso(t)}Z\t${comma(p)}`, 'time\tpressure (bar)')],
	['tab.txt', rows((t, p) => `${t.toFixed(0)}\t${p.toFixed(3)}`, '').trimStart()]
];

function put(name: string, content: string | Uint8Array): string {
	const path = join(folder, name);
	writeFileSync(path, content);
	return path;
}

async function checkOf(options: Parameters<typeof freshPage>[0] = {}): Promise<[Page, Locator]> {
	const page = await freshPage(options);
	await openDemo(page, appUrl);
	await goTo(page, 'Weigh');
	const check = page.getByRole('region', { name: 'System check' });
	await check.waitFor();
	return [page, check];
}

async function chooseFile(check: Locator, path: string): Promise<void> {
	const button = check.getByRole('button', { name: 'A logger’s file' });
	if (await button.isVisible()) await button.click();
	await check.locator('input[type=file]').setInputFiles(path);
}

describe('a recording of the pressure', () => {
	let page: Page;
	let check: Locator;
	beforeAll(async () => {
		[page, check] = await checkOf();
	});

	// Each takes back what it took, so that the next finds the page as it was.
	test.each(DIALECTS)('takes a system test from %s', async (name, text) => {
		await chooseFile(check, put(name, text));
		await check.getByRole('button', { name: 'Find the cycles' }).click();
		await check.getByRole('heading', { name: '4 whole cycles' }).waitFor();
		expect(await check.getByText(/^5% ± 0\.\d% of the time$/).count()).toBe(1);
		await picture(page, `logger ${name}`);
		await check.getByRole('button', { name: 'Take this as a system test' }).click();
		await check.getByText('Say what the machine delivers').waitFor();
		await check.getByLabel('The machine delivers').fill('2000');
		await check.getByRole('button', { name: 'Take this as a system test' }).click();
		await check.getByRole('heading', { name }).waitFor();
		await check.getByText('Loaded 5% of the time over 4 cycles.').waitFor();
		await saved(page);
		await page.getByRole('button', { name: 'Undo' }).click();
		await check.getByRole('heading', { name }).waitFor({ state: 'detached' });
	});
});

describe('the system check', () => {
	test('says in one sentence how much was found, scales when told and takes it back', async () => {
		const [page, check] = await checkOf({ viewport: PHONE });
		await check.getByText(/about \d+% of what the system loses|about \d+%, but anything/).waitFor();
		await check.getByRole('rowheader', { name: 'Not located' }).waitFor();
		await picture(page, 'system check on a phone');
		const before = await check.getByRole('row', { name: /Found on the walk/ }).textContent();
		await check.getByRole('button', { name: 'Scale the estimates' }).click();
		await check.getByText('The estimates are scaled by').waitFor();
		await expect
			.poll(() => check.getByRole('row', { name: /Found on the walk/ }).textContent(), PATIENT)
			.not.toBe(before);
		await saved(page);
		await page.reload();
		await check.getByRole('button', { name: 'Take the scaling off' }).click();
		await expect
			.poll(() => check.getByRole('row', { name: /Found on the walk/ }).textContent(), PATIENT)
			.toBe(before);
	});

	test('stops reading a large file when told, the page free all the while', async () => {
		const [page, check] = await checkOf();
		const body = rows((t, p) => `${iso(t)},${p.toFixed(3)}`, '').trimStart();
		const days = Array.from({ length: 2500 }, (_, day) =>
			body.replaceAll(/^\d{4}-\d\d-\d\d/gm, civilText(day * 2 * 86_400).slice(0, 10))
		);
		const path = put('large.csv', `time,bar\n${days.join('')}`);
		await chooseFile(check, path);
		await check.getByRole('button', { name: 'Find the cycles' }).click();
		await check.getByText(/^Reading large\.csv: [1-9][\d,]* rows/).waitFor();
		const answered = await page.evaluate(
			() => new Promise<number>((resolve) => requestAnimationFrame(() => resolve(1)))
		);
		expect(answered).toBe(1);
		await check.getByRole('button', { name: 'Stop reading' }).click();
		await check.getByRole('button', { name: 'Find the cycles' }).waitFor();
		expect(await check.getByRole('progressbar').count()).toBe(0);
	});

	test('refuses what is no recording by line and reason, and goes on with the next file', async () => {
		const [, check] = await checkOf();
		const alert = check.getByRole('alert');
		await chooseFile(check, put('photo.csv', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 7])));
		await alert.filter({ hasText: 'photo.csv: This is not a text file: see line 1.' }).waitFor();
		await chooseFile(check, put('giant.csv', Buffer.alloc(50_000_000, 'x')));
		await alert.filter({ hasText: 'Line 1 is far too long' }).waitFor();
		// What is a zip inside is no recording, whatever it is called.
		const zip = readFileSync('survey-examples/ceramics-works.airtally.zip');
		await chooseFile(check, put('packed.csv', zip));
		await alert.filter({ hasText: 'packed.csv: This is not a text file: see line 1.' }).waitFor();
		await chooseFile(check, put('empty.csv', ''));
		await alert.filter({ hasText: 'There is nothing in this file' }).waitFor();
		const broken = `${DIALECTS[0]?.[1] ?? ''}${'<html>\n'.repeat(2000)}`;
		await chooseFile(check, put('broken.csv', broken));
		await check.getByRole('button', { name: 'Find the cycles' }).click();
		await alert.filter({ hasText: /The time on line \d+ cannot be read: “<html>”/ }).waitFor();
		await chooseFile(check, put('good.csv', DIALECTS[0]?.[1] ?? ''));
		await check.getByRole('button', { name: 'Find the cycles' }).click();
		await check.getByRole('heading', { name: '4 whole cycles' }).waitFor();
	});

	test('takes a bleed-down by hand, with the handbook’s figure beside it', async () => {
		const [, check] = await checkOf();
		await check.getByRole('button', { name: 'Bleed-down' }).click();
		await check.getByRole('button', { name: 'Add this test' }).click();
		await check.getByText('The volume of receivers and pipes is missing.').waitFor();
		await check.getByLabel('Volume, L').fill('9000');
		const second = check.getByRole('group', { name: 'Reading 2' });
		await check.getByRole('group', { name: 'Reading 1' }).getByLabel('Gauge').fill('7');
		await second.getByLabel('After').fill('300');
		await second.getByLabel('Gauge').fill('3.5');
		await check.getByRole('button', { name: 'Add this test' }).click();
		await check.getByText(/By the handbook .* with its factor of 1\.25; for this fall/).waitFor();
	});
});
