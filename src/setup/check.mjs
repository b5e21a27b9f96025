// Every check that needs no browser: format, lint, types, doors between rooms, dead code.
import { installPackages, run } from './install.mjs';

/** @type {[name: string, command: string, args: string[]][]} */
const CHECKS = [
	['generated types', 'svelte-kit', ['sync']],
	['format', 'prettier', ['--check', '--log-level', 'warn', '.']],
	['types of the core, without any DOM', 'tsc', ['-p', 'src/lib/core/tsconfig.json']],
	['types of the service worker', 'tsc', ['-p', 'src/service-worker/tsconfig.json']],
	[
		'types and components',
		'svelte-check',
		['--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human']
	],
	['lint', 'eslint', ['.', '--max-warnings', '0']],
	['doors between rooms', 'depcruise', ['src', '--output-type', 'err']],
	['dead code', 'knip', ['--no-progress']]
];

installPackages();
// TypeScript reads components as the linter does, not anew for each: half of its time, and the props are typed.
process.env['SVELTE_ESLINT_PARSER_EXPERIMENTAL_TS_SYS_HOOK'] = '1';
let passed = 0;
let failed = 0;
for (const [name, command, args] of CHECKS) {
	const started = Date.now();
	const { status, stdout, stderr } = run(command, args, { stdio: 'pipe', encoding: 'utf8' });
	const seconds = ((Date.now() - started) / 1000).toFixed(1);
	if (status === 0) {
		passed++;
		console.log(`ok      ${name} (${seconds} s)`);
	} else {
		failed++;
		console.log(`FAILED  ${name} (${seconds} s)\n${stdout}${stderr}`);
	}
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
