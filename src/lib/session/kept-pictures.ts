import type { Command } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { blobsNamedBy, shownIn } from '#lib/storage/file/named-blobs.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';

/** What the pictures of a site take up on this device. */
export interface KeptPictures {
	readonly count: number;
	readonly bytes: number;
	/** Of these, what only undo would bring back: replaced, removed, or added and taken back. */
	readonly unused: readonly string[];
	readonly unusedBytes: number;
	/** Shown by the survey, and not on this device. */
	readonly missing: number;
}

/** Adds up a site's pictures; they are read one after the other, so that few are in memory at once. */
export async function keptPictures(
	commands: readonly Command[],
	survey: Survey,
	read: (sha256: string) => Promise<StoredBlob | undefined>
): Promise<KeptPictures> {
	const used = new Set(shownIn(survey).map(({ sha256 }) => sha256));
	const unused: string[] = [];
	let [count, bytes, unusedBytes, missing] = [0, 0, 0, 0];
	for (const { sha256 } of blobsNamedBy(commands)) {
		const blob = await read(sha256);
		if (!blob) {
			if (used.has(sha256)) missing++;
			continue;
		}
		count++;
		bytes += blob.bytes.length;
		if (used.has(sha256)) continue;
		unusedBytes += blob.bytes.length;
		unused.push(sha256);
	}
	return { count, bytes, unused, unusedBytes, missing };
}
