import { version } from '$app/env';
import { assets, immutable, prerendered } from '$app/manifest';
import { self } from '$app/service-worker';
import { fillCache } from './fill-cache.ts';

const PREFIX = 'airtally-';
const CACHE = `${PREFIX}${version}`;
/** "/", or the folder that the app is served from. */
const BASE = new URL(self.registration.scope).pathname;

const absolute = ({ path }: { readonly path: string }): string => BASE + path.replace(/^\//, '');

/** The pages are all one shell: without server rendering, "/" can answer any of them. */
const SHELL = BASE;
const named = new Set(immutable.map(absolute));
/** Without these the app does not run. */
const needed = new Set([SHELL, ...named]);
const known = new Set(
	// Some servers answer the fall-back page itself with 404.
	[...needed, ...[...assets, ...prerendered].map(absolute)].filter(
		(path) => !path.endsWith('/200.html')
	)
);

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));

self.addEventListener('message', (event) => {
	const { type } = (event.data ?? {}) as { type?: unknown };
	// The user has agreed; until then the version that is in use stays in use.
	if (type === 'take-over') event.waitUntil(self.skipWaiting());
});

self.addEventListener('fetch', (event) => {
	const { request } = event;
	const { origin, pathname } = new URL(request.url);
	if (request.method !== 'GET' || origin !== self.location.origin) return;
	if (known.has(pathname) || request.mode === 'navigate' || isNamed(pathname)) {
		event.respondWith(answer(request, pathname));
	}
});

async function install(): Promise<void> {
	const cache = await caches.open(CACHE);
	const missing = await fillCache([...known], cache, fetchOne);
	if (missing.length > 0) await report(missing);
	const lacking = missing.filter((path) => needed.has(path));
	// The browser keeps the version before, and tries this one again.
	if (lacking.length > 0) throw new Error(`cannot work offline without ${lacking.join(', ')}`);
	// The first version has nobody to disturb.
	if (!self.registration.active) await self.skipWaiting();
}

/** What a version before this one has kept is not fetched again: its name holds its content. */
async function fetchOne(path: string): Promise<Response> {
	const kept = named.has(path) ? await caches.match(path) : undefined;
	return kept ?? fetch(new Request(path, { cache: named.has(path) ? 'default' : 'reload' }));
}

/** Keeps this version and the one before it, which tabs may still be running. */
async function activate(): Promise<void> {
	const ours = (await caches.keys()).filter((key) => key.startsWith(PREFIX) && key !== CACHE);
	for (const key of ours.slice(0, -1)) await caches.delete(key);
	await self.clients.claim();
}

/** From the cache at once, so that a network that hangs is as good as none. */
async function answer(request: Request, pathname: string): Promise<Response> {
	const cache = await caches.open(CACHE);
	const hit = known.has(pathname) ? await cache.match(pathname) : undefined;
	if (hit) return hit;
	if (request.mode === 'navigate') {
		const shell = await cache.match(SHELL);
		if (shell) return shell;
	}
	const older = isNamed(pathname) ? await caches.match(pathname) : undefined;
	if (older) return older;
	const response = await fetch(request);
	if (known.has(pathname) && response.ok && !response.redirected) {
		await cache.put(pathname, response.clone()).catch(() => undefined);
	}
	return response;
}

/** A file whose name holds its content, of this version or another. */
function isNamed(pathname: string): boolean {
	return pathname.startsWith(`${BASE}_app/immutable/`);
}

async function report(missing: readonly string[]): Promise<void> {
	console.warn('not kept for use offline:', ...missing);
	for (const client of await self.clients.matchAll({ includeUncontrolled: true })) {
		client.postMessage({ type: 'not-kept', paths: missing });
	}
}
