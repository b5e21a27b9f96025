// Builds the app twice from nothing and compares every file: anyone can check what is served against the sources.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from './build.mjs';
import { installPackages, root } from './install.mjs';

/** @returns {string[]} the files that differ between two builds */
export function differences() {
	const [one, other] = [digests(), digests()];
	return [...new Set([...one.keys(), ...other.keys()])].filter(
		(file) => one.get(file) !== other.get(file)
	);
}

/** @returns {Map<string, string>} a digest for each file of a fresh build */
function digests() {
	for (const made of ['build', '.svelte-kit/output', '.svelte-kit/adapter-static'])
		rmSync(join(root, made), { recursive: true, force: true });
	if (!build()) throw new Error('the app does not build');
	const folder = join(root, 'build');
	return new Map(
		readdirSync(folder, { withFileTypes: true, recursive: true })
			.filter((entry) => entry.isFile())
			.map(({ parentPath, name }) => {
				const path = join(parentPath, name);
				const digest = createHash('sha256').update(readFileSync(path)).digest('hex');
				return [path.slice(folder.length), digest];
			})
	);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	installPackages();
	const differing = differences();
	for (const file of differing) console.log(`differs  ${file}`);
	console.log(differing.length === 0 ? 'The two builds are the same.' : 'The two builds differ.');
	process.exit(differing.length === 0 ? 0 : 1);
}
