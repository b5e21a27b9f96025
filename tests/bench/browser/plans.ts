import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { goTo, saved } from '../../story/browser.ts';
import { medianOf, type Row } from '../measure.ts';
import { BenchBrowser, type BenchPage } from './chromium.ts';
import { BENCH_SITE, plannedSite, type PlannedSite } from './planned-site.ts';
import { BenchFiles, withPins } from './sites.ts';

const PINS = 5000;
const WIDE = 8000;
const HIGH = 6000;
const FRAMES = 120;
const ROUNDS = 3;

/** A plan of 48 megapixels with thousands of pins: brought in, opened, moved about. */
export async function plans(): Promise<Row[]> {
	const browser = await BenchBrowser.start();
	const files = new BenchFiles();
	try {
		const site = await plannedSite(browser, files, WIDE, HIGH);
		const bare = await opened(browser, await files.site('bare', site.commands, site.blobs));
		const pinned = await opened(
			browser,
			await files.site('pinned', withPins(site.commands, site.survey, PINS), site.blobs)
		);
		const firstPins = await opening(pinned);
		const plain = await plainMap(browser, site);
		// In turns, so that whatever else the machine does is shared out.
		const frames = { bare: [] as number[], pinned: [] as number[], plain: [] as number[] };
		for (let round = 0; round < ROUNDS; round++) {
			frames.bare.push(await panning(bare.page));
			frames.pinned.push(await panning(pinned.page));
			frames.plain.push(await panning(plain.page));
		}
		const ms = medianOf(frames.pinned);
		const what = `a frame while ${PINS} pins are panned on 48 megapixels`;
		return [
			{
				what: 'bring in a plan of 48 megapixels',
				ms: site.importMs,
				beside: site.block,
				target: '≤ 10 s, off the main thread'
			},
			{ what: `first of ${PINS} pins after opening its plan`, ms: firstPins, target: '≤ 1 s' },
			{
				what,
				ms,
				against: { what: 'the same plan without pins', ms: medianOf(frames.bare) },
				target: '≤ 1.3×'
			},
			{
				what: 'the same',
				ms,
				against: { what: 'one plain image with DOM markers', ms: medianOf(frames.plain) },
				target: '≤ 0.3×'
			}
		];
	} finally {
		files.remove();
		await browser.end();
	}
}

async function opened(browser: BenchBrowser, path: string): Promise<BenchPage> {
	const bench = await browser.page();
	await bench.open(path);
	await saved(bench.page);
	await goTo(bench.page, 'Walk');
	await bench.page.getByAltText(/^Floor plan/).waitFor();
	await bench.page.waitForLoadState('networkidle');
	return bench;
}

/** From the start of the navigation to the first painted pins, the files being on the disk. */
async function opening(bench: BenchPage): Promise<number> {
	const times: number[] = [];
	const { page } = bench;
	const walk = bench.address('walk', BENCH_SITE);
	for (let run = 0; run < 4; run++) {
		await page.goto('about:blank');
		await page.goto(walk, { waitUntil: 'commit' });
		times.push(await page.evaluate(firstPainted));
	}
	return medianOf(times.slice(1));
}

/** Runs in the page: when its canvas of pins first had something on it. */
function firstPainted(): Promise<number> {
	return new Promise((resolve) => {
		const look = (): void => {
			const canvas = document.querySelector<HTMLCanvasElement>('canvas.pin-canvas');
			const context = canvas && canvas.width > 0 ? canvas.getContext('2d') : null;
			const pixels = context?.getImageData(0, 0, canvas!.width, canvas!.height).data;
			if (pixels?.some((value) => value > 0)) resolve(performance.now());
			else requestAnimationFrame(look);
		};
		look();
	});
}

/** The time of one frame while the plan is dragged to and fro: the mean over many, all work in it. */
async function panning(page: Page): Promise<number> {
	await page.bringToFront();
	const plan = await page.locator('.leaflet-container').boundingBox();
	if (!plan) throw new Error('the plan is not on the screen');
	const [x, y] = [plan.x + plan.width / 2, plan.y + plan.height / 2];
	await page.evaluate(
		({ x, y, frames }) => {
			const target = document.elementFromPoint(x, y) ?? document.body;
			const send = (kind: string, on: EventTarget, dx: number, dy: number): unknown =>
				on.dispatchEvent(
					new MouseEvent(kind, {
						...{ bubbles: true, cancelable: true, button: 0, buttons: 1 },
						...{ clientX: x + dx, clientY: y + dy, view: window }
					})
				);
			window.benchPan = new Promise((resolve) => {
				send('mousedown', target, 0, 0);
				let frame = 0;
				let started = 0;
				const step = (now: number): void => {
					// The first frames set the drag going.
					if (frame === 10) started = now;
					if (frame === 10 + frames) {
						send('mouseup', document, 0, 0);
						resolve((now - started) / frames);
						return;
					}
					frame++;
					send('mousemove', document, 150 * Math.sin(frame / 9), 90 * Math.sin(frame / 13));
					requestAnimationFrame(step);
				};
				requestAnimationFrame(step);
			});
		},
		{ x, y, frames: FRAMES }
	);
	return page.evaluate(() => window.benchPan);
}

declare global {
	interface Window {
		benchPan: Promise<number>;
	}
}

/** What one would write at first: the whole picture as one overlay, and an element for each pin. */
async function plainMap(browser: BenchBrowser, site: PlannedSite): Promise<BenchPage> {
	const bench = await browser.page();
	const { page, url } = bench;
	const plan = Object.values(site.survey.plans)[0];
	const sha256 = plan?.original?.sha256 ?? plan?.image.sha256;
	const whole = site.blobs.find((blob) => blob.sha256 === sha256);
	if (!whole) throw new Error('the site has no plan');
	const parts: Readonly<Record<string, readonly [string, string | Buffer]>> = {
		'/plain.html': ['text/html', PLAIN_PAGE],
		'/leaflet.js': ['text/javascript', readFileSync('node_modules/leaflet/dist/leaflet.js')],
		'/leaflet.css': ['text/css', readFileSync('node_modules/leaflet/dist/leaflet.css')],
		'/plan': [whole.mediaType, Buffer.from(whole.bytes)]
	};
	await page.context().route('**/*', async (route) => {
		const part = parts[new URL(route.request().url()).pathname];
		if (part) await route.fulfill({ contentType: part[0], body: part[1] });
		else await route.fulfill({ status: 404, body: '' });
	});
	await page.goto(new URL('/plain.html', url).href);
	await page.waitForFunction(
		() => document.querySelector<HTMLImageElement>('img.leaflet-image-layer')?.complete
	);
	return bench;
}

const PLAIN_PAGE = `<!doctype html><link rel="stylesheet" href="/leaflet.css">
<style>html,body,#map{margin:0;height:100%} .pin{background:#c33;border-radius:50%}</style>
<div id="map"></div><script src="/leaflet.js"></script><script>
const map = L.map('map', { crs: L.CRS.Simple, minZoom: -6 });
const bounds = [[-${HIGH}, 0], [0, ${WIDE}]];
L.imageOverlay('/plan', bounds).addTo(map);
const side = Math.ceil(Math.sqrt(${PINS}));
for (let i = 0; i < ${PINS}; i++)
	L.marker([-${HIGH} * (0.02 + 0.96 * Math.floor(i / side) / side), ${WIDE} * (0.02 + 0.96 * (i % side) / side)],
		{ icon: L.divIcon({ className: 'pin', iconSize: [18, 18] }) }).addTo(map);
map.fitBounds(bounds);
</script>`;
