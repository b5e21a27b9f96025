import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

export interface AppServer {
	readonly url: string;
	/** Takes the server away as a power cut would, and waits until it is gone. */
	kill(): Promise<void>;
}

/** Serves the built app on a free port of this machine. */
export async function startServer(): Promise<AppServer> {
	const port = await freePort();
	const child: ChildProcess = spawn(
		process.execPath,
		[
			'node_modules/vite/bin/vite.js',
			'preview',
			'--host',
			'127.0.0.1',
			'--port',
			String(port),
			'--strictPort',
			'--logLevel',
			'error'
		],
		{ cwd: root, stdio: 'ignore' }
	);
	const url = `http://127.0.0.1:${port}/`;
	await answered(url);
	return {
		url,
		async kill() {
			if (child.exitCode !== null || child.signalCode !== null) return;
			const gone = once(child, 'exit');
			child.kill('SIGKILL');
			await gone;
		}
	};
}

async function answered(url: string): Promise<void> {
	for (let tries = 0; tries < 150; tries++) {
		try {
			await fetch(url);
			return;
		} catch {
			await new Promise((resolve) => setTimeout(resolve, 100));
		}
	}
	throw new Error(`${url} did not answer within 15 s`);
}

async function freePort(): Promise<number> {
	const probe = createServer();
	probe.listen(0, '127.0.0.1');
	await once(probe, 'listening');
	const address = probe.address();
	probe.close();
	await once(probe, 'close');
	if (address === null || typeof address === 'string') throw new Error('no port could be had');
	return address.port;
}
