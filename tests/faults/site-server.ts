import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
	'.html': 'text/html',
	'.js': 'text/javascript',
	'.mjs': 'text/javascript',
	'.css': 'text/css',
	'.json': 'application/json',
	'.svg': 'image/svg+xml',
	'.png': 'image/png',
	'.wasm': 'application/wasm',
	'.webmanifest': 'application/manifest+json'
};

/** Serves a folder as a plain host does, and misbehaves on demand. */
export class SiteServer {
	/** What is served; exchanging it is a release. */
	folder: string;
	/** Takes requests and never answers them, as a network without a way out does. */
	hangs = false;
	/** Every path that was asked for. */
	readonly asked: string[] = [];
	readonly #server: Server;
	readonly #sockets = new Set<Socket>();

	constructor(folder: string) {
		this.folder = folder;
		this.#server = createServer((request, response) => void this.#answer(request, response));
		this.#server.on('connection', (socket) => {
			this.#sockets.add(socket);
			socket.on('close', () => this.#sockets.delete(socket));
		});
	}

	async start(): Promise<string> {
		await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
		return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}/`;
	}

	/** Gone, with every connection that was open. */
	async stop(): Promise<void> {
		const closed = new Promise((resolve) => this.#server.close(resolve));
		for (const socket of this.#sockets) socket.destroy();
		await closed;
	}

	async #answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
		const path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname);
		this.asked.push(path);
		if (this.hangs) return;
		const name = path === '/' ? '/index.html' : extname(path) === '' ? `${path}.html` : path;
		try {
			const bytes = await readFile(join(this.folder, normalize(name)));
			const type = TYPES[extname(name)] ?? 'application/octet-stream';
			response.writeHead(200, { 'content-type': type, 'cache-control': 'no-cache' }).end(bytes);
		} catch {
			response.writeHead(404, { 'content-type': 'text/plain' }).end('not here');
		}
	}
}
