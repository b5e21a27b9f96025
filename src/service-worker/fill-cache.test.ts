import { expect, test } from 'vitest';
import { answerable, fillCache } from './fill-cache.ts';

function shelf() {
	const kept = new Map<string, Response>();
	return {
		kept,
		put: (path: string, response: Response) => Promise.resolve(void kept.set(path, response))
	};
}

test('one file that fails holds up no other, and is named', async () => {
	const cache = shelf();
	const paths = Array.from({ length: 30 }, (_, index) => `/file-${index}`);
	const missing = await fillCache(paths, cache, (path) => {
		if (path === '/file-3') return Promise.reject(new TypeError('offline'));
		return Promise.resolve(new Response(path, { status: path === '/file-7' ? 404 : 200 }));
	});
	expect(missing.sort()).toEqual(['/file-3', '/file-7']);
	expect([...cache.kept.keys()].sort()).toEqual(
		paths.filter((path) => !missing.includes(path)).sort()
	);
});

test('a file that fails once is fetched again', async () => {
	const cache = shelf();
	const asked: string[] = [];
	const missing = await fillCache(['/a'], cache, (path) => {
		asked.push(path);
		return Promise.resolve(new Response('', { status: asked.length === 1 ? 503 : 200 }));
	});
	expect(missing).toEqual([]);
	expect(asked).toEqual(['/a', '/a']);
});

test('a full disk is reported and not thrown', async () => {
	const full = { put: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
	const missing = await fillCache(['/a'], full, () => Promise.resolve(new Response('')));
	expect(missing).toEqual(['/a']);
});

test('a redirected answer is copied, so that it may answer a navigation', async () => {
	const redirected = new Response('page', { headers: { 'content-type': 'text/html' } });
	Object.defineProperty(redirected, 'redirected', { value: true });
	const copy = answerable(redirected);
	expect(copy.redirected).toBe(false);
	expect(copy.headers.get('content-type')).toBe('text/html');
	expect(await copy.text()).toBe('page');
});
