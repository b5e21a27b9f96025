// npm run test:long: the fault tests in the form for a night, the largest plans, the fix list of every
// count of jobs, and a table of what was done and lost.
// `npm run test:long -- 0.05` does a twentieth of it, to see that it runs to its end.
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import { join } from 'node:path';
import { installBrowser, installPackages, root, run } from './install.mjs';

const share = Number(process.argv[2] ?? 1);
if (!(share > 0 && share <= 1)) {
	console.error('The share of the counts to be done is above 0 and at most 1, such as 0.05.');
	process.exit(2);
}
const started = Date.now();
installPackages();
installBrowser();
process.env['AIRTALLY_LONG'] = String(share);
const results = join(root, 'test-results');
const tallies = join(results, 'faults');
const counted = join(results, 'vitest-long.json');
rmSync(tallies, { recursive: true, force: true });
rmSync(counted, { force: true });
const paths = [
	'tests/faults',
	'tests/story/big-plans.test.ts',
	'src/lib/report/pdf/fix-list-pdf.test.ts',
	'src/lib/session',
	'src/lib/storage',
	'src/lib/core/survey'
];
const { status } = run(
	'vitest',
	[
		// What was lost once counts: nothing is told a second time.
		...[
			'run',
			'--retry=0',
			'--project',
			'unit',
			'--project',
			'faults',
			'--project',
			'story-alone',
			...paths
		],
		...['--reporter=default', '--reporter=json', `--outputFile.json=${counted}`]
	],
	{ stdio: 'inherit' }
);
const lines = ['| what was done | times | lost |', '| --- | ---: | ---: |'];
for (const name of existsSync(tallies) ? readdirSync(tallies).sort() : []) {
	const { fault, count, lost } = JSON.parse(readFileSync(join(tallies, name), 'utf8'));
	lines.push(`| ${fault} | ${count} | ${lost} |`);
}
const cores = cpus();
const machine = `${cores[0]?.model ?? 'unknown processor'}, ${cores.length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB`;
const took = `${Math.round((Date.now() - started) / 60_000)} min`;
lines.push(
	'',
	`${machine}, Node ${process.version}, ${new Date(started).toISOString().slice(0, 10)}, took ${took}${share < 1 ? `, ${share} of the long form` : ''}.`,
	verdict()
);
mkdirSync(results, { recursive: true });
writeFileSync(join(results, 'test-long.md'), `${lines.join('\n')}\n`);
console.log(`\n${lines.join('\n')}`);
process.exit(status ?? 1);

/** A fault whose test failed has no line in the table: so the tests are counted beside it. */
function verdict() {
	if (!existsSync(counted)) return 'FAILED: the tests left no result.';
	const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(counted, 'utf8'));
	const failed = status !== 0 && numFailedTests === 0 ? 1 : numFailedTests;
	return `${numPassedTests} passed, ${failed} failed`;
}
