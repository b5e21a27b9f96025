/** Not longer, ms: a page that is busy or in the background must get on as well. */
const LONGEST_MS = 500;

/**
 * Settles when the page has had time to draw what it has: what is only wanted later must not hold up
 * the first look. Outside a page, at once.
 */
export function pageDrawn(): Promise<void> {
	if (typeof document === 'undefined') return Promise.resolve();
	return new Promise((resolve) => {
		// Safari has no idle callback.
		if (typeof requestIdleCallback === 'undefined') setTimeout(resolve, LONGEST_MS);
		else requestIdleCallback(() => resolve(), { timeout: LONGEST_MS });
	});
}
