import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const examples = join(root, 'survey-examples');
/** The Node that runs this test first, as npm finds the project's own. */
const env = { ...process.env, PATH: dirname(process.execPath) + delimiter + process.env['PATH'] };

function shell(command: string, cwd: string) {
	const { status, stdout, stderr } = spawnSync(command, {
		cwd,
		env,
		shell: true,
		encoding: 'utf8'
	});
	return { status, stdout, stderr };
}

const npm = (args: string, cwd: string) =>
	shell(`npm --prefix "${root}" run --silent airtally -- ${args}`, cwd);

describe('as a process', { timeout: 60_000 }, () => {
	it('through npm, standard output is the JSON and nothing else', () => {
		const { status, stdout, stderr } = npm(
			'flow --hole "1/4 in" --pressure "100 psi" --json',
			root
		);
		expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
		expect(JSON.parse(stdout)).toMatchObject({ regime: 'choked', coefficient: 0.79 });
	});

	it('through npm, a path is taken from the caller’s folder', () => {
		const { status, stdout } = npm('audit three-leaks.json --json', examples);
		expect(status).toBe(0);
		expect(JSON.parse(stdout)).toMatchObject({ totals: { leakCount: 3 } });
	});

	it('through npm, a refusal is one line and exit code 2', () => {
		const { status, stdout, stderr } = npm('flow --hole 5 --pressure "7 bar"', root);
		expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
		expect(stderr).toMatch(/^airtally flow: --hole "5": The unit is missing; .*\.\n$/);
	});

	it('refuses a missing file, a folder and a file that is none of ours, and writes nothing', () => {
		const folder = mkdtempSync(join(tmpdir(), 'airtally-'));
		writeFileSync(join(folder, 'notes.txt'), 'hello');
		const cli = `"${process.execPath}" "${join(root, 'src/cli/airtally.ts')}"`;
		for (const [name, said] of [
			['nowhere.zip', 'no such file'],
			['notes.txt/deeper.zip', 'no such file'],
			['.', 'a folder'],
			['notes.txt', 'not a survey file']
		] as const) {
			const { status, stdout, stderr } = shell(`${cli} audit ${name} --json`, folder);
			expect({ status, stdout }, name).toEqual({ status: 2, stdout: '' });
			expect(stderr).toMatch(/^airtally audit: [^\n]*\.\n$/);
			expect(stderr).toContain(said);
		}
		expect(readdirSync(folder)).toEqual(['notes.txt']);
	});

	it.skipIf(process.platform === 'win32')('a reader that stops early is no crash', () => {
		const cli = `"${process.execPath}" "${join(root, 'src/cli/airtally.ts')}"`;
		const { stdout, stderr } = shell(
			`${cli} audit ceramics-works.airtally.zip --json | head -n 1`,
			examples
		);
		expect({ stdout, stderr }).toEqual({ stdout: '{\n', stderr: '' });
		const closed = shell(`(${cli} help; echo $? >&2) | true`, examples);
		expect(closed.stderr).toBe('0\n');
	});
});
