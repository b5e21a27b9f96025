/** How safely this browser keeps what it was given; a browser that cannot say leaves it unsaid. */
class StorageHealth {
	/** Whether the browser has promised not to clear the surveys away by itself. */
	persisted = $state<boolean>();
	estimate = $state.raw<{ readonly usedBytes: number; readonly mostBytes: number }>();
	/** Where there is an icon on the Home screen, it does not see what a tab keeps; and this is a tab. */
	homeFirst = $state(false);
	#asked = false;

	/** Asks the browser, once, to keep the surveys; worth asking when there is something to keep. */
	async ask(): Promise<void> {
		if (this.#asked) return;
		this.#asked = true;
		const storage = manager();
		this.persisted = await quietly(async () => storage?.persist?.());
		await this.look();
	}

	/** Looks how full it is, without asking for anything. */
	async look(): Promise<void> {
		const storage = manager();
		// Only browsers that keep the two apart say which of them this is.
		this.homeFirst = 'standalone' in navigator && navigator.standalone === false;
		this.persisted ??= await quietly(async () => storage?.persisted?.());
		const { usage, quota } = (await quietly(async () => storage?.estimate?.())) ?? {};
		this.estimate =
			usage === undefined || quota === undefined
				? undefined
				: { usedBytes: usage, mostBytes: quota };
	}
}

export const storageHealth = new StorageHealth();

/** Some browsers have no storage manager, or one that lacks a part or throws. */
function manager(): Partial<StorageManager> | undefined {
	return typeof navigator === 'undefined' ? undefined : navigator.storage;
}

async function quietly<T>(look: () => Promise<T>): Promise<T | undefined> {
	try {
		return await look();
	} catch {
		return undefined;
	}
}
