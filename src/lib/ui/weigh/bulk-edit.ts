import type { CommandBody } from '#lib/core/survey/command.ts';
import { find } from '#lib/core/survey/ids.ts';
import { sightingIn } from '#lib/core/survey/leak-state.ts';
import { STARTING_ACTION, type Action, type Hazard, type Part } from '#lib/core/survey/parts.ts';
import type { Leak, Survey } from '#lib/core/survey/schema.ts';
import { sectionOf } from '#lib/core/weigh/leak-inputs.ts';

/** One change to several leaks; null clears what may be absent. */
export type BulkChange =
	| { readonly of: 'section'; readonly sectionId: string | null }
	| { readonly of: 'part'; readonly part: Part }
	| { readonly of: 'action'; readonly action: Action }
	| { readonly of: 'hazard'; readonly hazard: Hazard; readonly there: boolean }
	| { readonly of: 'pressure'; readonly barGauge: number | null };

/** What all have in common, or that they differ. */
export type Common<T> = { readonly mixed: true } | { readonly mixed: false; readonly value: T };

export interface CommonFields {
	readonly section: Common<string | undefined>;
	readonly part: Common<Part>;
	readonly action: Common<Action>;
	readonly pressure: Common<number | undefined>;
	/** How many have it, by hazard. */
	readonly hazard: (hazard: Hazard) => 'all' | 'some' | 'none';
}

export function chosenLeaks(survey: Survey, leakIds: Iterable<string>): Leak[] {
	return [...leakIds].flatMap((id) => find(survey.leaks, id) ?? []).filter((leak) => !leak.removed);
}

export function commonFields(
	survey: Survey,
	roundId: string,
	leaks: readonly Leak[]
): CommonFields {
	return {
		section: common(leaks.map((leak) => sectionOf(survey, leak)?.id)),
		part: common(leaks.map(({ part }) => part)),
		action: common(leaks.map(actionOf)),
		pressure: common(leaks.map((leak) => sightingIn(leak, roundId)?.pressureBarGauge)),
		hazard: (hazard) => {
			const count = leaks.filter(({ hazards }) => hazards.includes(hazard)).length;
			return count === 0 ? 'none' : count === leaks.length ? 'all' : 'some';
		}
	};
}

function actionOf({ action, part }: Leak): Action {
	return action ?? STARTING_ACTION[part];
}

function common<T>(values: readonly T[]): Common<T> {
	const first = values[0] as T;
	return values.every((value) => value === first)
		? { mixed: false, value: first }
		: { mixed: true };
}

/** The commands that make the change: none for a leak that has it already. */
export function bulkCommands(
	survey: Survey,
	roundId: string,
	leaks: readonly Leak[],
	change: BulkChange
): CommandBody[] {
	return leaks.flatMap((leak) => commandFor(survey, roundId, leak, change) ?? []);
}

function commandFor(
	survey: Survey,
	roundId: string,
	leak: Leak,
	change: BulkChange
): CommandBody | undefined {
	const set = (changes: Extract<CommandBody, { kind: 'set-leak' }>['changes']): CommandBody => ({
		kind: 'set-leak',
		leakId: leak.id,
		changes
	});
	switch (change.of) {
		case 'section':
			return (sectionOf(survey, leak)?.id ?? null) === change.sectionId
				? undefined
				: set({ sectionId: change.sectionId });
		case 'part':
			return leak.part === change.part ? undefined : set({ part: change.part });
		case 'action':
			return actionOf(leak) === change.action ? undefined : set({ action: change.action });
		case 'hazard': {
			if (leak.hazards.includes(change.hazard) === change.there) return undefined;
			const others = leak.hazards.filter((hazard) => hazard !== change.hazard);
			return set({ hazards: change.there ? [...others, change.hazard] : others });
		}
		case 'pressure': {
			const sighting = sightingIn(leak, roundId);
			if (!sighting || (sighting.pressureBarGauge ?? null) === change.barGauge) return undefined;
			const { pressureBarGauge: _, ...rest } = sighting;
			return {
				kind: 'record-sighting',
				leakId: leak.id,
				roundId,
				sighting: {
					...rest,
					...(change.barGauge !== null && { pressureBarGauge: change.barGauge })
				}
			};
		}
	}
}
