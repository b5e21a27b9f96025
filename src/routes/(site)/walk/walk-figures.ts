import { apply } from '#lib/core/survey/apply.ts';
import { find } from '#lib/core/survey/ids.ts';
import { leakState, nextTag, sightingIn } from '#lib/core/survey/leak-state.ts';
import type { Leak, PlanPoint, Survey } from '#lib/core/survey/schema.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import type { Assessment } from '#lib/core/weigh/assessment.ts';
import type { Pin } from '#lib/plan/pin.ts';
import { now } from '#lib/session/identity.ts';
import { leakOf, type LeakDraft } from '#lib/ui/walk/leak-draft.ts';
import type { LeakRow } from '#lib/ui/walk/LeakList.svelte';
import { STATE_WORDS } from '#lib/words/actions.ts';
import type { Format } from '#lib/words/format.ts';
import { PART_WORDS } from '#lib/words/parts.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { walk } from '#lib/words/walk.ts';

/** What one leak wastes: to order by, in short and in full. */
interface Waste {
	readonly worth: number;
	readonly short: string;
	readonly long: string;
}
export type WasteByLeak = ReadonlyMap<string, Waste>;

export function wasteByLeak(assessment: Assessment, format: Format): WasteByLeak {
	return new Map(
		assessment.leaks.map((each) => {
			const flow = format.flow(each.freeAirM3PerS);
			const { costMinorPerYear: cost, energyKwhPerYear: energy } = each;
			const yearly =
				cost !== undefined
					? format.money(cost)
					: energy !== undefined
						? format.energy(energy)
						: undefined;
			const long = yearly ? walk.wastes(flow, yearly) : walk.wastesFlow(flow);
			return [
				each.leakId,
				{ worth: cost ?? energy ?? each.freeAirM3PerS, short: yearly ?? flow, long }
			] as const;
		})
	);
}

/** What one leak wastes, in words; or why that cannot be said. */
export function wasteWords(
	survey: Survey,
	roundId: string,
	leak: Leak,
	weighed: WasteByLeak
): string {
	const waste = weighed.get(leak.id);
	if (waste) return waste.long;
	const reason = assess(survey, roundId, [leakState(leak, roundId)]).unweighed.find(
		({ leakId }) => leakId === leak.id
	);
	return reason ? refusalSentence(reason.refusal) : '';
}

/** The same for a leak that is not pinned yet: the survey as it would be. */
export function draftWasteWords(
	survey: Survey,
	roundId: string,
	draft: LeakDraft,
	format: Format
): string | undefined {
	if (!draft.evidence) return undefined;
	const made = leakOf(draft, { id: 'leak-draft', tag: nextTag(survey), roundId, at: now() });
	const next = apply(survey, { kind: 'add-leak', leak: made });
	if (!next.ok) return undefined;
	return wasteWords(next.value, roundId, made, wasteByLeak(assess(next.value, roundId), format));
}

export function pinsOn(
	planId: string | undefined,
	leaks: readonly Leak[],
	roundId: string,
	weighed: WasteByLeak
): Pin[] {
	const largest = Math.max(0, ...[...weighed.values()].map(({ worth }) => worth));
	return leaks.flatMap((leak) => {
		if (!leak.at || leak.planId !== planId) return [];
		const state = leakState(leak, roundId);
		const share = largest > 0 ? (weighed.get(leak.id)?.worth ?? 0) / largest : 0;
		return {
			id: leak.id,
			tag: leak.tag,
			at: leak.at,
			state,
			size: share > 0.4 ? 3 : share > 0.1 ? 2 : 1,
			name: walk.pin(leak.tag, STATE_WORDS[state], PART_WORDS[leak.part], leak.place ?? '')
		};
	});
}

/** The list beside the plan, the newest first. */
export function rowsOf(
	survey: Survey,
	leaks: readonly Leak[],
	roundId: string,
	weighed: WasteByLeak,
	doubtful: ReadonlySet<string>
): LeakRow[] {
	return leaks
		.map((leak): LeakRow => {
			const state = leakState(leak, roundId);
			return {
				id: leak.id,
				tag: leak.tag,
				state,
				title: PART_WORDS[leak.part],
				about: [leak.place, find(survey.sections, leak.sectionId)?.name]
					.filter(Boolean)
					.join(' · '),
				waste: weighed.get(leak.id)?.short ?? '–',
				toSize: state === 'leaking' && !sightingIn(leak, roundId)?.evidence,
				doubtful: doubtful.has(leak.id)
			};
		})
		.reverse();
}

export function placeWords(
	survey: Survey,
	at: PlanPoint | undefined,
	planId: string | undefined,
	format: Format
): string | undefined {
	const on = find(survey.plans, planId);
	if (!at || !on) return undefined;
	return walk.placed(on.name, format.percent(at.x), format.percent(at.y));
}
