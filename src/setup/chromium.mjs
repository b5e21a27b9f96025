// Finds a Chromium for the browser tests. Runs on any Node from 18, before anything is installed.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The one without windows first: the same engine, started sooner and with less beside it. */
const names = [
	'chromium-headless-shell',
	'chromium',
	'chromium-browser',
	'google-chrome',
	'google-chrome-stable',
	'chrome'
];

/** @returns {string | undefined} the path of a Chromium, from $CHROMIUM or the search path */
export function findChromium() {
	const named = process.env['CHROMIUM'];
	if (named) return existsSync(named) ? named : undefined;
	for (const dir of (process.env['PATH'] ?? '').split(delimiter))
		for (const name of names) if (dir && existsSync(join(dir, name))) return join(dir, name);
	return undefined;
}

/** Flags for a quiet Chromium that needs no sandbox, no graphics card and no network. */
export const chromiumArgs = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync'
];
