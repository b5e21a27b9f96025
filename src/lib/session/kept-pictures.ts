import type { Command } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { blobsNamedBy, namedIn } from '#lib/storage/file/named-blobs.ts';
import type { StoredBlob } from '#lib/storage/file/write-survey-file.ts';

/** What the pictures of a site take up on this device. */
export interface KeptPictures {
	readonly count: number;
	readonly bytes: number;
	/** Of these, what only undo would bring back: replaced, or added and taken back. */
	readonly unusedBytes: number;
	/** Named by the survey, and not on this device. */
	readonly missing: number;
}

/** Adds up a site's pictures; they are read one after the other, so that few are in memory at once. */
export async function keptPictures(
	commands: readonly Command[],
	survey: Survey,
	read: (sha256: string) => Promise<StoredBlob | undefined>
): Promise<KeptPictures> {
	const used = new Set(namedIn(survey).map(({ sha256 }) => sha256));
	let [count, bytes, unusedBytes, missing] = [0, 0, 0, 0];
	for (const { sha256 } of blobsNamedBy(commands)) {
		const blob = await read(sha256);
		if (!blob) missing++;
		else {
			count++;
			bytes += blob.bytes.length;
			if (!used.has(sha256)) unusedBytes += blob.bytes.length;
		}
	}
	return { count, bytes, unusedBytes, missing };
}
