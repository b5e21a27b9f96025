import type { Survey } from '#lib/core/survey/schema.ts';
import { sha256Hex } from '#lib/storage/file/sha256.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import { goTo, saved } from '../../story/browser.ts';
import type { Row } from '../measure.ts';
import { BENCH_ROUND, logOf, syntheticSurvey } from '../synthetic.ts';
import { BenchBrowser } from './chromium.ts';
import { BenchFiles } from './sites.ts';
import { paintedPhoto } from './walking.ts';

const JOBS = 500;
const LONG = 2000;
/** As large as the app keeps a photo. */
const PHOTO = { widthPx: 2000, heightPx: 1500 };

/** The fix list as it is printed in the browser, with a photo of each leak and without. */
export async function printing(): Promise<Row[]> {
	const browser = await BenchBrowser.start();
	const files = new BenchFiles();
	try {
		const drawn = await browser.page();
		await drawn.page.goto(drawn.url);
		const jpeg = await paintedPhoto(drawn.page, PHOTO.widthPx, PHOTO.heightPx);
		await drawn.close();
		const { survey, blobs } = await photographed(syntheticSurvey(JOBS), jpeg);
		const withPhotos = await files.site('photos', logOf(survey), blobs);
		const long = await files.site('long', logOf(syntheticSurvey(LONG)));
		const megabytes = Math.round((JOBS * jpeg.length) / 1e6);
		return [
			{
				what: `print ${JOBS} jobs with ${JOBS} photos (${megabytes} MB)`,
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

async function printed(browser: BenchBrowser, path: string): Promise<Pick<Row, 'ms' | 'beside'>> {
	const bench = await browser.page();
	const { page } = bench;
	await bench.open(path);
	await goTo(page, 'Mend');
	await saved(page);
	await bench.watch();
	let ms = NaN;
	const { peakMb, riseMb } = await bench.memoryOf(async () => {
		const started = performance.now();
		await page.getByRole('button', { name: 'Print the fix list (PDF)' }).click();
		await page.getByRole('button', { name: 'Save the PDF' }).waitFor();
		ms = performance.now() - started;
	});
	const block = await bench.longestBlock();
	await bench.close();
	const memory = `the page’s process ${peakMb.toFixed(0)} MB at most, ${riseMb.toFixed(0)} MB of it for the print`;
	return { ms, beside: `${block}; ${memory}` };
}

/** Each leak with a photo of its own: the same picture with a comment of its own after its head. */
async function photographed(
	survey: Survey,
	jpeg: Buffer
): Promise<{ survey: Survey; blobs: StoredBlob[] }> {
	const blobs: StoredBlob[] = [];
	const leaks: Survey['leaks'] = {};
	for (const leak of Object.values(survey.leaks)) {
		const comment = Buffer.from(`leak ${leak.tag}`);
		const marker = Buffer.from([0xff, 0xfe, 0, comment.length + 2]);
		const bytes = Buffer.concat([jpeg.subarray(0, 2), marker, comment, jpeg.subarray(2)]);
		const sha256 = await sha256Hex(bytes);
		blobs.push({ sha256, mediaType: 'image/jpeg', bytes });
		const photo = {
			id: `photo-${leak.tag}`,
			image: { sha256, mediaType: 'image/jpeg', ...PHOTO },
			roundId: BENCH_ROUND,
			of: 'leak' as const,
			takenAt: '2026-01-05T08:00:00Z'
		};
		leaks[leak.id] = { ...leak, photos: { [photo.id]: photo } };
	}
	return { survey: { ...survey, leaks }, blobs };
}
