import { ok, type Result } from '#lib/core/units/result.ts';
import { namedIn } from '#lib/storage/file/named-blobs.ts';
import { writeUnreadFile, type StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import type { SurveyStore } from '#lib/storage/port.ts';

/**
 * A survey file of a site that a newer program wrote. This program cannot know what all of it means,
 * so it shows none of it, and hands every record on as it lies there.
 *
 * @returns the site's name and its file, or a refusal of the store
 */
export async function fileOfUnread(
	store: SurveyStore,
	siteId: string,
	savedAt: string
): Promise<Result<{ readonly name: string; readonly bytes: Uint8Array }>> {
	const about = await store.aboutVersion(siteId);
	if (!about.ok) return about;
	const records = await store.readLog(siteId);
	if (!records.ok) return records;
	const quarantined = await store.readQuarantined(siteId);
	if (!quarantined.ok) return quarantined;
	const blobs: StoredBlob[] = [];
	for (const { sha256 } of namedIn(records.value)) {
		const read = await store.readBlob(sha256);
		if (!read.ok) return read;
		if (read.value) blobs.push(read.value);
	}
	const { name, schemaVersion } = about.value;
	const bytes = await writeUnreadFile({
		about: { schemaVersion, savedAt, siteId, siteName: name },
		records: records.value,
		quarantined: quarantined.value,
		blobs
	});
	return ok({ name, bytes });
}
