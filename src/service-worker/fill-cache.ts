/** The part of a cache that filling it needs. */
export interface Shelf {
	put: (path: string, response: Response) => Promise<void>;
}

const TRIES = 3;
/** So many at a time: a phone on a weak network drops more. */
const AT_ONCE = 6;

/**
 * Fetches files and keeps them, each by itself: one that fails holds up no other.
 *
 * @returns the paths of those that could not be kept
 */
export async function fillCache(
	paths: readonly string[],
	shelf: Shelf,
	fetchOne: (path: string) => Promise<Response>
): Promise<string[]> {
	const waiting = [...paths];
	const missing: string[] = [];
	const work = async (): Promise<void> => {
		for (let path = waiting.shift(); path !== undefined; path = waiting.shift()) {
			if (!(await keep(path, shelf, fetchOne))) missing.push(path);
		}
	};
	await Promise.all(Array.from({ length: AT_ONCE }, work));
	return missing;
}

async function keep(
	path: string,
	shelf: Shelf,
	fetchOne: (path: string) => Promise<Response>
): Promise<boolean> {
	for (let attempt = 0; attempt < TRIES; attempt++) {
		try {
			const response = await fetchOne(path);
			if (response.ok) {
				await shelf.put(path, answerable(response));
				return true;
			}
		} catch {
			// The network failed, or the disk is full: try again, and report it in the end.
		}
	}
	return false;
}

/** A response that went through a redirect may not answer a navigation; a copy of it may. */
export function answerable(response: Response): Response {
	if (!response.redirected) return response;
	const { status, statusText, headers } = response;
	return new Response(response.body, { status, statusText, headers });
}
