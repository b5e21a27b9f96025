import { leaksInOrder, nextTag } from '#lib/core/survey/leak-state.ts';
import { sectionAt } from '#lib/core/survey/plan-geometry.ts';
import type { Leak, Photo, PlanPoint, Survey } from '#lib/core/survey/schema.ts';
import { shrinkPhoto, type ShrunkPhoto } from '#lib/plan/shrink-photo.ts';
import { keepDraft, keptDraft } from '#lib/session/draft-keeper.ts';
import { newId, now } from '#lib/session/identity.ts';
import {
	draftAfter,
	draftAt,
	inSection,
	leakOf,
	type DraftPlace,
	type LeakDraft
} from '#lib/ui/walk/leak-draft.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { walk } from '#lib/words/walk.ts';
import { photoTaken } from '../photo-taken.ts';
import type { SiteContext } from '../site-context.ts';
import { KeptDraft } from './kept-draft.ts';

/** What the next tap on the plan does, when no leak is being entered. */
type TapDoes = 'enter' | 'pin' | 'mark';

/** Two taps closer than this in place and time are one tap of a shaking hand. */
const SAME_PLACE = 0.02;
const SAME_TAP_MS = 600;
/** Less than this wide or high, a second corner is a slip. */
const LEAST_SIDE = 0.005;

/** The outline of all of a plan. */
export const WHOLE_PLAN: PlanPoint[] = [
	{ x: 0, y: 0 },
	{ x: 1, y: 0 },
	{ x: 1, y: 1 },
	{ x: 0, y: 1 }
];

/** What is going on on Walk: what is being entered, moved or marked. */
export class Walk {
	readonly #site: SiteContext;
	draft = $state.raw<LeakDraft>();
	/** Photos of the leak that is being entered. */
	draftPhotos = $state.raw<readonly ShrunkPhoto[]>([]);
	/** The draft is one that was kept over an interruption. */
	restored = $state(false);
	/** False when this browser cannot keep a draft. */
	kept = $state(true);
	leakId = $state<string>();
	moving = $state(false);
	tapDoes = $state<TapDoes>('enter');
	/** The first corner of an area that is being marked. */
	corner = $state.raw<PlanPoint>();
	#said = $state.raw<{ readonly text: string; readonly of?: Survey }>({ text: '' });
	photoBusy = $state(false);
	photoRefused = $state<string>();
	/** What the leak that is being entered will be called: pinned once, it is not entered again. */
	#draftId = newId('leak');
	#looked = false;
	#lastPin: { readonly at: PlanPoint; readonly time: number } | undefined;

	constructor(site: SiteContext, leakId: string | undefined) {
		this.#site = site;
		this.leakId = leakId;
	}

	/** What was just done, to be seen and read out; once it is taken back it is true no longer. */
	get said(): string {
		return this.#said.of === this.#site.open.survey ? this.#said.text : '';
	}

	set said(text: string) {
		this.#said = { text, of: this.#site.open.survey };
	}

	get leaks(): Leak[] {
		return leaksInOrder(this.#site.open.survey);
	}

	get tag(): number {
		return nextTag(this.#site.open.survey);
	}

	/** The leak that the next one follows: the newest by its tag. */
	get last(): Leak | undefined {
		return this.leaks.at(-1);
	}

	/** Brings back what was half entered when the page ended. */
	async restore(): Promise<boolean> {
		const read = KeptDraft.safeParse(await keptDraft(this.#site.open.siteId));
		this.#looked = true;
		if (!read.success || this.draft) return false;
		const { leakId } = read.data;
		// Its pinning reached the disk, and the page ended before the draft was forgotten.
		if (leakId !== undefined && this.#site.open.survey.leaks[leakId]) return false;
		if (leakId !== undefined) this.#draftId = leakId;
		this.draft = read.data.draft;
		this.draftPhotos = read.data.photos;
		this.restored = true;
		return true;
	}

	/** Keeps what is half entered; to be called whenever it changes. */
	keep(draft: LeakDraft | undefined, photos: readonly ShrunkPhoto[]): void {
		if (!this.#looked) return;
		const value = draft && { draft, photos, leakId: this.#draftId };
		void keepDraft(this.#site.open.siteId, value).then((kept) => (this.kept = kept));
	}

	show(leakId: string | undefined): void {
		this.drop();
		this.moving = false;
		this.tapDoes = this.tapDoes === 'mark' ? 'enter' : this.tapDoes;
		this.leakId = leakId;
	}

	begin(place: Pick<LeakDraft, 'planId' | 'at'>): void {
		this.show(undefined);
		this.draft = draftAfter(this.last, this.#site.open.roundId, this.#lying(place));
	}

	/** Puts what is being entered somewhere else on the plan. */
	put(planId: string, at: PlanPoint): void {
		if (this.draft) this.draft = draftAt(this.draft, this.#lying({ planId, at }));
	}

	drop(): void {
		this.draft = undefined;
		this.draftPhotos = [];
		this.#draftId = newId('leak');
		this.restored = false;
		this.photoRefused = undefined;
	}

	/** Pins what was entered, its photos with it or not at all. */
	confirm(): boolean {
		const { draft, draftPhotos } = this;
		if (!draft) return false;
		const leak = this.#leakOf(draft, this.#draftId);
		const { roundId } = this.#site.open;
		const photos = draftPhotos.map((photo) => photoTaken(leak.id, roundId, photo, 'leak'));
		const done = this.#site.open.doAll([{ kind: 'add-leak', leak }, ...photos], draftPhotos);
		if (!done.ok) {
			this.said = refusalSentence(done.error);
			return false;
		}
		this.said = walk.pinned(leak.tag);
		this.drop();
		return true;
	}

	/** Everything as on the last leak, its size included. */
	repeat(): boolean {
		const last = this.leaks.find(({ tag }) => tag === this.draft?.carriedFrom);
		if (!this.draft || !last) return false;
		const evidence = last.sightings[this.#site.open.roundId]?.evidence;
		this.draft = { ...this.draft, evidence };
		return this.confirm();
	}

	/** Pins at once, to be sized later; a shaking hand's second tap is not a second leak. */
	pinAtOnce(planId: string, at: PlanPoint, time: number): void {
		const before = this.#lastPin;
		this.#lastPin = { at, time };
		const near = before && Math.hypot(at.x - before.at.x, at.y - before.at.y) < SAME_PLACE;
		if (near && time - before.time < SAME_TAP_MS) return;
		const place = this.#lying({ planId, at });
		const leak = this.#leakOf(draftAfter(this.last, this.#site.open.roundId, place), newId('leak'));
		if (this.#site.open.do({ kind: 'add-leak', leak }).ok) this.said = walk.pinnedToSize(leak.tag);
	}

	/** Makes a section for a leak that is pinned, in one step with it, or for the one that is being entered. */
	putIntoNewSection(name: string, leakId?: string): void {
		const section = { id: newId('section'), name };
		const added = { kind: 'add-section', section } as const;
		const changes = { sectionId: section.id };
		const done = this.#site.open.doAll(
			leakId === undefined ? [added] : [added, { kind: 'set-leak', leakId, changes }]
		);
		if (done.ok && leakId === undefined && this.draft)
			this.draft = { ...inSection(this.draft, section.id), carriedFrom: undefined };
	}

	/** A place with the section that is drawn there. */
	#lying(place: Pick<LeakDraft, 'planId' | 'at'>): DraftPlace {
		const { planId, at } = place;
		const sectionId = planId && at && sectionAt(this.#site.open.survey, planId, at);
		return sectionId ? { ...place, sectionId } : place;
	}

	/** The first tap is a corner, the second the one across. */
	markCorner(planId: string, at: PlanPoint): void {
		const from = this.corner;
		if (!from) {
			this.corner = at;
			return;
		}
		this.corner = undefined;
		if (Math.abs(at.x - from.x) < LEAST_SIDE || Math.abs(at.y - from.y) < LEAST_SIDE) return;
		this.mark(planId, [from, { x: at.x, y: from.y }, at, { x: from.x, y: at.y }]);
	}

	mark(planId: string, outline: PlanPoint[]): void {
		const walkedAt = now();
		const use = { kind: 'walked-tight', roundId: this.#site.open.roundId, walkedAt } as const;
		const area = { id: newId('area'), planId, outline, use };
		if (this.#site.open.do({ kind: 'add-area', area }).ok) this.said = walk.areaMarked;
	}

	/** Photos for the leak that is being entered, or for one that is pinned. */
	async takePhotos(files: readonly File[], of: Photo['of'], leakId?: string): Promise<void> {
		this.photoBusy = true;
		this.photoRefused = undefined;
		for (const file of files) {
			const shrunk = await shrinkPhoto(file);
			if (!shrunk.ok) this.photoRefused = refusalSentence(shrunk.error);
			else if (leakId === undefined) this.draftPhotos = [...this.draftPhotos, shrunk.value];
			else {
				const { roundId } = this.#site.open;
				const body = photoTaken(leakId, roundId, shrunk.value, of);
				const done = this.#site.open.do(body, [shrunk.value]);
				if (!done.ok) this.photoRefused = refusalSentence(done.error);
			}
		}
		this.photoBusy = false;
	}

	#leakOf(draft: LeakDraft, id: string): Leak {
		const { roundId } = this.#site.open;
		return leakOf(draft, { id, tag: this.tag, roundId, at: now() });
	}
}
