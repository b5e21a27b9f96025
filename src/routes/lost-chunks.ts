import { version } from '$app/env';
import { navigating, updated } from '$app/state';

const KEY = 'airtally-loaded-anew';

/**
 * A release may take away parts of the app that an open page has not loaded yet. When one of them is
 * asked for and is not there, and there is a newer version, the page is loaded anew, where the user
 * wanted to go. Each version does so once at most in a tab: a server that names parts that it does not
 * have must not turn the page in a circle.
 */
export function loadAnewWhenChunksAreLost(): () => void {
	const lost = (): void => void loadAnew(navigating.to?.url.href ?? location.href);
	addEventListener('vite:preloadError', lost);
	return () => removeEventListener('vite:preloadError', lost);
}

async function loadAnew(wanted: string): Promise<void> {
	// Without a network it would load nothing at all.
	if (!(await updated.check())) return;
	try {
		if (sessionStorage.getItem(KEY) === version) return;
		sessionStorage.setItem(KEY, version);
	} catch {
		// What cannot be counted is not begun.
		return;
	}
	if (wanted === location.href) location.reload();
	else location.assign(wanted);
}
