import type { Clash } from '#lib/core/survey/clashes.ts';
import { clashSentence } from './clashes.ts';
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

/** So many clashes are told one by one; the log holds them all. */
const MOST_TOLD = 20;

/** Whether the reader has to be told more than that the site is there. */
export function isPlainlyNew(outcome: FileOutcome): boolean {
	const { isNew, conflicts, quarantined, missingPictures, tagsTwice } = outcome;
	return isNew && conflicts + quarantined + missingPictures + tagsTwice.length === 0;
}

/** What opening a survey file did, in plain sentences, the main one first. */
export function fileNews(outcome: FileOutcome, count: Format['count']): readonly string[] {
	const { siteName, isNew, addedCommands, conflicts, quarantined, missingPictures } = outcome;
	const { clashes, tagsTwice } = outcome;
	const many = (number: number, one: string, more: string) =>
		number === 1 ? `One ${one}` : `${count(number)} ${more}`;
	const main = isNew
		? `${siteName} is on this device now.`
		: addedCommands === 0
			? `${siteName} was here already, and the file held nothing new.`
			: `${many(addedCommands, 'change was', 'changes were')} taken into ${siteName}; nothing here was overwritten.`;
	return [
		main,
		...clashes.slice(0, MOST_TOLD).map((clash) => clashSentence(clash, count)),
		...(clashes.length > MOST_TOLD
			? [`${count(clashes.length - MOST_TOLD)} more were changed on both sides.`]
			: []),
		...(tagsTwice.length > 0
			? [
					`Tag numbers used twice: ${tagsTwice.map(count).join(', ')}. Walk offers a free number for each.`
				]
			: []),
		...(conflicts > 0
			? [`${many(conflicts, 'change', 'changes')} no longer fitted: listed at the end of Set up.`]
			: []),
		...(quarantined > 0
			? [
					`${many(quarantined, 'record', 'records')} could not be read: set aside, not lost, and listed at the end of Set up.`
				]
			: []),
		...(missingPictures > 0
			? [
					`${many(missingPictures, 'picture is', 'pictures are')} missing from the file or damaged in it.`
				]
			: [])
	];
}
