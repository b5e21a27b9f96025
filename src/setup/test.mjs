// npm test: installs what is missing, then every check and test. Its last line counts them.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from './build.mjs';
import { installBrowser, installPackages, root, toolPath } from './install.mjs';

const started = Date.now();
installPackages();
installBrowser();
let [passed, failed] = [0, 0];

if (build()) passed++;
else {
	failed++;
	console.log('FAILED  build');
}
// Beside the fault tests, which come first and mostly wait: two cores have room for both.
const checks = start(process.execPath, ['src/setup/check.mjs'], ['ignore', 'pipe', 'inherit']);
let said = '';
checks.stdout?.on('data', (/** @type {Buffer} */ text) => (said += text.toString()));
const checked = once(checks, 'close');
// Its first line: the generated types are written, which the tests read.
if (checks.stdout) await Promise.race([once(checks.stdout, 'data'), checked]);

const results = join(root, 'test-results', 'vitest.json');
rmSync(results, { force: true });
const [status] = await once(
	start(
		'vitest',
		['run', '--reporter=default', '--reporter=json', `--outputFile.json=${results}`],
		'inherit'
	),
	'close'
);
try {
	const { numPassedTests, numFailedTests, numFailedTestSuites } = JSON.parse(
		readFileSync(results, 'utf8')
	);
	passed += numPassedTests;
	failed += numFailedTests;
	// A file that cannot even load, or an error outside any test, is a failure too.
	if (status !== 0 && numFailedTests === 0) failed += Math.max(1, numFailedTestSuites);
} catch (error) {
	failed++;
	console.log(`FAILED  the tests left no result: ${String(error)}`);
}
await checked;
const counts = /(\d+) passed, (\d+) failed\s*$/.exec(said);
console.log(counts ? said.slice(0, counts.index) : said);
passed += Number(counts?.[1] ?? 0);
failed += Number(counts?.[2] ?? 1);
console.log(`Took ${Math.round((Date.now() - started) / 1000)} s.`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

/**
 * Starts a tool of the project without waiting for its end.
 * @param {string} command
 * @param {string[]} args
 * @param {import('node:child_process').StdioOptions} stdio
 */
function start(command, args, stdio) {
	const env = { ...process.env, PATH: toolPath() };
	return spawn(command, args, { cwd: root, stdio, env, shell: process.platform === 'win32' });
}
