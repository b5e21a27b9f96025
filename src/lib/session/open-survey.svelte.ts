import { CommandBody, type Command, type CommandKind } from '#lib/core/survey/command.ts';
import { latestRound } from '#lib/core/survey/leak-state.ts';
import { readLog, type Conflict, type Quarantined } from '#lib/core/survey/log.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { startFromSurvey } from '#lib/storage/file/plain-survey.ts';
import { writeSurveyFile, type StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import type { LastFile, MergeReport, SiteSummary, SurveyStore } from '#lib/storage/port.ts';
import { aboutSite } from './about-site.ts';
import { History } from './history.ts';
import type { Identity } from './identity.ts';
import type { KeptPictures } from './kept-pictures.ts';
import { OtherTabs } from './other-tabs.ts';
import { pageDrawn } from './page-drawn.ts';
import { SitePictures } from './site-pictures.ts';
import { stepOf, type Entry } from './step.ts';
import type { WorkingLog } from './working-log.ts';
import { WriteQueue, type SaveState } from './write-queue.ts';

/** A site as it was read from the store. */
interface OpenedSite {
	readonly summary: SiteSummary;
	readonly log: WorkingLog;
	readonly quarantined: readonly Quarantined[];
	readonly identity: Identity;
	/** Called each time that something of the user's has reached the disk. */
	readonly afterSave?: () => void;
	readonly onClose: () => Promise<void>;
}

/**
 * A survey that is open. What the user does shows at once and is written behind it; until it is on
 * the disk it stays in memory, and `saveState` says so.
 */
export class OpenSurvey {
	readonly siteId: string;
	survey = $state.raw() as Survey;
	conflicts = $state.raw<readonly Conflict[]>([]);
	quarantined = $state.raw<readonly Quarantined[]>([]);
	saveState = $state.raw<SaveState>({ kind: 'saved' });
	canUndo = $state(false);
	canRedo = $state(false);
	/** What undo would take back. */
	lastDone = $state<CommandKind>();
	/** The last survey file made of it; with `commandCount` it tells whether one is due. */
	lastFile = $state.raw<LastFile>();
	commandCount = $state(0);
	/** What came of files that were merged in, until the reader says that it is dealt with. */
	merges = $state.raw<readonly MergeReport[]>([]);

	readonly #store: SurveyStore;
	readonly #identity: Identity;
	readonly #log: WorkingLog;
	readonly #history = new History();
	readonly #queue: WriteQueue;
	readonly #tabs: OtherTabs;
	readonly #pictures: SitePictures;
	readonly #older: Promise<void>;
	readonly #onClose: () => Promise<void>;

	constructor(store: SurveyStore, opened: OpenedSite) {
		const { summary, log, identity, quarantined, afterSave, onClose } = opened;
		this.siteId = summary.id;
		this.lastFile = summary.lastFile;
		this.merges = summary.merges ?? [];
		this.quarantined = quarantined;
		this.#store = store;
		this.#identity = identity;
		this.#log = log;
		this.#onClose = onClose;
		this.saveState = this.#lasting(this.saveState);
		this.#queue = new WriteQueue(store, this.siteId, {
			about: () => aboutSite(this.survey, identity.now()),
			onState: (state) => (this.saveState = this.#lasting(state)),
			onSaved: (commands) => {
				this.#tabs.tell(commands);
				afterSave?.();
				void this.#checkpoint();
			}
		});
		this.#tabs = new OtherTabs(this.siteId, (commands) => void this.#take(commands));
		this.#pictures = new SitePictures(store, (sha256) => this.#queue.blob(sha256));
		for (const each of log.reversible(identity.device)) this.#history.tell(each);
		this.#show();
		this.#older = pageDrawn()
			.then(() => Promise.all([this.#readQuarantined(), this.#readOlder()]))
			.then(() => undefined);
	}

	/** The round of now: the latest; empty when a survey from elsewhere has none. */
	get roundId(): string {
		return latestRound(this.survey)?.id ?? '';
	}

	/**
	 * Applies a command at once and has it written, with the pictures that it names.
	 *
	 * @returns the refusal of `apply`, or `field-invalid`; then nothing has changed
	 */
	do(body: CommandBody, blobs: readonly StoredBlob[] = []): Result<null> {
		return this.doAll([body], blobs);
	}

	/** Several commands as one: all or none is done, and one undo takes them back. */
	doAll(bodies: readonly CommandBody[], blobs: readonly StoredBlob[] = []): Result<null> {
		const entries: Entry[] = [];
		for (const given of bodies) {
			// A plain copy: what a screen made reactive must not reach the log or the disk.
			const parsed = CommandBody.safeParse(given);
			if (!parsed.success) {
				const field = parsed.error.issues[0]?.path.join('.') ?? '';
				return refuse('field-invalid', { field });
			}
			entries.push({ body: parsed.data });
		}
		return this.#append(entries, blobs);
	}

	/** Takes back what this device did last; `nothing-to-undo` when there is nothing. */
	undo(): Result<null> {
		const reversals = this.#history.nextUndo();
		if (reversals.length === 0) return refuse('nothing-to-undo');
		const done = this.#append(reversals.map(({ of, body }) => ({ body, undoes: of })));
		if (!done.ok) this.#history.dropUndo();
		this.#show();
		return done;
	}

	/** Brings back what was taken back last; `nothing-to-redo` when there is nothing. */
	redo(): Result<null> {
		const reversals = this.#history.nextRedo();
		if (reversals.length === 0) return refuse('nothing-to-redo');
		const done = this.#append(reversals.map(({ of, body }) => ({ body, redoes: of })));
		if (!done.ok) this.#history.dropRedo();
		this.#show();
		return done;
	}

	/** Tries to write again now, after a write has failed. */
	retry(): void {
		this.#queue.retry();
	}

	/** Settles when everything is on the disk. */
	async settled(): Promise<void> {
		await this.#older;
		await this.#queue.idle();
	}

	/**
	 * The survey file, made from what is in memory, so that it can also be made when the disk fails.
	 * Pictures that cannot be read then are missing in it; everything else is there.
	 */
	async toFile(): Promise<Uint8Array> {
		await this.#older;
		await this.#readOlder();
		const commands = this.#log.commands ?? (await this.#withoutOlder());
		const commandCount = commands.length;
		const { survey, quarantined } = this;
		const blobs = await this.#pictures.namedBy(commands);
		const savedAt = this.#identity.now();
		const bytes = await writeSurveyFile({ commands, survey, blobs, savedAt, quarantined });
		this.lastFile = { at: savedAt, commandCount };
		void this.#store.markSite(this.siteId, { lastFile: this.lastFile });
		return bytes;
	}

	/** An address for a picture; nothing when its bytes are not on this device. */
	blobUrl(sha256: string): Promise<string | undefined> {
		return this.#pictures.address(sha256);
	}

	/** The bytes of a picture; nothing when they are not on this device. */
	blob(sha256: string): Promise<StoredBlob | undefined> {
		return this.#pictures.read(sha256);
	}

	/** The last of the log; nothing when it has to be read first. */
	get lastChange(): Command | undefined {
		return this.#log.sinceCheckpoint.tail.at(-1);
	}

	/** What its pictures take up here. */
	async pictures(): Promise<KeptPictures> {
		await this.#older;
		return this.#pictures.kept(this.#log.commands ?? [], this.survey);
	}

	/**
	 * Deletes the pictures that are shown no more; they stay in the survey file that was made last.
	 *
	 * @returns a refusal `pictures-in-no-file` when not all of the site is in one
	 */
	async releasePictures(): Promise<Result<number>> {
		const { commandCount } = this;
		const { unused } = await this.pictures();
		const released = await this.#store.releasePictures(this.siteId, unused, commandCount);
		if (!released.ok) return released;
		return released.value === undefined ? refuse('pictures-in-no-file') : ok(released.value);
	}

	/** The reader has dealt with what merges left open: it is not shown any more. */
	async settleMerges(): Promise<Result<null>> {
		const marked = await this.#store.markSite(this.siteId, { merges: [] });
		if (marked.ok) this.merges = [];
		return marked;
	}

	/** Takes in what other tabs wrote while this one slept. */
	async refresh(): Promise<void> {
		const log = await this.#store.readLog(this.siteId);
		if (log.ok) await this.#take(log.value);
	}

	/** Whether something would be lost with the page that is in no file either. */
	get atRisk(): boolean {
		return (
			this.saveState.kind !== 'saved' && this.commandCount > (this.lastFile?.commandCount ?? 0)
		);
	}

	/** Lets go of it; what is not on the disk yet is still written. */
	close(): Promise<void> {
		return this.#onClose();
	}

	/** After the last holder has let go. */
	end(): void {
		this.#pictures.giveBack();
		this.#tabs.close();
	}

	/** What is written where it does not last is not saved. */
	#lasting(state: SaveState): SaveState {
		return state.kind === 'saved' && !this.#store.lasting
			? { kind: 'not-saved', refusal: { code: 'storage-unavailable' } }
			: state;
	}

	#append(entries: readonly Entry[], blobs: readonly StoredBlob[] = []): Result<null> {
		const made = stepOf(entries, this.#log, this.#identity);
		if (!made.ok) return made;
		const { done, survey } = made.value;
		if (done.length === 0) return ok(null);
		const commands = done.map(({ command }) => command);
		this.#log.append(commands, survey);
		for (const each of done) this.#history.tell(each);
		this.#show();
		this.#queue.add({ commands, blobs: blobs.map(plainBlob) });
		return ok(null);
	}

	#show(): void {
		this.survey = this.#log.survey;
		this.conflicts = this.#log.conflicts;
		this.commandCount = this.#log.commandCount;
		this.canUndo = this.#history.canUndo;
		this.canRedo = this.#history.canRedo;
		this.lastDone = this.#history.lastDone;
	}

	async #checkpoint(): Promise<void> {
		const checkpoint = this.#log.nextCheckpoint(this.#identity.device);
		if (!checkpoint) return;
		const kept = await this.#store.saveCheckpoint(this.siteId, checkpoint);
		if (kept.ok && kept.value) this.#log.adopt(checkpoint);
	}

	/** Takes in commands from elsewhere that are on the disk already. */
	async #take(commands: readonly Command[]): Promise<void> {
		if (!this.#log.merge(commands)) {
			await this.#older;
			this.#log.merge(commands);
		}
		this.#show();
	}

	async #readQuarantined(): Promise<void> {
		const kept = await this.#store.readQuarantined(this.siteId);
		if (kept.ok) this.quarantined = [...this.quarantined, ...kept.value];
	}

	async #readOlder(): Promise<void> {
		const upTo = this.#log.olderThan;
		if (!upTo) return;
		const older = await this.#store.readLog(this.siteId, upTo);
		if (!older.ok) return;
		const { commands, quarantined } = readLog(older.value);
		this.#log.readOlder(commands);
		this.quarantined = [...this.quarantined, ...quarantined];
	}

	/** When the older commands cannot be read: the survey of the checkpoint stands for them. */
	async #withoutOlder(): Promise<readonly Command[]> {
		const { survey, tail } = this.#log.sinceCheckpoint;
		return [await startFromSurvey(survey), ...tail];
	}
}

function plainBlob({ sha256, mediaType, bytes }: StoredBlob): StoredBlob {
	return { sha256, mediaType, bytes };
}
