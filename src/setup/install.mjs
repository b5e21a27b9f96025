// Installs what is missing, with whatever Node there is (18 or newer) and no dependency of its own.
// It speaks on standard error only, so that the command line's output stays clean.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './chromium.mjs';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** The search path with the project's own tools (a recent Node among them) first. */
export function toolPath() {
	return join(root, 'node_modules', '.bin') + delimiter + (process.env['PATH'] ?? '');
}

/**
 * Runs a command in the project's folder.
 * @param {string} command
 * @param {string[]} args
 * @param {import('node:child_process').SpawnSyncOptions} [options]
 */
export function run(command, args, options = {}) {
	return spawnSync(command, args, {
		cwd: root,
		stdio: ['ignore', 2, 2],
		shell: process.platform === 'win32',
		...options,
		env: { ...process.env, PATH: toolPath(), ...options.env }
	});
}

/** Makes node_modules match the lock file; quick when it does already. */
export function installPackages() {
	const stamp = join(root, 'node_modules', '.package-lock.json'); // npm writes it last
	const lock = join(root, 'package-lock.json');
	if (!existsSync(stamp) || statSync(lock).mtimeMs > statSync(stamp).mtimeMs) {
		console.error('Installing packages (once) …');
		const { status } = run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
		if (status !== 0) stop('Installing the packages failed: see what npm printed above.');
	} else if (!existsSync(join(root, 'node_modules', '$app', 'tsconfig.json'))) {
		run('npm', ['run', '--silent', 'prepare']); // `npm install PACKAGE` removes the generated folder
	}
	const { stdout } = run('node', ['-v'], { stdio: 'pipe', encoding: 'utf8' });
	const [major = 0, minor = 0] = String(stdout).trim().slice(1).split('.').map(Number);
	if (major < 22 || (major === 22 && minor < 18))
		stop(
			`Node ${String(stdout).trim()} is too old here: install Node 22.18 or newer, or let npm install the optional packages.`
		);
}

/** Whether poppler's tools are here, which read the prints a second time. */
const hasPoppler = () => run('pdftotext', ['-v'], { stdio: 'ignore' }).status === 0;

/** Finds a Chromium for the browser tests and poppler's tools, or installs Debian's where that is possible. */
export function installBrowser() {
	const noBrowser = findChromium() === undefined;
	const noPoppler = !hasPoppler();
	if (!noBrowser && !noPoppler) return;
	const root = process.getuid?.() === 0;
	const apt = ['apt-get', '-y', '-qq', '-o', 'Dpkg::Use-Pty=0', '-o', 'Acquire::http::Timeout=20'];
	const env = { DEBIAN_FRONTEND: 'noninteractive' };
	if (root && run(apt[0], ['--version'], { stdio: 'ignore' }).status === 0) {
		console.error('Installing what the tests need of Debian’s packages (once) …');
		run(apt[0], ['update', ...apt.slice(1)], { env });
		/** @param {string} name */
		const install = (name) => run(apt[0], ['install', ...apt.slice(1), name], { env });
		// Older releases have no browser without windows: there the one with windows serves.
		if (noBrowser && install('chromium-headless-shell').status !== 0) install('chromium');
		if (noPoppler) install('poppler-utils');
	}
	if (!findChromium())
		stop(
			'The browser tests need a Chromium: install the package "chromium", or set CHROMIUM to the path of one.'
		);
	if (!hasPoppler())
		console.error('Without "poppler-utils" the tests that read prints by pdftotext are left out.');
}

/** @param {string} sentence @returns {never} */
function stop(sentence) {
	console.error(sentence);
	process.exit(1);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	installPackages();
	if (process.argv.includes('--browser')) installBrowser();
}
