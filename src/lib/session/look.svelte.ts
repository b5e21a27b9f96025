/** Light for glare in the hall, dark for the office. */
export type LookName = 'light' | 'dark';

const KEY = 'airtally-look';

/**
 * How the app looks on this device. It belongs to the reader, not to a survey, and is put on before the first picture
 * is drawn by `static/look.js`.
 */
class Look {
	now = $state<LookName>('light');

	/** Takes over what the page was drawn with. */
	read(): void {
		this.now = document.documentElement.dataset.look === 'dark' ? 'dark' : 'light';
	}

	choose(look: LookName): void {
		this.now = look;
		document.documentElement.dataset.look = look;
		try {
			localStorage.setItem(KEY, look);
		} catch {
			// A browser that keeps nothing forgets the choice; nothing else depends on it.
		}
	}
}

export const look = new Look();
