import type { Page } from 'playwright-core';
import { goTo, PHONE, saved } from '../../story/browser.ts';
import { medianOf, type Row } from '../measure.ts';
import { logOf, syntheticSurvey } from '../synthetic.ts';
import { BenchBrowser } from './chromium.ts';
import { plannedSite, BENCH_SITE } from './planned-site.ts';
import { BenchFiles, withPins } from './sites.ts';

const SLOW = 4;
const PINS = 1000;
const LEAKS = 2000;
const TAPS = 6;
const STARTS = 5;
const PHOTOS = 5;

/** What a person on the walk waits for: taps, the start of a large site, a photo. */
export async function walking(): Promise<Row[]> {
	const browser = await BenchBrowser.start();
	const files = new BenchFiles();
	try {
		return [
			...(await tapping(browser, files)),
			await starting(browser, files),
			await photographing(browser, files)
		];
	} finally {
		files.remove();
		await browser.end();
	}
}

async function tapping(browser: BenchBrowser, files: BenchFiles): Promise<Row[]> {
	const { commands, survey, blobs } = await plannedSite(browser, files, 2400, 1600);
	const bench = await browser.page(PHONE);
	const { page } = bench;
	await bench.open(await files.site('pinned', withPins(commands, survey, PINS), blobs));
	await goTo(page, 'Walk');
	await page.getByLabel('Pins now, sizes later').check();
	const plan = await page.getByAltText(/^Floor plan/).boundingBox();
	if (!plan) throw new Error('the plan is not on the screen');
	await saved(page);
	let tap = 0;
	const taps = async (times: number): Promise<{ drawn: number; kept: number }> => {
		const drawn: number[] = [];
		const kept: number[] = [];
		for (let count = 0; count < times; count++) {
			const heading = `${(PINS + ++tap).toLocaleString('en-GB')} leaks`;
			const timing = page.evaluate(timeATap, heading);
			await page.waitForTimeout(300);
			// Below the rows of pins, left of the buttons and apart from each other: nothing is hit.
			const x = plan.x + (tap * plan.width) / (2 * TAPS + 5);
			await page.mouse.click(x, plan.y + 0.99 * plan.height);
			const { drawnMs, savedMs } = await timing;
			drawn.push(drawnMs);
			kept.push(savedMs);
		}
		return { drawn: medianOf(drawn), kept: medianOf(kept) };
	};
	// The first is not counted: the page has never done it before.
	await taps(1);
	const fast = await taps(TAPS);
	await bench.slow(SLOW);
	const slow = await taps(TAPS);
	const bare = medianOf(await page.evaluate(writeBare, 7));
	await bench.close();
	return [
		{
			what: `tap to pin drawn, ${PINS} pins`,
			ms: slow.drawn,
			beside: notSlowed(fast.drawn),
			target: '≤ 100 ms'
		},
		{
			what: `tap to saved, ${PINS} pins`,
			ms: slow.kept,
			beside: notSlowed(fast.kept),
			against: { what: 'a bare strict write of one small record', ms: bare },
			target: '≤ 150 ms'
		}
	];
}

function notSlowed(ms: number): string {
	return `${ms.toFixed(0)} ms not slowed`;
}

/** Runs in the page: one record after the other into a database of its own, each waited for on disk. */
async function writeBare(times: number): Promise<number[]> {
	const name = 'bench-bare';
	const database = await new Promise<IDBDatabase>((resolve, reject) => {
		const request = indexedDB.open(name, 1);
		request.onupgradeneeded = () => request.result.createObjectStore('records');
		request.onsuccess = () => resolve(request.result);
		request.onerror = () => reject(new Error('the database does not open'));
	});
	const taken: number[] = [];
	for (let index = 0; index < times; index++) {
		const started = performance.now();
		await new Promise((resolve) => {
			const transaction = database.transaction('records', 'readwrite', { durability: 'strict' });
			transaction.objectStore('records').put({ index }, index);
			transaction.oncomplete = resolve;
		});
		taken.push(performance.now() - started);
	}
	database.close();
	indexedDB.deleteDatabase(name);
	return taken;
}

/** Runs in the page: from a finger's touch to the frame after the heading counts the leak, and to Saved. */
function timeATap(heading: string): Promise<{ drawnMs: number; savedMs: number }> {
	return new Promise((resolve, reject) => {
		setTimeout(() => reject(new Error('the tap pinned no leak')), 120_000);
		let touched = NaN;
		let drawnMs: number | undefined;
		let savedMs: number | undefined;
		let counted = false;
		const look = (): void => {
			counted ||= [...document.querySelectorAll('h2')].some((h2) => h2.textContent === heading);
			if (!counted || Number.isNaN(touched)) return;
			if (drawnMs === undefined) {
				drawnMs = -1;
				requestAnimationFrame(() =>
					setTimeout(() => {
						drawnMs = performance.now() - touched;
						done();
					})
				);
			}
			const says = document.querySelector('header [role="status"]')?.textContent.trim();
			if (savedMs === undefined && says === 'Saved') {
				savedMs = performance.now() - touched;
				done();
			}
		};
		const done = (): void => {
			if (drawnMs === undefined || drawnMs < 0 || savedMs === undefined) return;
			observer.disconnect();
			resolve({ drawnMs, savedMs });
		};
		const observer = new MutationObserver(look);
		observer.observe(document, { subtree: true, childList: true, characterData: true });
		addEventListener('pointerdown', (event) => (touched = event.timeStamp), {
			capture: true,
			once: true
		});
	});
}

async function starting(browser: BenchBrowser, files: BenchFiles): Promise<Row> {
	const large = await starts(browser, files, LEAKS);
	const small = await starts(browser, files, 2);
	return {
		what: `start with a site of ${LEAKS} leaks, to its list on the screen`,
		ms: large.slow,
		beside: notSlowed(large.fast),
		against: { what: 'the start with a site of 2 leaks', ms: small.slow },
		target: '≤ 2 s'
	};
}

async function starts(
	browser: BenchBrowser,
	files: BenchFiles,
	leaks: number
): Promise<{ fast: number; slow: number }> {
	const bench = await browser.page(PHONE);
	const { page } = bench;
	await bench.open(await files.site(`start ${leaks}`, logOf(syntheticSurvey(leaks))));
	await goTo(page, 'Walk');
	await saved(page);
	const runs = async (): Promise<number> => {
		const times: number[] = [];
		// The first is not counted: the program's code is not kept as compiled yet.
		for (let run = 0; run <= STARTS; run++) {
			await page.goto('about:blank');
			await page.goto(bench.address('walk', BENCH_SITE), { waitUntil: 'commit' });
			times.push(await shownAt(page, `${leaks.toLocaleString('en-GB')} leaks`));
		}
		return medianOf(times.slice(1));
	};
	const fast = await runs();
	await bench.slow(SLOW);
	const slow = await runs();
	await bench.close();
	return { fast, slow };
}

/** When a heading was on the screen, counted from the start of the navigation. */
function shownAt(page: Page, heading: string): Promise<number> {
	return page.evaluate(
		(text) =>
			new Promise<number>((resolve) => {
				const look = (): void => {
					if (![...document.querySelectorAll('h2')].some((h2) => h2.textContent === text)) return;
					observer.disconnect();
					requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
				};
				const observer = new MutationObserver(look);
				observer.observe(document, { subtree: true, childList: true, characterData: true });
				look();
			}),
		heading
	);
}

/**
 * A photo of twelve megapixels, from choosing it to the word Saved. Only the page itself is slowed: the
 * worker that shrinks the photo, and the browser's own threads that decode it, run at full speed.
 */
async function photographing(browser: BenchBrowser, files: BenchFiles): Promise<Row> {
	const bench = await browser.page(PHONE);
	const { page } = bench;
	await bench.open(await files.site('one leak', logOf(syntheticSurvey(1))));
	const bytes = await paintedPhoto(page);
	const photo = files.put('photo.jpg', bytes);
	await goTo(page, 'Walk');
	await page
		.getByRole('button', { name: /^Leak 1\b/ })
		.first()
		.click();
	await page.getByRole('heading', { name: 'Leak 1' }).waitFor();
	await saved(page);
	let taken = 0;
	const takes = async (photos: number): Promise<number> => {
		const times: number[] = [];
		for (let count = 0; count < photos; count++) {
			taken++;
			const started = performance.now();
			await page.locator('input[capture]').setInputFiles(photo);
			await page.getByAltText(`Photo ${taken} of the leak`).waitFor();
			await saved(page);
			times.push(performance.now() - started);
		}
		return medianOf(times);
	};
	// The first is not counted: the page has never done it before.
	await takes(1);
	const fast = await takes(PHOTOS);
	const bare = medianOf(await page.evaluate(shrinkBare, bytes.toString('base64')));
	await bench.slow(SLOW);
	await bench.watch();
	const slow = await takes(PHOTOS);
	const block = await bench.longestBlock();
	await bench.close();
	return {
		what: 'a photo of 12 megapixels taken in and stored',
		ms: slow,
		beside: `${notSlowed(fast)}; ${block}`,
		against: { what: 'bare decoding, drawing small and writing as JPEG, not slowed', ms: bare },
		target: '≤ 1 s'
	};
}

/** Runs in the page: what a browser needs to make a photo small, with nothing around it. */
async function shrinkBare(base64: string): Promise<number[]> {
	const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
	const taken: number[] = [];
	for (let run = 0; run < 5; run++) {
		const started = performance.now();
		const picture = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
		const canvas = new OffscreenCanvas(2000, 1500);
		canvas.getContext('2d')?.drawImage(picture, 0, 0, 2000, 1500);
		picture.close();
		await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.82 });
		taken.push(performance.now() - started);
	}
	return taken;
}

/** A picture as rich as a photo, drawn by the browser: its bytes as a JPEG. */
export async function paintedPhoto(page: Page, widthPx = 4000, heightPx = 3000): Promise<Buffer> {
	const base64 = await page.evaluate(
		async ([width, height]) => {
			const canvas = new OffscreenCanvas(width, height);
			const context = canvas.getContext('2d');
			if (!context) throw new Error('no canvas');
			for (let spot = 0; spot < 3000; spot++) {
				context.fillStyle = `hsl(${(spot * 37) % 360} 60% ${20 + ((spot * 13) % 60)}%)`;
				context.fillRect((spot * 7919) % width, (spot * 104_729) % height, 40 + (spot % 300), 30);
			}
			const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 });
			const bytes = new Uint8Array(await blob.arrayBuffer());
			let text = '';
			for (let at = 0; at < bytes.length; at += 8192)
				text += String.fromCharCode(...bytes.subarray(at, at + 8192));
			return btoa(text);
		},
		[widthPx, heightPx] as const
	);
	return Buffer.from(base64, 'base64');
}
