import type { ShrunkPhoto } from '#lib/plan/shrink-photo.ts';

/** Addresses of photos that belong to no leak yet, one for each, until they are given back. */
export class DraftPictures {
	readonly #addresses = new Map<string, Promise<string>>();

	of({ bytes, mediaType, sha256 }: ShrunkPhoto): Promise<string> {
		const known = this.#addresses.get(sha256);
		if (known) return known;
		const address = Promise.resolve(URL.createObjectURL(new Blob([bytes], { type: mediaType })));
		this.#addresses.set(sha256, address);
		return address;
	}

	giveBack(): void {
		for (const address of this.#addresses.values())
			void address.then((made) => URL.revokeObjectURL(made));
		this.#addresses.clear();
	}
}
