import type { Command } from '#lib/core/survey/command.ts';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import { Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Refusal, type Result } from '#lib/core/units/result.ts';
import { IndexedDbStore } from '#lib/storage/indexed-db/indexed-db-store.ts';
import type { SiteSummary, SurveyStore } from '#lib/storage/port.ts';
import { aboutSite } from './about-site.ts';
import { newId, now } from './identity.ts';
import type { OpenSurvey } from './open-survey.svelte.ts';
import type { OpenSurveys } from './open-surveys.ts';
import { storageHealth } from './storage-health.svelte.ts';
import type { FileTaken } from './take-file.ts';
import { fileOfUnread } from './unread-file.ts';
import { VisitStore } from './visit-store.ts';

/** The sites on this device. */
export class Sites {
	/** Those that are not removed, the last changed first; as they were when last loaded. */
	list = $state.raw<readonly SiteSummary[]>([]);
	/** This browser lets the page keep nothing: what is recorded lasts as long as the page. */
	onlyInMemory = $state(false);
	/** Why the list could not be read. */
	problem = $state.raw<Refusal>();

	readonly #store: SurveyStore;
	#open: Promise<OpenSurveys> | undefined;

	constructor(store: SurveyStore) {
		this.#store = store;
	}

	async load(): Promise<Result<readonly SiteSummary[]>> {
		const read = await this.#store.listSites();
		this.problem = read.ok ? undefined : read.error;
		if (!read.ok) return read;
		this.list = read.value
			.filter(({ removed }) => !removed)
			.toSorted((a, b) => Date.parse(b.updatedAt) - Date.parse(a.updatedAt));
		return ok(this.list);
	}

	/** @returns the id of the new site, which is on the disk then */
	async create(name: string, currency: string, roundName: string): Promise<Result<string>> {
		const device = await this.#store.ownDevice(newId('device'));
		if (!device.ok) return device;
		const at = now();
		const round = { id: newId('round'), name: roundName, startedAt: at };
		const made = Survey.safeParse(newSurvey({ id: newId('site'), name, currency }, round));
		if (!made.success) {
			return refuse('field-invalid', { field: made.error.issues[0]?.path.join('.') ?? '' });
		}
		const survey = made.data;
		const start: Command = {
			id: newId('command'),
			device: device.value,
			time: 0,
			at,
			body: { kind: 'start-site', survey }
		};
		const about = aboutSite(survey, at);
		const written = await this.#store.write(survey.site.id, {
			commands: [start],
			blobs: [],
			about
		});
		if (!written.ok) return written;
		await this.load();
		return ok(survey.site.id);
	}

	/** Takes a survey file in: as a new site, or merged into the one of that id that is here. */
	async takeFile(bytes: Uint8Array): Promise<Result<FileTaken>> {
		// Reading files is a large part that the list does without until one is opened.
		const { takeFile } = await import('./take-file.ts');
		const taken = await takeFile(this.#store, bytes, now());
		if (taken.ok) await this.load();
		return taken;
	}

	/** The file of a site that `open` refuses because a newer version wrote it. */
	fileOfUnread(siteId: string): ReturnType<typeof fileOfUnread> {
		return fileOfUnread(this.#store, siteId, now());
	}

	/** Marks a site as removed; nothing of it is lost, and `restore` brings it back. */
	remove(siteId: string): Promise<Result<null>> {
		return this.#mark(siteId, true);
	}

	restore(siteId: string): Promise<Result<null>> {
		return this.#mark(siteId, false);
	}

	async open(siteId: string): Promise<Result<OpenSurvey>> {
		// What edits a survey is a large part that the list does without.
		this.#open ??= import('./open-surveys.ts')
			.then(({ OpenSurveys }) => new OpenSurveys(this.#store, () => void storageHealth.ask()))
			.catch((error: unknown) => {
				// A part that could not be loaded is asked for again the next time.
				this.#open = undefined;
				throw error;
			});
		return (await this.#open).open(siteId);
	}

	async #mark(siteId: string, removed: boolean): Promise<Result<null>> {
		const marked = await this.#store.markSite(siteId, { removed });
		if (marked.ok) await this.load();
		return marked;
	}
}

/** The sites of this browser. */
export const sites = new Sites(
	new VisitStore(new IndexedDbStore(), () => (sites.onlyInMemory = true))
);

/** Opens a site; let it go with its `close()`. */
export const openSite = (siteId: string): Promise<Result<OpenSurvey>> => sites.open(siteId);
