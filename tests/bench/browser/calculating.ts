import { closeSync, openSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import type { Survey } from '#lib/core/survey/schema.ts';
import { civilText } from '#lib/core/logger/time-stamps.ts';
import { METRO_NIGHT, METRO_START, record } from '../../logger/rebuild.ts';
import { goTo, saved } from '../../story/browser.ts';
import { medianOf, type Row } from '../measure.ts';
import { logOf, syntheticSurvey } from '../synthetic.ts';
import { BenchBrowser } from './chromium.ts';
import { BENCH_SITE } from './planned-site.ts';
import { BenchFiles } from './sites.ts';

const LEAKS = 1000;
const JOBS = 500;
const SECTIONS = 60;
const LOGGER_ROWS = 2_000_000;
/** Rows are filled up with other columns to so many bytes, so that the file has 100 MB. */
const ROW_BYTES = 50;

/** What takes long, done beside the page: the draws, the planner, a large logger file. */
export async function calculating(): Promise<Row[]> {
	const browser = await BenchBrowser.start();
	const files = new BenchFiles();
	try {
		return [
			await drawing(browser, files),
			await planning(browser, files),
			...(await logging(browser, files))
		];
	} finally {
		files.remove();
		await browser.end();
	}
}

/** From opening Weigh to the interval on the screen, opening the site included. */
async function drawing(browser: BenchBrowser, files: BenchFiles): Promise<Row> {
	const bench = await browser.page();
	const { page } = bench;
	await bench.open(await files.site('many', logOf(syntheticSurvey(LEAKS))));
	await saved(page);
	const times: number[] = [];
	let block = '';
	for (let run = 0; run < 4; run++) {
		await page.goto(bench.address('set-up', BENCH_SITE));
		await page.getByRole('navigation', { name: 'Places' }).waitFor();
		await bench.watch();
		const started = performance.now();
		await goTo(page, 'Weigh');
		await page.locator('.headline .cost .range').waitFor();
		times.push(performance.now() - started);
		block = await bench.longestBlock();
	}
	await bench.close();
	return {
		what: `Weigh opened, the interval of ${LEAKS} leaks drawn and shown`,
		ms: medianOf(times.slice(1)),
		beside: block,
		target: 'never blocked over 50 ms'
	};
}

async function planning(browser: BenchBrowser, files: BenchFiles): Promise<Row> {
	const bench = await browser.page();
	const { page } = bench;
	await bench.open(await files.site('works', logOf(works())));
	await goTo(page, 'Mend');
	await saved(page);
	const make = page.getByRole('button', { name: /^Make the plan/ });
	const times: number[] = [];
	let block = '';
	for (let run = 0; run < 3; run++) {
		await make.waitFor();
		await bench.watch();
		const started = performance.now();
		await make.click();
		await page.getByText(/^Proved: no plan saves/).waitFor();
		times.push(performance.now() - started);
		block = await bench.longestBlock();
		await page.reload();
	}
	await bench.close();
	return {
		what: `plan ${JOBS} leaks in ${SECTIONS} sections over 4 windows, to the proof on the screen`,
		ms: medianOf(times),
		beside: block,
		target: '≤ 5 s, never blocked over 50 ms'
	};
}

/** The bench survey on more sections, with four windows and a budget. */
function works(): Survey {
	const survey = syntheticSurvey(JOBS);
	const section = (index: number) => `section-${index % SECTIONS}`;
	const sections = Array.from({ length: SECTIONS }, (_, index) => ({
		id: section(index),
		name: `Section ${index}`,
		pressureBarGauge: 7,
		pressurisedHoursPerYear: 5000 + 50 * index,
		isolateMinutes: 5,
		ventMinutes: 5 + (index % 10),
		restoreMinutes: 5
	}));
	const windows = [240, 480, 240, 360].map((minutes, index) => ({
		id: `window-${index}`,
		name: `Window ${index + 1}`,
		startsAt: `2026-02-0${index + 1}T06:00:00Z`,
		minutes,
		people: 2,
		overnightOff: index % 2 === 1
	}));
	return {
		...survey,
		sections: Object.fromEntries(sections.map((each) => [each.id, each])),
		windows: Object.fromEntries(windows.map((each) => [each.id, each])),
		mendPlan: { budget: 1200 },
		leaks: Object.fromEntries(
			Object.values(survey.leaks).map((leak) => [
				leak.id,
				{ ...leak, sectionId: section(leak.tag) }
			])
		)
	};
}

async function logging(browser: BenchBrowser, files: BenchFiles): Promise<Row[]> {
	const path = longFile(files);
	const bench = await browser.page();
	const { page } = bench;
	await bench.open(await files.site('one', logOf(syntheticSurvey(1))));
	await goTo(page, 'Weigh');
	const check = page.getByRole('region', { name: 'System check' });
	await check.waitFor();
	const button = check.getByRole('button', { name: 'A logger’s file' });
	if (await button.isVisible()) await button.click();
	await check.locator('input[type=file]').setInputFiles(path);
	const find = check.getByRole('button', { name: 'Find the cycles' });
	await find.waitFor();
	await bench.watch();
	let ms = NaN;
	const memory = await bench.memoryOf(async () => {
		const started = performance.now();
		await find.click();
		await check.getByRole('heading', { name: /whole cycles/ }).waitFor();
		ms = performance.now() - started;
	});
	const block = await bench.longestBlock();
	await check.locator('input[type=file]').setInputFiles(path);
	await find.click();
	await check.getByText(/^Reading .*: [1-9][\d,]* rows/).waitFor();
	const started = performance.now();
	await check.getByRole('button', { name: 'Stop reading' }).click();
	await find.waitFor();
	const stopped = performance.now() - started;
	await bench.close();
	const { peakMb, riseMb } = memory;
	const mega = Math.round((LOGGER_ROWS * ROW_BYTES) / 1e6);
	return [
		{
			what: `read a logger’s file of ${mega} MB and ${LOGGER_ROWS / 1e6} million rows`,
			ms,
			beside: `${block}; the page’s process ${peakMb.toFixed(0)} MB at most, ${riseMb.toFixed(0)} MB of it for the file`,
			target: '≤ 300 MB, never blocked over 50 ms'
		},
		{ what: 'stop reading it', ms: stopped }
	];
}

/** Two million rows of a night over and over, with columns that are of no use, written piece by piece. */
function longFile(files: BenchFiles): string {
	const seconds = METRO_NIGHT.reduce((sum, { loadedS, restS }) => sum + loadedS + restS, 0);
	const nights = Math.ceil(LOGGER_ROWS / seconds);
	const cycles = Array.from({ length: nights }, () => METRO_NIGHT).flat();
	const how = { stepS: 1, jitterS: 0, noise: 0.004, lost: 0, seed: 1 };
	const { times, values } = record({ ...how, cycles, start: METRO_START });
	const path = join(files.folder, 'long.csv');
	const file = openSync(path, 'w');
	writeSync(file, 'time,Reservoirs bar,Oil temperature,Motor current\n');
	for (let from = 0; from < LOGGER_ROWS; from += 50_000) {
		let piece = '';
		for (let row = from; row < Math.min(from + 50_000, times.length); row++) {
			const line = `${civilText(times[row]!)},${values[row]!.toFixed(4)},${50 + (row % 17)}.25,${row % 9}`;
			piece += `${line.padEnd(ROW_BYTES - 1, '0')}\n`;
		}
		writeSync(file, piece);
	}
	closeSync(file);
	return path;
}
