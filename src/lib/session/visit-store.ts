import type { Result } from '#lib/core/units/result.ts';
import { MemoryStore } from '#lib/storage/memory/memory-store.ts';
import type { SurveyStore } from '#lib/storage/port.ts';

type Work<T> = (store: SurveyStore) => Promise<Result<T>>;

/**
 * The store of this visit: the disk; or memory, where the disk could not be opened from the start. It
 * never changes over once something was read from the disk or written to it: a disk that fails later
 * is waited for, and nothing on it is touched meanwhile.
 */
export class VisitStore implements SurveyStore {
	readonly #disk: SurveyStore;
	readonly #memory = new MemoryStore();
	readonly #onMemory: () => void;
	#answered = false;
	#inMemory = false;

	/** @param onMemory called once, when this visit goes on without a disk */
	constructor(disk: SurveyStore, onMemory: () => void) {
		this.#disk = disk;
		this.#onMemory = onMemory;
	}

	get lasting(): boolean {
		return !this.#inMemory;
	}

	readonly ownDevice: SurveyStore['ownDevice'] = (made) => this.#run((at) => at.ownDevice(made));
	readonly listSites: SurveyStore['listSites'] = () => this.#run((at) => at.listSites());
	readonly openSite: SurveyStore['openSite'] = (siteId) => this.#run((at) => at.openSite(siteId));
	readonly aboutVersion: SurveyStore['aboutVersion'] = (siteId) =>
		this.#run((at) => at.aboutVersion(siteId));
	readonly readLog: SurveyStore['readLog'] = (siteId, upTo) =>
		this.#run((at) => at.readLog(siteId, upTo));
	readonly readQuarantined: SurveyStore['readQuarantined'] = (siteId) =>
		this.#run((at) => at.readQuarantined(siteId));
	readonly readBlob: SurveyStore['readBlob'] = (sha256) => this.#run((at) => at.readBlob(sha256));
	readonly write: SurveyStore['write'] = (siteId, batch) =>
		this.#run((at) => at.write(siteId, batch));
	readonly saveCheckpoint: SurveyStore['saveCheckpoint'] = (siteId, checkpoint) =>
		this.#run((at) => at.saveCheckpoint(siteId, checkpoint));
	readonly markSite: SurveyStore['markSite'] = (siteId, marks) =>
		this.#run((at) => at.markSite(siteId, marks));

	readonly sweepStrays: SurveyStore['sweepStrays'] = (at) => this.#run((on) => on.sweepStrays(at));
	readonly releasePictures: SurveyStore['releasePictures'] = (siteId, sha256s, commandCount) =>
		this.#run((at) => at.releasePictures(siteId, sha256s, commandCount));

	close(): void {
		this.#disk.close();
		this.#memory.close();
	}

	async #run<T>(work: Work<T>): Promise<Result<T>> {
		if (this.#inMemory) return work(this.#memory);
		const done = await work(this.#disk);
		const unavailable = !done.ok && done.error.code === 'storage-unavailable';
		if (!unavailable) this.#answered = true;
		if (!unavailable || this.#answered) return done;
		if (!this.#inMemory) {
			this.#inMemory = true;
			this.#onMemory();
		}
		return work(this.#memory);
	}
}
