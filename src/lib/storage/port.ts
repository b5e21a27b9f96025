import type { Clash } from '#lib/core/survey/clashes.ts';
import type { Command } from '#lib/core/survey/command.ts';
import type { Conflict, Quarantined } from '#lib/core/survey/log.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import type { Result } from '#lib/core/units/result.ts';
import type { StoredBlob } from './file/write-survey-file.ts';

/** Where a command stands in the one order of a log. */
export interface LogPosition {
	readonly time: number;
	readonly device: string;
	readonly id: string;
}

/** The survey as it stood after so many commands, so that opening a site need not replay them. */
export interface Checkpoint {
	readonly survey: Survey;
	readonly conflicts: readonly Conflict[];
	/** The last command in it, and how many there were up to that one. */
	readonly upTo: LogPosition;
	readonly commandCount: number;
}

export interface SiteCounts {
	/** Leaks that are not removed, and how they stand in the latest round. */
	readonly leaks: number;
	readonly leaking: number;
	readonly mended: number;
	readonly tight: number;
}

/** What the list of sites shows of one. */
export interface SiteSummary {
	readonly id: string;
	readonly name: string;
	readonly currency: string;
	/** Of the latest round. */
	readonly roundName?: string | undefined;
	readonly counts: SiteCounts;
	readonly commandCount: number;
	readonly updatedAt: string;
	/** The last survey file made of it, and how many commands that held. */
	readonly lastFile?: LastFile | undefined;
	readonly removed?: boolean | undefined;
	readonly merges?: readonly MergeReport[] | undefined;
}

/** What merging a file in left for a person to look at; it stays with the site until that was done. */
export interface MergeReport {
	readonly at: string;
	readonly addedCommands: number;
	/** What both copies had changed, each in its own way. */
	readonly clashes: readonly Clash[];
	readonly tagsTwice: readonly number[];
	readonly conflicts: number;
	readonly quarantined: number;
	readonly missingPictures: number;
}

export interface LastFile {
	readonly at: string;
	readonly commandCount: number;
}

export interface StoredSite {
	readonly summary: SiteSummary;
	readonly checkpoint: Checkpoint | undefined;
	/** Commands after the checkpoint, in order; all of them when there is none. */
	readonly tail: readonly Command[];
}

/** What is noted of a site beside its survey. */
export type SiteMarks = Pick<SiteSummary, 'lastFile' | 'removed' | 'merges'>;

/** What is written together or not at all. */
export interface SiteBatch {
	readonly commands: readonly Command[];
	readonly blobs: readonly StoredBlob[];
	readonly quarantined?: readonly Quarantined[];
	readonly about: Pick<SiteSummary, 'name' | 'currency' | 'roundName' | 'counts' | 'updatedAt'>;
	/** Brings a removed site back. */
	readonly restore?: boolean;
	/** Kept with the site in the same transaction, so that no kill comes between. */
	readonly merge?: MergeReport | undefined;
}

/**
 * Keeps surveys. A write that gives `ok` is on the disk; anything else is a refusal:
 * `storage-unavailable` (it cannot be opened), `storage-newer` (a newer program wrote it),
 * `storage-full`, `write-failed`, `read-failed` or `site-unknown`.
 */
export interface SurveyStore {
	/** Whether what was written outlives the page. */
	readonly lasting: boolean;
	/** This device's name in logs: the one kept, else the one given, which is kept from then on. */
	ownDevice(made: string): Promise<Result<string>>;
	listSites(): Promise<Result<readonly SiteSummary[]>>;
	/** Also refused, `site-newer`, when a newer program wrote the site. */
	openSite(siteId: string): Promise<Result<StoredSite>>;
	/** What wrote a site last, also of one that `openSite` refuses. */
	aboutVersion(
		siteId: string
	): Promise<Result<{ readonly name: string; readonly schemaVersion: number }>>;
	/** The log in order, up to a position when one is given, that one included. */
	readLog(siteId: string, upTo?: LogPosition): Promise<Result<readonly Command[]>>;
	readQuarantined(siteId: string): Promise<Result<readonly Quarantined[]>>;
	readBlob(sha256: string): Promise<Result<StoredBlob | undefined>>;
	/** Writing the same batch twice is the same as writing it once. */
	write(siteId: string, batch: SiteBatch): Promise<Result<null>>;
	/** Not kept, `false`, when the log up to there is not the one that the checkpoint was made of. */
	saveCheckpoint(siteId: string, checkpoint: Checkpoint): Promise<Result<boolean>>;
	markSite(siteId: string, marks: SiteMarks): Promise<Result<null>>;
	/** Deletes pictures that nothing has named for a week, and says how many. */
	sweepStrays(at: string): Promise<Result<number>>;
	/**
	 * Deletes pictures of a site that its last survey file holds and that it shows no more; `undefined`
	 * when the site is not the one of so many commands, or not all of it is in a file.
	 */
	releasePictures(
		siteId: string,
		sha256s: readonly string[],
		commandCount: number
	): Promise<Result<number | undefined>>;
	close(): void;
}
