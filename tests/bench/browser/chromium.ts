import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, CDPSession, Page } from 'playwright-core';
import { build } from '../../../src/setup/build.mjs';
import { DESK, freshProfile, launch } from '../../story/browser.ts';
import { startServer, type AppServer } from '../../story/server.ts';

/** How often memory is looked at, ms. */
const LOOK_MS = 100;
const PATIENT_MS = 120_000;

/** The built app in a real Chromium, one browser for all measurements of a subject. */
export class BenchBrowser {
	readonly #browser: Browser;
	readonly #server: AppServer;

	constructor(browser: Browser, server: AppServer) {
		this.#browser = browser;
		this.#server = server;
	}

	static async start(): Promise<BenchBrowser> {
		if (!build()) throw new Error('the app does not build');
		const server = await startServer();
		return new BenchBrowser(await launch(), server);
	}

	async end(): Promise<void> {
		await this.#browser.close();
		await this.#server.kill();
	}

	/** A page of a fresh profile. */
	async page(viewport = DESK): Promise<BenchPage> {
		const context = await freshProfile(this.#browser, {
			viewport,
			reducedMotion: 'reduce',
			serviceWorkers: 'allow'
		});
		context.setDefaultTimeout(PATIENT_MS);
		await context.addInitScript(watchTheMainThread);
		return this.#tabIn(context);
	}

	/** Another page with the same storage. */
	tabOf({ page }: BenchPage): Promise<BenchPage> {
		return this.#tabIn(page.context());
	}

	async #tabIn(context: BrowserContext): Promise<BenchPage> {
		const page = await context.newPage();
		return new BenchPage(page, this.#server.url, await context.newCDPSession(page), this.#browser);
	}
}

export class BenchPage {
	readonly page: Page;
	readonly url: string;
	readonly #session: CDPSession;
	readonly #browser: Browser;

	constructor(page: Page, url: string, session: CDPSession, browser: Browser) {
		this.page = page;
		this.url = url;
		this.#session = session;
		this.#browser = browser;
	}

	close(): Promise<void> {
		return this.page.context().close();
	}

	/** The processor of a machine so many times as slow. */
	async slow(times: number): Promise<void> {
		await this.#session.send('Emulation.setCPUThrottlingRate', { rate: times });
	}

	/** Opens a site from its file, as a person does, and waits until it can be walked. */
	async open(path: string): Promise<void> {
		await this.page.goto(this.url);
		await this.page.locator('input[type="file"]').first().setInputFiles(path);
		await this.page.getByRole('navigation', { name: 'Places' }).waitFor();
	}

	address(place: string, siteId: string): string {
		return `${this.url}${place}?site=${siteId}`;
	}

	/** From here on the longest block of the main thread is counted anew. */
	async watch(): Promise<void> {
		await this.page.evaluate(() => window.longestBlockMs());
	}

	/** The longest time for which the page did not answer since `watch`; under 50 ms none is reported. */
	async longestBlock(): Promise<string> {
		const ms = await this.page.evaluate(() => window.longestBlockMs());
		return ms === 0 ? 'page never blocked over 50 ms' : `longest block ${ms.toFixed(0)} ms`;
	}

	/**
	 * The most memory that the page with its workers takes while a task runs: of its whole process,
	 * and how much of that came on top of what it had before.
	 */
	async memoryOf(task: () => Promise<void>): Promise<{ peakMb: number; riseMb: number }> {
		const pids = await this.#renderers();
		const before = residentMb(pids);
		let peakMb = before;
		const timer = setInterval(() => (peakMb = Math.max(peakMb, residentMb(pids))), LOOK_MS);
		try {
			await task();
		} finally {
			clearInterval(timer);
		}
		peakMb = Math.max(peakMb, residentMb(pids));
		return { peakMb, riseMb: peakMb - before };
	}

	async #renderers(): Promise<number[]> {
		const session = await this.#browser.newBrowserCDPSession();
		const { processInfo } = await session.send('SystemInfo.getProcessInfo');
		await session.detach();
		return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
	}
}

/** Resident memory of the largest of some processes; nothing where the system does not tell it. */
function residentMb(pids: readonly number[]): number {
	const sizes = pids.map((pid) => {
		try {
			return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? NaN);
		} catch {
			return NaN;
		}
	});
	return Math.max(...sizes.filter((size) => !Number.isNaN(size))) / 1024;
}

declare global {
	interface Window {
		/** The longest block since it was last asked; nothing reported is 0. */
		longestBlockMs: () => number;
	}
}

/** Runs in the page, before anything of the app. */
function watchTheMainThread(): void {
	let longest = 0;
	const observer = new PerformanceObserver((list) => take(list.getEntries()));
	const take = (entries: PerformanceEntryList): void => {
		for (const { duration } of entries) longest = Math.max(longest, duration);
	};
	observer.observe({ type: 'longtask', buffered: true });
	window.longestBlockMs = () => {
		take(observer.takeRecords());
		const found = longest;
		longest = 0;
		return found;
	};
}
