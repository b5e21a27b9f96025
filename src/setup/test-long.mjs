// npm run test:long: the fault tests in the form for a night, and a table of what was done and lost.
import { existsSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { installBrowser, installPackages, root, run } from './install.mjs';

installPackages();
installBrowser();
process.env['AIRTALLY_LONG'] = '1';
const tallies = join(root, 'test-results', 'faults');
rmSync(tallies, { recursive: true, force: true });
const paths = ['tests/faults', 'src/lib/session', 'src/lib/storage', 'src/lib/core/survey'];
const { status } = run('vitest', ['run', '--project', 'unit', '--project', 'faults', ...paths], {
	stdio: 'inherit'
});
console.log('\n| what was done | times | lost |\n| --- | ---: | ---: |');
for (const name of existsSync(tallies) ? readdirSync(tallies).sort() : []) {
	const { fault, count, lost } = JSON.parse(readFileSync(join(tallies, name), 'utf8'));
	console.log(`| ${fault} | ${count} | ${lost} |`);
}
process.exit(status ?? 1);
