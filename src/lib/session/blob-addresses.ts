import { knownMediaType } from '#lib/core/survey/blob-kinds.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';

/** Addresses under which a page can show stored pictures: one for each, until they are given back. */
export class BlobAddresses {
	readonly #read: (sha256: string) => Promise<StoredBlob | undefined>;
	readonly #addresses = new Map<string, Promise<string | undefined>>();

	constructor(read: (sha256: string) => Promise<StoredBlob | undefined>) {
		this.#read = read;
	}

	/** Nothing when the picture is not on this device; it is looked for again the next time. */
	of(sha256: string): Promise<string | undefined> {
		const known = this.#addresses.get(sha256);
		if (known) return known;
		const address = this.#make(sha256);
		this.#addresses.set(sha256, address);
		return address;
	}

	giveBack(): void {
		for (const address of this.#addresses.values()) {
			void address.then((made) => {
				if (made !== undefined) URL.revokeObjectURL(made);
			});
		}
		this.#addresses.clear();
	}

	async #make(sha256: string): Promise<string | undefined> {
		const blob = await this.#read(sha256);
		if (!blob) {
			this.#addresses.delete(sha256);
			return undefined;
		}
		const { bytes, mediaType } = blob;
		const parts = [bytes as Uint8Array<ArrayBuffer>];
		return URL.createObjectURL(new Blob(parts, { type: knownMediaType(mediaType) }));
	}
}
