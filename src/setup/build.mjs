// Builds the app when something that it is made of is newer than the last build.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root, run } from './install.mjs';

const SOURCES = ['src', 'static', 'survey-examples', 'package-lock.json', 'vite.config.ts'];

/** @returns {boolean} false when the build failed */
export function build() {
	const made = join(root, 'build', 'index.html');
	if (existsSync(made)) {
		const at = statSync(made).mtimeMs;
		if (SOURCES.every((source) => newest(join(root, source)) < at)) return true;
	}
	console.error('Building the app …');
	return run('vite', ['build', '--logLevel', 'error']).status === 0;
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
