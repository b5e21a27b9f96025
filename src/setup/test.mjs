// npm test: installs what is missing, then every check and test. Its last line counts them.
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from './build.mjs';
import { check } from './check.mjs';
import { installBrowser, installPackages, root, run } from './install.mjs';

const started = Date.now();
installPackages();
installBrowser();
let { passed, failed } = check();

if (build()) passed++;
else {
	failed++;
	console.log('FAILED  build');
}

const results = join(root, 'test-results', 'vitest.json');
rmSync(results, { force: true });
const { status } = run(
	'vitest',
	['run', '--reporter=default', '--reporter=json', `--outputFile.json=${results}`],
	{ stdio: 'inherit' }
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
console.log(`Took ${Math.round((Date.now() - started) / 1000)} s.`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
