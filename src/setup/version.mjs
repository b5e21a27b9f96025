// The name of a build: the version, and a digest of what it is made of. The same sources give the same name,
// so two builds of one commit are the same to the byte.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { root } from './install.mjs';

/** What the app is built from. */
export const MADE_OF = ['src', 'static', 'survey-examples', 'package-lock.json', 'vite.config.ts'];

/** @returns {string} such as `0.1.0-3f9a2c41b07d` */
export function versionName() {
	const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
	const digest = createHash('sha256');
	for (const file of MADE_OF.flatMap(filesIn)) {
		digest.update(file.split(sep).join('/'));
		digest.update(readFileSync(join(root, file)));
	}
	return `${version}-${digest.digest('hex').slice(0, 12)}`;
}

/** @param {string} path within the project @returns {string[]} in an order that no file system decides */
function filesIn(path) {
	if (!statSync(join(root, path)).isDirectory()) return [path];
	return readdirSync(join(root, path))
		.sort()
		.flatMap((name) => filesIn(join(path, name)));
}
