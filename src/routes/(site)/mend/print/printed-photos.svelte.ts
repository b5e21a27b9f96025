import type { JobPhoto, ReportModel } from '#lib/report/model.ts';
import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';
import { PHOTO_PX, pictureOf } from '../make-fix-list.ts';

/** So many more are drawn before the page shows them. */
const AT_ONCE = 12;

/** The photos of a printed page, small enough that some hundred of them fit into a phone. */
export class PrintedPhotos {
	/** Addresses by SHA-256, as far as they are drawn. */
	addresses = $state.raw<Readonly<Record<string, string>>>({});
	/** 0 to 1. */
	done = $state(0);
	readonly #stop = new AbortController();

	async draw(open: OpenSurvey, { groups }: ReportModel): Promise<void> {
		const photos: readonly JobPhoto[] = Object.values(
			Object.fromEntries(
				groups.flatMap(({ rows }) =>
					rows.flatMap(({ photo }) => (photo ? [[photo.sha256, photo]] : []))
				)
			)
		);
		const drawn: Record<string, string> = {};
		let at = 0;
		for (const photo of photos) {
			const picture = await pictureOf(open, photo, PHOTO_PX);
			if (this.#stop.signal.aborted) break;
			if (picture) {
				const bytes = picture.bytes as Uint8Array<ArrayBuffer>;
				drawn[photo.sha256] = URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' }));
			}
			at++;
			if (at % AT_ONCE === 0) this.#show(drawn, at / photos.length);
		}
		this.#show(drawn, 1);
		if (this.#stop.signal.aborted) this.#giveBack();
	}

	close(): void {
		this.#stop.abort();
		if (this.done === 1) this.#giveBack();
	}

	#show(drawn: Readonly<Record<string, string>>, done: number): void {
		this.addresses = { ...drawn };
		this.done = done;
	}

	#giveBack(): void {
		for (const address of Object.values(this.addresses)) URL.revokeObjectURL(address);
		this.addresses = {};
	}
}
