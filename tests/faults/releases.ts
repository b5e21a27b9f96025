import { cpSync, mkdtempSync, readFileSync, readdirSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const TEXT = /\.(?:js|html|json)$/;

/**
 * The app as its next release: the same, but every chunk has another name, and the version
 * another number, as a build after a change has.
 */
export function nextRelease(buildFolder: string): string {
	const folder = mkdtempSync(join(tmpdir(), 'airtally-release-'));
	cpSync(buildFolder, folder, { recursive: true });
	const names: string[] = [];
	for (const kind of ['nodes', 'chunks']) {
		const parts = join(folder, '_app/immutable', kind);
		for (const name of readdirSync(parts).filter((file) => file.endsWith('.js'))) {
			renameSync(join(parts, name), join(parts, renamed(name)));
			names.push(name);
		}
	}
	const { version } = JSON.parse(readFileSync(join(folder, '_app/version.json'), 'utf8')) as {
		version: string;
	};
	for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
		if (!TEXT.test(file)) continue;
		const path = join(folder, file);
		let text = readFileSync(path, 'utf8');
		for (const name of names) text = text.replaceAll(name, renamed(name));
		// The pages' own scripts are left: the content policy knows them by their hash.
		if (/(?:version\.json|service-worker\.js)$/.test(file))
			text = text.replaceAll(version, `${version}9`);
		writeFileSync(path, text);
	}
	return folder;
}

const renamed = (name: string): string => name.replace(/\.js$/, 'next.js');
