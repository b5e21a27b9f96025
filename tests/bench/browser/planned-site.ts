import { readFile } from 'node:fs/promises';
import type { Command } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import { goTo, saved } from '../../story/browser.ts';
import { logOf, syntheticSurvey } from '../synthetic.ts';
import type { BenchBrowser } from './chromium.ts';
import { planPng, type BenchFiles } from './sites.ts';

export const BENCH_SITE = 'site-bench';

export interface PlannedSite {
	readonly commands: readonly Command[];
	readonly survey: Survey;
	readonly blobs: readonly StoredBlob[];
	/** From choosing the file to its preview, and from taking it to the word Saved. */
	readonly importMs: number;
	readonly block: string;
}

/** A site without leaks whose plan came in through Set up, as a person brings it. */
export async function plannedSite(
	browser: BenchBrowser,
	files: BenchFiles,
	widthPx: number,
	heightPx: number
): Promise<PlannedSite> {
	const empty = await files.site('empty', logOf(syntheticSurvey(0)));
	const drawing = files.put('hall.png', planPng(widthPx, heightPx));
	const bench = await browser.page();
	const { page } = bench;
	await bench.open(empty);
	await goTo(page, 'Set up');
	await saved(page);
	await bench.watch();
	let started = performance.now();
	await page.locator('#plans input[type=file]').setInputFiles(drawing);
	const dialog = page.getByRole('dialog');
	const take = dialog.getByRole('button', { name: 'Take this plan' });
	await dialog.getByRole('button', { name: 'Top left corner' }).waitFor();
	let importMs = performance.now() - started;
	started = performance.now();
	await take.click();
	await dialog.waitFor({ state: 'detached' });
	await saved(page);
	importMs += performance.now() - started;
	const block = await bench.longestBlock();
	const downloading = page.waitForEvent('download');
	await page.getByRole('button', { name: 'To file' }).click();
	const read = await readSurveyFile(
		new Uint8Array(await readFile(await (await downloading).path()))
	);
	if (!read.ok) throw new Error(read.error.code);
	await bench.close();
	const { commands, survey, blobs } = read.value;
	return { commands, survey, blobs, importMs, block };
}
