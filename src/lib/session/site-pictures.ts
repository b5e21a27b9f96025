import type { Command } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { blobsNamedBy } from '#lib/storage/file/named-blobs.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import type { SurveyStore } from '#lib/storage/port.ts';
import { BlobAddresses } from './blob-addresses.ts';
import { keptPictures, type KeptPictures } from './kept-pictures.ts';

/** A disk that fails so often is not asked again: each try may take seconds, and the file is waited for. */
const TRIES = 2;

type Waiting = (sha256: string) => StoredBlob | undefined;

/** The pictures of an open site: those that wait to be written, and those that are on the disk. */
export class SitePictures {
	readonly #store: Pick<SurveyStore, 'readBlob'>;
	readonly #waiting: Waiting;
	readonly #addresses = new BlobAddresses((sha256) => this.read(sha256));

	/** @param waiting those that are not on the disk yet */
	constructor(store: Pick<SurveyStore, 'readBlob'>, waiting: Waiting) {
		this.#store = store;
		this.#waiting = waiting;
	}

	/** An address for a picture; nothing when its bytes are not on this device. */
	address(sha256: string): Promise<string | undefined> {
		return this.#addresses.of(sha256);
	}

	/** What they take up here. */
	kept(commands: readonly Command[], survey: Survey): Promise<KeptPictures> {
		return keptPictures(commands, survey, (sha256) => this.read(sha256));
	}

	/** All that commands name, for a file; those that cannot be read now are missing in it. */
	async namedBy(commands: readonly Command[]): Promise<readonly StoredBlob[]> {
		const blobs: StoredBlob[] = [];
		let failures = 0;
		for (const { sha256 } of blobsNamedBy(commands)) {
			const waiting = this.#waiting(sha256);
			if (waiting) blobs.push(waiting);
			if (waiting || failures >= TRIES) continue;
			const read = await this.#store.readBlob(sha256);
			if (!read.ok) failures++;
			else if (read.value) blobs.push(read.value);
		}
		return blobs;
	}

	giveBack(): void {
		this.#addresses.giveBack();
	}

	/** The bytes of a picture; nothing when they are not on this device. */
	read(sha256: string): Promise<StoredBlob | undefined> {
		const waiting = this.#waiting(sha256);
		if (waiting) return Promise.resolve(waiting);
		return this.#store.readBlob(sha256).then((read) => (read.ok ? read.value : undefined));
	}
}
