import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import { chromiumArgs, findChromium } from '../../src/setup/chromium.mjs';

/** A Chromium with a profile on disk that can be killed, as the power or the system does, and started again. */
export class BrowserProcess {
	readonly #profile = mkdtempSync(join(tmpdir(), 'airtally-profile-'));
	#child: ChildProcess | undefined;
	#browser: Browser | undefined;

	async start(): Promise<Page> {
		const executable = findChromium();
		if (!executable) throw new Error('no Chromium was found: set CHROMIUM to the path of one');
		const portFile = join(this.#profile, 'DevToolsActivePort');
		rmSync(portFile, { force: true });
		const args = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${this.#profile}`];
		// A group of its own, so that all of its processes die at one moment.
		this.#child = spawn(executable, [...chromiumArgs, ...args, '--lang=en-GB', 'about:blank'], {
			detached: true,
			stdio: 'ignore'
		});
		const port = await portIn(portFile);
		this.#browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
		const [context] = this.#browser.contexts();
		if (!context) throw new Error('Chromium has no window');
		context.setDefaultTimeout(20_000);
		return context.pages()[0] ?? context.newPage();
	}

	/** SIGKILL to every process of it: nothing gets to say goodbye. */
	async kill(): Promise<void> {
		const child = this.#child;
		if (child?.pid === undefined) return;
		const gone = once(child, 'exit');
		process.kill(-child.pid, 'SIGKILL');
		await gone;
		this.#child = undefined;
		await this.#browser?.close().catch(() => undefined);
	}

	/** Ends it and throws its profile away. */
	async end(): Promise<void> {
		await this.kill();
		rmSync(this.#profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
	}
}

async function portIn(file: string): Promise<string> {
	for (let tries = 0; tries < 400; tries++) {
		try {
			const [port, path] = readFileSync(file, 'utf8').split('\n');
			if (port && path) return port;
		} catch {
			// Not written yet.
		}
		await new Promise((resolve) => setTimeout(resolve, 50));
	}
	throw new Error('Chromium did not say its port within 20 s');
}
