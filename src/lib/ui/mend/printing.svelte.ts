import { flushSync } from 'svelte';

/** Whether the page is going to paper: then nothing on it stays folded. */
class Printing {
	now = $state(false);

	/** At once, because the browser lays the paper out as soon as this returns. */
	set(on: boolean): void {
		flushSync(() => (this.now = on));
	}
}

export const printing = new Printing();
