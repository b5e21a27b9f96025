import type { Clash } from '#lib/core/survey/clashes.ts';
import { clashSentence } from './clashes.ts';
import { files } from './files.ts';
import type { Format } from './format.ts';

/** What opening a survey file did, in numbers. */
export interface FileOutcome {
	readonly siteName: string;
	readonly isNew: boolean;
	readonly addedCommands: number;
	readonly conflicts: number;
	readonly clashes: readonly Clash[];
	readonly tagsTwice: readonly number[];
	readonly quarantined: number;
	readonly missingPictures: number;
}

/** So many clashes are told one by one where nothing else is said; the site keeps them all. */
const MOST_TOLD = 20;

/** Whether the reader has to be told more than that the site is there. */
export function isPlainlyNew(outcome: FileOutcome): boolean {
	const { isNew, conflicts, quarantined, missingPictures, tagsTwice } = outcome;
	return isNew && conflicts + quarantined + missingPictures + tagsTwice.length === 0;
}

/** What opening a survey file did, in plain sentences, the main one first. */
export function fileNews(
	outcome: FileOutcome,
	count: Format['count'],
	mostTold = MOST_TOLD
): readonly string[] {
	const { siteName, isNew, addedCommands, conflicts, quarantined, missingPictures } = outcome;
	const { clashes, tagsTwice } = outcome;
	const main = isNew
		? files.isHere(siteName)
		: addedCommands === 0
			? files.nothingNew(siteName)
			: files.taken(addedCommands, count(addedCommands), siteName);
	return [
		main,
		...clashes.slice(0, mostTold).map((clash) => clashSentence(clash, count)),
		...(clashes.length > mostTold ? [files.moreClashes(count(clashes.length - mostTold))] : []),
		...(tagsTwice.length > 0 ? [files.tagsTwice(tagsTwice.map(count).join(', '))] : []),
		...(conflicts > 0 ? [files.conflicts(conflicts, count(conflicts))] : []),
		...(quarantined > 0 ? [files.unreadable(quarantined, count(quarantined))] : []),
		...(missingPictures > 0 ? [files.pictures(missingPictures, count(missingPictures))] : [])
	];
}
