import { compareCommands, type Command } from '#lib/core/survey/command.ts';
import { sortLog, type Quarantined } from '#lib/core/survey/log.ts';
import { SCHEMA_VERSION } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { StoredBlob } from '../file/write-survey-file.ts';
import type {
	LogPosition,
	SiteBatch,
	SiteMarks,
	SiteSummary,
	StoredSite,
	SurveyStore
} from '../port.ts';

interface Kept {
	summary: SiteSummary;
	readonly log: Map<string, Command>;
	readonly quarantined: Map<string, Quarantined>;
}

/**
 * Keeps surveys while the page is open and not a moment longer: for browsers that let it keep nothing
 * else. Whoever uses it has to say so to the user.
 */
export class MemoryStore implements SurveyStore {
	readonly lasting = false;
	readonly #sites = new Map<string, Kept>();
	readonly #blobs = new Map<string, StoredBlob>();
	#device: string | undefined;

	ownDevice(made: string): Promise<Result<string>> {
		this.#device ??= made;
		return settled(this.#device);
	}

	listSites(): Promise<Result<readonly SiteSummary[]>> {
		return settled([...this.#sites.values()].map(({ summary }) => summary));
	}

	openSite(siteId: string): Promise<Result<StoredSite>> {
		const site = this.#sites.get(siteId);
		if (!site) return Promise.resolve(refuse('site-unknown', { siteId }));
		const tail = sortLog([...site.log.values()]);
		return settled({ summary: site.summary, checkpoint: undefined, tail });
	}

	aboutVersion(siteId: string): ReturnType<SurveyStore['aboutVersion']> {
		const site = this.#sites.get(siteId);
		if (!site) return Promise.resolve(refuse('site-unknown', { siteId }));
		return settled({ name: site.summary.name, schemaVersion: SCHEMA_VERSION });
	}

	readLog(siteId: string, upTo?: LogPosition): Promise<Result<readonly Command[]>> {
		const log = sortLog([...(this.#sites.get(siteId)?.log.values() ?? [])]);
		return settled(
			upTo ? log.filter((command) => compareCommands(command, { ...command, ...upTo }) <= 0) : log
		);
	}

	readQuarantined(siteId: string): Promise<Result<readonly Quarantined[]>> {
		return settled([...(this.#sites.get(siteId)?.quarantined.values() ?? [])]);
	}

	readBlob(sha256: string): Promise<Result<StoredBlob | undefined>> {
		return settled(this.#blobs.get(sha256));
	}

	write(siteId: string, batch: SiteBatch): Promise<Result<null>> {
		const before = this.#sites.get(siteId);
		const log = before?.log ?? new Map<string, Command>();
		const quarantined = before?.quarantined ?? new Map<string, Quarantined>();
		for (const command of batch.commands) log.set(command.id, command);
		for (const record of batch.quarantined ?? []) quarantined.set(JSON.stringify(record), record);
		for (const blob of batch.blobs) this.#blobs.set(blob.sha256, blob);
		const removed = batch.restore ? undefined : before?.summary.removed;
		const commandCount = log.size;
		const merges = [...(before?.summary.merges ?? []), ...(batch.merge ? [batch.merge] : [])];
		const summary = {
			...before?.summary,
			...batch.about,
			id: siteId,
			commandCount,
			removed,
			merges
		};
		this.#sites.set(siteId, { summary, log, quarantined });
		return settled(null);
	}

	/** There is nothing to be quicker for: all of it is in memory. */
	saveCheckpoint(): Promise<Result<boolean>> {
		return settled(false);
	}

	markSite(siteId: string, marks: SiteMarks): Promise<Result<null>> {
		const site = this.#sites.get(siteId);
		if (!site) return Promise.resolve(refuse('site-unknown', { siteId }));
		site.summary = { ...site.summary, ...marks };
		return settled(null);
	}

	/** What is in memory goes with the page. */
	sweepStrays(): Promise<Result<number>> {
		return settled(0);
	}

	releasePictures(): Promise<Result<number | undefined>> {
		return settled(undefined);
	}

	close(): void {
		this.#sites.clear();
		this.#blobs.clear();
	}
}

function settled<T>(value: T): Promise<Result<T>> {
	return Promise.resolve(ok(value));
}
