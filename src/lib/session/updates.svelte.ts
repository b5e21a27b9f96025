/**
 * New versions of the app. One that was fetched waits until the user lets it take over, so that
 * nothing changes under a survey that is being made.
 */
class Updates {
	/** A new version is there and waits. */
	updateReady = $state(false);
	/** Files that could not be kept for use offline. */
	notKept = $state.raw<readonly string[]>([]);
	#registration: ServiceWorkerRegistration | undefined;
	#taking = false;
	#tookOver = false;

	/** Watches for new versions from now on; where there are no service workers it does nothing. */
	async watch(): Promise<void> {
		const workers = typeof navigator === 'undefined' ? undefined : navigator.serviceWorker;
		if (!workers || this.#registration) return;
		workers.addEventListener('message', ({ data }: MessageEvent<unknown>) => this.#heard(data));
		let controlled = workers.controller !== null;
		workers.addEventListener('controllerchange', () => {
			if (this.#taking) location.reload();
			// Another tab has let it take over; this one still runs the version before.
			else if (controlled) this.updateReady = this.#tookOver = true;
			controlled = true;
		});
		const registration = await workers.ready;
		this.#registration = registration;
		this.#look(registration);
		registration.addEventListener('updatefound', () => {
			const coming = registration.installing;
			coming?.addEventListener('statechange', () => this.#look(registration));
		});
	}

	/** Lets the version that waits take over, and loads the page anew with it. */
	takeOver(): void {
		this.#taking = true;
		if (this.#tookOver) location.reload();
		else this.#registration?.waiting?.postMessage({ type: 'take-over' });
	}

	#look(registration: ServiceWorkerRegistration): void {
		if (registration.waiting !== null && registration.active !== null) this.updateReady = true;
	}

	#heard(data: unknown): void {
		const { type, paths } = (data ?? {}) as { type?: unknown; paths?: unknown };
		if (type === 'not-kept' && Array.isArray(paths)) this.notKept = paths.map(String);
	}
}

export const updates = new Updates();
