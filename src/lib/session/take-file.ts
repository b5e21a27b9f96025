import { clashesBetween, type Clash } from '#lib/core/survey/clashes.ts';
import type { Command } from '#lib/core/survey/command.ts';
import { fold, mergeLogs, readLog, type Conflict, type Quarantined } from '#lib/core/survey/log.ts';
import { leaksInOrder } from '#lib/core/survey/leak-state.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { ok, type Result } from '#lib/core/units/result.ts';
import { readSurveyFile, type OpenedFile } from '#lib/storage/file/read-survey-file.ts';
import type { MergeReport, SurveyStore } from '#lib/storage/port.ts';
import { aboutSite } from './about-site.ts';
import { OtherTabs } from './other-tabs.ts';
import { newId } from './identity.ts';
import { checkpointOf } from './working-log.ts';

/** What taking a file in has done. */
export interface FileTaken {
	readonly siteId: string;
	readonly siteName: string;
	/** Whether the site was not on this device before. */
	readonly isNew: boolean;
	/** Commands that were not known here; none when the file held nothing new. */
	readonly addedCommands: number;
	readonly conflicts: readonly Conflict[];
	/** What this device and the file had each changed in its own way. */
	readonly clashes: readonly Clash[];
	/** Tag numbers that more than one leak has now; Walk offers to give one of them another. */
	readonly tagsTwice: readonly number[];
	readonly quarantined: readonly Quarantined[];
	/** Hashes of pictures that the survey names and the file does not hold. */
	readonly missingBlobs: readonly string[];
}

/**
 * Takes a survey file in: as a new site, or merged into the one that is here. All of it is written
 * or nothing; the same file twice changes nothing the second time.
 *
 * @returns a refusal of `readSurveyFile` or of the store
 */
export async function takeFile(
	store: SurveyStore,
	bytes: Uint8Array,
	at: string
): Promise<Result<FileTaken>> {
	const file = await readSurveyFile(bytes);
	if (!file.ok) return file;
	const { siteId } = file.value;
	const stored = await store.openSite(siteId);
	if (!stored.ok && stored.error.code !== 'site-unknown') return stored;
	const kept = await store.readLog(siteId);
	if (!kept.ok) return kept;
	const known = readLog(kept.value).commands;
	const taken = await merge(store, known, file.value, at);
	if (!taken.ok) return taken;
	const { savedAt } = file.value;
	if (!stored.ok && savedAt !== undefined) {
		const lastFile = { at: savedAt, commandCount: taken.value.addedCommands };
		await store.markSite(siteId, { lastFile });
	}
	return ok({ ...taken.value, isNew: !stored.ok });
}

async function merge(
	store: SurveyStore,
	known: readonly Command[],
	file: OpenedFile,
	at: string
): Promise<Result<Omit<FileTaken, 'isNew'>>> {
	const { siteId, blobs, quarantined, missingBlobs } = file;
	const merged = mergeLogs(known, file.commands);
	const folded = fold(merged);
	if (!folded.ok) return folded;
	const { survey, conflicts } = folded.value;
	const here = new Set(known.map(({ id }) => id));
	const commands = merged.filter(({ id }) => !here.has(id));
	const about = aboutSite(survey, at);
	const found = {
		addedCommands: commands.length,
		clashes: known.length > 0 ? clashesBetween(known, file.commands, survey) : [],
		tagsTwice: tagsTwice(survey)
	};
	const isMerge = commands.length > 0 && known.length > 0;
	const merge = isMerge ? reportOf(found, file, newConflicts(known, conflicts), at) : undefined;
	const batch = { commands, blobs, quarantined, about, restore: true, merge };
	const written = await store.write(siteId, batch);
	if (!written.ok) return written;
	const device = await store.ownDevice(newId('device'));
	const checkpoint = device.ok ? checkpointOf(merged, device.value) : undefined;
	if (checkpoint) await store.saveCheckpoint(siteId, checkpoint);
	const tabs = new OtherTabs(siteId, () => undefined);
	tabs.tell(commands);
	tabs.close();
	return ok({
		siteId,
		siteName: survey.site.name,
		...found,
		conflicts,
		quarantined,
		missingBlobs
	});
}

/** What a merge left for a person to look at; nothing when all of it went together by itself. */
function reportOf(
	found: Pick<MergeReport, 'addedCommands' | 'clashes' | 'tagsTwice'>,
	{ quarantined, missingBlobs }: OpenedFile,
	conflicts: number,
	at: string
): MergeReport | undefined {
	const report = {
		...found,
		at,
		conflicts,
		quarantined: quarantined.length,
		missingPictures: missingBlobs.length
	};
	const left =
		report.clashes.length +
		report.tagsTwice.length +
		report.conflicts +
		report.quarantined +
		report.missingPictures;
	return left > 0 ? report : undefined;
}

/** How many changes fit no longer that did before the two came together. */
function newConflicts(known: readonly Command[], conflicts: readonly Conflict[]): number {
	const before = fold(known);
	const old = new Set(before.ok ? before.value.conflicts.map(({ command }) => command.id) : []);
	return conflicts.filter(({ command }) => !old.has(command.id)).length;
}

function tagsTwice(survey: Survey): readonly number[] {
	const tags = leaksInOrder(survey).map(({ tag }) => tag);
	return [...new Set(tags.filter((tag, index) => tags.indexOf(tag) !== index))];
}
