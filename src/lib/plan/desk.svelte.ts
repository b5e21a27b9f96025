import type { CommandBody } from '#lib/core/survey/command.ts';
import { shiftBetween, toPixel } from '#lib/core/survey/plan-geometry.ts';
import { replacePlan, type Replacement } from '#lib/core/survey/replace-plan.ts';
import type { Area, Plan, PlanPoint, Survey } from '#lib/core/survey/schema.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import type { CutPlan } from './cut-plan.ts';
import { LOOK, type DeskTask } from './desk-task.ts';

export interface DeskSite {
	readonly survey: Survey;
	readonly plan: Plan;
	readonly newId: (word: string) => string;
	/** Several at once are one step. @returns why not, in words */
	readonly ondo: (bodies: readonly CommandBody[], blobs?: CutPlan['blobs']) => string | undefined;
}

/** More points than an affine shift needs would only contradict each other. */
const MOST_MATCHES = 3;

/** What is being done to a plan by taps. */
export class Desk {
	readonly #site: () => DeskSite;
	task = $state.raw<DeskTask>(LOOK);
	refused = $state<string>();

	constructor(site: () => DeskSite) {
		this.#site = site;
	}

	/** Everything on the newer drawing, once two points are matched. */
	get replacement(): Replacement | undefined {
		if (this.task.kind !== 'match') return undefined;
		const shift = shiftBetween(this.task.matches);
		const { survey, plan } = this.#site();
		return shift.ok ? replacePlan(survey, plan, this.task.newer, shift.value) : undefined;
	}

	start(task: DeskTask): void {
		if (this.task.kind === 'match') URL.revokeObjectURL(this.task.address);
		this.refused = undefined;
		this.task = task;
	}

	act(bodies: readonly CommandBody[], blobs?: CutPlan['blobs']): void {
		const refused = this.#site().ondo(bodies, blobs);
		if (refused === undefined) this.start(LOOK);
		else this.refused = refused;
	}

	tapped(at: PlanPoint): void {
		const { task } = this;
		const { plan } = this.#site();
		switch (task.kind) {
			case 'look':
				return;
			case 'scale':
				this.task = { ...task, points: task.points.length < 2 ? [...task.points, at] : [at] };
				return;
			case 'outline':
				this.task = { ...task, points: [...task.points, at] };
				return;
			case 'valve': {
				const valveAt = { planId: plan.id, at };
				this.act([{ kind: 'set-section', sectionId: task.sectionId, changes: { valveAt } }]);
				return;
			}
			case 'feed': {
				const { sectionId, from } = task;
				if (!from) {
					this.task = { ...task, from: at };
					return;
				}
				const feedAt = { planId: plan.id, from, to: at };
				this.act([{ kind: 'set-section', sectionId, changes: { feedAt } }]);
				return;
			}
			case 'match':
				this.#match(at);
		}
	}

	setScale(metres: number): void {
		if (this.task.kind !== 'scale') return;
		const [from, to] = this.task.points;
		if (!from || !to || !(metres > 0)) return;
		const scale = { from, to, metres };
		this.act([{ kind: 'set-plan', planId: this.#site().plan.id, changes: { scale } }]);
	}

	/** Takes the last corner back. */
	backOne(): void {
		if (this.task.kind === 'outline')
			this.task = { ...this.task, points: this.task.points.slice(0, -1) };
	}

	finishOutline(): void {
		if (this.task.kind !== 'outline') return;
		const { sectionId } = this.task;
		const outline = [...this.task.points];
		const { plan, newId } = this.#site();
		const before = this.areaOf(sectionId);
		this.act([
			before
				? { kind: 'set-area', areaId: before.id, changes: { outline } }
				: {
						kind: 'add-area',
						area: {
							id: newId('area'),
							planId: plan.id,
							outline,
							use: { kind: 'section', sectionId }
						}
					}
		]);
	}

	/** Where a section is drawn on this plan. */
	areaOf(sectionId: string): Area | undefined {
		const { survey, plan } = this.#site();
		return Object.values(survey.areas ?? {}).find(
			({ use, planId, removed }) =>
				!removed && planId === plan.id && use.kind === 'section' && use.sectionId === sectionId
		);
	}

	takeNewer(newer: CutPlan): void {
		const [picture] = newer.blobs;
		if (!picture) return;
		const file = new Blob([picture.bytes], { type: picture.mediaType });
		const address = URL.createObjectURL(file);
		this.start({ kind: 'match', newer, address, matches: [], preview: false });
	}

	preview(): void {
		if (this.task.kind === 'match') this.task = { ...this.task, preview: true };
	}

	/** Begins the matching again. */
	matchAnew(): void {
		if (this.task.kind !== 'match') return;
		this.refused = undefined;
		this.task = { ...this.task, matches: [], from: undefined, preview: false };
	}

	acceptNewer(): void {
		const { replacement, task } = this;
		if (task.kind === 'match' && replacement) this.act(replacement.bodies, task.newer.blobs);
	}

	#match(at: PlanPoint): void {
		const { task } = this;
		if (task.kind !== 'match' || task.preview || task.matches.length >= MOST_MATCHES) return;
		if (!task.from) {
			this.task = { ...task, from: toPixel(this.#site().plan, at) };
			return;
		}
		const matches = [...task.matches, { from: task.from, to: toPixel(task.newer, at) }];
		const found = shiftBetween(matches);
		const usable = found.ok || matches.length < 2;
		this.refused = usable ? undefined : refusalSentence(found.error);
		this.task = { ...task, matches: usable ? matches : task.matches, from: undefined };
	}
}
