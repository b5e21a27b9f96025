import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { run } from './run.ts';

export interface Captured {
	readonly code: number;
	readonly out: string;
	readonly err: string;
}

/** Runs a command line in this process, with files from memory, for the tests. */
export async function captured(
	argv: readonly string[],
	files: Readonly<Record<string, Uint8Array>> = {}
): Promise<Captured> {
	let out = '';
	let err = '';
	const readFile = (path: string): Promise<Result<Uint8Array>> =>
		Promise.resolve(
			Object.hasOwn(files, path) ? ok(files[path] ?? new Uint8Array()) : refuse('file-not-found')
		);
	const code = await run(argv, {
		out: (text) => (out += text),
		err: (text) => (err += text),
		readFile,
		version: '0.0.0'
	});
	return { code, out, err };
}

/** The JSON answer of a command line that is expected to answer. */
export async function answered<T>(
	argv: readonly string[],
	files: Readonly<Record<string, Uint8Array>> = {}
): Promise<T> {
	const { code, out, err } = await captured([...argv, '--json'], files);
	if (code !== 0) throw new Error(`${argv.join(' ')}: ${String(code)} ${err}`);
	return JSON.parse(out) as T;
}
