import type { Refusal } from '#lib/core/units/result.ts';
import { sites } from '#lib/session/sites.svelte.ts';
import { fileNews, isPlainlyNew } from '#lib/words/file-news.ts';
import type { Format } from '#lib/words/format.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { siteList } from '#lib/words/site-list.ts';

/** Something to be taken in: a file that was picked or dropped, or the demo. */
interface Source {
	readonly name: string;
	readonly bytes: () => Promise<Uint8Array>;
}

/** What is told above the list. */
interface News {
	readonly refused: boolean;
	readonly sentences: readonly string[];
	/** The site that it is about, to go to. */
	readonly siteId?: string;
}

/** Takes survey files in and says what came of it. */
export class FileIntake {
	busy = $state(false);
	news = $state.raw<readonly News[]>([]);

	readonly #format: Format;
	readonly #goto: (siteId: string) => Promise<void>;

	/** @param goto opens a site that came in whole; where there is more to say, it is said instead */
	constructor(format: Format, goto: (siteId: string) => Promise<void>) {
		this.#format = format;
		this.#goto = goto;
	}

	takeFiles(files: readonly File[]): Promise<void> {
		return this.#take(
			files.map((file) => ({
				name: file.name,
				bytes: async () => new Uint8Array(await file.arrayBuffer())
			}))
		);
	}

	takeAddress(name: string, address: string): Promise<void> {
		const bytes = async () => new Uint8Array(await (await fetch(address)).arrayBuffer());
		return this.#take([{ name, bytes }]);
	}

	refused(error: Refusal): void {
		this.#tell({ refused: true, sentences: [refusalSentence(error)] });
	}

	clear(): void {
		this.news = [];
	}

	async #take(sources: readonly Source[]): Promise<void> {
		this.busy = true;
		this.clear();
		for (const source of sources) {
			const taken = await readSource(source);
			if (!taken.ok) {
				const sentence = siteList.refusedFile(source.name, refusalSentence(taken.error));
				this.#tell({ refused: true, sentences: [sentence] });
				continue;
			}
			const { siteId, conflicts, quarantined, missingBlobs, ...rest } = taken.value;
			const outcome = {
				...rest,
				conflicts: conflicts.length,
				quarantined: quarantined.length,
				missingPictures: missingBlobs.length
			};
			if (sources.length === 1 && isPlainlyNew(outcome)) await this.#goto(siteId);
			else {
				const sentences = fileNews(outcome, this.#format.count);
				this.#tell({ refused: false, sentences, siteId });
			}
		}
		this.busy = false;
	}

	#tell(item: News): void {
		this.news = [...this.news, item];
	}
}

async function readSource({ name, bytes }: Source) {
	let read: Uint8Array;
	try {
		read = await bytes();
	} catch {
		return { ok: false, error: { code: 'file-unreadable', detail: { name } } } as const;
	}
	try {
		return await sites.takeFile(read);
	} catch {
		return { ok: false, error: { code: 'app-part-missing' } } as const;
	}
}
