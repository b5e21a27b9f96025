import type { Survey } from '#lib/core/survey/schema.ts';
import type { Making, Paper, Printable, TableKind } from '#lib/ui/mend/making.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { handOut } from '../download.ts';
import type { SiteContext } from '../site-context.ts';
import { makePrint, makeTable, type MadePrint } from './make-fix-list.ts';

interface Made extends MadePrint {
	readonly what: Printable;
	readonly of: Survey;
	readonly paper: Paper;
}

/** The fix list on its way out of the app: one print at a time, made beside the page, saved by a second press. */
export class HandingOver {
	readonly #site: SiteContext;
	#stop: AbortController | undefined;
	#paper = $state<Paper>('a4');
	#busy = $state.raw<Extract<Making, { kind: 'busy' | 'failed' }>>();
	#made = $state.raw<Made>();
	/** A print that was made before the last change, or for other paper, is out of date. */
	readonly #ready = $derived.by(() => {
		const made = this.#made;
		return made && made.of === this.#site.open.survey && made.paper === this.#paper
			? made
			: undefined;
	});

	constructor(site: SiteContext) {
		this.#site = site;
	}

	get paper(): Paper {
		return this.#paper;
	}

	get making(): Making {
		if (this.#busy) return this.#busy;
		if (!this.#ready) return { kind: 'idle' };
		const { file, what, missingGlyphs, missingPlans, missingPhotos } = this.#ready;
		const canShare = 'canShare' in navigator && navigator.canShare({ files: [file] });
		return { kind: 'ready', what, missingGlyphs, missingPlans, missingPhotos, canShare };
	}

	choosePaper(paper: Paper): void {
		this.#paper = paper;
		if (this.#busy?.kind === 'failed') this.#busy = undefined;
	}

	async make(what: Printable): Promise<void> {
		if (this.#busy?.kind === 'busy') return;
		const of = this.#site.open.survey;
		const paper = this.#paper;
		const stop = (this.#stop = new AbortController());
		const tell = (doing: string, done: number) => {
			if (!stop.signal.aborted) this.#busy = { kind: 'busy', what, doing, done };
		};
		const print = await makePrint(this.#site, what, paper, tell, stop.signal).catch(FAILED);
		if (stop.signal.aborted) return;
		if (print?.ok) this.#made = { ...print.value, what, of, paper };
		this.#busy =
			print?.ok === false ? { kind: 'failed', reason: refusalSentence(print.error) } : undefined;
	}

	cancel(): void {
		this.#stop?.abort();
		this.#busy = undefined;
	}

	save(): void {
		if (this.#ready) handOut(this.#ready.file, this.#ready.file.name);
	}

	async share(): Promise<void> {
		const file = this.#ready?.file;
		if (!file) return;
		try {
			await navigator.share({ files: [file], title: file.name });
		} catch (reason) {
			// Closing the sheet is an answer, not a fault; when it fails, saving still works.
			if (!(reason instanceof DOMException && reason.name === 'AbortError')) this.save();
		}
	}

	async table(what: TableKind): Promise<void> {
		const file = await makeTable(this.#site, what).catch(FAILED);
		if (file.ok) handOut(file.value, file.value.name);
		this.#busy = file.ok ? undefined : { kind: 'failed', reason: refusalSentence(file.error) };
	}
}

const FAILED = () => ({ ok: false, error: { code: 'printing-worker-failed' } }) as const;
