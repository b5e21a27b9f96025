import type { Format } from './format.ts';

/** What opening a survey file did, in numbers. */
export interface FileOutcome {
	readonly siteName: string;
	readonly isNew: boolean;
	readonly addedCommands: number;
	readonly conflicts: number;
	readonly quarantined: number;
	readonly missingPictures: number;
}

/** Whether the reader has to be told more than that the site is there. */
export function isPlainlyNew(outcome: FileOutcome): boolean {
	const { isNew, conflicts, quarantined, missingPictures } = outcome;
	return isNew && conflicts + quarantined + missingPictures === 0;
}

/** What opening a survey file did, in plain sentences, the main one first. */
export function fileNews(outcome: FileOutcome, count: Format['count']): readonly string[] {
	const { siteName, isNew, addedCommands, conflicts, quarantined, missingPictures } = outcome;
	const many = (number: number, one: string, more: string) =>
		number === 1 ? `One ${one}` : `${count(number)} ${more}`;
	const main = isNew
		? `${siteName} is on this device now.`
		: addedCommands === 0
			? `${siteName} was here already, and the file held nothing new.`
			: `${many(addedCommands, 'change was', 'changes were')} taken into ${siteName}; nothing here was overwritten.`;
	return [
		main,
		...(conflicts > 0
			? [`${many(conflicts, 'change', 'changes')} no longer fitted and can be looked at there.`]
			: []),
		...(quarantined > 0
			? [`${many(quarantined, 'record', 'records')} could not be read: set aside, not lost.`]
			: []),
		...(missingPictures > 0
			? [
					`${many(missingPictures, 'picture is', 'pictures are')} missing from the file or damaged in it.`
				]
			: [])
	];
}
