// npm start: installs what is missing, builds, serves on loopback, and says what to try first.
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { build } from './build.mjs';
import { installPackages, root, toolPath } from './install.mjs';

const FIRST_PORT = 4173;

installPackages();
if (!build()) process.exit(1);
const port = await freePort(FIRST_PORT);
const server = spawn(
	'node',
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
	{ cwd: root, stdio: 'inherit', env: { ...process.env, PATH: toolPath() } }
);
server.on('exit', (code) => process.exit(code ?? 0));
for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM']))
	process.on(signal, () => server.kill(signal));
const address = `http://127.0.0.1:${port}/`;
await answered(address);
console.log(`
Airtally is at ${address}

Try first: open that address, choose "Open the demo site", then walk the plan, weigh the leaks,
and print the fix list. After the first load it works with the network off. Stop with Ctrl+C.
`);

/** @param {number} from @returns {Promise<number>} */
function freePort(from) {
	return new Promise((resolve) => {
		const probe = createServer();
		probe.once('error', () => resolve(freePort(from + 1)));
		probe.listen(from, '127.0.0.1', () => probe.close(() => resolve(from)));
	});
}

/** @param {string} url */
async function answered(url) {
	for (let tries = 0; tries < 100; tries++) {
		try {
			await fetch(url);
			return;
		} catch {
			await new Promise((resolve) => setTimeout(resolve, 100));
		}
	}
}
