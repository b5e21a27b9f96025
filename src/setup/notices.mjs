// Writes static/third-party-notices.txt from the lock file: whose work is part of the built app, and under which licence.
// `npm run notices` after the packages change; a test says when it is out of date.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root } from './install.mjs';

/** Listed as tools in package.json, yet parts of them run in the app. */
const TOOLS_IN_THE_APP = ['svelte', '@sveltejs/kit', 'clsx', 'devalue', 'esm-env'];
const LICENCE_FILE = /^(licen[cs]e|notice|copying|ofl)/i;
const RULE = '='.repeat(100);

/** @returns {string} the notices of every package that the app is built with, by name */
export function notices() {
	const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
	const parts = Object.entries(packages)
		.filter(([path, { dev, optional }]) => {
			const name = path.replace(/^node_modules\//, '');
			if (TOOLS_IN_THE_APP.includes(name)) return true;
			return path !== '' && !dev && !optional && !name.startsWith('@types/');
		})
		.map(([path, { version, license }]) => {
			const name = path.replace(/^.*node_modules\//, '');
			const texts = licenceFiles(join(root, path)).map((file) => readFileSync(file, 'utf8').trim());
			return [`${name} ${version}`, `Licence: ${license}`, ...texts].join('\n\n');
		})
		.sort((one, other) => (one < other ? -1 : 1));
	return [
		'Airtally is made with the work of others. These are the packages in the built app and their licences.',
		...parts,
		''
	].join(`\n\n${RULE}\n`);
}

/** @param {string} folder @returns {string[]} its licence files, those of what it carries along included */
function licenceFiles(folder) {
	return readdirSync(folder, { withFileTypes: true, recursive: true })
		.filter(({ name }) => LICENCE_FILE.test(name) && !/\.(js|ts|mjs|json)$/.test(name))
		.filter((entry) => entry.isFile())
		.map(({ parentPath, name }) => join(parentPath, name))
		.filter((file) => !file.slice(folder.length).includes('node_modules'))
		.sort();
}

if (process.argv[1] === fileURLToPath(import.meta.url))
	writeFileSync(join(root, 'static', 'third-party-notices.txt'), notices());
