import { createReadStream, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { MAX_FILE_BYTES } from '#lib/storage/file/limits.ts';
import { EXIT, run } from './run.ts';

/** npm runs scripts in the project's folder and keeps the caller's in INIT_CWD. */
function callersFolder(): string {
	const { INIT_CWD, npm_lifecycle_event: script } = process.env;
	return script === 'airtally' && INIT_CWD !== undefined ? INIT_CWD : process.cwd();
}

async function readFile(path: string): Promise<Result<Uint8Array>> {
	const chunks: Buffer[] = [];
	let length = 0;
	try {
		const stream = createReadStream(resolve(callersFolder(), path));
		for await (const chunk of stream as AsyncIterable<Buffer>) {
			length += chunk.length;
			if (length > MAX_FILE_BYTES)
				return refuse('file-too-large', { bytes: length, mostBytes: MAX_FILE_BYTES });
			chunks.push(chunk);
		}
	} catch (error) {
		return refuse(codeOf(error));
	}
	return ok(new Uint8Array(Buffer.concat(chunks)));
}

function codeOf(error: unknown): string {
	switch ((error as NodeJS.ErrnoException).code) {
		case 'ENOENT':
		case 'ENOTDIR':
			return 'file-not-found';
		case 'EISDIR':
			return 'file-is-folder';
		case 'EACCES':
		case 'EPERM':
			return 'file-not-allowed';
		default:
			return 'file-unreadable';
	}
}

function version(): string {
	const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
	return (JSON.parse(text) as { version: string }).version;
}

// Whoever reads may stop before the end (head, less): that is no fault of theirs or ours.
for (const stream of [process.stdout, process.stderr])
	stream.on('error', (error: NodeJS.ErrnoException) => {
		if (error.code === 'EPIPE') return;
		process.exitCode = EXIT.fault;
		if (stream === process.stdout)
			process.stderr.write(`airtally: the answer could not be written (${error.code ?? ''}).\n`);
	});

const code = await run(process.argv.slice(2), {
	out: (text) => process.stdout.write(text),
	err: (text) => process.stderr.write(text),
	readFile,
	version: version()
});
process.exitCode ??= code;
