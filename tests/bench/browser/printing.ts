import type { Command } from '#lib/core/survey/command.ts';
import type { Leak } from '#lib/core/survey/schema.ts';
import { sha256Hex } from '#lib/storage/file/sha256.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import { saved } from '../../story/browser.ts';
import { medianOf, type Row } from '../measure.ts';
import { BENCH_ROUND, logOf, syntheticSurvey } from '../synthetic.ts';
import { BenchBrowser, type BenchPage } from './chromium.ts';
import { BENCH_SITE, plannedSite } from './planned-site.ts';
import { BenchFiles, withPins } from './sites.ts';
import { paintedPhoto } from './walking.ts';

const JOBS = 500;
const LONG = 2000;
/** As large as the app keeps a photo. */
const PHOTO = { widthPx: 2000, heightPx: 1500 };
const PLAN = { widthPx: 2400, heightPx: 1600 };
/** Another paper makes the last print out of date, and the list is printed anew. */
const PAPERS = ['A4', 'Letter', 'A4'] as const;

/** The fix list as it is printed in the browser: with a photo of each leak and where it is, and without. */
export async function printing(): Promise<Row[]> {
	const browser = await BenchBrowser.start();
	const files = new BenchFiles();
	try {
		const drawn = await browser.page();
		await drawn.page.goto(drawn.url);
		const jpeg = await paintedPhoto(drawn.page, PHOTO.widthPx, PHOTO.heightPx);
		await drawn.close();
		const planned = await plannedSite(browser, files, PLAN.widthPx, PLAN.heightPx);
		const pinned = withPins(planned.commands, planned.survey, JOBS);
		const { commands, blobs } = await photographed(pinned, jpeg);
		const withPhotos = await files.site('photos', commands, [...planned.blobs, ...blobs]);
		const long = await files.site('long', logOf(syntheticSurvey(LONG)));
		const megabytes = Math.round((JOBS * jpeg.length) / 1e6);
		return [
			{
				what: `print ${JOBS} jobs, each with its photo (${megabytes} MB in all) and its place on the plan`,
				...(await printed(browser, withPhotos)),
				target: '≤ 20 s, ≤ 500 MB'
			},
			{
				what: `print ${LONG} jobs without photos`,
				...(await printed(browser, long)),
				target: '≤ 3 s'
			}
		];
	} finally {
		files.remove();
		await browser.end();
	}
}

/** Printed several times in a row on the same page: memory that is not given back would add up. */
async function printed(browser: BenchBrowser, path: string): Promise<Pick<Row, 'ms' | 'beside'>> {
	const opened = await browser.page();
	await opened.open(path);
	await saved(opened.page);
	// A process of its own: what opening the file took is not the print's.
	const bench = await browser.tabOf(opened);
	const { page } = bench;
	await opened.page.close();
	await page.goto(bench.address('mend', BENCH_SITE));
	await page.getByRole('heading', { level: 1, name: 'Mend' }).waitFor();
	await saved(page);
	await bench.watch();
	const runs = [];
	for (const paper of PAPERS) {
		await page.getByRole('radio', { name: paper, exact: true }).check();
		runs.push(await once(bench));
	}
	const block = await bench.longestBlock();
	await bench.close();
	const peaks = runs.map(({ peakMb }) => peakMb.toFixed(0)).join(', ');
	return {
		ms: medianOf(runs.map(({ ms }) => ms)),
		beside: `${block}; the page’s process at most ${peaks} MB in ${PAPERS.length} runs in a row`
	};
}

async function once(bench: BenchPage): Promise<{ ms: number; peakMb: number }> {
	const { page } = bench;
	let ms = NaN;
	const { peakMb } = await bench.memoryOf(async () => {
		const started = performance.now();
		await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
		await page.getByRole('button', { name: 'Save the PDF' }).waitFor();
		ms = performance.now() - started;
	});
	return { ms, peakMb };
}

/** Each leak with a photo of its own: the same picture with a comment of its own after its head. */
async function photographed(
	commands: readonly Command[],
	jpeg: Buffer
): Promise<{ commands: Command[]; blobs: StoredBlob[] }> {
	const blobs: StoredBlob[] = [];
	const out: Command[] = [];
	for (const command of commands) {
		const { body } = command;
		if (body.kind !== 'add-leak') {
			out.push(command);
			continue;
		}
		const comment = Buffer.from(`leak ${body.leak.tag}`);
		const marker = Buffer.from([0xff, 0xfe, 0, comment.length + 2]);
		const bytes = Buffer.concat([jpeg.subarray(0, 2), marker, comment, jpeg.subarray(2)]);
		const sha256 = await sha256Hex(bytes);
		blobs.push({ sha256, mediaType: 'image/jpeg', bytes });
		const photo = {
			id: `photo-${body.leak.tag}`,
			image: { sha256, mediaType: 'image/jpeg', ...PHOTO },
			roundId: BENCH_ROUND,
			of: 'leak' as const,
			takenAt: '2026-01-05T08:00:00Z'
		};
		const leak: Leak = { ...body.leak, photos: { [photo.id]: photo } };
		out.push({ ...command, body: { ...body, leak } });
	}
	return { commands: out, blobs };
}
