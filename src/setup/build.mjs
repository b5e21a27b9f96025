// Builds the app when something that it is made of is newer than the last build.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root, run } from './install.mjs';
import { MADE_OF } from './version.mjs';

/** @returns {boolean} false when the build failed */
export function build() {
	const made = join(root, 'build', 'index.html');
	if (existsSync(made)) {
		const at = statSync(made).mtimeMs;
		if (MADE_OF.every((source) => newest(join(root, source)) < at)) return true;
	}
	console.error('Building the app …');
	// A test runner that calls this has named its own environment; the app is built as it is served.
	const env = { NODE_ENV: 'production' };
	return run('vite', ['build', '--logLevel', 'error'], { env }).status === 0;
}

/** @param {string} path @returns {number} */
function newest(path) {
	const stat = statSync(path);
	if (!stat.isDirectory()) return stat.mtimeMs;
	return readdirSync(path).reduce(
		(latest, name) => Math.max(latest, newest(join(path, name))),
		stat.mtimeMs
	);
}
