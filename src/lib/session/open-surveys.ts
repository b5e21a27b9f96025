import { readLog } from '#lib/core/survey/log.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { SurveyStore } from '#lib/storage/port.ts';
import { newId, now } from './identity.ts';
import { OpenSurvey } from './open-survey.svelte.ts';
import { WorkingLog } from './working-log.ts';

/**
 * The surveys that are open, each once however many hold it. One that was let go stays until all of
 * it is on the disk, and is handed out again when it is asked for meanwhile.
 */
export class OpenSurveys {
	readonly #store: SurveyStore;
	readonly #afterSave: (() => void) | undefined;
	#swept = false;
	readonly #held = new Map<string, { readonly survey: OpenSurvey; holders: number }>();

	constructor(store: SurveyStore, afterSave?: () => void) {
		this.#store = store;
		this.#afterSave = afterSave;
		if (typeof window !== 'undefined') this.#watch();
	}

	async open(siteId: string): Promise<Result<OpenSurvey>> {
		const held = this.#hold(siteId);
		if (held) return ok(held);
		const [device, stored] = await Promise.all([
			this.#store.ownDevice(newId('device')),
			this.#store.openSite(siteId)
		]);
		if (!device.ok) return device;
		if (!stored.ok) {
			// What is not in memory may well be on the disk.
			const hidden = stored.error.code === 'site-unknown' && !this.#store.lasting;
			return hidden ? refuse('storage-unavailable') : stored;
		}
		const read = readLog(stored.value.tail);
		const log = WorkingLog.from(stored.value.checkpoint, read.commands);
		if (!log.ok) return log;
		const meanwhile = this.#hold(siteId);
		if (meanwhile) return ok(meanwhile);
		const survey = new OpenSurvey(this.#store, {
			summary: stored.value.summary,
			log: log.value,
			quarantined: read.quarantined,
			identity: { device: device.value, newId, now },
			onClose: () => this.#leave(siteId),
			...(this.#afterSave && { afterSave: this.#afterSave })
		});
		this.#held.set(siteId, { survey, holders: 1 });
		this.#sweep(survey);
		return ok(survey);
	}

	/** Once a visit, when nothing else is under way: what is left of files goes, and nobody waits for it. */
	#sweep(survey: OpenSurvey): void {
		if (this.#swept) return;
		this.#swept = true;
		void survey.settled().then(() => this.#store.sweepStrays(now()));
	}

	#hold(siteId: string): OpenSurvey | undefined {
		const held = this.#held.get(siteId);
		if (held) held.holders++;
		return held?.survey;
	}

	async #leave(siteId: string): Promise<void> {
		const held = this.#held.get(siteId);
		if (!held || held.holders === 0 || --held.holders > 0) return;
		await held.survey.settled();
		if (held.holders > 0 || this.#held.get(siteId) !== held) return;
		this.#held.delete(siteId);
		held.survey.end();
	}

	/** Tries again when the page comes back to the front, and speaks up before unsaved work is left. */
	#watch(): void {
		const each = (): OpenSurvey[] => [...this.#held.values()].map(({ survey }) => survey);
		document.addEventListener('visibilitychange', () => {
			if (document.visibilityState === 'visible') for (const survey of each()) survey.retry();
		});
		window.addEventListener('pageshow', ({ persisted }) => {
			if (persisted) for (const survey of each()) void survey.refresh();
		});
		window.addEventListener('beforeunload', (event) => {
			if (each().some(({ atRisk }) => atRisk)) event.preventDefault();
		});
	}
}
