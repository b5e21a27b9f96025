import type { Match } from '#lib/core/survey/plan-geometry.ts';
import type { PlanPoint } from '#lib/core/survey/schema.ts';
import { planDesk } from '#lib/words/plan-desk.ts';
import type { CutPlan } from './cut-plan.ts';

/** What taps on the plan do at its desk. */
export type DeskTask =
	| { readonly kind: 'look' }
	| { readonly kind: 'scale'; readonly points: readonly PlanPoint[] }
	| { readonly kind: 'outline'; readonly sectionId: string; readonly points: readonly PlanPoint[] }
	| { readonly kind: 'valve'; readonly sectionId: string }
	| { readonly kind: 'feed'; readonly sectionId: string; readonly from?: PlanPoint }
	| MatchTask;

/** Points found on an older and a newer drawing in turn. */
interface MatchTask {
	readonly kind: 'match';
	readonly newer: CutPlan;
	/** Address of the newer picture. */
	readonly address: string;
	readonly matches: readonly Match[];
	/** The place on the older drawing whose twin is asked for; in pixels. */
	readonly from?: Match['from'] | undefined;
	/** What it would look like is shown. */
	readonly preview: boolean;
}

export const LOOK: DeskTask = { kind: 'look' };

/** What to do next, in words. */
export function taskWords(task: DeskTask, sectionName: string): string {
	const words = planDesk.tasks;
	switch (task.kind) {
		case 'look':
			return '';
		case 'scale':
			return task.points.length < 2 ? words.scaleEnds : words.howLong;
		case 'outline':
			return task.points.length < 3 ? words.outline(sectionName) : words.outlineOn(sectionName);
		case 'valve':
			return words.valve(sectionName);
		case 'feed':
			return task.from
				? planDesk.feeding.tapTo(sectionName)
				: planDesk.feeding.tapFrom(sectionName);
		case 'match': {
			if (task.preview) return words.preview;
			const place = task.matches.length + 1;
			return task.from ? words.matchNewer(place) : words.matchOlder(place);
		}
	}
}
